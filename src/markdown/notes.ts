/**
 * The numbered notes of one body. Citations and the author’s own footnotes share one numbering, in reading order.
 * A record is given in full where this body first cites it and in short form afterwards (common practice).
 */
import type { Element, ElementContent } from 'hast';
import { toHtml } from 'hast-util-to-html';
import { layout } from '../interface/en/layout.ts';
import type { CitationNode } from './syntax.ts';
import type { BodyContext, Note, SiteVoice } from './types.ts';

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
  readonly #voice: SiteVoice;
  readonly #notes: { content: ElementContent[]; records: string[] }[] = [];
  readonly #cited = new Set<string>();

  constructor(ctx: BodyContext) {
    this.#ctx = ctx;
    this.#voice = ctx.voice ?? inEnglish;
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
      out.push(...this.#record(item.id, item.locator));
    });
    return out;
  }

  #record(id: string, locator: string): ElementContent[] {
    const after = locator === '' ? '' : `, ${locator}`;
    if (!this.#ctx.hasRecord(id))
      return [element('span', { className: ['unresolved'] }, id), { type: 'text', value: after }];
    const note = this.#ctx.note(id);
    const isShort = this.#cited.has(id);
    this.#cited.add(id);
    const set = locator === '' ? undefined : note.at?.(locator, isShort ? 'short' : 'full');
    if (isShort) return this.#short(id, set ?? note.short, set === undefined ? after : '');
    const own = set !== undefined || says(plainText(note.item ?? note.full), after) ? '' : after;
    return [
      ...this.#citation(
        raw(set ?? note.item ?? note.full),
        { type: 'text', value: own },
        ...(set !== undefined || note.item === undefined ? [] : [raw(note.held ?? '')]),
      ),
      { type: 'text', value: ' (' },
      element(
        'a',
        {
          href: recordHref(id),
          ariaLabel: this.#voice.words.recordOf(plainText(note.short)),
          ...marked(this.#voice.ownLang),
        },
        this.#voice.words.record,
      ),
      { type: 'text', value: ')' },
    ];
  }

  #short(id: string, words: string, after: string): ElementContent[] {
    const linked = /<a\b/.test(words) ? raw(words) : element('a', { href: recordHref(id) }, raw(words));
    return [...this.#citation(linked), { type: 'text', value: after }];
  }

  /** A citation, marked as English in the text of somebody who writes in another language. */
  #citation(...words: ElementContent[]): ElementContent[] {
    const { citationLang } = this.#voice;
    return citationLang === undefined ? words : [element('span', { lang: citationLang }, ...words)];
  }

  /** The mark of a note in the text and its copy. See the head of render.ts. */
  mark(number: number, first: boolean, margin: boolean): ElementContent[] {
    return noteMark(
      number,
      first,
      margin && first ? this.#notes[number - 1]!.content : null,
      this.#voice.words,
    );
  }

  all(): Note[] {
    return this.#notes.map(({ content, records }, index) => ({
      number: index + 1,
      html: html(content),
      records,
    }));
  }
}

/**
 * The mark of a note, and after it the hidden copy of what the note says. The mark is a link down to the note; where
 * the browser can open a note in place, a style sheet shows the button instead. Only the first mark of a note has the
 * id that the note’s way back leads to.
 */
export function noteMark(
  number: number,
  first: boolean,
  copy: readonly ElementContent[] | null,
  words: SiteVoice['words'] = layout.prose,
): ElementContent[] {
  const link = element(
    'a',
    { href: `#note-${number}`, role: 'doc-noteref', ariaLabel: words.note(number) },
    String(number),
  );
  const button = element(
    'button',
    { type: 'button', popoverTarget: `note-${number}`, hidden: true, ariaLabel: words.note(number) },
    String(number),
  );
  const id = first ? { id: `ref-${number}` } : {};
  const mark = element('sup', { ...id, className: ['note-mark'] }, link, button);
  if (copy === null) return [mark];
  const label = element('span', { className: ['sidenote-number'] }, String(number));
  const hidden = { className: ['sidenote'], hidden: true, ariaHidden: 'true' };
  return [mark, element('span', hidden, label, ' ', ...forMargin(copy))];
}

/** What the site says where nobody has said in which language. */
export const inEnglish: SiteVoice = { tag: 'en', words: layout.prose };

function marked(lang: string | undefined) {
  return lang === undefined ? {} : { lang };
}

function recordHref(id: string): string {
  return `/records/${id}.html`;
}

/** Whether a citation gives a locator already, as one of its own parts: “…, p. 22” of “, p. 22”. */
function says(citation: string, locator: string): boolean {
  return locator !== '' && `${citation},`.includes(`${locator},`);
}

/** The copy repeats no id and takes no part in moving by keyboard. */
function forMargin(nodes: readonly ElementContent[]): ElementContent[] {
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
    .replace(/<[^<>]*>/g, '')
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
