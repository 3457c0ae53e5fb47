/** People as comma-separated values, one line for each. */
import { csvLine } from '../../dossier/csv.ts';
import type { Dossier } from '../../dossier/types.ts';

const headings = [
  'id',
  'name',
  'sex',
  'born earliest',
  'born latest',
  'born as stated',
  'birthplace',
  'died',
  'place of death',
  'parents',
  'spouses',
  'married',
  'children',
  'names in records',
  'mentions',
  'cases',
];

/** Everyone who is shown. */
export function peopleCsv({ people }: Pick<Dossier, 'people'>): string {
  const lines = [csvLine(headings)];
  for (const { id, person, born, parents, spouses, children, readings, mentions, cases } of people.values())
    lines.push(
      csvLine([
        id,
        person.name,
        person.sex ?? '',
        born.earliest ?? '',
        born.latest ?? '',
        person.born?.date ?? '',
        person.born?.place ?? '',
        person.died?.date ?? '',
        person.died?.place ?? '',
        parents.join('; '),
        spouses.map((one) => one.person).join('; '),
        spouses.map((one) => one.married ?? '').join('; '),
        children.join('; '),
        readings.join('; '),
        mentions.map(({ ref }) => ref).join('; '),
        cases.join('; '),
      ]),
    );
  return lines.join('');
}
