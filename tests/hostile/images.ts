/** Small images for test folders. */
import sharp from 'sharp';

let made: Promise<Buffer> | undefined;

/** A small PNG. */
export function smallImage(): Promise<Buffer> {
  return (made ??= sharp({ create: { width: 12, height: 8, channels: 3, background: '#887766' } })
    .png()
    .toBuffer());
}
