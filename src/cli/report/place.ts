/** What `place` prints: each reading with its candidates, best first, and what to do where none stands out. */
import type { PlaceCandidate, ResolvedReading } from '../../reasoning/places/types.ts';
import { wrap, type Paint } from './paint.ts';

const words = {
  clear: 'one place fits',
  ambiguous: 'ambiguous',
  doubtful: 'doubtful',
  partial: 'known only in part',
  nothing: 'nothing fits',
} as const;

/** One reading and its candidates as lines of text, with an empty line after them. */
export function placeReport(resolved: ResolvedReading, paint: Paint): string {
  const { reading, outcome, candidates, container, message, equals } = resolved;
  const tone = outcome === 'clear' ? paint.green : outcome === 'nothing' ? paint.red : paint.yellow;
  const lines = [`${paint.bold(`“${shown(reading)}”`)}  ${tone(words[outcome])}`];
  candidates.forEach((candidate, i) =>
    lines.push(...entry(candidate, String(i + 1), i < equals && outcome !== 'doubtful', paint)),
  );
  if (container) lines.push(...entry(container, '·', false, paint));
  if (message) lines.push(wrap(message, paint.width, '  '));
  return `${lines.join('\n')}\n\n`;
}

function entry(candidate: PlaceCandidate, mark: string, strong: boolean, paint: Paint): string[] {
  const { id, name, kind, path, score, because } = candidate;
  const head = `${strong ? paint.bold(name) : name}, ${kind}`;
  return [
    `  ${mark.padStart(2)}  ${head}  ${paint.dim(`${id}  ${score.toFixed(2)}`)}`,
    ...(path.length > 1 ? [wrap(path.slice(1).join(', '), paint.width, '      ')] : []),
    paint.dim(wrap(because.join('; '), paint.width, '      ')),
  ];
}

/** A reading on one line, without control characters. */
function shown(reading: string): string {
  return reading.replace(/\p{Cc}+/gu, ' ').trim();
}
