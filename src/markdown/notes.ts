/**
 * The numbered notes of one body. Citations and the author’s own footnotes share one numbering, in reading order.
 * A record is given in full where this body first cites it and in short form afterwards (common practice).
 */
import type { Element, ElementContent } from 'hast';
import { toHtml } from 'hast-util-to-html';
import type { CitationNode } from './syntax.ts';
import type { BodyContext, Note } from './types.ts';

/** HTML as it stands, from the citations of records. Nothing of a body’s own text becomes such a node. */
export function raw(html: string): ElementContent {
  return { type: 'raw', value: html };
}

export function element(
  tagName: string,
  properties: Element['properties'],
  ...children: (ElementContent | string)[]
): Element {
  const nodes = children.map((child): ElementContent =>
    typeof child === 'string' ? { type: 'text', value: child } : child,
  );
  return { type: 'element', tagName, properties, children: nodes };
}

export function html(nodes: ElementContent[]): string {
  return toHtml({ type: 'root', children: nodes }, { allowDangerousHtml: true });
}

export class Notes {
  readonly #ctx: BodyContext;
  readonly #notes: { content: ElementContent[]; records: string[] }[] = [];
  readonly #cited = new Set<string>();

  constructor(ctx: BodyContext) {
    this.#ctx = ctx;
  }

  /** Takes the next number; its content follows with `fill`. */
  open(): number {
    this.#notes.push({ content: [], records: [] });
    return this.#notes.length;
  }

  fill(number: number, content: ElementContent[], records: string[]): void {
    this.#notes[number - 1] = { content: closed(content), records: [...new Set(records)] };
  }

  /** The words of a citation: every record with what stands before it and its locator. */
  cite(node: CitationNode, atStart: boolean): ElementContent[] {
    const out: ElementContent[] = [];
    node.items.forEach((item, index) => {
      if (index > 0) out.push({ type: 'text', value: item.after === ';' ? '; ' : ' ' });
      if (item.before !== '')
        out.push({ type: 'text', value: `${index === 0 && atStart ? capital(item.before) : item.before} ` });
      out.push(...this.#record(item.id, item.locator === '' ? '' : `, ${item.locator}`));
    });
    return out;
  }

  #record(id: string, locator: string): ElementContent[] {
    if (!this.#ctx.hasRecord(id))
      return [element('span', { className: ['unresolved'] }, id), { type: 'text', value: locator }];
    const note = this.#ctx.note(id);
    const href = `/records/${id}.html`;
    if (this.#cited.has(id)) {
      const short = /<a\b/.test(note.short) ? [raw(note.short)] : [element('a', { href }, raw(note.short))];
      return [...short, { type: 'text', value: locator }];
    }
    this.#cited.add(id);
    const own = says(plainText(note.item ?? note.full), locator) ? '' : locator;
    const label = `record: ${plainText(note.short)}`;
    return [
      raw(note.item ?? note.full),
      { type: 'text', value: own },
      ...(note.item === undefined ? [] : [raw(note.held ?? '')]),
      { type: 'text', value: ' (' },
      element('a', { href, ariaLabel: label }, 'record'),
      { type: 'text', value: ')' },
    ];
  }

  /** The mark of a note in the text and, where there is a margin, the note beside it. See the head of render.ts. */
  mark(number: number, first: boolean, margin: boolean): ElementContent[] {
    const link = element(
      'a',
      {
        ...(first ? { id: `ref-${number}` } : {}),
        href: `#note-${number}`,
        role: 'doc-noteref',
        ariaLabel: `note ${number}`,
      },
      String(number),
    );
    const mark = element('sup', { className: ['note-mark'] }, link);
    if (!margin || !first) return [mark];
    const content = forMargin(this.#notes[number - 1]!.content);
    const label = element('span', { className: ['sidenote-number'] }, String(number));
    return [
      mark,
      element('span', { className: ['sidenote'], hidden: true, ariaHidden: 'true' }, label, ' ', ...content),
    ];
  }

  all(): Note[] {
    return this.#notes.map(({ content, records }, index) => ({
      number: index + 1,
      html: html(content),
      records,
    }));
  }
}

/** Whether a citation gives a locator already, as one of its own parts: “…, p. 22” of “, p. 22”. */
function says(citation: string, locator: string): boolean {
  return locator !== '' && `${citation},`.includes(`${locator},`);
}

/** The copy in the margin repeats no id and takes no part in moving by keyboard. */
function forMargin(nodes: ElementContent[]): ElementContent[] {
  return nodes.map((node) => {
    if (node.type === 'raw') return raw(node.value.replaceAll(/<a(?=\s)/g, '<a tabindex="-1"'));
    if (node.type !== 'element') return node;
    const { id: _, ...properties } = node.properties;
    return {
      ...node,
      properties: node.tagName === 'a' ? { ...properties, tabIndex: -1 } : properties,
      children: forMargin(node.children),
    };
  });
}

/** A note ends in a full stop, unless it already ends a sentence. */
function closed(content: ElementContent[]): ElementContent[] {
  return /[.!?…][”’"')]*$/.test(plainText(html(content)).trimEnd())
    ? content
    : [...content, { type: 'text', value: '.' }];
}

/** The words of a piece of HTML. */
export function plainText(html: string): string {
  return html
    .replace(/<[^>]*>/g, '')
    .replace(/&#(?:x([0-9a-f]+)|(\d+));/gi, (_, hex: string, dec: string) =>
      String.fromCodePoint(hex ? parseInt(hex, 16) : Number(dec)),
    )
    .replace(
      /&(lt|gt|quot|amp);/g,
      (_, name: string) => ({ lt: '<', gt: '>', quot: '"', amp: '&' })[name] ?? '',
    );
}

function capital(text: string): string {
  const first = String.fromCodePoint(text.codePointAt(0) ?? 32);
  return first.toUpperCase() + text.slice(first.length);
}
