/**
 * HTML tags in `.md` prose. A few harmless ones become elements, comments vanish, everything else is shown as the
 * text it is.
 */
import type { Html, PhrasingContent, Text } from 'mdast';
import { components } from './components.ts';
import { emptyTags, harmlessTags } from './safe-html.ts';
import { startOf, type TagNode } from './tree.ts';
import type { BodyProblem } from './types.ts';

const oneTag = /<\/?[A-Za-z][^<>]*>/y;
const tag = /^<(\/?)([A-Za-z][A-Za-z0-9-]*)((?:\s+[A-Za-z-]+\s*=\s*(?:"[^"]*"|'[^']*'))*)\s*(\/?)>$/;
const attribute = /(?<![A-Za-z-])([A-Za-z-]+)\s*=\s*(?:"([^"]*)"|'([^']*)')/g;

/** Could run something or ask another host if it were let through; anything else is only unknown. */
const couldRun =
  /^<\/?(?:script|style|iframe|frame|frameset|object|embed|applet|form|input|button|link|meta|base|img|picture|video|audio|source|svg|math|template|portal)\b|\son[a-z]+\s*=|(?:javascript|vbscript|data):/i;

/** A block of HTML as inline content. */
export function inlineHtml(node: Html): PhrasingContent[] {
  const out: PhrasingContent[] = [];
  let end = 0;
  for (const [from, to] of pieces(node.value)) {
    if (from > end) out.push(piece('text', node, end, from));
    end = to;
    out.push(piece('html', node, from, end));
  }
  if (end < node.value.length) out.push(piece('text', node, end, node.value.length));
  return out;
}

/** Where comments and tags stand. A text is gone through once, however many comments it opens and never closes. */
function* pieces(text: string): Generator<[from: number, to: number]> {
  const lastEnd = text.lastIndexOf('-->');
  for (let at = text.indexOf('<'); at >= 0; at = text.indexOf('<', at)) {
    let end = -1;
    if (text.startsWith('<!--', at) && at + 4 <= lastEnd) end = text.indexOf('-->', at + 4) + 3;
    else {
      oneTag.lastIndex = at;
      if (oneTag.test(text)) end = oneTag.lastIndex;
    }
    if (end > at) yield [at, end];
    at = Math.max(end, at + 1);
  }
}

function piece(type: 'text' | 'html', node: Html, from: number, to: number): PhrasingContent {
  const point = (offset: number) => ({ line: 1, column: 1, offset: startOf(node) + offset });
  return { type, value: node.value.slice(from, to), position: { start: point(from), end: point(to) } };
}

interface Open {
  node: Html;
  element: TagNode;
}

/** Pairs opening and closing tags among siblings; reports and keeps as text what is not let through. */
export function pairTags(nodes: PhrasingContent[], problems: BodyProblem[]): PhrasingContent[] {
  if (!nodes.some((node) => node.type === 'html')) return nodes;
  const out: PhrasingContent[] = [];
  const open: Open[] = [];
  const refused = new Set<string>();
  const add = (...more: PhrasingContent[]) => (open.at(-1)?.element.children ?? out).push(...more);
  const unclosed = () => {
    const { node, element } = open.pop()!;
    problems.push(asText(node, `${node.value} is never closed here, so it is shown as text.`));
    add(text(node), ...element.children);
  };

  for (const node of nodes) {
    if (node.type !== 'html') {
      add(node);
      continue;
    }
    if (/^<!--/.test(node.value)) continue;
    const read = readTag(node.value);
    if (read === undefined) {
      const [, slash, name = ''] = /^<(\/?)([A-Za-z][\w.-]*)/.exec(node.value) ?? [];
      if (slash !== '/' || !refused.has(name)) problems.push(refusal(node, name));
      refused.add(name);
      add(text(node));
    } else if (emptyTags.has(read.name)) {
      add({
        type: 'tag',
        name: read.name,
        attributes: read.attributes,
        children: [],
        position: node.position,
      });
    } else if (!read.closing) {
      const element: TagNode = {
        type: 'tag',
        name: read.name,
        attributes: read.attributes,
        children: [],
        position: node.position,
      };
      open.push({ node, element });
    } else if (open.some((one) => one.element.name === read.name)) {
      while (open.at(-1)!.element.name !== read.name) unclosed();
      add(open.pop()!.element);
    } else {
      problems.push(asText(node, `${node.value} closes nothing here, so it is shown as text.`));
      add(text(node));
    }
  }
  while (open.length > 0) unclosed();
  return out;
}

function readTag(
  value: string,
): { name: string; closing: boolean; attributes: Record<string, string> } | undefined {
  const match = tag.exec(value);
  const name = match?.[2]!.toLowerCase() ?? '';
  const allowed = harmlessTags.get(name);
  if (!match || !allowed) return undefined;
  const attributes: Record<string, string> = {};
  for (const [, key, double, single] of match[3]!.matchAll(attribute)) {
    if (!allowed.includes(key!.toLowerCase())) return undefined;
    attributes[key!.toLowerCase()] = double ?? single ?? '';
  }
  return { name, closing: match[1] === '/', attributes };
}

function refusal(node: Html, name: string): BodyProblem {
  if (components.has(name))
    return {
      rule: 'component-is-known',
      severity: 'error',
      offset: startOf(node),
      message: `<${name}> is a component, and components stand only in a case whose file ends in .mdx.`,
      help: 'Give the case file the ending .mdx, or leave the component out.',
    };
  if (couldRun.test(node.value))
    return {
      rule: 'html-is-safe',
      severity: 'error',
      offset: startOf(node),
      message: `${short(node.value)} could run something or ask another host, so prose may not hold it.`,
      help: 'Write Markdown instead; images go into media/ and are written ![what it shows](media/name.jpg).',
    };
  return asText(
    node,
    `${short(node.value)} is not one of the few tags prose may hold, so it is shown as text.`,
  );
}

function asText(node: Html, message: string): BodyProblem {
  const help = `Write Markdown instead, or &lt; for the sign itself. Tags that may stand: ${[...harmlessTags.keys()].join(', ')}.`;
  return { rule: 'html-is-safe', severity: 'warning', offset: startOf(node), message, help };
}

function text(node: Html): Text {
  return { type: 'text', value: node.value, position: node.position };
}

function short(value: string): string {
  const line = value.replace(/\s+/g, ' ');
  return line.length > 40 ? `${line.slice(0, 39)}…` : line;
}
