/**
 * Files of text in whatever encoding a spreadsheet left them, as UTF-8.
 *
 * Rule: a byte order mark decides (Unicode Standard, 23.8); without one, zero bytes at every other place mean UTF-16;
 * what is valid UTF-8 is UTF-8 (a text in another encoding hardly ever is, by chance); the rest is Windows-1252, of which Latin-1
 * is a part (WHATWG Encoding Standard).
 */
import { closeSync, openSync, readSync } from 'node:fs';

export type Encoding = 'UTF-8' | 'UTF-16LE' | 'UTF-16BE' | 'Windows-1252';

const pieceSize = 1 << 20;

/**
 * Reads a file piece by piece and hands on its text as UTF-8 bytes. Gives the encoding it was in. Throws what the file
 * system throws.
 */
export function readAsUtf8(path: string, take: (bytes: Buffer) => void): Encoding {
  const encoding = encodingOf(path);
  if (encoding === 'UTF-8') {
    eachPiece(path, (bytes) => take(Buffer.from(bytes)));
    return encoding;
  }
  const decoder = new TextDecoder(encoding.toLowerCase());
  eachPiece(path, (bytes) => take(Buffer.from(decoder.decode(bytes, { stream: true }), 'utf8')));
  take(Buffer.from(decoder.decode(), 'utf8'));
  return encoding;
}

function encodingOf(path: string): Encoding {
  let encoding: Encoding | undefined;
  let first = true;
  const strict = new TextDecoder('utf-8', { fatal: true });
  eachPiece(path, (bytes) => {
    if (first) encoding = fromHead(bytes);
    first = false;
    if (encoding) return false;
    try {
      strict.decode(bytes, { stream: true });
    } catch {
      encoding = 'Windows-1252';
      return false;
    }
    return true;
  });
  if (encoding) return encoding;
  try {
    strict.decode();
    return 'UTF-8';
  } catch {
    return 'Windows-1252';
  }
}

function fromHead(bytes: Buffer): Encoding | undefined {
  if (bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf) return 'UTF-8';
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return 'UTF-16LE';
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return 'UTF-16BE';
  const head = bytes.subarray(0, 512);
  let even = 0;
  let odd = 0;
  head.forEach((byte, at) => {
    if (byte !== 0) return;
    if (at % 2 === 0) even++;
    else odd++;
  });
  // Letters of the West have a zero for their other half; a stray zero here and there is no encoding.
  if (odd > head.length / 4 && even === 0) return 'UTF-16LE';
  if (even > head.length / 4 && odd === 0) return 'UTF-16BE';
  return undefined;
}

/** Hands on a file in pieces, until there is no more or `take` says false. A piece is only good until the next. */
function eachPiece(path: string, take: (bytes: Buffer) => boolean | void): void {
  const file = openSync(path, 'r');
  try {
    const piece = Buffer.allocUnsafe(pieceSize);
    for (let read = readSync(file, piece); read > 0; read = readSync(file, piece))
      if (take(piece.subarray(0, read)) === false) return;
  } finally {
    closeSync(file);
  }
}
