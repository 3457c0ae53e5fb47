/** A file of a gazetteer → places as it has them: GeoNames-format text, or a table with headings. */
import { closeSync, openSync, readSync, statSync } from 'node:fs';
import { TableReader } from '../../corpus/table.ts';
import { CannotRun } from '../../corpus/types.ts';
import { readAsUtf8 } from '../encoding.ts';
import { isGeoNamesLine } from '../kind-of-file.ts';
import { plainHeading } from '../people-headings.ts';
import { isUsual, kindOfFeature } from './features.ts';
import type { GazetteerFile, GazetteerProblem, IncomingPlace, Level } from './types.ts';

const largest = { bytes: 2 * 1024 * 1024 * 1024, rows: 1_000_000, variants: 40, text: 200 };

/** What of the file is wanted, so that a country’s file need not be held whole. */
export interface Wanted {
  /** Kinds or feature codes, in small letters; all usual ones where it is empty. */
  kinds: readonly string[];
  /** South, west, north, east. */
  box: readonly [number, number, number, number] | undefined;
  /** The beginning of a row’s codes, such as `US.MI.061`. */
  admin: string | undefined;
}

/** Reads a gazetteer. Throws `CannotRun` where it is none, or too large. */
export function readGazetteer(path: string, name: string, wanted: Wanted): GazetteerFile {
  const head = headOf(path, name);
  if (head.startsWith('PK\x03\x04'))
    throw new CannotRun(
      `${name} is packed or is a workbook; unpack it, or save it as CSV, and name the text file.`,
    );
  const [line = ''] = head.replace(/^\uFEFF/, '').split(/\r\n|\n|\r/);
  return isGeoNamesLine(line) ? geoNames(path, name, wanted) : table(path, name, wanted);
}

function headOf(path: string, name: string): string {
  try {
    const found = statSync(path);
    if (!found.isFile()) throw new CannotRun(`${name} is not an ordinary file.`);
    if (found.size > largest.bytes)
      throw new CannotRun(`${name} is larger than two gigabytes. Take the file of one country instead.`);
    const head = Buffer.alloc(16_384);
    const file = openSync(path, 'r');
    try {
      const read = readSync(file, head, 0, head.length, 0);
      return head.subarray(0, 4).equals(Buffer.from('PK\x03\x04', 'latin1'))
        ? 'PK\x03\x04'
        : head.subarray(0, read).toString('utf8');
    } finally {
      closeSync(file);
    }
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') throw new CannotRun(`There is no file ${path}.`);
    throw error;
  }
}

/** Coordinates of WGS 84, or `undefined`. */
function degrees(text: string, most: number): number | undefined {
  const plain = text.trim().replace(/^(-?\d{1,3}),(\d+)$/, '$1.$2');
  if (!/^-?\d{1,3}(?:\.\d{1,20})?$/.test(plain)) return undefined;
  const value = Number(plain);
  return Math.abs(value) <= most ? Math.round(value * 1e5) / 1e5 : undefined;
}

const inBox = (box: Wanted['box'], lat: number | undefined, lon: number | undefined): boolean => {
  if (!box) return true;
  if (lat === undefined || lon === undefined) return false;
  const [south, west, north, east] = box;
  const across = west <= east ? lon >= west && lon <= east : lon >= west || lon <= east;
  return lat >= south && lat <= north && across;
};

function geoNames(path: string, name: string, { kinds, box, admin }: Wanted): GazetteerFile {
  const divisions = new Map<string, Level & { iso?: string }>();
  const taken: { line: number; cells: string[]; kind: string }[] = [];
  const problems: GazetteerProblem[] = [];
  let rows = 0;
  const lines = new Lines((text, line) => {
    if (text === '') return;
    rows++;
    const cells = text.split('\t');
    const [lat, lon] = [degrees(cells[4] ?? '', 90), degrees(cells[5] ?? '', 180)];
    if (cells.length !== 19 || !cells[1] || lat === undefined || lon === undefined) {
      if (problems.length < 200)
        problems.push({
          line,
          column: 1,
          value: text.slice(0, 60),
          message:
            'This is no row of a GeoNames-format gazetteer: 19 columns parted by tabs, with a name and coordinates. It was passed over.',
          help: 'Bring in the file as it was published.',
        });
      return;
    }
    const [code, country] = [cells[7]!, cells[8]!];
    const order = /^ADM([1-4])$/.exec(code)?.[1];
    if (order)
      divisions.set(
        codesOf(cells)
          .slice(0, Number(order) + 1)
          .join('.'),
        levelOf(cells, kindOfFeature(code, country)),
      );
    const kind = kindOfFeature(code, country);
    if (kind === undefined) return;
    const asked =
      kinds.length === 0 ? isUsual(code) : kinds.includes(kind) || kinds.includes(code.toLowerCase());
    if (!asked || !inBox(box, lat, lon)) return;
    if (admin !== undefined && !`${codesOf(cells).join('.')}.`.startsWith(`${admin}.`)) return;
    if (taken.length >= largest.rows)
      throw new CannotRun(
        `More than ${largest.rows.toLocaleString('en')} places of ${name} are asked for. Narrow them down with --admin, --box or --kind.`,
      );
    taken.push({ line, cells, kind });
  });
  const encoding = readAsUtf8(path, (bytes) => lines.push(bytes));
  lines.end();
  const places = taken.map(({ line, cells, kind }): IncomingPlace => {
    const codes = codesOf(cells);
    const own = /^ADM([1-4])$/.exec(cells[7]!)?.[1];
    const levels: Level[] = [];
    for (let depth = own ? Number(own) - 1 : 4; depth >= 1; depth--) {
      if (!codes[depth]) continue;
      const key = codes.slice(0, depth + 1).join('.');
      const division = divisions.get(key);
      if (division) levels.push(division);
      else if (depth === 1 && /^[A-Z]{2}$/.test(codes[1]!))
        levels.push({ name: codes[1]!, kind: undefined, iso: `${codes[0]}-${codes[1]}` });
    }
    levels.push({ name: codes[0]!, kind: 'country', iso: codes[0] });
    return {
      ...levelOf(cells, kind),
      kind,
      line,
      levels,
      within: [],
      admin: codes.join('.'),
      feature: cells[7],
    };
  });
  return { name, encoding, form: 'geonames', rows, places, problems, hasChain: true };

  function levelOf(cells: readonly string[], kind: string | undefined): Level {
    const variants = [cells[2]!, ...cells[3]!.split(',')].map((one) => one.trim());
    const country = cells[8]!;
    return {
      name: cells[1]!.trim(),
      kind,
      variants: distinct(variants, cells[1]!.trim()),
      lat: degrees(cells[4]!, 90),
      lon: degrees(cells[5]!, 180),
      source: `${name}, no. ${cells[0]!}`,
      ...(cells[7] === 'ADM1' && /^[A-Z]{2}$/.test(cells[10]!) ? { iso: `${country}-${cells[10]!}` } : {}),
    };
  }
}

/** Country and the four orders of divisions; “00” stands for none. */
function codesOf(cells: readonly string[]): string[] {
  const codes = [cells[8]!, cells[10]!, cells[11]!, cells[12]!, cells[13]!].map((code) => code.trim());
  if (codes[1] === '00') codes[1] = '';
  while (codes.length > 1 && codes.at(-1) === '') codes.pop();
  return codes;
}

/** Names in letters of the West, each once, without codes and addresses of pages. */
function distinct(names: readonly string[], own: string): string[] {
  const seen = new Set([own]);
  return names
    .filter(
      (name) =>
        name !== '' &&
        name.length <= largest.text &&
        /\p{Script=Latin}/u.test(name) &&
        !/^(?:https?:|[A-Z]{3}$)|[\p{Cc}]/u.test(name) &&
        !seen.has(name) &&
        seen.add(name),
    )
    .slice(0, largest.variants);
}

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

function table(path: string, name: string, { kinds, box }: Wanted): GazetteerFile {
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
    if (places.length >= largest.rows)
      throw new CannotRun(
        `${name} has more than ${largest.rows.toLocaleString('en')} places. Narrow them down with --box or --kind.`,
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
    .slice(0, largest.text * 20);

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

/** Lines of a text that comes in pieces. */
class Lines {
  readonly #take: (text: string, line: number) => void;
  readonly #decoder = new TextDecoder();
  #rest = '';
  #line = 0;

  constructor(take: (text: string, line: number) => void) {
    this.#take = take;
  }

  push(bytes: Buffer): void {
    const lines = (this.#rest + this.#decoder.decode(bytes, { stream: true })).split('\n');
    this.#rest = lines.pop()!;
    if (this.#rest.length > 1 << 20)
      throw new CannotRun('A line of this file never ends; it is no gazetteer.');
    for (const line of lines) this.#take(line.endsWith('\r') ? line.slice(0, -1) : line, ++this.#line);
  }

  end(): void {
    const last = this.#rest + this.#decoder.decode();
    if (last !== '') this.#take(last.replace(/\r$/, ''), ++this.#line);
  }
}
