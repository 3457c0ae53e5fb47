/** A table with headings → its places, each in what its chain or its columns name. */
import { TableReader } from '../../corpus/table.ts';
import { CannotRun } from '../../corpus/types.ts';
import { readAsUtf8 } from '../encoding.ts';
import { plainHeading } from '../people-headings.ts';
import { degrees, distinct, inBox, most, type Wanted } from './row-values.ts';
import type { GazetteerFile, GazetteerProblem, IncomingPlace, Level } from './types.ts';

/** Columns of a table that say in what a place lies, smaller ones first, by the kind they are of. */
const levelHeadings: readonly (readonly [kind: string, words: string])[] = [
  ['electoral division', 'electoraldivision ded ed'],
  ['parish', 'parish sogn sokn prestegjeld'],
  ['civil parish', 'civilparish'],
  ['barony', 'barony hundred wapentake'],
  ['township', 'township'],
  ['municipality', 'municipality kommune herred'],
  ['district', 'district registrationdistrict union'],
  ['county', 'county countyname fylke amt'],
  ['state', 'state'],
  ['province', 'province'],
  ['country', 'country land'],
];
const crossing = new Set(['electoral division', 'parish', 'civil parish', 'barony', 'township', 'district']);
const headings: Record<string, string> = {
  name: 'name placename place navn stedsnavn townland farm',
  variants:
    'variants variant alternatenames alternatename othernames nativename irishname namega gaelicname aliases alias varianter andrenavn',
  kind: 'kind type featuretype placetype class slag',
  chain: 'chain within liesin path hierarchy',
  id: 'id placeid',
  lat: 'lat latitude breddegrad y',
  lon: 'lon lng long longitude lengdegrad x',
  source: 'source kilde',
};
const columnOf = new Map<string, string>();
for (const [use, list] of Object.entries(headings))
  for (const word of list.split(' ')) columnOf.set(word, use);
for (const [kind, list] of levelHeadings)
  for (const word of list.split(' ')) columnOf.set(word, `in ${kind}`);

/** Reads the table. Throws `CannotRun` where it is no gazetteer, or more is asked for than can be taken in. */
export function placeTable(path: string, name: string, { kinds, box }: Wanted): GazetteerFile {
  const places: IncomingPlace[] = [];
  const problems: GazetteerProblem[] = [];
  let columns: Map<string, number> | undefined;
  let rows = 0;
  let assumed = '';
  const reader = new TableReader(({ line, cells }, header) => {
    if (!columns) {
      columns = columnsOf(header, name);
      assumed = /townland/i.test(name) || columns.has('in civil parish') ? 'townland' : 'populated place';
    }
    rows++;
    const cell = (use: string) => (columns!.has(use) ? tidy(cells[columns!.get(use)!]!) : '');
    const placeName = cell('name');
    const kind = cell('kind').toLowerCase() || assumed;
    const [lat, lon] = [degrees(cell('lat'), 90), degrees(cell('lon'), 180)];
    const wrong = (use: string, message: string, help: string) => {
      const at = columns!.get(use) ?? 0;
      if (problems.length < 500)
        problems.push({ line, column: at + 1, value: tidy(cells[at] ?? ''), message, help });
    };
    if (placeName === '') {
      wrong('name', 'This row has no name and was passed over.', 'Give every place its name.');
      return;
    }
    if (lat === undefined && cell('lat') !== '')
      wrong(
        'lat',
        'This is no latitude, and the place has no coordinates for it.',
        'Write degrees with decimals, such as 52.14.',
      );
    if (lon === undefined && cell('lon') !== '')
      wrong(
        'lon',
        'This is no longitude, and the place has no coordinates for it.',
        'Write degrees with decimals, such as -7.34.',
      );
    if (kinds.length > 0 && !kinds.includes(kind)) return;
    if (!inBox(box, lat, lon)) return;
    if (places.length >= most.rows)
      throw new CannotRun(
        `${name} has more than ${most.rows.toLocaleString('en')} places. Narrow them down with --box or --kind.`,
      );
    const levels: Level[] = levelHeadings.flatMap(([of]) => {
      const text = cell(`in ${of}`);
      return text === '' ? [] : [{ name: text, kind: of, ...(crossing.has(of) ? { crosses: true } : {}) }];
    });
    const chain = cell('chain')
      .split(/[,;|>]/)
      .map((one) => one.trim())
      .filter(Boolean);
    for (const one of chain) levels.push({ name: one, kind: undefined });
    const both = lat !== undefined && lon !== undefined;
    places.push({
      name: placeName,
      kind,
      line,
      variants: distinct(
        cell('variants')
          .split(/[;|]/)
          .map((one) => one.trim()),
        placeName,
      ),
      ...(both ? { lat, lon } : {}),
      source: cell('source') || name,
      levels,
      within: [],
    });
  });
  const encoding = readAsUtf8(path, (bytes) => reader.push(Buffer.from(bytes)));
  const { header, problems: found } = reader.end();
  if (!columns) columnsOf(header, name);
  if (rows === 0) throw new CannotRun(`${name} has no places in it.`);
  return {
    name,
    encoding,
    form: 'csv',
    rows,
    places,
    problems: [...found.map((problem) => ({ ...problem, value: '' })), ...problems].sort(
      (a, b) => a.line - b.line,
    ),
    hasChain: places.some(({ levels }) => levels.length > 0),
  };
}

const tidy = (text: string) =>
  text
    .toWellFormed()
    .replace(/[\p{Cc}\uFFFE\uFFFF\s]+/gu, ' ')
    .trim()
    .slice(0, most.text * 20);

function columnsOf(header: readonly string[], name: string): Map<string, number> {
  const columns = new Map<string, number>();
  header.forEach((heading, index) => {
    const use = columnOf.get(plainHeading(heading));
    if (use !== undefined && !columns.has(use)) columns.set(use, index);
  });
  if (!columns.has('name'))
    throw new CannotRun(
      `${name} is no gazetteer: it has no column “name”; its headings are ${header.slice(0, 20).join(', ')}. A plain gazetteer has the columns name, variants, kind, chain, lat and lon; or columns such as county and parish in place of the chain.`,
    );
  return columns;
}
