/**
 * Markdown bodies as HTML.
 *
 * **Notes.** A citation leaves a mark in the text, and after it, hidden, a copy of the note:
 *
 *     <sup id="ref-3" class="note-mark">
 *       <a href="#note-3" role="doc-noteref" aria-label="note 3">3</a>
 *       <button type="button" popovertarget="note-3" hidden aria-label="note 3">3</button>
 *     </sup>
 *     <span class="sidenote" hidden aria-hidden="true"><span class="sidenote-number">3</span> …</span>
 *
 * (without the white space). The page lists all notes under the text, each as `<li id="note-3" popover>`, on every
 * screen and on paper: the link leads there. A browser that knows popovers may show the button instead, which lifts
 * the note out of the list to where the reader is; keyboards and screen readers meet each note once. A style sheet may
 * show the copies beside the text where there is room, and under a mark that is pointed at; they have `aria-hidden`,
 * their links are out of the tab order, and without a style sheet they stay hidden. Marks in headings and tables have
 * no copy: there is no margin beside them.
 *
 * **Addresses** are site-absolute: `/records/x.html`, `/media/x.jpg`. A link written as in the content folder,
 * `../records/x.md`, leads to the page of that entry.
 *
 * **Headings** go one level down, since the page itself has the first-level heading; further, with anchors of their
 * own, where the whole body stands in a section of a page.
 */
import type { Element, ElementContent, Root as HastRoot } from 'hast';
import { sanitize } from 'hast-util-sanitize';
import type {
  Code,
  FootnoteDefinition,
  FootnoteReference,
  Heading,
  Image,
  ImageReference,
  Link,
  LinkReference,
  Paragraph,
  Root,
  Table,
} from 'mdast';
import { defaultHandlers, toHast, type Handlers, type State } from 'mdast-util-to-hast';
import { align, image, linkTo, noteLink } from './elements.ts';
import { element, html, Notes, inEnglish } from './notes.ts';
import { plainBody, wordsIn } from './plain.ts';
import { placeholders, schema } from './safe-html.ts';
import { readBody } from './read.ts';
import { Slugs } from './slugs.ts';
import type { CitationNode, EvidenceNode } from './syntax.ts';
import { phrasingOf, textOf, type AnyNode, type ComponentNode, type TagNode } from './tree.ts';
import type { BodyContext, BodyProblem, Rendered, RenderedPart, SiteVoice } from './types.ts';

/** A body as HTML and components, with everything wrong in it. Takes any text and never throws. */
export function renderBody(body: string, ctx: BodyContext): { rendered: Rendered; problems: BodyProblem[] } {
  const plain = ctx.mdx ? undefined : plainBody(body, ctx.voice ?? inEnglish);
  if (plain) return { rendered: plain, problems: [] };
  return parsedBody(body, ctx);
}

/** The same by way of the parser, whatever the body is. */
export function parsedBody(body: string, ctx: BodyContext): { rendered: Rendered; problems: BodyProblem[] } {
  const { tree, problems } = readBody(body, ctx);
  return { rendered: new Rendering(ctx).render(tree), problems };
}

class Rendering {
  readonly #ctx: BodyContext;
  readonly #voice: SiteVoice;
  readonly #notes: Notes;
  readonly #slugs = new Slugs();
  readonly #headings: Rendered['headings'] = [];
  readonly #components: ComponentNode[] = [];
  /** What each placeholder of a note stands for. */
  readonly #inserts: ((margin: boolean) => ElementContent[])[] = [];
  readonly #footnotes = new Map<string, number>();
  #definitions = new Map<string, FootnoteDefinition>();
  #noMargin = false;
  /** How many ranks below the author’s the headings stand. */
  #lower = 1;
  /** While the content of a footnote is rendered: the records it cites. */
  #insideNote: string[] | undefined;
  #tables = 0;

  constructor(ctx: BodyContext) {
    this.#ctx = ctx;
    this.#voice = ctx.voice ?? inEnglish;
    this.#notes = new Notes(ctx);
  }

  render(tree: Root): Rendered {
    collectFootnotes(tree, this.#definitions);
    const section = this.#ctx.inSection;
    if (section) this.#lower = section.rank - highestHeading(tree);
    const made = toHast(tree, { handlers: this.#handlers() }) as HastRoot;
    const parts = this.#parts((sanitize(made, schema) as HastRoot).children as ElementContent[]);
    return { parts, notes: this.#notes.all(), headings: this.#headings, words: countWords(tree) };
  }

  #parts(nodes: ElementContent[]): RenderedPart[] {
    const parts: RenderedPart[] = [];
    let run: ElementContent[] = [];
    const flush = () => {
      const text = html(this.#filled(run)).trim();
      if (text !== '') parts.push({ kind: 'html', html: text });
      run = [];
    };
    for (const node of nodes) {
      const component =
        node.type === 'element' && node.tagName === placeholders('component')
          ? this.#components[Number(node.properties['n'])]
          : undefined;
      if (!component) {
        run.push(node);
        continue;
      }
      flush();
      const children = this.#parts((node as Element).children);
      parts.push({ kind: 'component', name: component.name, props: component.props, children });
    }
    flush();
    return parts;
  }

  /** Puts in what the placeholders of notes stand for. */
  #filled(nodes: ElementContent[]): ElementContent[] {
    return nodes.flatMap((node): ElementContent[] => {
      if (node.type !== 'element') return [node];
      if (node.tagName !== placeholders('note')) return [{ ...node, children: this.#filled(node.children) }];
      return this.#inserts[Number(node.properties['n'])]?.(node.properties['margin'] === 1) ?? [];
    });
  }

  #insert(content: (margin: boolean) => ElementContent[]): Element {
    this.#inserts.push(content);
    return element(placeholders('note'), { n: this.#inserts.length - 1, margin: this.#noMargin ? 0 : 1 });
  }

  #handlers(): Handlers {
    return {
      citation: (_state: State, node: CitationNode) => this.#citation(node),
      footnoteReference: (state: State, node: FootnoteReference) => this.#footnote(state, node),
      footnoteDefinition: () => undefined,
      evidenceReference: (_state: State, node: EvidenceNode) => this.#evidence(node),
      heading: (state: State, node: Heading) => this.#heading(state, node),
      table: (state: State, node: Table) => this.#table(state, node),
      tag: (state: State, node: TagNode) => element(node.name, node.attributes, ...state.all(node as never)),
      component: (state: State, node: ComponentNode) => {
        this.#components.push(node);
        return element(
          placeholders('component'),
          { n: this.#components.length - 1 },
          ...state.all(node as never),
        );
      },
      link: (state: State, node: Link) => linkTo(this.#within(node.url), node.title, state.all(node)),
      linkReference: (state: State, node: LinkReference) => {
        const definition = state.definitionById.get(String(node.identifier).toUpperCase());
        return definition
          ? linkTo(this.#within(definition.url), definition.title, state.all(node))
          : defaultHandlers.linkReference(state, node);
      },
      image: (_state: State, node: Image) => image(node.url, node.alt, node.title, this.#ctx.mediaHref),
      imageReference: (state: State, node: ImageReference) => {
        const definition = state.definitionById.get(String(node.identifier).toUpperCase());
        return definition
          ? image(definition.url, node.alt, definition.title, this.#ctx.mediaHref)
          : defaultHandlers.imageReference(state, node);
      },
      code: (state: State, node: Code) => {
        const made = defaultHandlers.code(state, {
          ...node,
          lang: node.lang?.replace(/[^\w-]/g, '') ?? null,
        });
        made.properties = { ...made.properties, tabIndex: 0 };
        return made;
      },
    } as Handlers;
  }

  #citation(node: CitationNode): ElementContent[] | Element {
    const records = node.items.map(({ id }) => id).filter((id) => this.#ctx.hasRecord(id));
    if (this.#insideNote) {
      this.#insideNote.push(...records);
      const content = this.#notes.cite(node, false);
      return this.#insert(() => content);
    }
    const number = this.#notes.open();
    this.#notes.fill(number, this.#notes.cite(node, true), records);
    return this.#insert((margin) => this.#notes.mark(number, true, margin));
  }

  /** A footnote of the author’s: its mark, and at the first reference its content as a note. */
  #footnote(state: State, node: FootnoteReference): Element | ElementContent {
    const id = node.identifier;
    const known = this.#footnotes.get(id);
    const definition = this.#definitions.get(id);
    if (!definition) return { type: 'text', value: '' };
    const inNote = this.#insideNote !== undefined;
    if (known !== undefined)
      return this.#insert(() =>
        inNote ? [noteLink(known, false, this.#voice.words)] : this.#notes.mark(known, false, false),
      );

    const number = this.#notes.open();
    this.#footnotes.set(id, number);
    const outer = this.#insideNote;
    const records: string[] = (this.#insideNote = []);
    const paragraph: Paragraph = { type: 'paragraph', children: phrasingOf(definition) };
    const made = state.all(paragraph);
    this.#insideNote = outer;
    const safe = sanitize({ type: 'root', children: made as ElementContent[] }, schema) as HastRoot;
    this.#notes.fill(number, this.#filled(safe.children as ElementContent[]), records);
    return this.#insert((margin) =>
      inNote ? [noteLink(number, true, this.#voice.words)] : this.#notes.mark(number, true, margin),
    );
  }

  #evidence(node: EvidenceNode): ElementContent[] {
    return node.items.flatMap(({ id }, index): ElementContent[] => {
      const known = this.#ctx.evidenceIds.includes(id);
      const one = known
        ? element(
            'a',
            {
              className: ['evidence-ref'],
              href: this.#ctx.evidenceHref(id),
              ariaLabel: this.#voice.words.evidence(id),
            },
            id,
          )
        : element('span', { className: ['unresolved'] }, id);
      return index === 0 ? [one] : [{ type: 'text', value: ', ' }, one];
    });
  }

  #heading(state: State, node: Heading): Element {
    const { anchors = '' } = this.#ctx.inSection ?? {};
    const depth = Math.min(node.depth + this.#lower, 6);
    const text = textOf(node).replace(/\s+/g, ' ').trim();
    const slug = anchors + this.#slugs.next(text);
    this.#headings.push({ depth, text, slug });
    return this.#withoutMargin(() =>
      element(`h${depth}`, { id: slug }, ...(state.all(node) as ElementContent[])),
    );
  }

  #table(state: State, node: Table): Element {
    const made = this.#withoutMargin(() => defaultHandlers.table(state, node));
    align(made);
    const headers = (node.children[0]?.children ?? [])
      .map((cell) => textOf(cell).trim())
      .filter((text) => text !== '');
    const label = [this.#voice.words.table(++this.#tables), headers.join(', ')]
      .filter((text) => text !== '')
      .join(': ');
    return element(
      'div',
      { className: ['table-scroll'], tabIndex: 0, role: 'region', ariaLabel: label },
      made,
    );
  }

  /** A link to a heading of the same body follows its anchor. */
  #within(url: string): string {
    const anchors = this.#ctx.inSection?.anchors;
    return anchors !== undefined && url.startsWith('#') ? `#${anchors}${url.slice(1)}` : url;
  }

  #withoutMargin<T>(make: () => T): T {
    const before = this.#noMargin;
    this.#noMargin = true;
    const made = make();
    this.#noMargin = before;
    return made;
  }
}

function collectFootnotes(node: AnyNode, found: Map<string, FootnoteDefinition>): void {
  if (!('children' in node)) return;
  for (const child of node.children as AnyNode[]) {
    if (child.type === 'footnoteDefinition' && !found.has(child.identifier))
      found.set(child.identifier, child);
    if (child.type !== 'paragraph') collectFootnotes(child, found);
  }
}

/** The rank of the highest heading of a text, 1 to 6; 1 where there is none. */
function highestHeading(tree: Root): number {
  let highest = 7;
  const visit = (node: AnyNode) => {
    if (node.type === 'heading') highest = Math.min(highest, node.depth);
    else if ('children' in node) (node.children as AnyNode[]).forEach(visit);
  };
  visit(tree);
  return highest === 7 ? 1 : highest;
}

/** Words of the text, without notes. */
function countWords(tree: Root): number {
  let words = 0;
  const visit = (node: AnyNode) => {
    if (node.type === 'footnoteDefinition') return;
    if (node.type === 'code') words += wordsIn(node.value);
    else if (node.type === 'paragraph' || node.type === 'heading' || node.type === 'tableCell')
      words += wordsIn(textOf(node));
    else if ('children' in node) (node.children as AnyNode[]).forEach(visit);
  };
  visit(tree);
  return words;
}
