/** The searches of a case as rows: when, for whom, in what, and with what result. */
import type { Search } from '../../src/model/search.ts';
import type { Dossier } from '../../src/dossier/types.ts';
import { coverageInWords, dateInWords } from '../layout/dates.ts';
import type { Namer } from '../../src/dossier/words.ts';
import { joined, type Part, type Phrase } from '../../src/interface/phrase.ts';

export interface SearchRow {
  id: string;
  found: boolean;
  date: string;
  name: Phrase;
  whom: Phrase;
  series: string;
  coverage: string;
  where: string;
  result: string;
  nothing: boolean;
  records: Phrase;
  note: string;
}

/** A row for each search, those with nothing found first, otherwise in the order of the log. */
export function searchRows(
  searches: readonly Search[],
  dossier: Dossier,
  names: Namer,
  cite: (record: string) => Part,
): SearchRow[] {
  const nothing = (search: Search) => search.result === 'not-found';
  return [...searches.filter(nothing), ...searches.filter((search) => !nothing(search))].map((search) => ({
    id: search.id,
    found: search.result === 'found',
    date: dateInWords(search.date),
    name: [names.search(search.id)],
    whom: joined(
      search.for.map((id) => [names.person(id)]),
      names.wording.everywhere.and,
    ),
    series: dossier.series.get(search.series)?.title ?? search.series,
    coverage: search.coverage === undefined ? '' : coverageInWords(search.coverage),
    where: search.where ?? '',
    result: names.wording.words.result(search.result),
    nothing: nothing(search),
    records: joined(
      search.records.map((id) => [names.record(id), cite(id)]),
      names.wording.everywhere.and,
    ),
    note: search.note ?? '',
  }));
}
