/** The check's findings and standings as one JSON document, in the form the documentation promises (version 1). */
import { isoDay } from '../../model/days.ts';
import { english } from '../../interface/index.ts';
import type { Examination } from '../../dossier/examine.ts';
import type { CaseResult } from '../../reasoning/types.ts';

/** The document as an object, keys in their published order. */
export function checkDocument(examination: Examination): object {
  const { corpus, cases, digests, births, living, findings, ok } = examination;
  return {
    version: 1,
    ok,
    counts: corpus.counts,
    findings: findings.map(({ severity, rule, file, line, column, message, help }) => ({
      severity,
      rule,
      file,
      line,
      column,
      message,
      help,
    })),
    cases: [...cases].map(([id, result]) =>
      result ? caseRow(result, digests.get(id)?.whole ?? null) : notComputed(examination, id),
    ),
    people: [...corpus.people.keys()].map((id) => {
      const birth = births.get(id);
      return {
        id,
        born: { earliest: iso(birth?.first), latest: iso(birth?.last) },
        outliers: birth?.outliers ?? [],
        living: living.has(id),
      };
    }),
  };
}

function caseRow(result: CaseResult, digest: string | null): object {
  return {
    id: result.id,
    subject: result.subject,
    claim: result.claim,
    place: result.place,
    standing: result.standing,
    independent: result.independent,
    support: result.support.map(({ place, kind, independent, evidence }) => ({
      place,
      kind,
      independent,
      evidence,
    })),
    dependence: result.dependence,
    undetermined: result.undetermined,
    argued: result.argued,
    untied: result.untied,
    conflicts: result.conflicts.map(({ evidence, answered }) => ({ evidence, answered })),
    margin: result.margin,
    criticalRecords: result.criticalRecords,
    points: result.points.map(({ point, holds, said }) => ({
      point,
      holds,
      because: english.points.because(said),
    })),
    digest,
  };
}

/** A case that rests on something broken keeps its place in the list, without a standing. */
function notComputed({ corpus, blocked }: Examination, id: string): object {
  const c = corpus.cases.get(id);
  return {
    id,
    subject: c?.subject ?? null,
    claim: c?.conclusion?.claim ?? (c?.hypothesis ? 'hypothesis' : null),
    place: c?.conclusion?.place ?? c?.hypothesis?.place ?? null,
    standing: null,
    independent: 0,
    support: [],
    dependence: [],
    undetermined: [],
    argued: [],
    untied: [],
    conflicts: [],
    margin: 0,
    criticalRecords: [],
    points: [],
    digest: null,
    blockedBy: blocked.get(id) ?? [],
  };
}

function iso(day: number | null | undefined): string | null {
  return day === null || day === undefined ? null : isoDay(day);
}
