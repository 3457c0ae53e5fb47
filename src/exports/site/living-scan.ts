/**
 * The last look before a site goes out: nothing of it may tell of anyone withheld as living, by name or by the day of
 * birth. The check has already looked at what the author wrote; this looks at what is about to be published, whatever
 * it was made from: every text, the path of every file, and what stands in pictures beside their pixels.
 *
 * Text is read as a reader’s program reads it: entities, escapes of JSON and scripts, percent-encoding, and what no
 * reader sees taken out. Text that somebody encoded otherwise (base64, ciphers) is not decoded: the site makes none,
 * and an author who writes it means to.
 */
import { lookFor, type Hit, type Telling } from '../../dossier/living-look.ts';
import { plainly } from '../../dossier/living-text.ts';

/** Finds what a text tells of the withheld, if anything. `\0` in the text parts what stands apart. */
export type LivingScan = (text: string, options?: { ids?: boolean }) => Hit | undefined;

/** A scan for what tells of the withheld. `undefined` when there is nobody to look for. */
export function livingScan(tellings: readonly Telling[]): LivingScan | undefined {
  if (tellings.length === 0) return undefined;
  const look = lookFor(tellings);
  return (text, { ids = false } = {}) => look(text, { ids, first: true })[0];
}

/** The text of a file that isn’t a page, with what its format writes in another way read. */
export function plainText(source: string): string {
  return plainly(source);
}

/**
 * What a picture says beside its pixels: the comments, camera data and titles of JPEG, PNG and WebP files, as text.
 * Other files say nothing.
 */
export function wordsOfPicture(bytes: Buffer): string {
  const said: Buffer[] = [];
  if (bytes.length > 4 && bytes.readUInt16BE(0) === 0xffd8) {
    for (let at = 2; at + 4 <= bytes.length && bytes[at] === 0xff;) {
      const marker = bytes[at + 1]!;
      if (marker === 0xda) break;
      const length = bytes.readUInt16BE(at + 2);
      if (marker === 0xfe || (marker >= 0xe0 && marker <= 0xef))
        said.push(bytes.subarray(at + 4, at + 2 + length));
      at += 2 + length;
    }
  } else if (bytes.length > 8 && bytes.readUInt32BE(0) === 0x89504e47) {
    for (let at = 8; at + 12 <= bytes.length;) {
      const length = bytes.readUInt32BE(at);
      const kind = bytes.toString('latin1', at + 4, at + 8);
      if (/^(?:tEXt|iTXt|zTXt|eXIf)$/.test(kind)) said.push(bytes.subarray(at + 8, at + 8 + length));
      at += 12 + length;
    }
  } else if (bytes.toString('latin1', 0, 4) === 'RIFF') {
    for (let at = 12; at + 8 <= bytes.length;) {
      const length = bytes.readUInt32LE(at + 4);
      if (/^(?:EXIF|XMP )$/.test(bytes.toString('latin1', at, at + 4)))
        said.push(bytes.subarray(at + 8, at + 8 + length));
      at += 8 + length + (length % 2);
    }
  }
  // Camera data may be in any encoding of the time; the zeros between its strings part them.
  return said
    .flatMap((part) => [part.toString('utf8'), part.toString('latin1'), part.toString('utf16le')])
    .join('\0');
}
