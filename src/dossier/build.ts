/** The dossier for the pages, made from an examination: what the check found, with everything rendered. */
import { formatCitations } from '../citations/format.ts';
import { noteStyleProblem } from '../citations/with-style.ts';
import type { Corpus, Counts } from '../corpus/types.ts';
import { renderedBefore, standsAlone } from '../markdown/alone.ts';
import { renderBody } from '../markdown/render.ts';
import type { Rendered } from '../markdown/types.ts';
import { interfaceTag, wordingIn } from '../interface/index.ts';
import { sourcesOf } from '../model/case.ts';
import { isoDay } from '../model/days.ts';
import type { Facts } from '../model/facts.ts';
import { ageGap, gapWords } from '../reasoning/age-agreement.ts';
import type { BirthInterval, BirthSpan } from '../reasoning/ages.ts';
import { derivationTarget } from '../reasoning/derivation.ts';
import { kinOf } from '../reasoning/kin.ts';
import { searchesForFamily } from '../reasoning/points.ts';
import { searchesForRivals } from '../reasoning/rivals.ts';
import { associatesView } from './associates.ts';
import { candidateViews } from './candidates.ts';
import { claimsOf } from './claims.ts';
import { clueViews } from './clues.ts';
import { bodyContext, type Examination } from './examine.ts';
import type { KeptParts } from './kept.ts';
import { identityLinks } from './identity-links.ts';
import { journeysView } from './journeys.ts';
import { kinshipView } from './kinship.ts';
import { libraryView } from './library.ts';
import { picturesOf } from './pictures.ts';
import { placeViews } from './place-views.ts';
import { planView } from './plan.ts';
import { publishingView } from './publishing.ts';
import { readingsByMention, readingViews } from './readings.ts';
import { disagreements } from './reviews.ts';
import { surnamesView } from './surnames.ts';
import type { BirthView, CaseView, Dossier, PersonView, RecordView, ReviewView } from './types.ts';
import { voiceIn } from './voice.ts';
import { maskResult } from './mask-result.ts';
import { gather } from '../model/multimap.ts';
import { voyageLegs } from './voyage-legs.ts';

/**
 * Builds the dossier. With errors in the examination it still holds what can be shown, for the live preview. `kept`
 * is what earlier builds made; it spares time and changes nothing.
 */
export function buildDossier(examination: Examination, kept?: KeptParts): Dossier {
  const { corpus, withheld, shown: facts } = examination;
  const { site } = facts;
  const wording = wordingIn(interfaceTag(site));
  const pictures = picturesOf(corpus.root, facts, corpus);
  const citations = formatCitations(facts.records.values(), {
    language: site.language,
    before: kept?.citations,
    style: usableStyle(corpus.citationStyle?.text),
  });
  const languageOf = (kind: string, id: string) =>
    (kind === 'record' ? facts.records.get(id)?.language : undefined) ?? site.language;
  const note = (record: string) => citations.notes.get(record) ?? { full: record, short: record };
  const render = (kind: 'case' | 'record' | 'person', id: string, body: string): Rendered => {
    const ctx = {
      ...bodyContext(facts, kind, id, note),
      mediaHref: pictures.inProse,
      voice: voiceIn(site, languageOf(kind, id)),
    };
    return kept && standsAlone(body, ctx)
      ? renderedBefore(body, ctx, kept.bodies)
      : renderBody(body, ctx).rendered;
  };

  const usedIn = evidenceByRecord(facts);
  const read = readingsByMention(facts);
  const copies = copiesByRecord(facts);
  const parts = partsByRecord(facts);
  const records = new Map<string, RecordView>();
  for (const record of facts.records.values()) {
    const readings = readingViews(facts, read, record);
    const { media, withheld: withheldMedia } = pictures.ofRecord(record);
    records.set(record.id, {
      id: record.id,
      record,
      note: note(record.id).full,
      shortNote: note(record.id).short,
      transcription: render('record', record.id, record.body),
      mentions: record.mentions.map((mention, i) => {
        const ref = `${record.id}#${mention.id}`;
        return {
          ref,
          mention,
          person: kinOf(facts).owner(ref) ?? null,
          readings: readings[i]!,
        };
      }),
      media,
      withheldMedia,
      derivesFrom: record.derivedFrom.map((d) =>
        typeof d === 'string'
          ? { kind: 'record', record: d }
          : 'perhaps' in d
            ? { kind: 'perhaps', record: d.perhaps }
            : { kind: 'unseen', text: d.unseen },
      ),
      copies: copies.get(record.id) ?? [],
      parts: parts.get(record.id) ?? [],
      usedIn: usedIn.get(record.id) ?? [],
    });
  }

  const people = personViews(facts, examination, (id, body) => render('person', id, body));
  const cases = new Map<string, CaseView>();
  for (const c of facts.cases.values()) {
    const subject = people.get(c.subject);
    if (!subject) continue;
    const computed = examination.cases.get(c.id) ?? null;
    const result = computed && maskResult(corpus, computed, withheld, wording.people.withheld.someone, facts);
    const narrative = render('case', c.id, c.body);
    const argument = renderBody(c.body, {
      ...bodyContext(facts, 'case', c.id, note),
      mediaHref: pictures.inProse,
      voice: voiceIn(site),
      inSection: { rank: 3, anchors: '_argument-' },
    }).rendered;
    const family = searchesForFamily(facts, c.subject);
    const digest = examination.digests.get(c.id);
    const reviews = reviewViews(examination, c.id);
    cases.set(c.id, {
      id: c.id,
      case: c,
      result,
      blockedBy: [
        ...new Set((examination.blocked.get(c.id) ?? []).map((entry) => corpus.fileOf(entry) ?? entry)),
      ],
      subject,
      narrative,
      argument,
      links: result ? identityLinks(facts, c, result) : [],
      kinship: kinshipView(facts, c, wording),
      clues: clueViews(facts, c, wording),
      families: candidateViews(facts, c, wording),
      plan: planView(facts, c, result, false, wording),
      searches: [...family, ...searchesForRivals(facts, c).filter((search) => !family.includes(search))],
      reviews,
      disagreements: disagreements(reviews),
      digest: digest?.whole ?? '',
      rests: digest?.parts ?? null,
      claims: claimsOf(c),
      records: [
        ...new Set([
          ...narrative.notes.flatMap((n) => n.records),
          ...c.evidence.flatMap((e) => sourcesOf(e).records),
        ]),
      ].filter((id) => records.has(id)),
    });
  }

  const places = placeViews(facts, people);
  kept?.citations.keep();
  kept?.bodies.keep();
  return {
    site,
    wording,
    facts,
    counts: shownCounts(corpus, facts),
    today: examination.today,
    cases,
    records,
    people,
    surnames: surnamesView(facts),
    places,
    associates: associatesView(facts, wording),
    journeys: journeysView(facts, wording),
    crossings: voyageLegs(facts),
    searches: facts.searches,
    series: facts.series,
    sources: citations.sources,
    library: libraryView(facts, citations.notes),
    pictures: pictures.all(),
    publishing: publishingView(site, cases, places, wording),
    findings: examination.findings,
  };
}

/** How many there are of each kind, without what is withheld; what can’t be read counts as the check counts it. */
function shownCounts(corpus: Corpus, shown: Facts): Counts {
  if (shown === corpus) return corpus.counts;
  const less = (kind: 'cases' | 'records' | 'people' | 'searches') =>
    corpus.counts[kind] - (corpus[kind].size - shown[kind].size);
  const mentions = ({ records }: Facts) =>
    [...records.values()].reduce((sum, record) => sum + record.mentions.length, 0);
  return {
    ...corpus.counts,
    cases: less('cases'),
    records: less('records'),
    people: less('people'),
    searches: less('searches'),
    mentions: corpus.counts.mentions - (mentions(corpus) - mentions(shown)),
  };
}

function reviewViews({ corpus, reviews }: Examination, caseId: string): ReviewView[] {
  return corpus.reviews
    .filter((review) => review.case === caseId)
    .map(({ rests: _rests, ...review }) => ({
      ...review,
      ...(reviews.get(review.id) ?? { current: false, changes: null }),
      signature: corpus.signatures.get(review.id) ?? null,
      replies: corpus.replies.filter((reply) => `${reply.case}/${reply.review}` === review.id),
    }));
}

/** A style that is wrong is an error, and the preview goes on with our own. */
function usableStyle(style: string | undefined): string | undefined {
  return style === undefined || noteStyleProblem(style) ? undefined : style;
}

function personViews(
  facts: Facts,
  examination: Examination,
  render: (id: string, body: string) => Rendered,
): Map<string, PersonView> {
  const children = new Map<string, string[]>();
  for (const person of facts.people.values())
    for (const { person: parent } of person.parents) gather(children, parent, person.id);
  const marriages = new Map<string, PersonView['spouses']>();
  for (const person of facts.people.values())
    for (const { person: spouse, married, place } of person.spouses)
      for (const [one, other] of [
        [person.id, spouse],
        [spouse, person.id],
      ] as const) {
        const list = marriages.get(one) ?? marriages.set(one, []).get(one)!;
        const known = list.find((m) => m.person === other);
        if (!known) list.push({ person: other, married, place });
        else Object.assign(known, { married: known.married ?? married, place: known.place ?? place });
      }
  const casesOf = new Map<string, string[]>();
  for (const c of facts.cases.values()) gather(casesOf, c.subject, c.id);

  const views = new Map<string, PersonView>();
  for (const person of facts.people.values()) {
    const birth = examination.births.get(person.id);
    const mentions = person.mentions.flatMap((ref) => {
      const [record = '', id = ''] = ref.split('#');
      const mention = facts.records.get(record)?.mentions.find((m) => m.id === id);
      return mention ? [{ ref, record, mention }] : [];
    });
    const siblings = new Set(person.parents.flatMap((p) => children.get(p.person) ?? []));
    siblings.delete(person.id);
    views.set(person.id, {
      id: person.id,
      person,
      living: examination.living.has(person.id),
      born: { earliest: iso(birth?.first), latest: iso(birth?.last) },
      outliers: birth?.outliers ?? [],
      births: birthViews(birth, mentions),
      biography: render(person.id, person.body),
      mentions,
      parents: person.parents.map((p) => p.person),
      spouses: marriages.get(person.id) ?? [],
      children: children.get(person.id) ?? [],
      siblings: [...siblings],
      readings: commonestFirst(
        mentions.flatMap((m) => (m.mention.name === undefined ? [] : [m.mention.name])),
      ),
      cases: casesOf.get(person.id) ?? [],
    });
  }
  return views;
}

/** What the mentions that are shown say of the birth, and how far off those outside are. */
function birthViews(birth: BirthSpan | undefined, mentions: PersonView['mentions']): BirthView[] {
  const shown = new Set(mentions.map((m) => m.ref));
  const outside = new Set(birth?.outliers);
  return (birth?.intervals ?? [])
    .filter(({ ref }) => shown.has(ref))
    .map((interval) => ({
      ref: interval.ref,
      earliest: isoDay(interval.first),
      latest: isoDay(interval.last),
      from: interval.from,
      fixes: interval.fixes,
      outside: outside.has(interval.ref) ? howFarOff(birth!, interval) : null,
    }));
}

function howFarOff({ first, last }: BirthSpan, interval: BirthInterval): string {
  const gap = first === null || last === null ? 0 : ageGap(interval, { first, last });
  return gap === 0
    ? 'it meets the span, but no one day is near enough to it and to all the others'
    : gapWords(gap);
}

function iso(day: number | null | undefined): string | null {
  return day === null || day === undefined ? null : isoDay(day);
}

function commonestFirst(values: readonly string[]): string[] {
  const counts = new Map<string, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  return [...counts].sort(([a, m], [b, n]) => n - m || (a < b ? -1 : 1)).map(([value]) => value);
}

function evidenceByRecord(facts: Facts): Map<string, RecordView['usedIn']> {
  const used = new Map<string, RecordView['usedIn']>();
  for (const c of facts.cases.values())
    for (const item of c.evidence)
      for (const record of sourcesOf(item).records) gather(used, record, { case: c.id, evidence: item.id });
  return used;
}

function copiesByRecord(facts: Facts): Map<string, RecordView['copies']> {
  const copies = new Map<string, RecordView['copies']>();
  for (const record of facts.records.values())
    for (const target of record.derivedFrom.map(derivationTarget))
      if (target)
        gather(copies, target.record, {
          record: record.id,
          perhaps: target.perhaps,
        });
  return copies;
}

function partsByRecord(facts: Facts): Map<string, string[]> {
  const parts = new Map<string, string[]>();
  for (const record of facts.records.values())
    if (record.partOf !== undefined) gather(parts, record.partOf, record.id);
  return parts;
}
