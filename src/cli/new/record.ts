/** `new record`: one document you examined, asked for by what its series tells. */
import { censusDay } from '../../catalogue/census-days.ts';
import { builtInSeries } from '../../catalogue/series/index.ts';
import { householdRoles, shapeOf } from './record-shape.ts';
import { eventIn, hasEvents } from './shapes/events.ts';
import { eventKinds, type EventKind, type RecordShape } from './shapes/shape.ts';
import { edtfProblem } from '../../model/edtf.ts';
import type { Series } from '../../model/series.ts';
import { CannotRun } from '../../corpus/types.ts';
import type { Asker } from './asker.ts';
import { settledId } from './ids.ts';
import type { NewFolder } from './folder.ts';
import { picked } from './pick.ts';
import { fieldProblem, fieldsOf } from './record-fields.ts';
import { recordText, type MentionFill, type RecordFill, type Voyage } from './record-text.ts';

export interface RecordOptions {
  title?: string;
  name?: string[];
  series?: string;
  event?: EventKind;
  place?: string;
  made?: string;
  ship?: string;
  line?: string;
  from?: string;
  to?: string;
}

/** Asks what is not given, and returns the file. */
export async function newRecord(
  folder: NewFolder,
  givenId: string | undefined,
  given: RecordOptions,
  asker: Asker,
): Promise<[path: string, text: string]> {
  if (givenId !== undefined) folder.demandFree('record', givenId);
  const seriesId = await picked(folder, asker, 'series', given.series, {
    ask: 'Which series does it belong to? An id, or words such as “census 1900” (Enter: none)',
  });
  const series = seriesId === undefined ? undefined : folder.corpus.series.get(seriesId);
  const event = await eventOf(series, `${givenId ?? ''} ${given.title ?? ''}`, given.event, asker);
  const shape = shapeOf(series, event);
  const place = await picked(folder, asker, 'place', given.place, {
    ask: 'Where was it made? The id of a place, or words (Enter: later)',
  });
  const voyage = shape.list === 'passengers' ? await voyageOf(given, asker) : undefined;
  const made = await madeOf(series, place, folder, given, voyage, asker);
  const mentions = await mentionsOf(shape, series, made, given.name ?? [], asker);
  const title =
    given.title ??
    (await asker.ask({
      ask: 'What shall it be called',
      fallback:
        titleFor(shape, series, mentions, voyage, made, place && folder.names('place').get(place)) ??
        undefined,
      required: givenId === undefined,
    }));
  const head = mentions[0]?.name;
  const short = shape.list === 'household' && head ? `census ${head} ${yearOf(made) ?? ''}` : title;
  const id = await settledId(folder, 'record', givenId, short, asker);
  const note = builtInSeries.find((row) => row.id === seriesId)?.note;
  const fill: RecordFill = {
    title: title ?? titleFromId(id),
    shape,
    series,
    note,
    place,
    made,
    voyage,
    mentions,
  };
  return [`records/${id}.md`, recordText(fill)];
}

/** Words from an id: `maurice-phelan` as “Maurice Phelan”. */
export function titleFromId(id: string): string {
  return id
    .split('-')
    .map((word) => word.charAt(0).toUpperCase() + word.slice(1))
    .join(' ');
}

async function eventOf(
  series: Series | undefined,
  words: string,
  given: EventKind | undefined,
  asker: Asker,
): Promise<EventKind | undefined> {
  if (given !== undefined) {
    if (series && !hasEvents.has(series.kind))
      throw new CannotRun(
        `--event is for registers and certificates; ${series.id} is of the kind ${series.kind}.`,
      );
    return given;
  }
  if (series && !hasEvents.has(series.kind)) return undefined;
  const ofSeries = series?.kind === 'vital' ? eventIn(series.id.replace('births-deaths', '')) : undefined;
  if (ofSeries) return ofSeries;
  const guess = eventIn(words);
  if (!series) return guess;
  return (await asker.ask({
    ask: `What does it record? ${eventKinds.join(', ')}`,
    fallback: guess ?? (series.kind === 'church' ? 'baptism' : 'birth'),
    problem: (answer) =>
      (eventKinds as readonly string[]).includes(answer)
        ? undefined
        : `Answer one of ${eventKinds.join(', ')}.`,
  })) as EventKind;
}

/** What is wrong with a date, as a sentence. */
export function dateProblem(answer: string): string | undefined {
  return edtfProblem(answer) ?? undefined;
}

async function voyageOf(given: RecordOptions, asker: Asker): Promise<Voyage> {
  const ship = given.ship ?? (await asker.ask({ ask: 'Name of the ship' }));
  const line = given.line ?? (await asker.ask({ ask: 'Shipping line, if the list says' }));
  const from = given.from ?? (await asker.ask({ ask: 'Sailed from, as written' }));
  const to = given.to ?? (await asker.ask({ ask: 'To, as written' }));
  return { ship, line, from, to };
}

async function madeOf(
  series: Series | undefined,
  place: string | undefined,
  folder: NewFolder,
  given: RecordOptions,
  voyage: Voyage | undefined,
  asker: Asker,
): Promise<string | undefined> {
  const day = series && censusDay(series.id, { at: chainOf(folder, place) })?.day;
  const made =
    given.made ??
    (await asker.ask({
      ask: voyage ? 'Arrived on (1864-05-02)' : 'When was it made (1871-04-11, 1871-04, 1840~)',
      fallback: day,
      problem: dateProblem,
    }));
  const problem = made === undefined ? undefined : dateProblem(made);
  if (problem) throw new CannotRun(`--made: ${problem}`);
  return made;
}

/** A place and all that it lies in. */
function chainOf(folder: NewFolder, place: string | undefined): string[] {
  const chain: string[] = [];
  const open = place === undefined ? [] : [place];
  for (let id = open.pop(); id !== undefined; id = open.pop()) {
    if (chain.includes(id)) continue;
    chain.push(id);
    open.push(...(folder.corpus.places.get(id)?.within ?? []).map(({ place: above }) => above));
  }
  return chain;
}

/** Who is named: those the record always names, others as they are given, and a list until an empty line. */
async function mentionsOf(
  shape: RecordShape,
  series: Series | undefined,
  made: string | undefined,
  names: readonly string[],
  asker: Asker,
): Promise<MentionFill[]> {
  const fields = fieldsOf(series, made);
  const mentions: MentionFill[] = [];
  const carried = new Map<string, string>();
  const add = async (of: MentionFill, main: boolean) => {
    mentions.push(of);
    if (!main || !asker.asks || of.name === undefined) return;
    for (const { key, ask, carries } of fields) {
      if ((key === 'sex' && of.sex) || of.skips?.includes(key)) continue;
      const answer = await asker.ask({
        ask: `  ${ask}`,
        fallback: carries ? carried.get(key) : undefined,
        problem: (given) => fieldProblem(key, given),
      });
      if (answer === undefined) continue;
      of.answers.set(key, answer);
      if (carries) carried.set(key, answer);
    }
  };
  if (asker.asks)
    asker.say(
      shape.list
        ? 'Now the names, as they are written. Enter leaves a column open; Enter in place of a name ends the list.'
        : 'Now the names, as they are written. Enter leaves one out.',
    );
  for (const [at, member] of shape.cast.entries()) {
    const name = names[at] ?? (await asker.ask({ ask: `Name of ${member.asked}` }));
    if (name !== undefined || member.main)
      await add({ ...member, name, answers: new Map(), at }, Boolean(member.main));
    else mentions.push({ ...member, name, answers: new Map(), at, leftOut: true });
  }
  // Whoever is called head begins a household of their own: the neighbours of the first.
  let head = 0;
  for (let at = shape.cast.length; ; at++) {
    const more = shape.list || names[at] !== undefined;
    const name =
      names[at] ?? (more && names.length <= shape.cast.length ? await nextName(shape, asker) : undefined);
    if (name === undefined) break;
    const role = shape.list === 'passengers' ? 'passenger' : shape.list ? await roleIn(asker) : undefined;
    const as = role === undefined ? undefined : toHead[role.toLowerCase()];
    if (role?.toLowerCase() === 'head') head = at;
    await add(
      { role, asked: '', name, answers: new Map(), at, ...(as ? { relations: [{ as, of: head }] } : {}) },
      true,
    );
  }
  return mentions;
}

const nextName = (shape: RecordShape, asker: Asker) =>
  asker.ask({
    ask:
      shape.list === 'passengers'
        ? 'Next passenger (Enter: no more)'
        : 'Next in the household (Enter: no more)',
  });

const roleIn = (asker: Asker) =>
  asker.ask({ ask: `  Relation to the head, as written (${householdRoles.join(', ')} …)` });

/** How a member of a household stands to its head, by the usual words of the column. */
const toHead: Readonly<Record<string, string>> = {
  wife: 'spouse',
  husband: 'spouse',
  son: 'child',
  daughter: 'child',
  father: 'parent',
  mother: 'parent',
  brother: 'sibling',
  sister: 'sibling',
  boarder: 'boarder',
  lodger: 'lodger',
  servant: 'servant',
};

const yearOf = (made: string | undefined) => made?.match(/\d{4}/)?.[0];

function titleFor(
  shape: RecordShape,
  series: Series | undefined,
  mentions: readonly MentionFill[],
  voyage: Voyage | undefined,
  made: string | undefined,
  place: string | undefined,
): string | undefined {
  const year = yearOf(made);
  const named = mentions
    .filter(({ name, leftOut }) => name !== undefined && !leftOut)
    .map(({ name }) => name!);
  const rest = [place, year].filter((part) => part !== undefined);
  if (shape.event && named.length > 0) {
    const whose = shape.event === 'marriage' && named.length > 1 ? `${named[0]} and ${named[1]}` : named[0]!;
    return [`${shape.event.charAt(0).toUpperCase()}${shape.event.slice(1)} of ${whose}`, ...rest].join(', ');
  }
  if (voyage?.ship)
    return [`Passenger list of the ${voyage.ship}`, voyage.to ?? place, year].filter(Boolean).join(', ');
  if (shape.list === 'household' && series)
    return [series.title, place, named[0] && `household of ${named[0]}`].filter(Boolean).join(', ');
  if (shape.cite.genre && named[0])
    return [
      `${shape.cite.genre.charAt(0).toUpperCase()}${shape.cite.genre.slice(1)}, ${named[0]}`,
      ...rest,
    ].join(', ');
  return undefined;
}
