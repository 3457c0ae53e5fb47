/** The drawing of waves: one row a wave, down a time line, with the gaps between them lettered. */
import type { ChainView } from '../../src/dossier/journeys.ts';

export interface WaveSheet {
  width: number;
  height: number;
  /** Where the time line stands. */
  axis: number;
  rows: {
    y: number;
    year: string;
    dots: { x: number; y: number; told: boolean }[];
    count: string;
    after: number;
  }[];
  gaps: { y: number; says: string; tick: string }[];
}

/** Dots in one line of a row; the drawing must fit a phone. */
const perLine = 12;
const step = 13;
const row = 14;

/** Rows and gaps of a chain. A gap grows with its years, but slowly, so that forty years fit beside three months. */
export function waveSheet({ waves }: ChainView, words: (date: string) => string): WaveSheet {
  const axis = 62;
  const sheet: WaveSheet = { width: 300, height: 0, axis, rows: [], gaps: [] };
  let y = 18;
  waves.forEach((wave, i) => {
    if (i > 0) {
      const tall = 34 + Math.min(60, 14 * Math.log2(1 + wave.gapYears));
      const middle = y + tall / 2 - 4;
      sheet.gaps.push({
        y: middle + 4,
        says: wave.gap ?? '',
        tick: `M${axis - 4} ${middle + 3}l8 -6`,
      });
      y += tall;
    }
    const dots = wave.travellers.map((one, at) => ({
      x: axis + 20 + (at % perLine) * step,
      y: y + Math.floor(at / perLine) * row,
      told: one.told,
    }));
    const total = wave.travellers.length + wave.travellersLeft;
    sheet.rows.push({
      y,
      year: /\d{4}/.exec(words(wave.when))?.[0] ?? wave.when,
      dots,
      count: total > 1 ? String(total) : '',
      after: axis + 20 + Math.min(perLine, dots.length) * step,
    });
    y += Math.max(0, Math.ceil(dots.length / perLine) - 1) * row;
  });
  sheet.height = y + 18;
  return sheet;
}
