/**
 * The roots of a statement: where its information comes from. Rules 1 to 6 of the content contract, which render the
 * trade's questions *who said so, how did they know, and from whom had they it* (common practice).
 *
 * A statement is followed through derivations as states: a mention of a record, or a statement that stands in a
 * record in nobody's mention (a derivative that doesn't say which mention it copies). States that lie in no circle
 * are answered from the exemplars upward, so a chain of thousands of copies is as cheap as one.
 */
import { mentionAt, type Facts } from '../model/facts.ts';
import type { Informant } from '../model/record.ts';
import { derivationTarget } from './derivation.ts';
import { kinOf } from './kin.ts';
import { once } from './once.ts';
import {
  exemplarStates,
  informantOf,
  ownRoots,
  unknownRoot,
  type Exemplar,
  type State,
} from './statements.ts';
import { strongComponents } from './strong-components.ts';
import type { Root } from './types.ts';

type Roots = ReadonlyMap<string, Root>;

/**
 * The roots of what the mention `ref` says under `states` (or of the mention as a whole without it), by key in a
 * fixed order. Empty only when `ref` names no mention.
 */
export function rootsOf(facts: Facts, ref: string, states: string | undefined): Root[] {
  const at = mentionAt(facts, ref);
  if (!at) return [];
  const found = tracer(facts)(states).of({
    key: ref,
    record: at.record,
    mention: at.mention,
    owner: kinOf(facts).owner(ref),
  });
  return [...found.values()].sort((a, b) => (a.key < b.key ? -1 : 1));
}

/** The union of several root sets: known beats possible, certain beats `perhaps`. */
export function mergeRoots(sets: readonly Iterable<Root>[]): Root[] {
  const all = new Map<string, Root>();
  for (const set of sets) for (const root of set) add(all, root);
  return [...all.values()].sort((a, b) => (a.key < b.key ? -1 : 1));
}

/** Informants reached without a `perhaps`, the record's own first: for the reviewer's points and the pages. */
export function informantsBehind(
  facts: Facts,
  ref: string,
  states: string | undefined,
): { record: string; informant: Informant }[] {
  const at = mentionAt(facts, ref);
  if (!at) return [];
  const found: { record: string; informant: Informant }[] = [];
  const seen = new Set<string>();
  const queue: State[] = [{ key: ref, record: at.record, mention: at.mention, owner: undefined }];
  for (let state = queue.shift(); state; state = queue.shift()) {
    if (seen.has(state.key)) continue;
    seen.add(state.key);
    const spoke = informantOf(state.record, state.mention, states);
    if (spoke) found.push({ record: state.record.id, informant: spoke.informant });
    for (const exemplar of exemplarStates(facts, state, states))
      if (!exemplar.perhaps) queue.push(exemplar.state);
  }
  return found;
}

const tracer = once((facts: Facts) => {
  const byStatement = new Map<string | undefined, ReturnType<typeof trace>>();
  return (states: string | undefined) => {
    let tracing = byStatement.get(states);
    if (!tracing) byStatement.set(states, (tracing = trace(facts, states)));
    return tracing;
  };
});

function trace(facts: Facts, states: string | undefined) {
  const settled = new Map<string, Roots>();

  /** A state's roots but for those it gets inside its own circle of records. `certain` keeps to rule 6. */
  const apart = (
    state: State,
    circle: Circle,
  ): { certain: Map<string, Root>; possible: Root[]; inside: Exemplar[] } => {
    const certain = new Map<string, Root>();
    const possible: Root[] = [];
    const exemplars = exemplarStates(facts, state, states);
    for (const root of ownRoots(facts, state, states)) add(certain, root);
    // Rule 6. A certain exemplar accounts for the statement even where it only leads back round a circle.
    if (certain.size === 0 && exemplars.every((exemplar) => exemplar.perhaps))
      add(certain, unknownRoot(state.record.id));
    const inside: Exemplar[] = [];
    for (const exemplar of exemplars) {
      if (circle.records.has(exemplar.state.record.id)) inside.push(exemplar);
      else
        for (const root of settled.get(exemplar.state.key)!.values())
          take(root, exemplar.perhaps, certain, possible);
    }
    return { certain, possible, inside };
  };

  /** One state's roots; records in `path` are being gone round already and add nothing. */
  const walk = (state: State, path: readonly string[], circle: Circle): Roots => {
    const here = [...path, state.record.id].sort();
    const memo = `${state.key}\n${here.join(' ')}`;
    const done = circle.walked.get(memo);
    if (done) return done;
    const { certain, possible, inside } = apart(state, circle);
    for (const exemplar of inside) {
      if (here.includes(exemplar.state.record.id)) continue;
      for (const root of walk(exemplar.state, here, circle).values())
        take(root, exemplar.perhaps, certain, possible);
    }
    const roots = union(certain, possible);
    circle.walked.set(memo, roots);
    return roots;
  };

  /**
   * Where each record of a circle is met in one state only, the simple paths from a state reach exactly what plain
   * reachability does, first by certain steps and then by any; a large circle then costs no more than a small one.
   * `undefined` where some record is met in two states, so that only walking the paths tells.
   */
  const sweep = (start: State, circle: Circle): Roots | undefined => {
    const met = new Map<string, State>([[start.record.id, start]]);
    const certain = new Map<string, Root>();
    const possible: Root[] = [];
    const later: State[] = [];
    const visit = (queue: State[], perhaps: boolean): boolean => {
      for (let state = queue.pop(); state; state = queue.pop()) {
        const part = apart(state, circle);
        for (const root of part.certain.values()) take(root, perhaps, certain, possible);
        for (const root of part.possible) possible.push(root);
        for (const exemplar of part.inside) {
          const before = met.get(exemplar.state.record.id);
          if (before === start) continue;
          if (before && before.key !== exemplar.state.key) return false;
          if (exemplar.perhaps && !perhaps) later.push(exemplar.state);
          else if (!before) {
            met.set(exemplar.state.record.id, exemplar.state);
            queue.push(exemplar.state);
          }
        }
      }
      return true;
    };
    if (!visit([start], false)) return undefined;
    for (const state of later) {
      const before = met.get(state.record.id);
      if (before && before.key !== state.key) return undefined;
      if (before) continue;
      met.set(state.record.id, state);
      if (!visit([state], true)) return undefined;
    }
    return union(certain, possible);
  };

  return {
    of(start: State): Roots {
      const done = settled.get(start.key);
      if (done) return done;
      const reached = new Map<string, Map<string, State>>();
      const queue = [start];
      for (let state = queue.pop(); state; state = queue.pop()) {
        const ofRecord =
          reached.get(state.record.id) ?? reached.set(state.record.id, new Map()).get(state.record.id)!;
        if (settled.has(state.key) || ofRecord.has(state.key)) continue;
        ofRecord.set(state.key, state);
        for (const exemplar of exemplarStates(facts, state, states)) queue.push(exemplar.state);
      }
      for (const records of strongComponents(start.record.id, (record) => exemplarRecords(facts, record))) {
        const circle: Circle = {
          records: new Set(
            records.length > 1 || exemplarRecords(facts, records[0]!).includes(records[0]!) ? records : [],
          ),
          walked: new Map(),
        };
        for (const record of records)
          for (const state of reached.get(record)?.values() ?? [])
            settled.set(
              state.key,
              (circle.records.size > 0 ? sweep(state, circle) : undefined) ?? walk(state, [], circle),
            );
      }
      return settled.get(start.key)!;
    },
  };
}

/** Records that derive from each other in a circle (none for a record in no circle), and answers found in it. */
interface Circle {
  records: ReadonlySet<string>;
  walked: Map<string, Roots>;
}

function take(root: Root, perhaps: boolean, certain: Map<string, Root>, possible: Root[]): void {
  if (perhaps) possible.push({ ...root, known: false, viaPerhaps: true });
  else add(certain, root);
}

function union(certain: ReadonlyMap<string, Root>, possible: readonly Root[]): Roots {
  const roots = new Map(certain);
  for (const root of possible) add(roots, root);
  return roots;
}

function exemplarRecords(facts: Facts, record: string): string[] {
  return (facts.records.get(record)?.derivedFrom ?? [])
    .map(derivationTarget)
    .filter((target) => target !== undefined && facts.records.has(target.record))
    .map((target) => target!.record);
}

function add(roots: Map<string, Root>, root: Root): void {
  const held = roots.get(root.key);
  roots.set(
    root.key,
    held
      ? { ...held, known: held.known || root.known, viaPerhaps: held.viaPerhaps && root.viaPerhaps }
      : root,
  );
}
