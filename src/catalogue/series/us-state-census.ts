import { series } from './build.ts';
import type { BuiltInSeries, OriginDepth } from './types.ts';

/**
 * State and territorial censuses that name people: those whose schedules survive for a good part of the state. Most
 * fall between the federal ones. Years, questions and losses are from memory unless the row's note says otherwise.
 */
type StateCensusRow = readonly [
  state: string,
  stateName: string,
  year: number,
  fields: readonly string[],
  origin: OriginDepth,
  note?: string,
];

const heads = ['name', 'residence'];
const persons = ['name', 'sex', 'age', 'residence', 'household'];
const born = [...persons, 'occupation', 'birthplace'];
const kin = [...born, 'relations'];
const withParents = [...born, 'parents-birthplace'];

// prettier-ignore
const rows: readonly StateCensusRow[] = [
  ['iowa', 'Iowa', 1856, [...born, 'years-in-state', 'naturalized'], 'country'],
  ['iowa', 'Iowa', 1885, [...born, 'parents-foreign-born', 'naturalized'], 'country', 'Those born in Iowa give the county.'],
  ['iowa', 'Iowa', 1895, born, 'country'],
  ['iowa', 'Iowa', 1905, heads, 'none', 'Names and addresses only.'],
  ['iowa', 'Iowa', 1915, [...born, 'parents-birthplace', 'years-in-country', 'naturalized', 'church'], 'country', 'One card a person, filed by county and name.'],
  ['iowa', 'Iowa', 1925, [...kin, 'parents-names', 'maiden-name', 'parents-birthplace', 'year-naturalized'], 'country', "Names both parents, the mother by her maiden name, and where they married."],
  ['kansas', 'Kansas', 1855, [...born, 'previous-residence'], 'country'],
  ['kansas', 'Kansas', 1865, born, 'country'],
  ['kansas', 'Kansas', 1875, [...born, 'previous-residence'], 'country', 'Says from what state or country they came to Kansas.'],
  ['kansas', 'Kansas', 1885, [...born, 'previous-residence'], 'country'],
  ['kansas', 'Kansas', 1895, [...born, 'previous-residence'], 'country'],
  ['kansas', 'Kansas', 1905, [...born, 'previous-residence'], 'country'],
  ['kansas', 'Kansas', 1915, [...born, 'previous-residence'], 'country'],
  ['kansas', 'Kansas', 1925, [...kin, 'previous-residence', 'immigrated', 'year-naturalized'], 'country'],
  ['massachusetts', 'Massachusetts', 1855, born, 'country'],
  ['massachusetts', 'Massachusetts', 1865, [...born, 'naturalized'], 'country'],
  ['michigan', 'Michigan', 1884, [...kin, 'parents-birthplace'], 'country', 'Survives for part of the counties only.'],
  ['michigan', 'Michigan', 1894, [...kin, 'parents-birthplace', 'years-in-country', 'years-in-state', 'naturalized'], 'country', 'Survives for part of the counties only.'],
  ['minnesota', 'Minnesota', 1857, [...born, 'naturalized'], 'country', 'Taken under federal law for statehood.'],
  ['minnesota', 'Minnesota', 1865, persons, 'none'],
  ['minnesota', 'Minnesota', 1875, [...persons, 'birthplace', 'parents-birthplace'], 'country'],
  ['minnesota', 'Minnesota', 1885, [...persons, 'birthplace', 'parents-foreign-born'], 'country'],
  ['minnesota', 'Minnesota', 1895, [...born, 'years-in-state'], 'country'],
  ['minnesota', 'Minnesota', 1905, [...born, 'parents-birthplace', 'years-in-state'], 'country', 'Gives the street in towns.'],
  ['new-jersey', 'New Jersey', 1885, persons, 'country', 'Birthplace only as native, Irish, German or other.'],
  ['new-jersey', 'New Jersey', 1895, persons, 'country', 'Birthplace only as native, Irish, German or other.'],
  ['new-jersey', 'New Jersey', 1905, [...kin, 'born', 'parents-birthplace', 'years-in-country', 'naturalized'], 'country'],
  ['new-jersey', 'New Jersey', 1915, [...kin, 'born', 'parents-birthplace', 'years-in-country', 'naturalized'], 'country'],
  ['new-york', 'New York', 1855, [...kin, 'years-in-town', 'naturalized'], 'country', 'Those born in New York give the county.'],
  ['new-york', 'New York', 1865, [...kin, 'naturalized'], 'country', 'Those born in New York give the county.'],
  ['new-york', 'New York', 1875, [...kin, 'naturalized'], 'country', 'Those born in New York give the county.'],
  ['new-york', 'New York', 1892, [...persons, 'birthplace', 'occupation', 'naturalized'], 'country', 'Names no relationships; several counties are lost.'],
  ['new-york', 'New York', 1905, [...kin, 'years-in-country', 'naturalized'], 'country'],
  ['new-york', 'New York', 1915, [...kin, 'years-in-country', 'naturalized'], 'country'],
  ['new-york', 'New York', 1925, [...kin, 'years-in-country', 'naturalized', 'year-naturalized'], 'country', 'Says when and where they were naturalized.'],
  ['north-dakota', 'North Dakota', 1915, persons, 'none'],
  ['north-dakota', 'North Dakota', 1925, persons, 'none'],
  ['rhode-island', 'Rhode Island', 1865, born, 'country', 'Those born in the state give the town.'],
  ['rhode-island', 'Rhode Island', 1875, withParents, 'country'],
  ['rhode-island', 'Rhode Island', 1885, withParents, 'country'],
  ['rhode-island', 'Rhode Island', 1905, [...withParents, 'years-in-country', 'naturalized'], 'country'],
  ['rhode-island', 'Rhode Island', 1915, born, 'country'],
  ['rhode-island', 'Rhode Island', 1925, born, 'country'],
  ['south-dakota', 'South Dakota', 1905, [...born, 'parents-birthplace', 'years-in-country'], 'country', 'One card a person.'],
  ['south-dakota', 'South Dakota', 1915, [...born, 'maiden-name', 'church', 'years-in-country', 'parents-birthplace'], 'country', "One card a person, with the wife's maiden name."],
  ['south-dakota', 'South Dakota', 1925, [...born, 'maiden-name', 'church', 'parents-birthplace'], 'country', 'One card a person.'],
  ['wisconsin', 'Wisconsin', 1855, heads, 'country', 'Names the head only and counts those of foreign birth in the house.'],
  ['wisconsin', 'Wisconsin', 1875, heads, 'none'],
  ['wisconsin', 'Wisconsin', 1885, heads, 'country', 'Names the head only and counts the house by country of birth.'],
  ['wisconsin', 'Wisconsin', 1895, heads, 'country', 'Names the head only and counts the house by country of birth; ex-soldiers are listed by name.'],
  ['wisconsin', 'Wisconsin', 1905, [...kin, 'parents-birthplace'], 'country', 'The only state census of Wisconsin to name everybody.'],
];

/** The five taken in 1885 with half the cost paid by the United States; one copy came to Washington. */
const sponsored: readonly (readonly [id: string, title: string, of: string, alsoOf?: readonly string[]])[] = [
  ['colorado-state-census-1885', 'Colorado state census, 1885', 'colorado'],
  ['dakota-territory-census-1885', 'Dakota Territory census, 1885', 'north-dakota', ['south-dakota']],
  ['florida-state-census-1885', 'Florida state census, 1885', 'florida'],
  ['nebraska-state-census-1885', 'Nebraska state census, 1885', 'nebraska'],
  ['new-mexico-territory-census-1885', 'New Mexico Territory census, 1885', 'new-mexico'],
];

export const usStateCensus: readonly BuiltInSeries[] = [
  ...rows.map(([state, stateName, year, fields, origin, note]) =>
    series({
      id: `${state}-state-census-${year}`,
      title: `${stateName} state census, ${year}`,
      of: state,
      kind: 'census',
      from: String(year),
      to: String(year),
      tells: [{ fields, origin }],
      names: state === 'wisconsin' && year < 1905 ? 'heads' : 'everybody',
      source: 'State laws and printed instructions for each census (from memory)',
      note,
    }),
  ),
  ...sponsored.map(([id, title, of, alsoOf]) =>
    series({
      id,
      title,
      of,
      alsoOf,
      kind: 'census',
      from: '1885',
      to: '1885',
      tells: [{ fields: [...kin, 'parents-birthplace'], origin: 'country' }],
      source: 'Act of 3 March 1879, s. 22 (20 Stat. 480; section and page from memory)',
    }),
  ),
];
