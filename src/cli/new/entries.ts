/** `new person`, `case`, `place`, `search` and `review`: what is asked, and the file that comes of it. */
import { CannotRun } from '../../corpus/types.ts';
import { listed } from '../../corpus/finding.ts';
import { examine } from '../../dossier/examine.ts';
import { loadCorpus } from '../../corpus/load.ts';
import { dayNumber } from '../../model/days.ts';
import { idFrom } from '../../model/id-from.ts';
import { livingPeople } from '../../reasoning/living.ts';
import type { Asker } from './asker.ts';
import { caseText, personText, placeText, reviewText, searchText } from './entry-text.ts';
import type { NewFolder } from './folder.ts';
import { settledId } from './ids.ts';
import { picked } from './pick.ts';
import { dateProblem, titleFromId } from './record.ts';

type Made = [path: string, text: string];

export const sexes = ['M', 'F', 'X', 'U'] as const;
export const results = ['found', 'not-found', 'unreadable', 'unavailable'] as const;
export const answers = ['agree', 'query', 'disagree'] as const;

/** One of a few words, asked for until it is one. */
function oneOf<T extends string>(
  asker: Asker,
  given: T | undefined,
  ask: string,
  words: readonly T[],
  fallback?: T,
): Promise<T | undefined> {
  if (given !== undefined) return Promise.resolve(given);
  return asker.ask({
    ask,
    fallback,
    problem: (said) => ((words as readonly string[]).includes(said) ? undefined : `Answer ${listed(words)}.`),
  }) as Promise<T | undefined>;
}

/** A date, from an option or asked for. */
async function dated(
  asker: Asker,
  flag: string,
  given: string | undefined,
  ask: string,
): Promise<string | undefined> {
  const date = given ?? (await asker.ask({ ask, problem: dateProblem }));
  const problem = date === undefined ? undefined : dateProblem(date);
  if (problem) throw new CannotRun(`${flag}: ${problem}`);
  return date;
}

export interface PersonOptions {
  name?: string;
  sex?: (typeof sexes)[number];
  born?: string;
  died?: string;
  mentions?: string[];
}

export async function newPerson(
  folder: NewFolder,
  id: string | undefined,
  given: PersonOptions,
  asker: Asker,
): Promise<Made> {
  const name =
    given.name ??
    (await asker.ask({ ask: 'The person’s name', fallback: id && titleFromId(id), required: true }));
  const settled = await settledId(folder, 'person', id, name, asker);
  const sex = await oneOf(asker, given.sex, 'Sex: M, F, X or U (Enter: later)', sexes);
  const taken = new Set([...folder.corpus.people.values()].flatMap(({ mentions }) => mentions));
  const called = name ?? titleFromId(settled);
  const namesakes = [...folder.corpus.records.values()].flatMap((record) =>
    record.mentions
      .filter((mention) => mention.name !== undefined && idFrom(mention.name) === idFrom(called))
      .map((mention) => `${record.id}#${mention.id}`)
      .filter((ref) => !taken.has(ref)),
  );
  const mentions =
    given.mentions?.map((ref) => demandMention(folder, ref)) ?? (await theirs(namesakes, called, asker));
  const others = namesakes.filter((ref) => !mentions.includes(ref));
  const born = await dated(asker, '--born', given.born, 'Born (1840, 1840~, 1840-03-02; Enter: not known)');
  const died = await dated(
    asker,
    '--died',
    given.died,
    'Died (the same; without either, a person is presumed living)',
  );
  return [`people/${settled}.md`, personText({ name: called, sex, born, died, mentions, namesakes: others })];
}

/**
 * Which mentions of that very name are this person. Where nobody can be asked, a single one is entered, to be looked at;
 * of several, none is taken for granted.
 */
async function theirs(namesakes: readonly string[], name: string, asker: Asker): Promise<string[]> {
  if (!asker.asks) return namesakes.length === 1 ? [...namesakes] : [];
  const mentions: string[] = [];
  for (const ref of namesakes) {
    const [record = '', mention = ''] = ref.split('#');
    const answer = await asker.ask({
      ask: `${record} names ${name} (${mention}). Is that this person? yes or no`,
      fallback: 'no',
      problem: (said) => (/^(?:y|yes|n|no)$/i.test(said) ? undefined : 'Answer yes or no.'),
    });
    if (/^y/i.test(answer ?? '')) mentions.push(ref);
  }
  return mentions;
}

function demandMention(folder: NewFolder, ref: string): string {
  const [record = '', mention = ''] = ref.split('#');
  folder.demand('record', record);
  const ids = folder.corpus.records.get(record)?.mentions.map(({ id }) => id) ?? [];
  if (!ids.includes(mention))
    throw new CannotRun(
      `The record ${record} has no mention “${mention}”. ${ids.length > 0 ? `Its mentions are ${listed(ids, 'and')}; write ${record}#${ids[0]}.` : 'It has no mentions yet.'}`,
    );
  return ref;
}

export interface CaseOptions {
  subject?: string;
  question?: string;
}

export async function newCase(
  folder: NewFolder,
  id: string | undefined,
  given: CaseOptions,
  today: string,
  asker: Asker,
): Promise<Made> {
  const people = [...folder.names('person').keys()];
  const only =
    id !== undefined && folder.has('person', id) ? id : people.length === 1 ? people[0] : undefined;
  const subject = await picked(folder, asker, 'person', given.subject, {
    ask: 'Whose origin is it about? The id of a person, or part of the name',
    fallback: only,
    required: true,
  });
  if (subject === undefined)
    throw new CannotRun(
      people.length === 0
        ? 'A case is about one person, and there are no people yet. Make them first: npm run new -- person ID --name "Their Name"'
        : `A case is about one person: say whom with --subject. The people are ${people.slice(0, 12).join(', ')}${people.length > 12 ? ` and ${people.length - 12} more` : ''}.`,
    );
  const name = folder.names('person').get(subject) ?? titleFromId(subject);
  const day = dayNumber(...(today.split('-').map(Number) as [number, number, number]));
  const unnamed = folder.corpus.site.audience !== 'family' && livingPeople(folder.corpus, day).has(subject);
  const fallback = unnamed ? 'Where was the person of this case born?' : `Where was ${name} born?`;
  const question =
    given.question ?? (await asker.ask({ ask: 'The question, as a sentence', fallback })) ?? fallback;
  const settled = await settledId(folder, 'case', id, name, asker);
  const mentions = folder.corpus.people.get(subject)?.mentions ?? [];
  const says = mentions.flatMap((ref) => {
    const [record = '', mention = ''] = ref.split('#');
    const found = folder.corpus.records.get(record)?.mentions.find((item) => item.id === mention);
    return found?.birthplace === undefined ? [] : [{ ref, birthplace: found.birthplace }];
  });
  return [
    `cases/${settled}.md`,
    caseText({ question, subject, living: unnamed ? name : undefined, mention: mentions[0], says }),
  ];
}

export interface PlaceOptions {
  name?: string;
  kind?: string;
  within?: string[];
}

export async function newPlace(
  folder: NewFolder,
  id: string | undefined,
  given: PlaceOptions,
  asker: Asker,
): Promise<Made> {
  const name =
    given.name ??
    (await asker.ask({ ask: 'The place’s name', fallback: id && titleFromId(id), required: true }));
  const settled = await settledId(folder, 'place', id, name, asker);
  const kind =
    given.kind ?? (await asker.ask({ ask: 'What is it? townland, parish, city, county …', required: true }));
  if (kind === undefined)
    throw new CannotRun('Say what kind of place it is with --kind, such as --kind townland.');
  const within =
    given.within?.map((above) => folder.demand('place', above)) ??
    [
      await picked(folder, asker, 'place', undefined, {
        ask: 'What does it lie in? The id of a place, or words',
        required: true,
      }),
    ].filter((above) => above !== undefined);
  if (within.length === 0)
    throw new CannotRun(
      'Say what it lies in with --within, such as --within co-waterford: every place lies in a country.',
    );
  return [
    `places/${settled}.yaml`,
    placeText({ id: settled, name: name ?? titleFromId(settled), kind, within }),
  ];
}

export interface SearchOptions {
  for?: string[];
  series?: string;
  coverage?: string;
  result?: (typeof results)[number];
}

export async function newSearch(
  folder: NewFolder,
  id: string | undefined,
  given: SearchOptions,
  today: string,
  asker: Asker,
): Promise<Made> {
  const subjects = [...new Set([...folder.corpus.cases.values()].map(({ subject }) => subject))];
  const whom =
    given.for?.map((person) => folder.demand('person', person)) ??
    [
      await picked(folder, asker, 'person', undefined, {
        ask: 'For whom? The id of a person, or part of the name',
        fallback: subjects.length === 1 ? subjects[0] : undefined,
        required: true,
      }),
    ].filter((person) => person !== undefined);
  const series = await picked(folder, asker, 'series', given.series, {
    ask: 'In which series? An id, or words such as “passenger lists”',
    required: true,
  });
  const coverage = await dated(
    asker,
    '--coverage',
    given.coverage,
    'Which years did you look through (1863/1865)',
  );
  const result = await oneOf(
    asker,
    given.result,
    `What came of it: ${results.join(', ')}`,
    results,
    'not-found',
  );
  const settled =
    id ??
    (await asker.ask({
      ask: 'Its id, which names the file',
      fallback: freeSearchId(folder),
      required: true,
    }))!;
  folder.demandFree('search', settled);
  return [
    `searches/${settled}.yaml`,
    searchText({
      id: settled,
      date: today,
      for: whom,
      series,
      title: series && folder.names('series').get(series),
      coverage,
      result: result ?? 'not-found',
    }),
  ];
}

/** `s1`, or the next number that is free. */
function freeSearchId(folder: NewFolder): string {
  for (let n = 1; ; n++) if (folder.corpus.fileOf(`search:s${n}`) === undefined) return `s${n}`;
}

export interface ReviewOptions {
  reviewer?: string;
  overall?: (typeof answers)[number];
}

export async function newReview(
  folder: NewFolder,
  caseId: string | undefined,
  given: ReviewOptions,
  today: string,
  asker: Asker,
): Promise<Made> {
  const id = await picked(folder, asker, 'case', caseId, {
    ask: 'Which case did you review?',
    required: true,
  });
  if (id === undefined) throw new CannotRun('Say which case was reviewed: npm run new -- review CASE-ID.');
  const reviewer = given.reviewer ?? (await asker.ask({ ask: 'Your name, as the reviewer', required: true }));
  const overall = await oneOf(
    asker,
    given.overall,
    'On the whole: agree, query or disagree',
    answers,
    asker.asks ? 'query' : undefined,
  );
  if (reviewer === undefined || overall === undefined)
    throw new CannotRun(
      'A review is signed and answers: give --reviewer "Your Name" and --overall agree, query or disagree.',
    );
  const examination = examine(loadCorpus(folder.dir), today);
  const digest = examination.digests.get(id);
  const result = examination.cases.get(id);
  if (digest === undefined || !result)
    throw new CannotRun(
      `The case ${id} rests on files with errors, so there is nothing settled to sign yet; npm run check lists them.`,
    );
  const points = result.points.map(({ point }) => point);
  return [
    `reviews/${id}/${idFrom(reviewer) || 'reviewer'}-${today}.yaml`,
    reviewText({ reviewer, date: today, digest: digest.whole, rests: digest.parts, overall, points }),
  ];
}
