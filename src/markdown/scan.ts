/** Questions to a body that need no HTML: what is wrong in it, what it cites, which images it shows. */
import { parseBody, readBody } from './read.ts';
import { mediaFile } from './safe-html.ts';
import { tangledAt } from './tangled.ts';
import type { AnyNode } from './tree.ts';
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
  if (!body.includes('media/')) return [];
  const shown = new Set<string>();
  const { tree } = parseBody(body, mdx);
  const definitions = new Map<string, string>();
  visit(tree, (node) => {
    if (node.type === 'definition' && !definitions.has(node.identifier))
      definitions.set(node.identifier, node.url);
  });
  visit(tree, (node) => {
    const url =
      node.type === 'image'
        ? node.url
        : node.type === 'imageReference'
          ? definitions.get(node.identifier)
          : undefined;
    const media = url === undefined ? 'outside' : mediaFile(url);
    if (typeof media === 'object') shown.add(media.file);
  });
  return [...shown];
}

function visit(node: AnyNode, see: (node: AnyNode) => void): void {
  see(node);
  if ('children' in node) for (const child of node.children as AnyNode[]) visit(child, see);
}
