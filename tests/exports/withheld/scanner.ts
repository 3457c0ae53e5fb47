/**
 * A scanner of a finished site that shares nothing with the one in the build: every file, decoded in every way at hand,
 * without anything but letters and digits, is searched for every name and every day, word for word.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import { fromBuffer, type Entry } from 'yauzl';
import type { Planted } from './people.ts';

/** A file of the site, or of the zip of it. */
interface Published {
  path: string;
  bytes: Buffer;
}

/** What was found of whom, and where. */
export interface Found {
  path: string;
  who: string;
  what: string;
}

/** Everything a site and its zip hold. */
export async function published(folder: string, zip?: string): Promise<Published[]> {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .map((path) => ({ path: path.slice(folder.length + 1), bytes: readFileSync(path) }));
  return zip === undefined ? files : [...files, ...(await inZip(readFileSync(zip)))];
}

function inZip(bytes: Buffer): Promise<Published[]> {
  return new Promise((resolve, reject) => {
    const found: Published[] = [];
    fromBuffer(bytes, { lazyEntries: true }, (error, zip) => {
      if (error) return reject(error);
      zip.on('entry', (entry: Entry) => {
        zip.openReadStream(entry, (problem, stream) => {
          if (problem) return reject(problem);
          const parts: Buffer[] = [];
          stream.on('data', (part: Buffer) => parts.push(part));
          stream.on('end', () => {
            found.push({ path: `zip:${entry.fileName}`, bytes: Buffer.concat(parts) });
            zip.readEntry();
          });
        });
      });
      zip.on('end', () => resolve(found));
      zip.readEntry();
    });
  });
}

const squashed = (text: string): string =>
  text
    .toLowerCase()
    .replaceAll('ø', 'o')
    .normalize('NFKD')
    .replaceAll(/[^\p{L}\p{N}]/gu, '');

async function readings({ path, bytes }: Published): Promise<Set<string>> {
  const texts = [path];
  if (/\.(?:jpe?g|png|webp)$/i.test(path)) {
    const { exif, xmp, iptc, comments } = await sharp(bytes).metadata();
    for (const part of [exif, xmp, iptc])
      if (part) texts.push(part.toString('latin1'), part.toString('utf16le'), part.toString('utf8'));
    texts.push(JSON.stringify(comments ?? []), bytes.toString('latin1'));
  } else if (!/\.woff2?$/.test(path)) texts.push(bytes.toString('utf8'));
  const decoded = texts.flatMap((text) => [
    text,
    text.replaceAll(/<[^>]*>/g, ''),
    text
      .replaceAll(/<[^>]*>/g, ' ')
      .replaceAll(/&#(x?)([0-9a-f]+);/gi, (_all, hex: string, code: string) =>
        String.fromCodePoint(Math.min(parseInt(code, hex ? 16 : 10), 0x10ffff)),
      ),
    text.replaceAll(/\\u([0-9a-f]{4})/gi, (_all, code: string) => String.fromCharCode(parseInt(code, 16))),
    text.replaceAll(/(?:%[0-9a-f]{2})+/gi, (code) => {
      try {
        return decodeURIComponent(code);
      } catch {
        return code;
      }
    }),
    ...[...text.matchAll(/[A-Za-z0-9+/]{24,}={0,2}/g)].map(([code]) =>
      Buffer.from(code, 'base64').toString('utf8'),
    ),
  ]);
  return new Set(decoded.map(squashed));
}

/** Whoever of the people some file tells of: by given name, surname, day of birth, street, telephone number or e-mail address. */
export async function tellsOf(files: readonly Published[], people: readonly Planted[]): Promise<Found[]> {
  const words = people.flatMap(({ id, given, surname, born, street, telephone, email }) => {
    const day = new Date(born);
    const [year, month, date] = born.split('-').map(Number) as [number, number, number];
    const name = day.toLocaleDateString('en-US', { month: 'long', timeZone: 'UTC' });
    return [
      given,
      surname,
      street,
      telephone,
      email,
      born,
      `${date} ${name} ${year}`,
      `${name} ${date} ${year}`,
      `${date} ${name.slice(0, 3)} ${year}`,
      `${name.slice(0, 3)} ${date} ${year}`,
      `${String(month).padStart(2, '0')}/${String(date).padStart(2, '0')}/${year}`,
      `${String(date).padStart(2, '0')}.${String(month).padStart(2, '0')}.${year}`,
    ].map((what) => ({ who: id, what, squashed: squashed(what) }));
  });
  const found: Found[] = [];
  for (const file of files) {
    // All of their names and particulars begin in one of a few ways, and all were born in one year: most texts are done with at once.
    const texts = [...(await readings(file))].filter((text) => /wyx|qex|zyq|518555|1987/.test(text));
    for (const { who, what, squashed: word } of words)
      if (texts.some((text) => text.includes(word))) found.push({ path: file.path, who, what });
  }
  return found;
}
