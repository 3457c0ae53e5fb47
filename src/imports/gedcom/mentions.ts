/** Facts → what a mention of the content contract says. */
import type { Fact } from './facts.ts';
import { nextMention, type MentionDraft, type PersonDraft, type RecordDraft } from './drafts.ts';

/** Part of a mention: keys with their values. */
export type Statement = Record<string, unknown> & { says?: Record<string, string> };

/** What a fact states, in the keys of a mention. `of` picks the age of one partner from a fact of a family. */
export function statementOfFact(fact: Fact, of?: 'husband' | 'wife'): Statement {
  const { kind, value, date, place } = fact;
  const says: Record<string, string> = { ...fact.says };
  const age = of ? (fact.ages[of] ?? {}) : fact.age;
  if (age.words !== undefined) says.age = age.words;
  if (date.words !== undefined) says.date = date.words;
  const statement: Statement = { ...(age.age === undefined ? {} : { age: age.age }) };
  const when = {
    ...(date.date === undefined ? {} : { date: date.date }),
    ...(place ? { place: place.text } : {}),
  };
  const dated = Object.keys(when).length > 0;
  if (kind === 'birth') {
    if (date.date !== undefined) statement.born = date.date;
    if (place) statement.birthplace = place.text;
  } else if (kind === 'residence') {
    const where = place?.text ?? value ?? says.address;
    if (where !== undefined) statement.residence = where;
    if (place && value !== undefined) says.residence = value;
    if (where === says.address) delete says.address;
    if (date.date !== undefined) statement.event = { kind, date: date.date };
  } else if (fact.attribute) {
    if (kind === 'occupation' && value !== undefined) statement.occupation = value;
    else if (value !== undefined) says[wordFor(kind)] = value;
    if (dated) statement.event = { kind, ...when };
  } else {
    statement.event = { kind, ...when };
    if (kind === 'immigration' && date.date !== undefined) statement.immigrated = date.date;
  }
  if (Object.keys(says).length > 0) statement.says = says;
  return statement;
}

/** A name under `says`: one plain word. */
function wordFor(kind: string): string {
  const words = kind
    .normalize('NFD')
    .replace(/[^A-Za-z0-9]+/g, ' ')
    .trim()
    .split(' ');
  const [first = '', ...rest] = words;
  const word =
    first.toLowerCase() + rest.map((w) => w.charAt(0).toUpperCase() + w.slice(1).toLowerCase()).join('');
  return /^[a-z]/.test(word) ? word.slice(0, 40) : 'fact';
}

/**
 * Adds what is stated of somebody to their mention in a record, to the last of theirs that does not say otherwise yet,
 * or to a new one. Gives the mention’s id.
 */
export function state(
  record: RecordDraft,
  person: PersonDraft | undefined,
  statement: Statement,
  base: Statement = {},
): MentionDraft {
  const whole = { ...base, ...statement };
  const fitting = person && theirsIn(record, person).find((mention) => fits(mention, whole));
  if (fitting) {
    merge(fitting, base);
    merge(fitting, statement);
    return fitting;
  }
  const mention: MentionDraft = { id: nextMention(record) };
  merge(mention, base);
  merge(mention, statement);
  record.mentions.push(mention);
  if (person) person.mentions.push({ record, mention: mention.id });
  return mention;
}

/** The last few mentions of somebody in a record. */
function theirsIn(record: RecordDraft, person: PersonDraft): MentionDraft[] {
  const found: MentionDraft[] = [];
  for (let i = person.mentions.length - 1; i >= 0 && i > person.mentions.length - 12; i--) {
    const own = person.mentions[i]!;
    if (own.record !== record) continue;
    const at = record.mentions[Number(own.mention.slice(1)) - 1];
    const mention = at?.id === own.mention ? at : record.mentions.find(({ id }) => id === own.mention);
    if (mention) found.unshift(mention);
  }
  return found;
}

function fits(mention: MentionDraft, statement: Statement): boolean {
  return Object.entries(statement).every(([key, value]) => {
    const there = mention[key];
    if (there === undefined || Array.isArray(there)) return true;
    if (key === 'says')
      return Object.entries(value as Record<string, string>).every(
        ([name, text]) =>
          (there as Record<string, string>)[name] === undefined ||
          (there as Record<string, string>)[name] === text,
      );
    return JSON.stringify(there) === JSON.stringify(value);
  });
}

function merge(mention: MentionDraft, statement: Statement): void {
  for (const [key, value] of Object.entries(statement)) {
    const there = mention[key];
    if (key === 'says') mention.says = { ...(there as object | undefined), ...(value as object) };
    else if (Array.isArray(value) && Array.isArray(there))
      mention[key] = [
        ...there,
        ...value.filter(
          (item: unknown) => !there.some((old) => JSON.stringify(old) === JSON.stringify(item)),
        ),
      ];
    else mention[key] = value;
  }
}

/** The keys a statement gives, as `inferred` names them. */
export function statedKeys(statement: Statement): string[] {
  return Object.keys(statement).filter((key) => !['role', 'relations', 'inferred', 'id'].includes(key));
}

/** Whether a mention states all of what a structure of an export tells again from it. Ages may be written otherwise there. */
export function tellsAgain(mention: Readonly<Record<string, unknown>>, statement: Statement): boolean {
  return Object.entries(statement).every(([key, value]) => {
    const there = mention[key];
    if (key === 'age') return there !== undefined;
    if (key === 'event' && statement.immigrated !== undefined && mention.immigrated === statement.immigrated)
      return true;
    if (key === 'says')
      return Object.entries(value as Record<string, string>).every(
        ([name, text]) => String((there as Record<string, unknown> | undefined)?.[name]) === text,
      );
    return plainText(there) === plainText(value);
  });
}

/** A value as it is compared: without regard to capitals, and in any order of its keys. */
function plainText(value: unknown): string {
  if (typeof value !== 'object' || value === null)
    return String(value).replace(/\s+/g, ' ').trim().toLowerCase();
  return Object.entries(value)
    .map(([key, item]) => `${key}=${plainText(item)}`)
    .sort()
    .join(';');
}
