/**
 * What kind of file somebody wants to bring in, by its ending and first bytes.
 *
 * Sources: a GEDCOM file begins with the line `0 HEAD` (GEDCOM 7.0 and 5.5.1); the main table of a
 * GeoNames-format gazetteer has 19 columns parted by tabs and no headings (its published readme).
 */
import { plainHeading } from './people-headings.ts';

export type FileKind = 'gedcom' | 'table' | 'gazetteer' | 'case';

/** The kind of a file. `head` gives its first bytes, and is asked only where the ending doesn’t tell. */
export function kindOfFile(name: string, head: () => Buffer): FileKind {
  if (/\.(?:ged|gdz)$/i.test(name)) return 'gedcom';
  const bytes = head();
  if (bytes.subarray(0, 2).toString('latin1') === 'PK' && /\.zip$/i.test(name)) return 'case';
  const text = (
    bytes[0] === 0xff || bytes[1] === 0 ? bytes.toString('utf16le') : bytes.toString('utf8')
  ).replace(/^\uFEFF/, '');
  if (/^\s*0 +HEAD\b/.test(text)) return 'gedcom';
  const [line = ''] = text.split(/\r\n|\n|\r/);
  if (isGeoNamesLine(line)) return 'gazetteer';
  const headings = line.split(/[,;\t|]/).map((heading) => plainHeading(heading.replaceAll('"', '')));
  const has = (...words: string[]) => headings.some((heading) => words.includes(heading));
  const placed = has('lat', 'latitude') && has('lon', 'lng', 'long', 'longitude');
  const people = has(
    'surname',
    'age',
    'givenname',
    'firstname',
    'ship',
    'occupation',
    'household',
    'etternavn',
    'alder',
  );
  return placed && !people ? 'gazetteer' : 'table';
}

/** Whether a line is a row of the main table of a GeoNames-format file: 19 columns, coordinates and a feature class. */
export function isGeoNamesLine(line: string): boolean {
  const cells = line.split('\t');
  return (
    cells.length === 19 &&
    /^\d+$/.test(cells[0]!) &&
    /^-?\d+(?:\.\d+)?$/.test(cells[4]!) &&
    /^-?\d+(?:\.\d+)?$/.test(cells[5]!) &&
    /^[A-Z]?$/.test(cells[6]!)
  );
}
