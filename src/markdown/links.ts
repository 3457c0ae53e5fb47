/** Links and pictures of the prose: where they may lead, and whether what they name is there. */
import { didYouMean } from './nearest.ts';
import { isSafeLink, mediaFile } from './safe-html.ts';
import type { BodyContext, BodyProblem } from './types.ts';

/** A page of the site that a link names by its file in the content folder, as editors complete it. */
export function contentLink(url: string): { kind: string; id: string; rest: string } | undefined {
  const match = /^(?:\.\.?\/|\/)*(records|people|cases)\/([a-z0-9-]+)\.mdx?(#.*)?$/.exec(url);
  return match ? { kind: match[1]!, id: match[2]!, rest: match[3] ?? '' } : undefined;
}

/** What is wrong with the address of a link. */
export function linkProblems(url: string, offset: number, ctx: BodyContext): BodyProblem[] {
  if (!isSafeLink(url))
    return problem(
      'html-is-safe',
      offset,
      `The link to “${url.slice(0, 40)}” leads neither to a web page, nor to an e-mail address, nor into this site.`,
      'Links begin with https://, http:// or mailto:, or name a page of the site.',
    );
  const page = contentLink(url);
  if (page?.kind === 'records' && !ctx.hasRecord(page.id))
    return problem(
      'reference-resolves',
      offset,
      `The link leads to the record “${page.id}”, and there is no such record.`,
      didYouMean(page.id, ctx.recordIds(), 'Name a file in records/.'),
    );
  if (page?.kind === 'people' && !ctx.hasPerson(page.id))
    return problem(
      'reference-resolves',
      offset,
      `The link leads to the person “${page.id}”, and there is no such person.`,
      'Write the id of somebody in people/.',
    );
  return [];
}

/** What is wrong with the address of a picture. */
export function imageProblems(url: string, offset: number, ctx: BodyContext): BodyProblem[] {
  const write = 'Put the file into media/ and write ![what it shows](media/name.jpg).';
  const media = mediaFile(url);
  if (media === 'remote')
    return problem(
      'html-is-safe',
      offset,
      `The image “${url.slice(0, 40)}” would be asked of another host.`,
      write,
    );
  if (media === 'outside')
    return problem(
      'media-stays-in-its-folder',
      offset,
      `The image “${url.slice(0, 40)}” does not lie in media/.`,
      write,
    );
  if (ctx.hasMedia?.(media.file) === false)
    return problem(
      'media-exists',
      offset,
      `There is no image “${media.file}” in media/.`,
      'Put the file there, or correct its name; capital letters count.',
    );
  return [];
}

function problem(rule: string, offset: number, message: string, help: string): BodyProblem[] {
  return [{ rule, severity: 'error', offset, message, help }];
}
