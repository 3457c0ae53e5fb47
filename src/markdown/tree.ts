/** Nodes of ours in a body’s tree, after it has been arranged, and small questions to ask of any tree. */
import type { Node, Nodes, PhrasingContent, RootContent } from 'mdast';
import type { MdxFlowExpression, MdxTextExpression } from 'mdast-util-mdx-expression';
import type { MdxJsxFlowElement, MdxJsxTextElement } from 'mdast-util-mdx-jsx';

/** A harmless tag of the author’s, such as `<sup>`. */
export interface TagNode extends Node {
  type: 'tag';
  name: string;
  attributes: Record<string, string>;
  children: PhrasingContent[];
}

/** A component, standing between blocks. */
export interface ComponentNode extends Node {
  type: 'component';
  name: string;
  props: Record<string, string | number | boolean>;
  children: RootContent[];
}

declare module 'mdast' {
  interface PhrasingContentMap {
    tag: TagNode;
  }
  interface RootContentMap {
    tag: TagNode;
    component: ComponentNode;
  }
}

/** Any node a body can hold. */
export type AnyNode = Nodes | MdxJsxFlowElement | MdxJsxTextElement | MdxFlowExpression | MdxTextExpression;

/** The words of a node, without notes, evidence references and images. */
export function textOf(node: AnyNode): string {
  switch (node.type) {
    case 'text':
    case 'inlineCode':
      return node.value;
    case 'break':
      return ' ';
    case 'citation':
    case 'evidenceReference':
    case 'footnoteReference':
      return '';
    default:
      return 'children' in node ? (node.children as AnyNode[]).map(textOf).join('') : '';
  }
}

/** Where a node begins in the body. */
export function startOf(node: Node): number {
  return node.position?.start.offset ?? 0;
}

/** Where a node ends in the body. */
export function endOf(node: Node): number {
  return node.position?.end.offset ?? startOf(node);
}

/** The inline content of blocks, a line break between them: for notes and for tags that hold whole paragraphs. */
export function phrasingOf(node: AnyNode): PhrasingContent[] {
  if (node.type === 'paragraph' || node.type === 'heading' || node.type === 'tableCell') return node.children;
  if (node.type === 'code') return [{ type: 'inlineCode', value: node.value }];
  if (!('children' in node) || isPhrasing(node)) return isPhrasing(node) ? [node as PhrasingContent] : [];
  const out: PhrasingContent[] = [];
  for (const child of node.children as AnyNode[]) {
    const inline = phrasingOf(child);
    if (inline.length > 0 && out.length > 0) out.push({ type: 'break' });
    out.push(...inline);
  }
  return out;
}

const blockTypes = new Set([
  'blockquote',
  'code',
  'component',
  'definition',
  'footnoteDefinition',
  'heading',
  'html',
  'list',
  'listItem',
  'mdxFlowExpression',
  'mdxJsxFlowElement',
  'paragraph',
  'root',
  'table',
  'tableCell',
  'tableRow',
  'thematicBreak',
  'yaml',
]);

/** Whether a node stands inside a line of text rather than as a block. */
export function isPhrasing(node: AnyNode): boolean {
  return !blockTypes.has(node.type);
}
