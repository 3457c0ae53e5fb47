/** A zip of files, the same bytes for the same files, written one file after another. */
import { createHash } from 'node:crypto';
import { createReadStream, createWriteStream } from 'node:fs';
import { Readable, Transform } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import yazl from 'yazl';

export interface ZipEntry {
  /** Its path in the zip, with `/` between folders. */
  path: string;
  /** The file it is read from, or what it holds. */
  from: string | Buffer;
}

/** What is packed already and would only grow. */
const packed = /\.(?:jpe?g|png|webp|avif|gif|woff2?|zip|gz|mp[34]|pdf)$/i;

/**
 * Writes a zip. Every entry bears the day given (`YYYY-MM-DD`) and the same rights; entries are in the order given.
 * No more than one file is held at a time. Returns the SHA-256 of the zip, in hexadecimal digits.
 */
export async function writeZip(
  file: string,
  entries: Iterable<ZipEntry>,
  day: string,
  comment: string,
): Promise<string> {
  const zip = new yazl.ZipFile();
  // A zip keeps the local time of wherever it was made; noon of the day, in whatever zone, is written the same.
  const [year, month, date] = day.split('-').map(Number) as [number, number, number];
  const mtime = new Date(year, month - 1, date, 12);
  for (const { path, from } of entries)
    zip.addReadStreamLazy(
      path,
      {
        mtime,
        mode: 0o100644,
        forceDosTimestamp: true,
        compressionLevel: packed.test(path) ? 0 : 6,
      },
      (take) => {
        if (typeof from !== 'string') return take(null, Readable.from([from]));
        const stream = createReadStream(from);
        stream.on('error', (error) => zip.emit('error', error));
        take(null, stream);
      },
    );
  const output = zip.outputStream as Readable;
  zip.on('error', (error: Error) => output.destroy(error));
  zip.end({ forceZip64Format: false, comment });
  const digest = createHash('sha256');
  const read = new Transform({
    transform(chunk: Buffer, _encoding, pass) {
      digest.update(chunk);
      pass(null, chunk);
    },
  });
  await pipeline(output, read, createWriteStream(file));
  return digest.digest('hex');
}
