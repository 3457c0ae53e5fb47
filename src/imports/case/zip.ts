/**
 * A zip of a case, read with suspicion: only the files that a content folder has, none outside it, none of them a link,
 * and no more than a case can hold, whatever the zip says of itself.
 */
import { createWriteStream, mkdirSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { Transform } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import yauzl from 'yauzl';
import { CannotRun } from '../../corpus/types.ts';
import { demandPlainFile } from '../plain-file.ts';

const largest = {
  entries: 20_000,
  text: 5 * 1024 * 1024,
  media: 200 * 1024 * 1024,
  all: 2 * 1024 * 1024 * 1024,
  card: 100_000,
};

/** Paths of a content folder: a known folder, names that begin with a letter or figure, an ending that is read there. */
const content =
  /^(?:site\.yaml|cases\/[a-z0-9-]+\.mdx?|records\/[a-z0-9-]+\.md|people\/[a-z0-9-]+\.(?:md|yaml)|(?:places|series|searches)\/[a-z0-9-]+\.yaml|reviews\/[a-z0-9-]+\/[a-z0-9-]+\.yaml|names\/[a-z0-9-]+\.csv|styles\/(?:(?!\.)[^\\/:*?"<>|\p{Cc}]+\/)*(?!\.)[^\\/:*?"<>|\p{Cc}]+\.csl|media\/(?:(?!\.)[^\\/:*?"<>|\p{Cc}]+\/)*(?!\.)[^\\/:*?"<>|\p{Cc}]+)$/u;

export interface UnpackedCase {
  /** The case’s id, as `case.json` has it. */
  case: string;
  question: string;
  digest: string | null;
  digestHere: string | null;
  standing: string | null;
  withheld: number;
  /** Paths within the content folder, in order. */
  files: string[];
}

/** Unpacks the zip of a case into an empty folder. Throws `CannotRun` where it is no such zip, or not to be trusted. */
export async function unpackCase(path: string, into: string): Promise<UnpackedCase> {
  const name = basename(path);
  const refuse = (why: string): never => {
    throw new CannotRun(`${name} was not opened: ${why}`);
  };
  demandPlainFile(path);
  let zip: yauzl.ZipFile;
  try {
    zip = await yauzl.openPromise(path, { strictFileNames: true, validateEntrySizes: true });
  } catch (error) {
    const { code, message } = error as NodeJS.ErrnoException;
    if (code === 'ENOENT') throw new CannotRun(`There is no file ${path}.`);
    if (code === 'EISDIR') throw new CannotRun(`${path} is a folder; name the zip itself.`);
    return refuse(`it is no zip that can be read (${message}).`);
  }
  const files: string[] = [];
  const seen = new Set<string>();
  let card: Buffer | undefined;
  let bytes = 0;
  try {
    if (zip.entryCount > largest.entries) refuse(`it holds ${zip.entryCount} files, more than any case.`);
    for await (const entry of zip.eachEntry()) {
      const inside = entry.fileName;
      if (inside.endsWith('/')) continue;
      if (((entry.externalFileAttributes >>> 16) & 0o170000) === 0o120000)
        refuse(`“${shown(inside)}” in it is a link to somewhere else.`);
      if (entry.isEncrypted()) refuse(`“${shown(inside)}” in it is encrypted.`);
      const small = inside.normalize('NFC').toLowerCase();
      if (seen.has(small)) refuse(`“${shown(inside)}” stands in it twice.`);
      seen.add(small);
      if (inside === 'case.json') {
        if (entry.uncompressedSize > largest.card) refuse('its case.json is too large.');
        card = await whole(zip, entry, largest.card, refuse);
        continue;
      }
      if (inside === 'READ ME.txt') continue;
      const file = inside.startsWith('content/') ? inside.slice('content/'.length) : undefined;
      if (file === undefined || !content.test(file) || file.length > 240)
        return refuse(`“${shown(inside)}” in it belongs into no content folder.`);
      const most = file.startsWith('media/') ? largest.media : largest.text;
      if (entry.uncompressedSize > most)
        refuse(
          `“${shown(inside)}” in it has ${Math.ceil(entry.uncompressedSize / 1024 / 1024)} megabytes; at most ${most / 1024 / 1024} are read.`,
        );
      bytes += entry.uncompressedSize;
      if (bytes > largest.all) refuse('it holds more than two gigabytes.');
      await unpack(zip, entry, join(into, file), most, refuse);
      files.push(file);
    }
  } catch (error) {
    if (error instanceof CannotRun) throw error;
    return refuse(`${(error as Error).message}.`);
  } finally {
    zip.close();
  }
  return { ...readCard(card, refuse), files: files.sort((a, b) => (a < b ? -1 : 1)) };
}

function shown(path: string): string {
  const plain = path.replace(/[\p{C}]+/gu, '?');
  return plain.length > 80 ? `${plain.slice(0, 79)}…` : plain;
}

/** What a stream gives is counted too: sizes in a zip are only what it says of itself. */
function bounded(most: number, refuse: (why: string) => never): Transform {
  let bytes = 0;
  return new Transform({
    transform(chunk: Buffer, _encoding, pass) {
      bytes += chunk.length;
      if (bytes <= most) return pass(null, chunk);
      try {
        refuse('a file in it is larger than it says.');
      } catch (error) {
        pass(error as Error);
      }
    },
  });
}

async function unpack(
  zip: yauzl.ZipFile,
  entry: yauzl.Entry,
  file: string,
  most: number,
  refuse: (why: string) => never,
): Promise<void> {
  mkdirSync(dirname(file), { recursive: true });
  await pipeline(
    await zip.openReadStreamPromise(entry),
    bounded(most, refuse),
    createWriteStream(file, { flags: 'wx' }),
  );
}

async function whole(
  zip: yauzl.ZipFile,
  entry: yauzl.Entry,
  most: number,
  refuse: (why: string) => never,
): Promise<Buffer> {
  const pieces: Buffer[] = [];
  await pipeline(await zip.openReadStreamPromise(entry), bounded(most, refuse), async (source) => {
    for await (const piece of source) pieces.push(piece as Buffer);
  });
  return Buffer.concat(pieces);
}

function readCard(card: Buffer | undefined, refuse: (why: string) => never): Omit<UnpackedCase, 'files'> {
  if (!card) return refuse('it has no case.json, so it is no case given out by Whence.');
  let said: Record<string, unknown>;
  try {
    said = JSON.parse(card.toString('utf8')) as Record<string, unknown>;
  } catch {
    return refuse('its case.json can’t be read.');
  }
  if (said?.['kind'] !== 'whence-case' || typeof said['case'] !== 'string')
    return refuse('its case.json is not that of a case.');
  if (said['version'] !== 1)
    return refuse(
      'it was made by a newer Whence than this one. Bring this one up to date and open it again.',
    );
  const text = (key: string) => (typeof said[key] === 'string' ? said[key] : null);
  return {
    case: said['case'],
    question: text('question') ?? '',
    digest: text('digest'),
    digestHere: text('digestHere'),
    standing: text('standing'),
    withheld: typeof said['withheld'] === 'number' ? said['withheld'] : 0,
  };
}
