/** Small parts that many structures have: dates, ages, notes, places, citations, associations. */
import { ageProblem } from '../../model/age.ts';
import { readInterchangeDate, type SaidDate } from '../../model/interchange-date.ts';
import { roleWords } from '../../catalogue/gedcom/facts.ts';
import type { ImportLog } from './log.ts';
import { all, one, textUnder, useAll, type Structure } from './structure.ts';
import { pointed, type Tree } from './tree.ts';

/** A note, as plain text. */
export interface NoteText {
  line: number;
  text: string;
}

/** A place as written, smallest first. */
export interface PlaceSaid {
  line: number;
  text: string;
  parts: string[];
  /** What each part is, where the file says so. */
  form: string[];
  lat?: number;
  lon?: number;
  variants: string[];
  /** The identifier of a place record of our own, where an export of ours has one. */
  record?: string;
}

/** A source cited for something. */
export interface Citation {
  line: number;
  /** The identifier of the source; absent where the citation holds its own words for it. */
  source: string | undefined;
  words: string;
  page: string | undefined;
  /** The words of the source itself. */
  texts: string[];
  /** When the entry was made. */
  made: SaidDate;
  quay: string | undefined;
  /** The kind of event that the source tells of, and the part the person has in it. */
  event: string | undefined;
  role: string | undefined;
  notes: NoteText[];
  media: Structure[];
  /** The mention of an export of ours that this structure tells again. */
  mention: string | undefined;
}

/** Somebody beside somebody. */
export interface Associate {
  line: number;
  /** The identifier of the person, or words for them. */
  person: string | undefined;
  words: string | undefined;
  role: string;
  notes: NoteText[];
  citations: Citation[];
}

const dates = new Map<string, SaidDate>();

/** The date of a structure. */
export function dateUnder(of: Structure): SaidDate {
  const date = one(of, 'DATE');
  if (!date) return {};
  const phrase = textUnder(date, 'PHRASE');
  const time = textUnder(date, 'TIME');
  const key = `${date.value}\n${phrase ?? ''}`;
  let said = dates.get(key);
  if (!said) {
    if (dates.size > 100_000) dates.clear();
    dates.set(key, (said = readInterchangeDate(date.value, phrase)));
  }
  if (time === undefined) return said;
  return { ...said, words: [said.words, `at ${time}`].filter(Boolean).join('; ') };
}

/** An age as the content contract has it, or in words where it can’t be said so. */
export function ageUnder(of: Structure): { age?: number | string; words?: string } {
  const age = one(of, 'AGE');
  if (!age) return {};
  const phrase = textUnder(age, 'PHRASE');
  const text = age.value.trim();
  const plain = text.toLowerCase();
  const whole = /^(\d{1,3})y?$/.exec(plain)?.[1];
  const words = [text, phrase && `(${phrase})`].filter(Boolean).join(' ');
  const said = whole === undefined ? plain : Number(whole);
  if (text !== '' && ageProblem(said) === undefined) return { age: said, ...(phrase ? { words } : {}) };
  return words === '' ? {} : { words };
}

/** The notes of a structure, shared ones as their text. */
export function notesUnder(of: Structure, tree: Tree, log: ImportLog): NoteText[] {
  const found = [...all(of, 'NOTE'), ...all(of, 'SNOTE')].sort((a, b) => a.line - b.line);
  return found.flatMap((note) => {
    const shared = note.pointer;
    const home = shared ? pointed(tree.notes, note) : note;
    if (!home) {
      if (note.value !== 'VOID') log.doubts.add(note.line, `The note @${note.value}@ is not in this file.`);
      return [];
    }
    home.used = true;
    const text = plainNote(home, log);
    return text === '' ? [] : [{ line: note.line, text }];
  });
}

function plainNote(note: Structure, log: ImportLog): string {
  const html = textUnder(note, 'MIME') === 'text/html';
  if (!html) return note.value.trim();
  log.changed.add(note.line, 'The marks of HTML were taken out of this note.');
  return note.value
    .replace(/<(?:br|\/p|\/div|\/li|\/h\d)\b[^<>]*>/gi, '\n')
    .replace(/<[^<>]*>/g, '')
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&nbsp;', ' ')
    .replaceAll('&quot;', '"')
    .replaceAll('&amp;', '&')
    .trim();
}

/** The place of a structure. */
export function placeUnder(of: Structure, defaultForm: readonly string[]): PlaceSaid | undefined {
  const place = one(of, 'PLAC');
  if (!place || place.pointer || place.value.trim() === '') return undefined;
  const parts = place.value.split(',').map((part) => part.trim());
  const own = textUnder(place, 'FORM')
    ?.split(',')
    .map((part) => part.trim());
  const map = one(place, 'MAP');
  const lat = map && degrees(textUnder(map, 'LATI'), 90);
  const lon = map && degrees(textUnder(map, 'LONG'), 180);
  const record = place.children.find((child) => child.tag === '_PLACE' && child.pointer);
  if (record) record.used = true;
  return {
    line: place.line,
    text: place.value.trim().replace(/\s+/g, ' '),
    parts,
    form: own ?? [...defaultForm],
    ...(lat === undefined || lon === undefined ? {} : { lat, lon }),
    variants: [...all(place, 'TRAN'), ...all(place, 'FONE'), ...all(place, 'ROMN')]
      .map(({ value }) => value.trim())
      .filter(Boolean),
    ...(record ? { record: record.value } : {}),
  };
}

/** `N18.150944`, `W168.150944`, or degrees with a sign. */
function degrees(text: string | undefined, most: number): number | undefined {
  const parts = /^([NSEW]?)\s*([-+]?\d{1,3}(?:\.\d+)?)$/i.exec(text ?? '');
  if (!parts) return undefined;
  const value = Number(parts[2]) * (/[SW]/i.test(parts[1]!) ? -1 : 1);
  return Math.abs(value) <= most ? Math.round(value * 1e6) / 1e6 : undefined;
}

/** The citations of a structure. */
export function citationsUnder(of: Structure, tree: Tree, log: ImportLog): Citation[] {
  return all(of, 'SOUR').flatMap((cited) => {
    const known = cited.pointer ? tree.sources.has(cited.value) : true;
    if (!known && cited.value !== 'VOID') {
      log.doubts.add(cited.line, `The source @${cited.value}@ is not in this file.`);
      return [];
    }
    const data = one(cited, 'DATA');
    const event = one(cited, 'EVEN');
    const texts = [...all(cited, 'TEXT'), ...(data ? all(data, 'TEXT') : [])].filter(
      ({ pointer }) => !pointer,
    );
    for (const text of texts) for (const mime of all(text, 'MIME')) useAll(mime);
    const mention = cited.children.find((child) => child.tag === '_MENTION' && !child.pointer);
    if (mention) mention.used = true;
    const words = cited.pointer ? '' : cited.value.trim();
    const page = textUnder(cited, 'PAGE');
    const citation: Citation = {
      line: cited.line,
      source: cited.pointer && cited.value !== 'VOID' ? cited.value : undefined,
      words,
      page,
      texts: texts.map(({ value }) => value.trim()).filter(Boolean),
      made: data ? dateUnder(data) : {},
      quay: textUnder(cited, 'QUAY'),
      event: event && eventWords(event),
      role: event && roleUnder(event),
      notes: notesUnder(cited, tree, log),
      media: all(cited, 'OBJE'),
      mention: mention?.value,
    };
    const empty =
      citation.source === undefined && words === '' && page === undefined && citation.texts.length === 0;
    if (empty && citation.notes.length === 0) return [];
    return [citation];
  });
}

function eventWords(event: Structure): string | undefined {
  return textUnder(event, 'PHRASE') ?? (event.value.trim() || undefined);
}

/** The part somebody has, in words; 5.5.1 has words of its own in `RELA`. */
export function roleUnder(of: Structure): string | undefined {
  const role = one(of, 'ROLE');
  if (!role) return textUnder(of, 'RELA')?.toLowerCase();
  const phrase = textUnder(role, 'PHRASE');
  const code = role.value.trim();
  const word = roleWords[code.toUpperCase()];
  if (word !== undefined) return phrase === undefined ? word : `${word} (${phrase})`;
  return (
    phrase ?? (code === 'OTHER' || code === '' ? undefined : code.replace(/^\((.*)\)$/, '$1').toLowerCase())
  );
}

/** Those who stand beside the person or the event of a structure. */
export function associatesUnder(of: Structure, tree: Tree, log: ImportLog): Associate[] {
  return [...all(of, 'ASSO'), ...all(of, '_ASSO')].flatMap((association) => {
    const words = textUnder(association, 'PHRASE');
    const person = association.pointer && association.value !== 'VOID' ? association.value : undefined;
    if (person !== undefined && !tree.individuals.has(person)) {
      log.doubts.add(association.line, `The associate @${person}@ is not in this file.`);
      return [];
    }
    if (person === undefined && words === undefined) return [];
    textUnder(association, 'TYPE');
    return [
      {
        line: association.line,
        person,
        words,
        role: roleUnder(association) ?? 'associate',
        notes: notesUnder(association, tree, log),
        citations: citationsUnder(association, tree, log),
      },
    ];
  });
}
