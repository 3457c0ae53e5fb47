/** The guides of the site, in each language it speaks: MDX files of the project’s own, told apart by their folders. */
import type { MDXInstance } from 'astro';
import type { InterfaceTag } from '../../src/interface/index.ts';

export interface GuideHead {
  title: string;
  description: string;
  reader: 'author' | 'reviewer';
}
export type Guide = MDXInstance<GuideHead>;

const files = import.meta.glob<Guide>('../../src/interface/*/guides/*.mdx', { eager: true });

/** The guides by their ids, in the order in which they are read. */
export const guideIds = [
  'first-case',
  'independence',
  'conflicts',
  'before-publishing',
  'reading-a-proof',
] as const;
export type GuideId = (typeof guideIds)[number];

/** A guide in a language of the site. */
export function guideIn(tag: InterfaceTag, id: GuideId): Guide {
  const guide = files[`../../src/interface/${tag}/guides/${id}.mdx`];
  if (!guide) throw new Error(`The guide ${id} is missing in ${tag}.`);
  return guide;
}
