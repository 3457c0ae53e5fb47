/** The log of searches, and what each person’s life should have left, as comma-separated values. */
import { csvLine } from '../../dossier/csv.ts';
import type { Dossier } from '../../dossier/types.ts';

/** Every search, one line for each. */
export function searchesCsv({ searches, series }: Pick<Dossier, 'searches' | 'series'>): string {
  const lines = [
    csvLine([
      'id',
      'date',
      'for',
      'series',
      'title of series',
      'years',
      'where',
      'result',
      'records',
      'note',
    ]),
  ];
  for (const search of searches.values())
    lines.push(
      csvLine([
        search.id,
        search.date,
        search.for.join('; '),
        search.series,
        series.get(search.series)?.title ?? '',
        search.coverage ?? '',
        search.where ?? '',
        search.result,
        search.records.join('; '),
        search.note ?? '',
      ]),
    );
  return lines.join('');
}

/** For each person of each case: the series that should name them, and what became of each. */
export function coverageCsv({ cases }: Pick<Dossier, 'cases'>): string {
  const lines = [
    csvLine([
      'case',
      'person',
      'name',
      'relation',
      'series',
      'title of series',
      'what',
      'years',
      'place',
      'status',
    ]),
  ];
  for (const { id, plan } of cases.values())
    for (const person of plan.people)
      for (const row of person.rows)
        lines.push(
          csvLine([
            id,
            person.person ?? '',
            person.name,
            person.words,
            row.series,
            row.title,
            row.what,
            row.years,
            row.placeName,
            row.status,
          ]),
        );
  return lines.join('');
}
