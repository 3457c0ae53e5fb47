/**
 * Looks through a text for many forms at once: one pass over its words, each of which is folded once however often it
 * comes. The check looks at what authors write with it, and the writer of the site at what goes out.
 */
import { gather } from '../model/multimap.ts';
import { dayAt, maySayDay } from './living-days.ts';
import { foldWord, isSmall, wordPattern } from './living-fold.ts';
import { bornWords, wifeTitles, type Form, type FormKind } from './living-forms.ts';
import { eachAddress, phoneEnd } from './living-contacts.ts';
import { givenFartherOn, isInList, surnameFartherOn, type Bearers } from './living-spread.ts';
import { eachUnspaced } from './living-unspaced.ts';

/** A form with whom it tells of: a person’s id, or `record#mention` for a mention of nobody’s. */
export interface Telling extends Form {
  who: string;
  /** The name of somebody else in which the name of a withheld person stands: no sign of them where it is written. */
  harmless?: true;
  /** Somebody else bears it too, so that it tells in an address of electronic mail only. */
  shared?: true;
}

/** Where a text tells of somebody. */
export interface Hit {
  who: string;
  what: 'name' | 'day' | 'address' | 'telephone' | 'email';
  start: number;
  end: number;
  /** The words themselves. */
  text: string;
}

/** Finds everything that a text tells. In a path or an id a lone name counts without a capital. */
export type Look = (text: string, options?: { ids?: boolean; first?: boolean }) => Hit[];

type InARow = 'name' | 'reversed' | 'lone' | 'born' | 'address';

/** What may stand between the words of a form. */
const gaps: Record<InARow, RegExp> = {
  name: /^[\s_\-‐‑–.·'"“”()*~/+]*$/,
  reversed: /^[\s_\-‐‑./]*(?:[,:"'“”(*][\s_"'“”(*]*)?$/,
  lone: /^$/,
  born: /^[\s,.(*_]*$/,
  address: /^[\s.,]*$/,
};

/** What a word may begin. */
interface Beginning {
  /** Forms of that word alone. */
  alone: readonly Telling[];
  /** Longer ones, by their second word. */
  inARow: ReadonlyMap<string, readonly Telling[]> | undefined;
  /** Those whose given name it is, by the first word of the surname. */
  surnames: ReadonlyMap<string, readonly Telling[]> | undefined;
  /** Those whose surname it begins. */
  givens: readonly Bearers<Telling>[];
  isDay: boolean;
  telephones: readonly Telling[];
}

const none: readonly never[] = [];

/** The tellings by what finds them. */
class Index {
  readonly alone = new Map<string, Telling[]>();
  readonly inARow = new Map<string, Map<string, Telling[]>>();
  readonly byGiven = new Map<string, Map<string, Telling[]>>();
  readonly bySurname = new Map<string, Bearers<Telling>[]>();
  readonly days = new Map<string, Telling>();
  readonly telephones = new Map<string, Telling[]>();
  readonly emails = new Map<string, Telling>();
  readonly handles = new Map<string, Telling>();
  readonly unspaced = new Map<string, Telling[]>();
  readonly #known = new Map<string, Beginning | null>();

  constructor(tellings: readonly Telling[]) {
    for (const telling of tellings) this.#add(telling);
    for (const bySecond of this.inARow.values())
      for (const list of bySecond.values()) list.sort((a, b) => b.words.length - a.words.length);
    for (const list of this.unspaced.values()) list.sort((a, b) => b.words[0]!.length - a.words[0]!.length);
  }

  #add(telling: Telling): void {
    const [first = '', second = ''] = telling.words;
    switch (telling.how) {
      case 'spread': {
        const ofGiven = this.byGiven.get(first) ?? this.byGiven.set(first, new Map()).get(first)!;
        gather(ofGiven, second, telling);
        this.#addBearer(telling);
        break;
      }
      case 'day':
        // A year of two figures means any century.
        for (const day of [first, first.slice(2)]) if (!this.days.has(day)) this.days.set(day, telling);
        break;
      case 'telephone':
        for (let n = 1; n <= first.length; n++) gather(this.telephones, first.slice(0, n), telling);
        break;
      case 'email':
        this.emails.set(first, telling);
        break;
      case 'handle':
        if (!this.handles.has(first)) this.handles.set(first, telling);
        break;
      case 'unspaced':
        gather(this.unspaced, first[0]!, telling);
        break;
      default:
        if (telling.words.length === 1) gather(this.alone, first, telling);
        else gather(this.inARow.get(first) ?? this.inARow.set(first, new Map()).get(first)!, second, telling);
    }
  }

  #addBearer(telling: Telling): void {
    const [given = '', surname = '', ...rest] = telling.words;
    const all = this.bySurname.get(surname) ?? this.bySurname.set(surname, []).get(surname)!;
    let bearers = all.find((one) => one.rest.join(' ') === rest.join(' '));
    if (!bearers) all.push((bearers = { rest, byGiven: new Map() }));
    if (!bearers.byGiven.has(given)) bearers.byGiven.set(given, telling);
  }

  /** What a word, as written, may begin; most begin nothing. */
  beginningWith(raw: string): Beginning | null {
    let found = this.#known.get(raw);
    if (found === undefined) {
      if (this.#known.size > 400_000) this.#known.clear();
      this.#known.set(raw, (found = this.#beginning(raw)));
    }
    return found;
  }

  #beginning(raw: string): Beginning | null {
    const word = foldWord(raw);
    const beginning: Beginning = {
      alone: this.alone.get(word) ?? none,
      inARow: this.inARow.get(wifeTitles.has(word) ? 'mrs' : word),
      surnames: this.byGiven.get(word),
      givens: this.bySurname.get(word) ?? none,
      isDay: this.days.size > 0 && maySayDay(word),
      telephones: /^\d+$/.test(raw) ? (this.telephones.get(raw) ?? none) : none,
    };
    const { alone, inARow, surnames, givens, isDay, telephones } = beginning;
    return alone.length > 0 || inARow || surnames || givens.length > 0 || isDay || telephones.length > 0
      ? beginning
      : null;
  }
}

/** A look for forms. Says nothing when there are none. */
export function lookFor(tellings: readonly Telling[]): Look {
  if (tellings.length === 0) return () => [];
  const index = new Index(tellings);
  const hitOf = (text: string, telling: Telling, start: number, end: number): Hit => ({
    who: telling.who,
    what: whatOf(telling.how),
    start,
    end,
    text: text.slice(start, end),
  });
  const words = (text: string, ids: boolean, first: boolean, take: (hit: Hit) => void): void => {
    const word = new RegExp(wordPattern.source, 'gu');
    for (let found = word.exec(text); found; found = word.exec(text)) {
      const beginning = index.beginningWith(found[0]);
      const told = beginning && toldAt(index, text, beginning, found.index, found[0], ids);
      if (!told) continue;
      word.lastIndex = told.end;
      if (told.telling.harmless) continue;
      take(hitOf(text, told.telling, found.index, told.end));
      if (first) return;
    }
  };
  return (text, { ids = false, first = false } = {}) => {
    const hits: Hit[] = [];
    const take = (hit: Hit) => {
      if (!hits.some(({ start, end }) => start < hit.end && hit.start < end)) hits.push(hit);
    };
    words(text, ids, first, take);
    if (first && hits.length > 0) return hits;
    eachUnspaced(text, index.unspaced, (telling, start, end) => {
      if (!telling.harmless) take(hitOf(text, telling, start, end));
    });
    eachAddress(text, index.emails, index.handles, (telling, start, end) =>
      take(hitOf(text, telling, start, end)),
    );
    for (const { part, from } of readOtherwise(text))
      words(part, ids, first, ({ start, end, ...hit }) =>
        take({ ...hit, start: start + from, end: end + from, text: text.slice(start + from, end + from) }),
      );
    return hits.sort((a, b) => a.start - b.start);
  };
}

const whatOf = (how: FormKind): Hit['what'] =>
  how === 'day' || how === 'address' || how === 'telephone' || how === 'email' ? how : 'name';

/** What a text tells from a word on, and how far. */
function toldAt(
  index: Index,
  text: string,
  { alone, inARow, surnames, givens, isDay, telephones }: Beginning,
  start: number,
  raw: string,
  ids: boolean,
): { telling: Telling; end: number } | undefined {
  const after = start + raw.length;
  if (inARow) {
    next.lastIndex = after;
    const second = next.exec(text);
    const word = second && second.index - after <= 40 ? foldWord(second[0]) : '';
    for (const telling of inARow.get(word) ?? inARow.get(bornWords.has(word) ? 'nee' : '') ?? none) {
      const end = endOf(text, telling, start, raw, ids);
      if (end !== undefined) return { telling, end };
    }
  }
  for (const telling of alone) {
    const end = endOf(text, telling, start, raw, ids);
    if (end !== undefined) return { telling, end };
  }
  for (const telling of telephones) {
    const end = phoneEnd(text, telling.words[0]!, start);
    if (end !== undefined) return { telling, end };
  }
  if (isDay) {
    const day = dayAt(text, start, raw, (said) => index.days.get(said));
    if (day) return { telling: day.found, end: day.end };
  }
  if ((surnames || givens.length > 0) && (ids || !isSmall(raw))) {
    const spread =
      (surnames && surnameFartherOn(text, foldWord(raw), after, surnames, ids)) ??
      (givens.length > 0 ? givenFartherOn(text, start, after, givens, ids) : undefined);
    if (spread) return { telling: spread.found, end: spread.end };
  }
  return undefined;
}

/** Where a form that begins at a word ends, or `undefined` where the text does not go on as it does. */
function endOf(
  text: string,
  telling: Telling,
  start: number,
  firstWord: string,
  ids: boolean,
): number | undefined {
  const small = (word: string) => !ids && isSmall(word);
  if (telling.how === 'lone' && small(firstWord)) return undefined;
  // “a Tobin” is no Alice.
  const isInitial = (i: number) => telling.weak && /^\p{L}$/u.test(telling.words[i]!);
  if (isInitial(0) && small(firstWord)) return undefined;
  let end = start + firstWord.length;
  for (let i = 1; i < telling.words.length; i++) {
    next.lastIndex = end;
    const found = next.exec(text);
    if (!found || found.index - end > 40) return undefined;
    const word = foldWord(found[0]);
    if (
      word !== telling.words[i] &&
      !(telling.how === 'born' && telling.words[i] === 'nee' && bornWords.has(word))
    )
      return undefined;
    if (isInitial(i) && small(found[0])) return undefined;
    const gap = text.slice(end, found.index);
    if (!gaps[telling.how as InARow].test(gap)) return undefined;
    // A full stop ends a sentence, unless it is that of an initial or an abbreviation.
    if (telling.how === 'name' && gap.includes('. ') && telling.words[i - 1]!.length > 5) return undefined;
    end = found.index + found[0].length;
  }
  return telling.how === 'reversed' && isInList(text, start, end) ? undefined : end;
}

const next = new RegExp(wordPattern.source, 'gu');

/** How far around a mark of an editor words are read again. */
const around = 90;
const mark = /[[\]]|[-‐]\s/g;
const besideLetter = /\p{L}[ \t]{0,2}[[\]]|[[\]][ \t]{0,2}\p{L}|\p{L}[-‐]\s/u;

/**
 * Parts of a text read as if words were not divided at the end of a line, and as if the brackets of an editor were not
 * there: “Quill[inan]”, “Nora [sic] Quillinan”. Offsets within a part stay those of the text.
 */
function* readOtherwise(text: string): Generator<{ part: string; from: number }> {
  let from: number | undefined;
  let to = 0;
  for (const { index } of text.matchAll(mark)) {
    if (!besideLetter.test(text.slice(Math.max(0, index - 3), index + 4))) continue;
    if (from !== undefined && index - around > to) yield windowOf(text, from, to);
    if (from === undefined || index - around > to) from = Math.max(0, index - around);
    to = index + around;
  }
  if (from !== undefined) yield windowOf(text, from, to);
}

/** A part of a text, begun between two words. */
function windowOf(text: string, from: number, to: number): { part: string; from: number } {
  let start = Math.max(0, from);
  while (start > 0 && start < to && !/\s/.test(text[start - 1]!)) start++;
  let end = Math.min(text.length, to);
  while (end < text.length && end < to + 40 && !/\s/.test(text[end]!)) end++;
  const part = text
    .slice(start, end)
    .replaceAll(/\[(?:sic|recte|!|\?)\]/gi, (mark) => ' '.repeat(mark.length))
    .replaceAll(/(\p{L})([-‐]\s+)(?=\p{L})/gu, (_all, letter: string, gap: string) => letter + unseen(gap))
    .replaceAll(/(?<=\p{L})\??[[\]](?=\p{L})/gu, unseen)
    .replaceAll(/[[\]?]/g, ' ');
  return { part, from: start };
}

const unseen = (text: string): string => '\u00ad'.repeat(text.length);
