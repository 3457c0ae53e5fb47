/** The station mark of a standing, as the pages draw it, in a box of 24 by 23. */
import type { StandingShape } from '../../dossier/publishing.ts';
import { inks } from './inks.ts';

const triangle = 'M12 2.5 22 20.5H2Z';
const line = `fill="none" stroke="${inks.ink}" stroke-width="1.6" stroke-linejoin="round"`;
const dot = (r: number) => `<circle cx="12" cy="14.2" r="${r}" fill="${inks.accent}"/>`;

const marks: Record<StandingShape, string> = {
  established: `<path d="${triangle}" fill="${inks.accent}" stroke="${inks.accent}" stroke-width="1.6" stroke-linejoin="round"/><circle cx="12" cy="14.2" r="2.5" fill="${inks.paper}"/>`,
  probable: `<path d="${triangle}" ${line}/>${dot(2.3)}`,
  hypothesis: `<path d="${triangle}" ${line} stroke-dasharray="3.2 2.4"/>${dot(2)}`,
  open: `<path d="${triangle}" ${line} stroke-dasharray="3.2 2.4"/>`,
  short: `<path d="M2 20.5 12 2.5 22 20.5" ${line}/>${dot(2)}`,
  contested: `<path d="${triangle}" ${line}/><path d="M3 6 21 23" ${line}/>`,
  broken: `<path d="M5 5 19 19M19 5 5 19" ${line}/>`,
};

/** The mark with its left upper corner at a point, as high as `size`. */
export function stationMark(shape: StandingShape, x: number, y: number, size: number): string {
  return `<g transform="translate(${x} ${y}) scale(${(size / 23).toFixed(4)})">${marks[shape]}</g>`;
}
