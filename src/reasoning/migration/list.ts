/**
 * A list of travellers made ready for comparison: names taken apart, dittos filled in, and how common each value is
 * on the list.
 *
 * Rule (common practice): “Do” stands for the surname of the line above. Of a married woman listed under her husband’s
 * names, what stands in brackets is her own name, maiden name last.
 */
import { wifely } from '../names/name-words.ts';
import { foldName } from '../names/fold.ts';
import { parseName } from '../names/parse-name.ts';
import { preparedGiven, preparedSurname } from '../names/prepared.ts';
import type { PreparedName } from '../names/agree.ts';
import type { ListEntry } from './types.ts';

/** An entry with what a comparison asks of it. */
export interface Row {
  entry: ListEntry;
  /** Position in the list. */
  at: number;
  /** Where it stands: its line, else its position. */
  line: number;
  surname?: PreparedName;
  given?: PreparedName;
  /** Of a woman under her husband’s names: his. */
  husband?: PreparedName;
  maiden?: PreparedName;
  patronymic: boolean;
  married: boolean;
  sex?: 'M' | 'F';
  age?: number;
  ticket?: { text: string; prefix: string; number: number | null };
  /** Folded, for what is compared as text. */
  cabin?: string;
  class?: string;
  port?: string;
  occupation?: string;
  household?: string;
  joining: readonly string[];
  nearest: readonly string[];
}

const ditto = /^(?:do|ditto|dto|id|idem|["”″〃]+|-+)\.?$/i;

/** Text as it is compared: letters and digits in small letters; nothing where none is left. */
export function plain(text: string | undefined): string | undefined {
  const folded = text
    ?.slice(0, 200)
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
  return folded === undefined || folded === '' ? undefined : folded;
}

/** Every entry made ready, in the order of the list. */
export function rowsOf(entries: readonly ListEntry[]): Row[] {
  const rows: Row[] = [];
  const numbered = entries.every(({ line }) => line !== undefined && Number.isFinite(line));
  let above: Row | undefined;
  entries.forEach((entry, at) => {
    const row = rowOf(entry, at, numbered ? entry.line! : at, above);
    rows.push(row);
    if (row.surname) above = row;
  });
  return rows;
}

function rowOf(entry: ListEntry, at: number, line: number, above: Row | undefined): Row {
  const { title, given, surname, patronymic, husbands, otherSurnames, otherGiven } = parseName(
    (entry.name ?? '').slice(0, 300),
  );
  const married = foldName(title)
    .split(' ')
    .some((word) => wifely.has(word));
  const bracketed = [...otherSurnames, ...(otherGiven ?? [])].map((text) => text.split(/\s+/u));
  const own = bracketed.find((words) => words.length > 1) ?? (married ? bracketed[0] : undefined);
  const hers = married && own !== undefined;
  const maiden = hers ? (own.length > 1 ? own.at(-1)! : undefined) : otherSurnames[0];
  const isDitto = surname === '' || ditto.test(surname);
  const family = isDitto ? (ditto.test(surname) ? above?.surname : undefined) : preparedSurname(surname);
  const ticket = ticketOf(entry.ticket);
  const sex = entry.sex ?? (married ? 'F' : sexOfTitle(title));
  return {
    entry,
    at,
    line,
    ...(family && family.text !== '' ? { surname: family } : {}),
    ...(hers || husbands
      ? { husband: preparedGiven(given), ...(own ? { given: preparedGiven(own[0]!) } : {}) }
      : given === '' || ditto.test(given)
        ? {}
        : { given: preparedGiven(given) }),
    ...(maiden === undefined || maiden === '' ? {} : { maiden: preparedSurname(maiden) }),
    patronymic: patronymic || (isDitto && (above?.patronymic ?? false)),
    married,
    ...(sex ? { sex } : {}),
    ...(entry.age === undefined || !Number.isFinite(entry.age) ? {} : { age: entry.age }),
    ...(ticket ? { ticket } : {}),
    ...texts(entry),
    joining: keys(entry.joining),
    nearest: keys(entry.nearest),
  };
}

function texts(
  entry: ListEntry,
): Partial<Record<'cabin' | 'class' | 'port' | 'occupation' | 'household', string>> {
  const found: Record<string, string> = {};
  for (const key of ['cabin', 'class', 'port', 'occupation', 'household'] as const) {
    const text = plain(entry[key]);
    if (text !== undefined && !ditto.test(text)) found[key] = text;
  }
  return found;
}

const keys = (texts: readonly string[] | undefined): string[] =>
  (texts ?? []).flatMap((text) => {
    const key = plain(text);
    return key === undefined || key.length < 4 ? [] : [key];
  });

function sexOfTitle(title: string): 'M' | 'F' | undefined {
  const folded = foldName(title);
  return /^(?:miss|mme|mlle|ms)$/.test(folded)
    ? 'F'
    : /^(?:mr|master|messrs)$/.test(folded)
      ? 'M'
      : undefined;
}

/** A ticket in its parts: the number at its end, and what stands before it. */
function ticketOf(text: string | undefined): Row['ticket'] {
  const key = plain(text);
  if (key === undefined) return undefined;
  const found = /^(.*?)(\d{1,12})$/.exec(key);
  return {
    text: key,
    prefix: found?.[1]!.replaceAll(' ', '') ?? key,
    number: found ? Number(found[2]) : null,
  };
}
