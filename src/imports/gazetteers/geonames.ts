/** A text file of the GeoNames format → its places, each in the divisions that its codes name. */
import { CannotRun } from '../../corpus/types.ts';
import { readAsUtf8 } from '../encoding.ts';
import { isUsual, kindOfFeature } from './features.ts';
import { degrees, distinct, inBox, most, type Wanted } from './row-values.ts';
import type { GazetteerFile, GazetteerProblem, IncomingPlace, Level } from './types.ts';

/** Reads the file. Throws `CannotRun` where more is asked for than can be taken in. */
export function geoNames(path: string, name: string, { kinds, box, admin }: Wanted): GazetteerFile {
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
    if (taken.length >= most.rows)
      throw new CannotRun(
        `More than ${most.rows.toLocaleString('en')} places of ${name} are asked for. Narrow them down with --admin, --box or --kind.`,
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
