/**
 * Everything a proof page says, gathered before it is set. Notes are numbered here, in the order of the page, so that
 * their numbers do not hang on the order in which components happen to be rendered.
 */
import type { CaseView, Dossier } from '../../src/dossier/types.ts';
import type { Rendered } from '../../src/markdown/types.ts';
import type { CaseFile } from '../../src/model/case.ts';
import type { CaseResult } from '../../src/reasoning/types.ts';
import { mentionAt } from '../../src/model/facts.ts';
import { langOf } from '../layout/wording.ts';
import { associatesOfCase, type AssociatesOfCase } from './associates.ts';
import { bodiesOf, relationOf, type Fix } from './bodies.ts';
import { familiesOfCase, type FamiliesView } from './candidates.ts';
import { evidenceRow, type EvidenceRow } from './evidence.ts';
import { ledgerViews, type LedgerView } from './identity.ts';
import type { Namer } from '../../src/dossier/words.ts';
import { namerOf } from './names.ts';
import { notebook, type PageNote } from './notebook.ts';
import type { Phrase } from '../../src/interface/phrase.ts';
import { searchRows, type SearchRow } from './searches.ts';
import { saidPhrase } from './statements.ts';
import { doubtPhrase, groupPairs, marginPhrase, pairPhrase, pointTitle } from '../../src/dossier/words.ts';

export interface ConflictView {
  answered: boolean;
  /** What conflicts, in a sentence. */
  what: Phrase;
  /** The author’s answer. */
  answer: Phrase | null;
  /** By a rejected place rather than by a resolution. */
  rejected: boolean;
}

export interface ProofPage {
  result: CaseResult;
  fix: Fix | null;
  names: Namer;
  /** The author’s narrative. */
  argument: Rendered;
  evidence: EvidenceRow[];
  /** Who is who: the links between mentions and people that the conclusion depends on. */
  ledgers: LedgerView[];
  dependent: Phrase[];
  undetermined: Phrase[];
  argued: { pairs: Phrase[]; because: Phrase }[];
  conflicts: ConflictView[];
  rejected: { place: Phrase; because: Phrase }[];
  /** The candidate families, where there are any. */
  families: FamiliesView | null;
  searches: SearchRow[];
  overturn: Phrase;
  points: { title: string; holds: boolean; because: Phrase }[];
  problems: { severity: CaseResult['problems'][number]['severity']; words: Phrase; help: string }[];
  /** The associates that matter, where there are any. */
  associates: AssociatesOfCase | null;
  notes: PageNote[];
}

/** The proof page of a computed case. It is made once: records ask for its notes too. */
export function proofPage(dossier: Dossier, view: CaseView, result: CaseResult): ProofPage {
  let page = made.get(view);
  if (!page) made.set(view, (page = gathered(dossier, view, result)));
  return page;
}

const made = new WeakMap<CaseView, ProofPage>();

function gathered(dossier: Dossier, view: CaseView, result: CaseResult): ProofPage {
  const c = view.case;
  const names = namerOf(dossier, view);
  const book = notebook(dossier.records, view.argument.notes);
  const fix = bodiesOf(result, c.evidence);
  const kinship = (person: string) => {
    const kin = view.kinship.byPerson.get(person);
    return kin && person !== c.subject ? kin.words : '';
  };
  const evidence = result.items.flatMap((item) => {
    const given = c.evidence[item.index];
    return given ? [evidenceRow(dossier.facts, given, item, fix, names, book.cite, kinship)] : [];
  });
  const of = (relation: string) =>
    groupPairs(result.pairs.filter((pair) => relationOf(pair) === relation)).map((group) =>
      pairPhrase(group, names),
    );
  return {
    result,
    fix,
    names,
    argument: view.argument,
    evidence,
    ledgers: ledgerViews(dossier, view.links, names),
    dependent: of('dependent'),
    undetermined: of('undetermined'),
    argued: arguedPairs(c, result, names),
    conflicts: [...placedConflicts(dossier, c, result, names), ...otherConflicts(c, names)],
    rejected: c.rejected.map(({ place, because }) => ({
      place: [names.place(place)],
      because: names.linked(because),
    })),
    families:
      view.families.candidates.length > 0 ? familiesOfCase(dossier, c, view.families, names, book) : null,
    searches: searchRows(view.searches, dossier, names, book.cite),
    overturn: marginPhrase(result, names),
    points: result.points.map(({ point, holds, said }) => ({
      title: pointTitle(point, names.wording),
      holds,
      because: names.linked(names.wording.points.because(said)),
    })),
    problems: result.problems.map(({ severity, message, help }) => ({
      severity,
      words: names.linked(message),
      help,
    })),
    associates: associatesOfCase(dossier, view),
    notes: book.notes,
  };
}

function arguedPairs(c: CaseFile, result: CaseResult, names: Namer): ProofPage['argued'] {
  return c.independence.flatMap(({ because }, index) => {
    const pairs = result.pairs.filter((pair) => pair.argument === index);
    if (pairs.length === 0) return [];
    return [
      { pairs: groupPairs(pairs).map((group) => doubtPhrase(group, names)), because: names.linked(because) },
    ];
  });
}

/** Items that conflict with the place, each with the author’s answer or the lack of one. */
function placedConflicts(dossier: Dossier, c: CaseFile, result: CaseResult, names: Namer): ConflictView[] {
  return result.conflicts.map(({ evidence: id, answered, by }) => {
    const item = result.items.find((one) => one.id === id);
    const given = c.evidence.find((one) => one.id === id);
    const at = item?.mentions[0] && mentionAt(dossier.facts, item.mentions[0].ref);
    const said = at && saidPhrase(at.mention, given?.states, names.wording, langOf(at.record.language));
    const words = names.wording.proof.conflicts;
    const placeOf = (id: string | undefined, without: string) =>
      id === undefined ? without : names.place(id);
    const what: Phrase =
      given?.kind === 'negative'
        ? words.speaksAgainst(names.item(id), placeOf(given.against, words.thePlace))
        : words.readAs(names.item(id), said ?? undefined, placeOf(given?.place, words.anotherPlace));
    const resolution =
      by?.kind === 'conflicts'
        ? c.conflicts[by.index]?.resolution
        : by
          ? c.rejected[by.index]?.because
          : undefined;
    return {
      answered,
      what,
      answer: resolution === undefined ? null : names.linked(resolution),
      rejected: by?.kind === 'rejected',
    };
  });
}

/** Conflicts the author found and answered that name no place: an age, a name, a date. */
function otherConflicts(c: CaseFile, names: Namer): ConflictView[] {
  return c.conflicts
    .filter((conflict) => conflict.evidence === undefined)
    .map(({ about, between, resolution }) => ({
      answered: true,
      what: names.wording.proof.conflicts.about(
        about && names.wording.words.statement(about),
        (between ?? []).map((id) => names.item(id)),
      ),
      answer: names.linked(resolution),
      rejected: false,
    }));
}
