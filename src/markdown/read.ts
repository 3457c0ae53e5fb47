/** From the text of a body to its arranged tree, with everything wrong in it. */
import type { Root } from 'mdast';
import { arrange } from './arrange.ts';
import { parseProblem } from './mdx.ts';
import { tangledAt } from './tangled.ts';
import { parseMarkdown } from './syntax.ts';
import type { AnyNode } from './tree.ts';
import type { BodyContext, BodyProblem } from './types.ts';

/** Text nested deeper than this is not prose, and walking it could exhaust the stack. */
const deepest = 100;

/** The arranged tree of a body, with everything wrong in it in the order of the body. Never throws. */
export function readBody(body: string, ctx: BodyContext): { tree: Root; problems: BodyProblem[] } {
  const { tree, problem, mdx } = parseBody(body, ctx.mdx);
  const problems = arrange(tree, body, { ...ctx, mdx });
  if (!problem) return { tree, problems };
  // The text is still shown, its tags as text; of those nothing more is said than the problem itself.
  const others = problems.filter(({ rule }) => rule.endsWith('-resolves'));
  return { tree, problems: [problem, ...others].sort((a, b) => a.offset - b.offset) };
}

/**
 * The tree of a body as it was written. Where tags or braces do not close there is no tree of an `.mdx` body: it is
 * read without them, and the problem says why.
 */
export function parseBody(body: string, mdx: boolean): { tree: Root; mdx: boolean; problem?: BodyProblem } {
  const tangled = tangledAt(body);
  if (tangled !== undefined) return unreadable(body, tooTangled, tangled);
  let problem: BodyProblem | undefined;
  if (mdx) {
    try {
      return shallow(parseMarkdown(body, true), body, true);
    } catch (error) {
      problem = parseProblem(error, body);
    }
  }
  try {
    const read = shallow(parseMarkdown(body, false), body, false);
    return problem ? { ...read, problem } : read;
  } catch (error) {
    return unreadable(
      body,
      error instanceof RangeError ? tooDeep : 'This text cannot be laid out, by a fault of the site’s own.',
    );
  }
}

const tooTangled =
  'Thousands of brackets or stars stand together here, or dozens of signs of lists and quotations, so the text cannot be laid out.';
const tooDeep = `Quotations, lists or emphasis are nested more than ${deepest} deep here, so the text cannot be laid out.`;

function shallow(
  tree: Root,
  body: string,
  mdx: boolean,
): { tree: Root; mdx: boolean; problem?: BodyProblem } {
  return isDeeper(tree, deepest) ? unreadable(body, tooDeep) : { tree, mdx };
}

function unreadable(
  body: string,
  message: string,
  offset = 0,
): { tree: Root; mdx: boolean; problem: BodyProblem } {
  const help =
    message === tooDeep || message === tooTangled
      ? 'Look for a long run of >, -, * or [ and take it out.'
      : 'Try it with half of the text to find the line it is about.';
  return {
    tree: { type: 'root', children: [{ type: 'paragraph', children: [{ type: 'text', value: body }] }] },
    mdx: false,
    problem: { rule: 'prose-is-readable', severity: 'error', offset, message, help },
  };
}

function isDeeper(node: AnyNode, limit: number): boolean {
  if (!('children' in node)) return false;
  return limit === 0 || (node.children as AnyNode[]).some((child) => isDeeper(child, limit - 1));
}
