/**
 * Makes a parsed body ready to be rendered, and finds everything wrong with it on the way: components are lifted
 * out of the text to stand between blocks, tags become nodes of ours, a note’s mark moves behind the punctuation
 * after it (common practice in print), code is taken out. `check` and the pages go through here alike, so they
 * find the same.
 */
import type { Link, Paragraph, PhrasingContent, Root, RootContent } from 'mdast';
import {
  expressionProblem,
  importProblem,
  isComment,
  isImportOrExport,
  readComponent,
  readHarmlessTag,
  type Tag,
} from './mdx.ts';
import { didYouMean } from './nearest.ts';
import { inlineHtml, pairTags } from './raw-html.ts';
import { imageProblems, linkProblems } from './links.ts';
import { marksAfterPunctuation, unclosedCitations } from './marks.ts';
import { citedWithoutSign, nearReferences } from './near-references.ts';
import {
  endOf,
  isPhrasing,
  phrasingOf,
  startOf,
  type AnyNode,
  type ComponentNode,
  type TagNode,
} from './tree.ts';
import type { BodyContext, BodyProblem } from './types.ts';

/** Changes the tree in place and returns what is wrong with it, in the order of the body. */
export function arrange(root: Root, body: string, ctx: BodyContext): BodyProblem[] {
  const problems: BodyProblem[] = [];
  root.children = new Arrangement(body, ctx, problems).blocks(root.children, true);
  return problems.sort((a, b) => a.offset - b.offset || (a.rule < b.rule ? -1 : a.rule > b.rule ? 1 : 0));
}

class Arrangement {
  readonly #body: string;
  readonly #ctx: BodyContext;
  readonly #problems: BodyProblem[];
  /** Components met inside a block, to stand after it. */
  #lifted: RootContent[] = [];
  /** Marks met inside a link, to stand after it: a link cannot hold another. */
  #afterLink: PhrasingContent[] | undefined;
  #inFootnote = false;

  constructor(body: string, ctx: BodyContext, problems: BodyProblem[]) {
    this.#body = body;
    this.#ctx = ctx;
    this.#problems = problems;
  }

  /** Blocks of the page or of a component. */
  blocks(nodes: RootContent[], outermost: boolean): RootContent[] {
    const out: RootContent[] = [];
    const outer = this.#lifted;
    for (const node of nodes) {
      this.#lifted = [];
      if (!(outermost && this.#refusedAsCode(node))) {
        const kept = this.#block(node);
        if (kept) out.push(kept);
      }
      out.push(...this.#lifted);
    }
    this.#lifted = outer;
    return out;
  }

  #refusedAsCode(node: RootContent): boolean {
    if (!this.#ctx.mdx || node.type !== 'paragraph') return false;
    if (!isImportOrExport(this.#body.slice(startOf(node), endOf(node)))) return false;
    this.#problems.push(importProblem(startOf(node)));
    return true;
  }

  #block(node: AnyNode): RootContent | undefined {
    switch (node.type) {
      case 'paragraph':
        node.children = this.#phrasing(node.children);
        return hasContent(node) ? node : undefined;
      case 'heading':
      case 'tableCell':
        node.children = this.#phrasing(node.children);
        return node as RootContent;
      case 'html': {
        const inline = this.#phrasing(inlineHtml(node));
        const paragraph: Paragraph = { type: 'paragraph', children: inline, position: node.position };
        return hasContent(paragraph) ? paragraph : undefined;
      }
      case 'footnoteDefinition':
        this.#inFootnote = true;
        node.children = this.#inside(node.children) as typeof node.children;
        this.#inFootnote = false;
        return node;
      case 'blockquote':
      case 'list':
      case 'listItem':
      case 'table':
      case 'tableRow':
        node.children = this.#inside(node.children as RootContent[]) as never;
        return node as RootContent;
      case 'definition':
        this.#problems.push(...linkProblems(node.url, startOf(node), this.#ctx));
        return node;
      case 'mdxFlowExpression':
      case 'mdxTextExpression':
        if (!isComment(node.value)) this.#problems.push(expressionProblem(startOf(node)));
        return undefined;
      case 'mdxJsxFlowElement':
        return this.#tagAsBlock(node);
      default:
        return node as RootContent;
    }
  }

  #inside(nodes: RootContent[]): RootContent[] {
    return nodes.map((node) => this.#block(node)).filter((node) => node !== undefined);
  }

  #tagAsBlock(node: Tag): RootContent | undefined {
    if (isComponentName(node.name)) {
      this.#component(node);
      return undefined;
    }
    const tag = readHarmlessTag(node, this.#problems);
    const children = this.#phrasing(phrasingOf({ type: 'root', children: node.children as RootContent[] }));
    if (!tag) return undefined;
    const element: TagNode = { type: 'tag', ...tag, children, position: node.position };
    return { type: 'paragraph', children: [element], position: node.position };
  }

  #component(node: Tag): void {
    const read = readComponent(node, this.#ctx, this.#problems);
    const children = this.blocks(asBlocks(node), false);
    if (!read) return;
    if (this.#inFootnote) {
      this.#problem(
        'component-is-known',
        node,
        `${read.name} stands in a footnote, where components cannot be shown.`,
        'Move it into the text.',
      );
      return;
    }
    if (!read.shape.holdsText && children.length > 0)
      this.#problem(
        'component-is-known',
        node,
        `${read.name} holds text that would not be shown.`,
        `Write <${read.name} … /> and put the text after it.`,
      );
    const component: ComponentNode = {
      type: 'component',
      name: read.name,
      props: read.props,
      children: read.shape.holdsText ? children : [],
      position: node.position,
    };
    this.#lifted.push(component);
  }

  #phrasing(nodes: PhrasingContent[]): PhrasingContent[] {
    const out: PhrasingContent[] = [];
    for (const node of pairTags(nodes, this.#problems)) out.push(...this.#inline(node));
    return this.#inFootnote ? out : marksAfterPunctuation(out);
  }

  #inline(node: PhrasingContent): PhrasingContent[] {
    switch (node.type) {
      case 'citation':
        for (const { id, at } of node.items)
          if (!this.#ctx.hasRecord(id))
            this.#problems.push({
              rule: 'citation-resolves',
              severity: 'error',
              offset: at,
              message: `The citation names the record “${id}”, and there is no such record.`,
              help: didYouMean(
                id,
                this.#ctx.recordIds(),
                'Write the name of a file in records/, without its ending; brackets that are no citation begin with \\[.',
              ),
            });
        this.#problems.push(...citedWithoutSign(node, this.#body, this.#ctx));
        return this.#mark(node);
      case 'evidenceReference':
        return this.#ctx.kind === 'case' ? this.#evidence(node) : this.#evidenceElsewhere(node);
      case 'footnoteReference':
        return this.#mark(node);
      case 'text':
        if (node.value.includes('[@') || node.value.includes('[#')) {
          const source = this.#body.slice(startOf(node), endOf(node));
          this.#problems.push(
            ...unclosedCitations(source, startOf(node)),
            ...nearReferences(source, startOf(node), this.#ctx),
          );
        }
        return [node];
      case 'link':
        return this.#link(node);
      case 'image':
        this.#problems.push(...imageProblems(node.url, startOf(node), this.#ctx));
        return [node];
      case 'mdxTextExpression':
        this.#block(node);
        return [];
      case 'mdxJsxTextElement': {
        if (isComponentName(node.name)) {
          this.#component(node);
          return [];
        }
        const tag = readHarmlessTag(node, this.#problems);
        const children = this.#phrasing(node.children);
        return tag ? [{ type: 'tag', ...tag, children, position: node.position }] : [];
      }
      case 'linkReference':
        return this.#withMarksAfter(node);
      default:
        if ('children' in node) node.children = this.#phrasing(node.children);
        return [node];
    }
  }

  #evidence(node: Extract<PhrasingContent, { type: 'evidenceReference' }>): PhrasingContent[] {
    for (const { id, at } of node.items)
      if (!this.#ctx.evidenceIds.includes(id))
        this.#problems.push({
          rule: 'evidence-reference-resolves',
          severity: 'error',
          offset: at,
          message: `The text refers to the evidence “${id}”, and the case has no such item.`,
          help: didYouMean(
            id,
            this.#ctx.evidenceIds,
            'Write the id of an item under evidence, or add the item.',
          ),
        });
    return this.#mark(node);
  }

  /** Outside a case “[#12]” may be what a record says; only what can hardly be anything else is reported. */
  #evidenceElsewhere(node: Extract<PhrasingContent, { type: 'evidenceReference' }>): PhrasingContent[] {
    if (node.items.every(({ id }) => /^e\d+$/.test(id)))
      this.#problem(
        'evidence-reference-resolves',
        node,
        `The text refers to the evidence “${node.items[0]!.id}”, and only cases have evidence.`,
        'Refer to the record instead, [@record-id], or begin with \\[ if the record itself says this.',
      );
    return [{ type: 'text', value: this.#body.slice(startOf(node), endOf(node)), position: node.position }];
  }

  #mark(node: PhrasingContent): PhrasingContent[] {
    if (!this.#afterLink) return [node];
    this.#afterLink.push(node);
    return [];
  }

  #link(node: Link): PhrasingContent[] {
    this.#problems.push(...linkProblems(node.url, startOf(node), this.#ctx));
    return this.#withMarksAfter(node);
  }

  #withMarksAfter(node: Extract<PhrasingContent, { type: 'link' | 'linkReference' }>): PhrasingContent[] {
    const outer = this.#afterLink;
    const marks: PhrasingContent[] = (this.#afterLink = []);
    node.children = this.#phrasing(node.children);
    this.#afterLink = outer;
    return outer ? (outer.push(...marks), [node]) : [node, ...marks];
  }

  #problem(rule: string, node: AnyNode, message: string, help: string): void {
    this.#problems.push({ rule, severity: 'error', offset: startOf(node), message, help });
  }
}

function isComponentName(name: string | null): boolean {
  return name === null || !/^[a-z]/.test(name);
}

/** What stands between a component’s tags, as blocks. */
function asBlocks(node: Tag): RootContent[] {
  const children = node.children as RootContent[];
  if (children.every((child) => !isPhrasing(child))) return children;
  return [{ type: 'paragraph', children: children as PhrasingContent[], position: node.position }];
}

function hasContent(node: Paragraph): boolean {
  return node.children.some((child) => child.type !== 'text' || child.value.trim() !== '');
}
