/** Candidate families as the proof page sets them: the comparison’s table, and what is said of each. */
import type { CandidateCell, CandidatesView, CandidateView } from '../../src/dossier/candidates.ts';
import { joined, type Part, type Phrase } from '../../src/interface/phrase.ts';
import type { Dossier } from '../../src/dossier/types.ts';
import type { Namer } from '../../src/dossier/words.ts';
import type { Case } from '../../src/model/case.ts';
import * as href from '../layout/href.ts';
import type { Notebook } from './notebook.ts';

export interface CellView {
  said: Phrase;
  verdict: CandidateCell['verdict'];
}

export interface CandidateBlock extends Pick<
  CandidateView,
  'id' | 'ledger' | 'silent' | 'prior' | 'sum' | 'verdict' | 'byChance' | 'ties' | 'leftOut'
> {
  /** The anchor of its ledger. */
  anchor: string;
  people: Phrase;
  records: Phrase;
  note: Phrase;
  afterwards: Phrase;
}

export interface FamiliesView {
  rows: { what: string; here: CellView; there: CellView[] }[];
  blocks: CandidateBlock[];
  none: string;
}

/** What a proof page says of the candidates of a case. */
export function familiesOfCase(
  dossier: Dossier,
  c: Case,
  view: CandidatesView,
  names: Namer,
  book: Notebook,
): FamiliesView {
  const { and } = names.wording.everywhere;
  const link = ({ text, ref }: CandidateCell['said'][number]): Part => {
    if (ref.startsWith('search:')) {
      const id = ref.slice('search:'.length);
      return dossier.searches.has(id) ? { text, href: href.search(id) } : text;
    }
    return dossier.records.has(ref.slice(0, ref.indexOf('#'))) ? { text, href: href.mention(ref) } : text;
  };
  const cell = ({ said, more, verdict }: CandidateCell): CellView => ({
    said: [
      ...joined(
        said.map((one) => [link(one)]),
        ', ',
      ),
      ...(more > 0 ? [names.wording.candidates.more(more)] : []),
    ],
    verdict,
  });
  return {
    rows: view.rows.map(({ what, here, there }) => ({ what, here: cell(here), there: there.map(cell) })),
    none: view.none,
    blocks: view.candidates.map((one) => ({
      id: one.id,
      ledger: one.ledger,
      silent: one.silent,
      prior: one.prior,
      sum: one.sum,
      verdict: one.verdict,
      ...(one.byChance ? { byChance: one.byChance } : {}),
      ties: one.ties,
      leftOut: one.leftOut,
      anchor: `_family-${one.id}`,
      people: joined(
        one.people.map((person) => [names.person(person)]),
        and,
      ),
      records: joined(
        one.records.map((record) => [names.record(record), book.cite(record)]),
        and,
      ),
      note: names.linked(c.candidates.find(({ id }) => id === one.id)?.note ?? ''),
      afterwards:
        one.afterwards.said.length === 0
          ? [one.afterwards.sentence]
          : [
              one.afterwards.sentence,
              ' ',
              ...joined(
                one.afterwards.said.map((said) => [link(said)]),
                and,
              ),
              '.',
            ],
    })),
  };
}
