/** Drafts → the texts of a content folder. */
import type { Piece } from '../changes.ts';
import type { PersonDraft, RecordDraft } from './drafts.ts';
import type { PlaceDraft } from './gazetteer.ts';
import { markdownOf, quotation } from './markdown-text.ts';
import { slug } from './ids.ts';
import { yamlEntry, yamlMapping } from './yaml-text.ts';
import type { PlaceEntry } from '../../model/place.ts';

/** Lists longer than this are split by the first letters of the surname. */
const longestList = 500;
/** A list file stays well under what the content takes. */
const mostCharacters = 2_000_000;

/** Which list each person goes into: one for a small family, else one for each beginning of a surname. */
export function peopleFiles(
  persons: readonly PersonDraft[],
  name: string,
  before: ReadonlyMap<string, string>,
): Map<PersonDraft, string> {
  const files = new Map<PersonDraft, string>();
  const filed = new Map(
    persons.map((person) => [
      person,
      slug(person.surname || person.name.split(' ').at(-1)!).replaceAll('-', '') || 'x',
    ]),
  );
  const share = (group: readonly PersonDraft[], start: string, letters: number): void => {
    if (group.length <= longestList || letters > 6) {
      group.forEach((person, i) => {
        const part = Math.floor(i / (mostCharacters / 1000));
        files.set(
          person,
          before.get(person.id) ??
            `people/${[name, start, part > 0 ? String(part + 1) : ''].filter(Boolean).join('-')}.yaml`,
        );
      });
      return;
    }
    const groups = new Map<string, PersonDraft[]>();
    for (const person of group) {
      const begins = filed.get(person)!.slice(0, letters);
      const list = groups.get(begins);
      if (list) list.push(person);
      else groups.set(begins, [person]);
    }
    for (const [begins, list] of groups)
      if (begins.length < letters) share(list, begins, 7);
      else share(list, begins, letters + 1);
  };
  share(persons, '', 1);
  return files;
}

export function personPiece(person: PersonDraft, file: string): Piece {
  const parents = inOrderOf(person.rest.parents, person.parents).map(({ person: parent }) =>
    withFrom(person.rest.parents, parent, { person: parent.id }),
  );
  const value = {
    id: person.id,
    name: person.name,
    sex: person.sex,
    placeholder: person.placeholder,
    parents: nonEmpty(parents.map((parent) => (Object.keys(parent).length === 1 ? parent.person : parent))),
    spouses: nonEmpty(
      person.spouses.map(({ person: spouse, ...wed }) =>
        withFrom(person.rest.spouses, spouse, { person: spouse.id, ...wed }),
      ),
    ),
    mentions: nonEmpty(person.mentions.map(({ record, mention }) => `${record.id}#${mention}`)),
    born: nonEmptyLife(person.born),
    died: nonEmptyLife(person.died),
    living: person.living,
  };
  const key = `person:${person.id}`;
  if (person.body === '') return { file, entry: person.id, text: yamlEntry(value), key };
  const { id: _id, ...front } = value;
  return { file: `people/${person.id}.md`, text: `---\n${yamlMapping(front)}---\n${person.body}`, key };
}

/** Parents in the order in which an export of ours has them. */
function inOrderOf(kept: unknown, parents: PersonDraft['parents']): PersonDraft['parents'] {
  if (!Array.isArray(kept)) return parents;
  const order = (kept as { person?: string }[]).map(({ person }) => person);
  const at = ({ person }: PersonDraft['parents'][number]) =>
    order.indexOf(String(person.rest.id ?? person.id));
  return parents.toSorted((a, b) => at(a) - at(b));
}

/** The mentions that an export of ours says a bond is told by. */
function withFrom(
  kept: unknown,
  of: PersonDraft,
  bond: { person: string },
): { person: string; from?: string[] } {
  if (!Array.isArray(kept)) return bond;
  const own = of.rest.id ?? of.id;
  const found = (kept as { person?: string; from?: string[] }[]).find(({ person }) => person === own);
  return found?.from && found.from.length > 0 ? { ...bond, from: found.from } : bond;
}

export function recordPiece(record: RecordDraft): Piece {
  const { madeDiffers: _madeDiffers, ...rest } = record.rest;
  const value = {
    title: record.title,
    cite: record.cite,
    form: record.form,
    derivedFrom: record.derivedFrom,
    seen: record.seen,
    made: record.made,
    place: record.place,
    volume: record.volume,
    ...rest,
    mentions: nonEmpty(record.mentions.map(mentionValue)),
    media: nonEmpty(record.media),
  };
  const body = record.passages.map(({ text, quoted, markdown }) => {
    if (markdown) return text;
    const plain = markdownOf(text);
    return quoted ? quotation(plain) : plain;
  });
  const own = record.passages.length === 1 && record.passages[0]!.markdown;
  return {
    file: `records/${record.id}.md`,
    text: own
      ? `---\n${yamlMapping(value)}---\n${body[0]!}`
      : `---\n${yamlMapping(value)}---\n${body.length > 0 ? `\n${body.join('\n\n')}\n` : ''}`,
    key: `record:${record.id}`,
  };
}

const mentionKeys = [
  'id',
  'name',
  'alsoRead',
  'role',
  'sex',
  'age',
  'born',
  'birthplace',
  'residence',
  'occupation',
  'immigrated',
  'event',
];

function mentionValue(mention: Record<string, unknown>): Record<string, unknown> {
  const first = mentionKeys
    .filter((key) => mention[key] !== undefined)
    .map((key) => [key, mention[key]] as const);
  const rest = Object.entries(mention).filter(([key]) => !mentionKeys.includes(key));
  return Object.fromEntries(
    [...first, ...rest].filter(([, value]) => !Array.isArray(value) || value.length > 0),
  );
}

export function placePiece(place: PlaceDraft, file: string): Piece {
  const { id, name, kind, within, variants, lat, lon } = place;
  const value = { id, name, kind, within: [within], variants: nonEmpty([...variants]), lat, lon };
  return { file, entry: id, text: yamlEntry(value), key: `place:${id}` };
}

/** A place of an export of ours, whole. */
export function ownPlacePiece(place: PlaceEntry, file: string): Piece {
  const within = place.within.map(({ place: above, from, to }) =>
    from === undefined && to === undefined ? above : { place: above, from, to },
  );
  const value = {
    ...place,
    within: nonEmpty(within),
    variants: nonEmpty(place.variants),
    overlaps: nonEmpty(place.overlaps),
  };
  return { file, entry: place.id, text: yamlEntry(value), key: `place:${place.id}` };
}

function nonEmpty<T>(list: readonly T[]): readonly T[] | undefined {
  return list.length > 0 ? list : undefined;
}

function nonEmptyLife(life: { date?: string; place?: string } | undefined): object | undefined {
  return life && (life.date !== undefined || life.place !== undefined) ? life : undefined;
}
