/**
 * The content as it may be shown in public: without anyone living. People, their mentions, and their names as
 * informants go; what remains says “a living person” where a reader must know that somebody spoke.
 */
import type { Facts } from '../model/facts.ts';
import type { Informant, SourceRecord } from '../model/record.ts';
import { sourcesOf, type Case } from '../model/case.ts';
import type { Person } from '../model/person.ts';
import type { Search } from '../model/search.ts';
import { derivationTarget } from '../reasoning/derivation.ts';
import { kinOf } from '../reasoning/kin.ts';
import { livingMentions } from '../reasoning/living.ts';
import { familyText, inAllTexts, publicText } from './living-spans.ts';

/** The words that stand for someone withheld. */
export interface StandIns {
  someone: string;
  oneOfSeveral: string;
}

/** Whom a public build leaves out. */
export interface Withheld {
  /** People living or presumed so, by id. */
  people: ReadonlySet<string>;
  /** Their mentions, and those of nobody’s that may be of somebody living, as `record#mention`. */
  mentions: ReadonlySet<string>;
}

const nobody: Withheld = { people: new Set(), mentions: new Set() };

/** Whom a build withholds on a day (a day number): nobody where it is for the family. */
export function withheldOn(facts: Facts, living: ReadonlySet<string>, today: number): Withheld {
  if (facts.site.audience === 'family') return nobody;
  const mentions = livingMentions(facts, today);
  const { owner } = kinOf(facts);
  for (const id of living)
    for (const ref of facts.people.get(id)?.mentions ?? []) if (owner(ref) === id) mentions.add(ref);
  return living.size === 0 && mentions.size === 0 ? nobody : { people: living, mentions };
}

/** Whether nobody is withheld. */
export function isNobody({ people, mentions }: Withheld): boolean {
  return people.size === 0 && mentions.size === 0;
}

export function isWithheldMention({ mentions }: Withheld, ref: string): boolean {
  return mentions.has(ref);
}

/**
 * The content with the spans about the living resolved in all its texts: for the family as they are written, in public
 * with the words that stand for them. Entries without spans stay the same objects.
 */
export function withSpansResolved<F extends Facts>(facts: F, words: StandIns): F {
  const resolve =
    facts.site.audience === 'family' ? familyText : (text: string) => publicText(text, words.someone);
  const texts = <V extends object>(map: ReadonlyMap<string, V>): ReadonlyMap<string, V> =>
    mapValues(map, (entry) =>
      'builtIn' in entry && entry.builtIn === true ? entry : inAllTexts(entry, resolve),
    );
  const changed = {
    site: inAllTexts(facts.site, resolve),
    cases: texts(facts.cases),
    records: texts(facts.records),
    people: texts(facts.people),
    places: texts(facts.places),
    series: texts(facts.series),
    searches: texts(facts.searches),
    reviews: inAllTexts(facts.reviews, resolve),
    replies: inAllTexts(facts.replies, resolve),
    nameCounts: inAllTexts(facts.nameCounts, resolve),
  };
  const same = Object.entries(changed).every(([key, value]) => value === facts[key as keyof Facts]);
  return same ? facts : { ...facts, ...changed };
}

/**
 * The content as it may be shown in public: facts without the withheld. Returns the same facts when there is nobody to
 * withhold; entries with nothing to hide stay the same objects.
 */
export function withoutLiving<F extends Facts>(facts: F, withheld: Withheld, words: StandIns): F {
  if (isNobody(withheld)) return facts;
  const shown = (person: string) => !withheld.people.has(person);
  const hidden = (ref: string) => withheld.mentions.has(ref);
  const rested = restedOn(facts, withheld);
  const silent = new Set(
    [...facts.records.values()]
      .filter(
        ({ id, mentions }) =>
          mentions.length > 0 && !rested.has(id) && mentions.every((m) => hidden(`${id}#${m.id}`)),
      )
      .map(({ id }) => id),
  );
  const records = new Map(
    [...facts.records]
      .filter(([id]) => !silent.has(id))
      .map(([id, record]) => [id, maskRecord(record, shown, hidden, words)]),
  );
  return {
    ...facts,
    records,
    people: new Map(
      [...facts.people]
        .filter(([id]) => shown(id))
        .map(([id, person]) => [id, maskPerson(person, shown, hidden)]),
    ),
    cases: new Map(
      [...facts.cases]
        .filter(([, c]) => shown(c.subject))
        .map(([id, c]) => [id, maskCase(c, shown, silent, (ref) => plainMentionRef(facts, withheld, ref))]),
    ),
    searches: maskSearches(facts, shown, silent),
    reviews: facts.reviews.filter((review) => !isOfWithheld(facts, review.case, shown)),
    replies: facts.replies.filter((reply) => !isOfWithheld(facts, reply.case, shown)),
  };
}

function isOfWithheld(facts: Facts, id: string, shown: (person: string) => boolean): boolean {
  const subject = facts.cases.get(id)?.subject;
  return subject !== undefined && !shown(subject);
}

/**
 * Records that something public rests on: evidence, exemplars, what prose cites, candidates, searches for the dead. A
 * record that names only the withheld, and that nothing of these needs, is about them and is left out.
 */
function restedOn(facts: Facts, withheld: Withheld): Set<string> {
  const rested = new Set<string>();
  const cites = (text: string) => {
    if (!/@|records\//.test(text)) return;
    for (const [, id] of text.matchAll(/(?:@|records\/)([\p{L}\p{N}][\p{L}\p{N}-]*)/gu)) rested.add(id!);
  };
  for (const c of facts.cases.values()) {
    if (withheld.people.has(c.subject)) continue;
    for (const item of c.evidence) for (const record of sourcesOf(item).records) rested.add(record);
    for (const candidate of c.candidates) for (const record of candidate.records) rested.add(record);
    cites(c.body);
  }
  for (const record of facts.records.values()) {
    for (const derivation of record.derivedFrom) {
      const target = derivationTarget(derivation);
      if (target) rested.add(target.record);
    }
    if (record.partOf !== undefined) rested.add(record.partOf);
    cites(record.body);
  }
  for (const person of facts.people.values()) if (!withheld.people.has(person.id)) cites(person.body);
  for (const search of facts.searches.values())
    if (search.for.some((id) => !withheld.people.has(id)))
      for (const record of search.records) rested.add(record);
  return rested;
}

function maskPerson(
  person: Person,
  shown: (person: string) => boolean,
  hidden: (ref: string) => boolean,
): Person {
  const kin = [...person.parents, ...person.spouses];
  if (kin.every((one) => shown(one.person) && !one.from.some(hidden))) return person;
  const from = <T extends { person: string; from: string[] }>(list: readonly T[]): T[] =>
    list
      .filter((one) => shown(one.person))
      .map((one) => (one.from.some(hidden) ? { ...one, from: one.from.filter((ref) => !hidden(ref)) } : one));
  return { ...person, parents: from(person.parents), spouses: from(person.spouses) };
}

function maskCase(
  c: Case,
  shown: (person: string) => boolean,
  silent: ReadonlySet<string>,
  plainRef: (ref: string) => string,
): Case {
  const keep = (record: string) => !silent.has(record);
  const saysNothing = c.evidence.every(({ from }) => from.every((ref) => plainRef(ref) === ref));
  if (saysNothing && c.candidates.every(({ people, records }) => people.every(shown) && records.every(keep)))
    return c;
  return {
    ...c,
    evidence: saysNothing
      ? c.evidence
      : c.evidence.map((item) => ({ ...item, from: item.from.map(plainRef) })),
    candidates: c.candidates.map((candidate) => ({
      ...candidate,
      people: candidate.people.filter(shown),
      records: candidate.records.filter(keep),
    })),
  };
}

/** Searches for the withheld alone are left out, unless a case rests on them. */
function maskSearches(
  facts: Facts,
  shown: (person: string) => boolean,
  silent: ReadonlySet<string>,
): ReadonlyMap<string, Search> {
  const needed = new Set(
    [...facts.cases.values()].flatMap((c) => c.evidence.flatMap((item) => sourcesOf(item).searches)),
  );
  return new Map(
    [...facts.searches].flatMap(([id, search]): [string, Search][] => {
      const left = search.for.filter(shown);
      const records = search.records.filter((record) => !silent.has(record));
      if (left.length === 0 && search.for.length > 0 && !needed.has(id)) return [];
      return left.length === search.for.length && records.length === search.records.length
        ? [[id, search]]
        : [[id, { ...search, for: left, records }]];
    }),
  );
}

/**
 * A reference to a mention as it may be shown: the id of a withheld one may be a name, so another stands for it, by the
 * order of the withheld in their record. Other references stay.
 */
export function plainMentionRef(facts: Pick<Facts, 'records'>, withheld: Withheld, ref: string): string {
  if (!withheld.mentions.has(ref)) return ref;
  const record = facts.records.get(ref.slice(0, ref.indexOf('#')));
  if (!record) return ref;
  const ids = new Set(record.mentions.map(({ id }) => id));
  let n = 0;
  for (const { id } of record.mentions) {
    const one = `${record.id}#${id}`;
    if (!withheld.mentions.has(one)) continue;
    do n++;
    while (ids.has(`living${n}`) && !withheld.mentions.has(`${record.id}#living${n}`));
    if (one === ref) return `${record.id}#living${n}`;
  }
  return ref;
}

/**
 * A record with other words for the informants among whom somebody withheld is: an author’s word for one may be their
 * name. Done twice it changes nothing more.
 */
export function withPlainInformantKeys(
  record: SourceRecord,
  shown: (person: string) => boolean,
): SourceRecord {
  const involves = ({ person, oneOf, toldBy }: Informant) =>
    ![person, ...(oneOf ?? []), ...(toldBy ?? [])].every((id) => id === undefined || shown(id));
  const entries = Object.entries(record.informants);
  const others = new Set(entries.filter(([, informant]) => !involves(informant)).map(([key]) => key));
  const keys = new Map<string, string>();
  let n = 0;
  for (const [key, informant] of entries) {
    if (!involves(informant)) continue;
    do n++;
    while (others.has(`living${n}`));
    keys.set(key, `living${n}`);
  }
  if (keys.size === 0) return record;
  const keyOf = (key: string) => keys.get(key) ?? key;
  return {
    ...record,
    informants: Object.fromEntries(entries.map(([key, informant]) => [keyOf(key), informant])),
    ...(record.informant === undefined ? {} : { informant: keyOf(record.informant) }),
    mentions: record.mentions.map((mention) => ({
      ...mention,
      informants: mapObject(mention.informants, keyOf),
    })),
  };
}

/**
 * A record without its withheld mentions. Its images show what the record says of them, and the name or the hand of
 * whoever informed it, so they stay away too.
 */
function maskRecord(
  written: SourceRecord,
  shown: (person: string) => boolean,
  hidden: (ref: string) => boolean,
  words: StandIns,
): SourceRecord {
  const record = withPlainInformantKeys(written, shown);
  const gone = new Set(record.mentions.filter((m) => hidden(`${record.id}#${m.id}`)).map((m) => m.id));
  const informants = mapObject(record.informants, (informant) => maskInformant(informant, shown, words));
  const isGone = (of: string) =>
    of.includes('#') ? hidden(of) : gone.has(of) || hidden(`${record.id}#${of}`);
  const mentions = record.mentions
    .filter((m) => !gone.has(m.id))
    .map((m) => {
      const copies = m.copies !== undefined && hidden(m.copies);
      if (!copies && !m.relations.some((relation) => isGone(relation.of))) return m;
      const { copies: copied, ...rest } = m;
      return {
        ...rest,
        ...(copies || copied === undefined ? {} : { copies: copied }),
        relations: m.relations.filter((relation) => !isGone(relation.of)),
      };
    });
  if (
    gone.size === 0 &&
    informants === record.informants &&
    mentions.every((m, i) => m === record.mentions[i])
  )
    return record;
  const spoken = informants !== record.informants;
  return { ...record, informants, mentions, media: spoken || gone.size > 0 ? [] : record.media };
}

function maskInformant(informant: Informant, shown: (person: string) => boolean, words: StandIns): Informant {
  const { person, oneOf, toldBy, ...rest } = informant;
  if ([person, ...(oneOf ?? []), ...(toldBy ?? [])].every((id) => id === undefined || shown(id)))
    return informant;
  const told = toldBy?.filter(shown);
  const teller = told && told.length > 0 ? { toldBy: told } : {};
  if (person !== undefined)
    return shown(person) ? { ...rest, person, ...teller } : { ...rest, ...teller, described: words.someone };
  if (oneOf && !oneOf.every(shown)) {
    const left = oneOf.filter(shown);
    return left.length >= 2
      ? { ...rest, ...teller, oneOf: left }
      : { ...rest, ...teller, described: words.oneOfSeveral };
  }
  return { ...rest, ...(oneOf ? { oneOf } : {}), ...teller };
}

function mapObject<V>(object: Record<string, V>, change: (value: V) => V): Record<string, V> {
  const entries = Object.entries(object).map(([key, value]) => [key, change(value)] as const);
  return entries.every(([key, value]) => value === object[key]) ? object : Object.fromEntries(entries);
}

/** The same map where nothing changes. */
function mapValues<V>(map: ReadonlyMap<string, V>, change: (value: V) => V): ReadonlyMap<string, V> {
  let changed = false;
  const values = [...map].map(([key, value]) => {
    const now = change(value);
    changed ||= now !== value;
    return [key, now] as const;
  });
  return changed ? new Map(values) : map;
}
