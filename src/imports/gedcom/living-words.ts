/**
 * What comes in must be fit to be published as it stands: words that belong to somebody living, or name them, are kept
 * out of the content and told in the report, where the author can decide. Who is living is what the check will say.
 */
import { lookFor } from '../../dossier/living-look.ts';
import { tellingsOf } from '../../dossier/living-tellings.ts';
import { plainly } from '../../dossier/living-text.ts';
import { withheldOn } from '../../dossier/withhold.ts';
import { livingPeople } from '../../reasoning/living.ts';
import { cslNameVariables } from '../../model/citation.ts';
import type { Facts } from '../../model/facts.ts';
import type { Person } from '../../model/person.ts';
import type { Mention, SourceRecord } from '../../model/record.ts';
import type { RecordDraft, PersonDraft } from './drafts.ts';
import type { ImportLog } from './log.ts';

const authors = new Set<string>(cslNameVariables);

/** Keeps aside what may not be published. `persons` and `records` have ids by now; `others` is what the folder holds. */
export function keepLivingAside(
  persons: readonly PersonDraft[],
  records: readonly RecordDraft[],
  others: Facts,
  today: number,
  log: ImportLog,
): ReadonlySet<PersonDraft> {
  if (others.site.audience === 'family') return new Set();
  const facts = factsOf(persons, records, others);
  const living = livingPeople(facts, today);
  const withheld = new Set(persons.filter(({ id }) => living.has(id)));
  // A family file may name a hundred thousand; what is kept aside too much stands in the report.
  const look = lookFor(tellingsOf(facts, withheldOn(facts, living, today), { onlyWhole: true }));
  const withheldMentions = new Set<string>();
  for (const { mentions } of withheld)
    for (const { record, mention } of mentions) withheldMentions.add(`${record.id}#${mention}`);
  const before = new Map<string, boolean>();
  const names = (value: unknown): boolean => {
    if (typeof value === 'string') {
      // Titles and archives come back with every page.
      let found = before.get(value);
      if (found === undefined) before.set(value, (found = look(plainly(value), { first: true }).length > 0));
      return found;
    }
    if (Array.isArray(value)) return value.some(names);
    return typeof value === 'object' && value !== null && Object.values(value).some(names);
  };
  for (const record of records) {
    const hidden = record.mentions.filter(({ id }) => withheldMentions.has(`${record.id}#${id}`));
    asidePassages(record, hidden.length > 0, names, log);
    const { cite = {} } = record;
    const told = Object.fromEntries(Object.entries(cite).filter(([key]) => !authors.has(key)));
    if (names(record.title) || names(told) || names(record.derivedFrom)) {
      log.aside.push({
        line: record.line,
        why: 'names somebody living',
        text: [
          record.title,
          ...Object.entries(told).flatMap(([key, value]) => (key === 'type' ? [] : [String(value)])),
        ].join(' · '),
      });
      record.title = record.plainTitle;
      record.wishes = [];
      if (record.cite) record.cite = { type: record.cite.type, title: record.plainTitle };
      if (record.derivedFrom) record.derivedFrom = [{ unseen: record.plainTitle }];

      delete record.volume;
    }
    for (const mention of record.mentions)
      if (!withheldMentions.has(`${record.id}#${mention.id}`)) asideStatements(mention, names, record, log);
  }
  return withheld;
}

function asidePassages(
  record: RecordDraft,
  hidden: boolean,
  names: (value: unknown) => boolean,
  log: ImportLog,
): void {
  record.passages = record.passages.filter(({ line, text }) => {
    const why = hidden ? 'belongs to somebody living' : names(text) ? 'names somebody living' : undefined;
    if (why === undefined) return true;
    log.aside.push({ line, why, text });
    return false;
  });
}

/** A mention’s own statements that name somebody living. */
function asideStatements(
  mention: Record<string, unknown>,
  names: (value: unknown) => boolean,
  record: RecordDraft,
  log: ImportLog,
): void {
  for (const [key, value] of Object.entries(mention)) {
    if (key === 'id' || key === 'relations' || key === 'inferred' || key === 'informants' || !names(value))
      continue;
    log.aside.push({
      line: record.line,
      why: 'names somebody living',
      text: `${key}: ${JSON.stringify(value)}`,
    });
    delete mention[key];
    if (Array.isArray(mention.inferred)) mention.inferred = mention.inferred.filter((one) => one !== key);
  }
}

/** The drafts in the shape that the reasoning takes, beside what the folder holds already. */
function factsOf(persons: readonly PersonDraft[], records: readonly RecordDraft[], others: Facts): Facts {
  const people = new Map(others.people);
  for (const person of persons)
    people.set(person.id, {
      id: person.id,
      name: person.name,
      placeholder: person.placeholder ?? false,
      parents: person.parents.map(({ person: parent }) => ({ person: parent.id, from: [] })),
      spouses: person.spouses.map(({ person: spouse, married, place }) => ({
        person: spouse.id,
        married,
        place,
        from: [],
      })),
      mentions: person.mentions.map(({ record, mention }) => `${record.id}#${mention}`),
      born: person.born,
      died: person.died,
      living: person.living,
      body: '',
    } satisfies Person);
  const all = new Map(others.records);
  for (const record of records)
    all.set(record.id, {
      id: record.id,
      title: record.title,
      form: record.form,
      derivedFrom: [],
      made: record.made ?? (record.rest.made as string | undefined),
      informants: {},
      mentions: record.mentions.map(
        (mention) =>
          ({
            alsoRead: [],
            present: true,
            says: {},
            inferred: [],
            informants: {},
            relations: [],
            ...mention,
          }) as unknown as Mention,
      ),
      media: [],
      body: '',
    } satisfies SourceRecord);
  return { ...others, people, records: all, cases: new Map(), searches: new Map(), reviews: [] };
}
