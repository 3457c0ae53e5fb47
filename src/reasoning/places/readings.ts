/**
 * Whether the places an author reads in a case are among those its readings may mean. The rule: a place read from a
 * record must be one the record's spelling and chain allow, or a broader one; and where several places fit equally
 * well, why it is this one must be said. *Common practice*: a place of a common name identifies nothing by itself.
 */
import type { Case, Evidence } from '../../model/case.ts';
import { mentionAt, statementOf, type Facts } from '../../model/facts.ts';
import { once } from '../once.ts';
import type { CaseProblem } from '../types.ts';
import { gazetteerOf, shareGround, type Gazetteer } from './gazetteer.ts';
import { resolveReading } from './resolve.ts';
import type { PlaceCandidate, ResolvedReading } from './types.ts';

/** The places of a corpus, prepared when a reading is first looked up in them. */
const gazetteerOfPlaces = once((places: Facts['places']): Gazetteer => gazetteerOf(places.values()));

const answered = once((_places: Facts['places']) => new Map<string, ResolvedReading>());

/** What a reading resolves to among the places of a corpus; each different reading is worked out once. */
export function readingIn({ places }: Pick<Facts, 'places'>, reading: string): ResolvedReading {
  const known = answered(places);
  let resolved = known.get(reading);
  if (!resolved)
    known.set(reading, (resolved = resolveReading(gazetteerOfPlaces(places), reading, { limit: 60 })));
  return resolved;
}

/** A statement under a name of the author's own is a place only where its name says so. */
const namesPlace =
  /^says\.(?:.*[-_])?(?:birthplace|place|origin|home|native|from|parish|townland|county|town|farm|last-residence)$/i;

/** The readings of a place a statement holds: one of most, up to three of a voyage. */
export function readingsOf(statement: unknown, states: string): string[] {
  if (typeof statement === 'string')
    return ['birthplace', 'residence', 'lastResidence'].includes(states) || namesPlace.test(states)
      ? [statement]
      : [];
  if (typeof statement !== 'object' || statement === null) return [];
  const keys = states === 'event' ? ['place'] : states === 'voyage' ? ['from', 'bound', 'to'] : [];
  return keys.flatMap((key) => {
    const value = (statement as Record<string, unknown>)[key];
    return typeof value === 'string' ? [value] : [];
  });
}

/** What is to be said of the places a case's evidence is read as. */
export function readingProblems(facts: Facts, c: Case): CaseProblem[] {
  return c.evidence.flatMap((item, index) => {
    if (item.place === undefined || item.states === undefined || item.kind === 'negative') return [];
    if (!facts.places.has(item.place)) return [];
    const judged = item.from.flatMap((ref) => {
      const at = mentionAt(facts, ref);
      const readings = at ? readingsOf(statementOf(at.mention, item.states!), item.states!) : [];
      return readings.map((reading) => ({ reading, made: at?.record.place }));
    });
    const verdicts = judged.map(({ reading, made }) => judge(facts, item, reading, made));
    // Several readings may be read together: where one allows the place, the others may say less.
    const [first] = verdicts;
    if (!first || verdicts.some((verdict) => verdict === null)) return [];
    return [{ ...first, path: ['evidence', index, 'place'] }];
  });
}

type Verdict = Omit<CaseProblem, 'path'> | null;

function judge(facts: Facts, item: Evidence, reading: string, made: string | undefined): Verdict {
  // A house number stands for a street the gazetteer of places knows nothing of.
  if (/^\s*\d/.test(reading)) return null;
  const gazetteer = gazetteerOfPlaces(facts.places);
  const resolved = readingIn(facts, reading);
  const own = gazetteer.position.get(item.place!)!;
  const at = (candidate: PlaceCandidate) => gazetteer.position.get(candidate.id)!;
  const name = facts.places.get(item.place!)!.name;
  const severity = item.note === undefined ? ('warning' as const) : ('hint' as const);
  const best = resolved.candidates[0]?.score ?? 0;
  const plausible = resolved.candidates.filter((candidate) => candidate.score >= best - 0.1);
  if (resolved.container) plausible.push(resolved.container);

  if (!plausible.some((candidate) => allows(gazetteer, at(candidate), own)))
    return {
      rule: 'reading-allows-its-place',
      severity,
      message: `${item.id} reads “${reading}” as ${name}. ${found(resolved, plausible)}`,
      help: `Choose a place the reading allows, or, if ${name} was written so, add “${reading}” to its variants; or say in the item’s note why it is that place.`,
    };
  const equal =
    resolved.outcome === 'ambiguous'
      ? resolved.candidates.slice(0, resolved.equals + resolved.sameGround.length)
      : [];
  const rivals = equal.filter(
    (candidate) =>
      !shareGround(gazetteer, at(candidate), own) && !neighbours(gazetteer, made, own, at(candidate)),
  );
  if (rivals.length === 0 || item.note !== undefined) return null;
  return {
    rule: 'reading-names-one-place',
    severity,
    message: `${item.id} reads “${reading}” as ${name}, but it may as well be ${rivals.slice(0, 3).map(described).join(', or ')}${rivals.length > 3 ? `, or one of ${rivals.length - 3} more` : ''}.`,
    help: 'Say in the item’s note why it is this one, or read only the broader place that holds them all.',
  };
}

/** A reading allows its own place, every place around it, and places that share its ground; nothing smaller inside it. */
function allows(gazetteer: Gazetteer, read: number, own: number): boolean {
  return (
    read === own ||
    gazetteer.above[gazetteer.lineage[read]!]!.includes(own) ||
    (gazetteer.overlaps.get(read)?.includes(own) ?? false)
  );
}

/** Whether the record was made where the chosen place is and the other is not: people wrote of the place at hand. */
function neighbours(gazetteer: Gazetteer, made: string | undefined, own: number, other: number): boolean {
  const here = made === undefined ? undefined : gazetteer.position.get(made);
  if (here === undefined) return false;
  return shareGround(gazetteer, here, own) && !shareGround(gazetteer, here, other);
}

function found(resolved: ResolvedReading, plausible: readonly PlaceCandidate[]): string {
  if (plausible.length === 0) return 'Nothing in the gazetteer is spelled like that.';
  if (resolved.container) return resolved.message;
  const [first] = plausible;
  return `It fits ${described(first!)} better${plausible.length > 1 ? ', and others' : ''}.`;
}

function described({ name, kind, path }: PlaceCandidate): string {
  return `${name} (${[kind, path[1]].filter(Boolean).join(', ')})`;
}
