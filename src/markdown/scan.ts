/** Questions to a body that need no HTML: what is wrong in it, what it cites, which images it shows. */
import { parseBody, readBody } from './read.ts';
import { mediaFile } from './safe-html.ts';
import { tangledAt } from './tangled.ts';
import { endOf, startOf, type AnyNode } from './tree.ts';
import type { BodyContext, BodyProblem } from './types.ts';

/** Everything wrong in a body, in its order: the same that `renderBody` finds. Never throws. */
export function checkBody(body: string, ctx: BodyContext): BodyProblem[] {
  return mayHaveProblems(body, ctx.mdx) ? readBody(body, ctx).problems : [];
}

/** A citation or evidence reference, a tag, a link or picture, or nesting beyond all measure. */
const suspect = /<|\[#|\[[^\][]*@|\]\(|\]:|(?:[>*_~+-][ \t]*){50}|[ \t]{100}/;
const suspectInMdx = /[{}]|(?:^|[\r\n])[ \t]*(?:import|export)\b/;

/** Whether a body holds anything that could be wrong; most transcriptions do not, and need not be parsed. */
export function mayHaveProblems(body: string, mdx: boolean): boolean {
  return suspect.test(body) || (mdx && suspectInMdx.test(body)) || tangledAt(body) !== undefined;
}

/** The records a body cites, in order of first use, whether or not they exist. */
export function citedRecords(body: string, mdx = false): string[] {
  if (!body.includes('@')) return [];
  const cited = new Set<string>();
  visit(parseBody(body, mdx).tree, (node) => {
    if (node.type === 'citation') for (const { id } of node.items) cited.add(id);
  });
  return [...cited];
}

/** The files in `media/` that a body shows, in order of first use. */
export function shownMedia(body: string, mdx = false): string[] {
  return [...new Set(picturesIn(body, mdx).map(({ file }) => file))];
}

/** A body with its description in place of each picture of `media/` that is not kept. */
export function withoutPictures(body: string, mdx: boolean, isKept: (file: string) => boolean): string {
  let out = '';
  let at = 0;
  for (const { file, alt, start, end } of picturesIn(body, mdx)) {
    if (isKept(file)) continue;
    out += body.slice(at, start) + asText(alt);
    at = end;
  }
  return out + body.slice(at);
}

interface PictureShown {
  file: string;
  alt: string;
  start: number;
  end: number;
}

/** The pictures of `media/` that a body shows, in its order. Text in code shows none. */
function picturesIn(body: string, mdx: boolean): PictureShown[] {
  if (!body.includes('![')) return [];
  const { tree } = parseBody(body, mdx);
  const definitions = new Map<string, string>();
  visit(tree, (node) => {
    if (node.type === 'definition' && !definitions.has(node.identifier))
      definitions.set(node.identifier, node.url);
  });
  const shown: PictureShown[] = [];
  visit(tree, (node) => {
    if (node.type !== 'image' && node.type !== 'imageReference') return;
    const url = node.type === 'image' ? node.url : definitions.get(node.identifier);
    const media = url === undefined ? 'outside' : mediaFile(url);
    if (typeof media === 'object')
      shown.push({ file: media.file, alt: node.alt ?? '', start: startOf(node), end: endOf(node) });
  });
  return shown.sort((a, b) => a.start - b.start);
}

/** Words as Markdown that says just them, wherever they stand in a line. */
function asText(words: string): string {
  return words
    .replaceAll(/\s+/g, ' ')
    .replaceAll(/[\\`*_{}[\]<>#|~&@!]/g, String.raw`\$&`)
    .replace(/^(?=[-+=])|(?<=^\d{1,9})(?=[.)])/, '\\');
}

function visit(node: AnyNode, see: (node: AnyNode) => void): void {
  see(node);
  if ('children' in node) for (const child of node.children as AnyNode[]) visit(child, see);
}
