/**
 * Large or awkward corpora whose answers are known by argument, so that no second computation is needed.
 * Every case is called `shape`, concludes for Glen over there, and cites every item unless it says otherwise.
 */
import type { Facts } from '../../src/model/facts.ts';
import { facts } from './facts.ts';
import type { RawCase, RawPerson, RawPlace, RawRecord } from './facts.ts';

export type RawEvidence = NonNullable<RawCase['evidence']>[number];

const clerk = { clerk: { described: 'the clerk', knowledge: 'primary' as const } };
export const range = (length: number) => Array.from({ length }, (_, i) => i);

/** A record made over here whose clerk knew at first hand, with one mention `m` of the subject. */
export function record(id: string, rest: Partial<RawRecord> = {}): RawRecord {
  return { id, place: 'here', informants: clerk, mentions: [{ id: 'm', birthplace: 'Glin' }], ...rest };
}

/** A record of the same kind that copies others and names no informant. */
export function copy(
  id: string,
  derivedFrom: RawRecord['derivedFrom'],
  rest: Partial<RawRecord> = {},
): RawRecord {
  return record(id, { derivedFrom, informants: {}, ...rest });
}

export function item(id: string, from: string | string[], rest: Partial<RawEvidence> = {}): RawEvidence {
  return { id, from, states: 'birthplace', place: 'glen', kind: 'direct', ...rest };
}

interface Plan {
  records: RawRecord[];
  evidence: RawEvidence[];
  /** Mentions that are not the subject's: nobody's. */
  strangers?: string[];
  people?: RawPerson[];
  places?: RawPlace[];
  cites?: string[];
  place?: string;
}

/** Facts with one case from records and items. */
export function shape({
  records,
  evidence,
  strangers = [],
  people = [],
  places,
  cites,
  place = 'glen',
}: Plan): Facts {
  const claimed = new Set([...strangers, ...people.flatMap((person) => [person.mentions ?? []].flat())]);
  const mentions = records
    .flatMap((r) => (r.mentions ?? []).map((m) => `${r.id}#${m.id}`))
    .filter((ref) => !claimed.has(ref));
  return facts({
    records,
    people: [{ id: 'subject', mentions }, ...people],
    places: places ?? [
      { id: 'there', kind: 'country' },
      { id: 'glen', kind: 'townland', within: ['there'] },
      { id: 'here', kind: 'country' },
    ],
    cases: [
      {
        id: 'shape',
        subject: 'subject',
        evidence,
        conclusion: {
          place,
          claim: 'probable',
          cites: cites ?? evidence.map(({ id }) => id),
          because: 'They agree.',
        },
      },
    ],
  });
}

/** Items `e0`, `e1` … of records `r0`, `r1` …, two of them dependent exactly when `joined` says so: one teller told both. */
export function dependencyGraph(size: number, joined: (a: number, b: number) => boolean): Facts {
  const tellers = range(size).map((a) =>
    range(size)
      .filter((b) => a !== b && joined(Math.min(a, b), Math.max(a, b)))
      .map((b) => `teller-${Math.min(a, b)}-${Math.max(a, b)}`),
  );
  return shape({
    records: range(size).map((i) =>
      record(`r${i}`, {
        informants: { self: { described: 'somebody', toldBy: [`own-${i}`, ...(tellers[i] ?? [])] } },
      }),
    ),
    evidence: range(size).map((i) => item(`e${i}`, `r${i}#m`)),
    people: [...new Set([...tellers.flat(), ...range(size).map((i) => `own-${i}`)])].map((id) => ({ id })),
  });
}
