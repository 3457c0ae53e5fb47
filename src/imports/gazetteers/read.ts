/** A file of a gazetteer → places as it has them: GeoNames-format text, or a table with headings. */
import { closeSync, openSync, readSync, statSync } from 'node:fs';
import { CannotRun } from '../../corpus/types.ts';
import { isGeoNamesLine } from '../kind-of-file.ts';
import { geoNames } from './geonames.ts';
import type { Wanted } from './row-values.ts';
import { placeTable } from './table.ts';
import type { GazetteerFile } from './types.ts';

const mostBytes = 2 * 1024 * 1024 * 1024;

/** Reads a gazetteer. Throws `CannotRun` where it is none, or too large. */
export function readGazetteer(path: string, name: string, wanted: Wanted): GazetteerFile {
  const head = headOf(path, name);
  if (head.startsWith('PK\x03\x04'))
    throw new CannotRun(
      `${name} is packed or is a workbook; unpack it, or save it as CSV, and name the text file.`,
    );
  const [line = ''] = head.replace(/^\uFEFF/, '').split(/\r\n|\n|\r/);
  return isGeoNamesLine(line) ? geoNames(path, name, wanted) : placeTable(path, name, wanted);
}

function headOf(path: string, name: string): string {
  try {
    const found = statSync(path);
    if (!found.isFile()) throw new CannotRun(`${name} is not an ordinary file.`);
    if (found.size > mostBytes)
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
    if (error instanceof CannotRun) throw error;
    const { code, message } = error as NodeJS.ErrnoException;
    throw new CannotRun(
      code === 'ENOENT' ? `There is no file ${path}.` : `${path} can’t be read: ${message}.`,
    );
  }
}
