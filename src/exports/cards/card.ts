/** Cards for links as PNG files, kept between builds by what they say and by what draws them. */
import { createHash } from 'node:crypto';
import { join } from 'node:path';
import sharp from 'sharp';
import { keepFile, keptFile } from '../../dossier/kept-file.ts';
import { cardSize, type Card } from '../../dossier/publishing.ts';

// The same drawing must give the same bytes on every processor; vector instructions round differently.
sharp.simd(false);

/**
 * The PNG of a card. Kept in `cacheFolder` under the digest of the card and of `maker`, which names the programs that
 * draw it; nothing is kept where that is not known.
 */
export async function cardPicture(
  card: Card,
  cacheFolder: string,
  maker: string | undefined,
): Promise<Buffer> {
  const key = createHash('sha256')
    .update(JSON.stringify([maker, cardSize, card]))
    .digest('hex');
  const file = join(cacheFolder, `${key}.png`);
  const kept = maker === undefined ? undefined : keptFile(file, isWholePng);
  if (kept) return kept;
  // The typefaces are only opened when there is something to draw.
  const { drawCard } = await import('./draw.ts');
  const made = await sharp(Buffer.from(drawCard(card)), { density: 72 })
    .png({ palette: true, colours: 64, dither: 0, compressionLevel: 9, effort: 6 })
    .toBuffer();
  if (maker !== undefined) keepFile(file, made);
  return made;
}

const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);

/** A kept picture whose ending is missing was cut off while being written. */
function isWholePng(bytes: Buffer): boolean {
  return bytes.subarray(0, 8).equals(signature) && bytes.subarray(-8, -4).toString('latin1') === 'IEND';
}
