/** What `start` shows of the content: on a terminal one list that is drawn anew, elsewhere only what has changed. */
import type { Corpus } from '../../corpus/types.ts';
import type { Finding } from '../../model/finding.ts';
import { findingsText, tally } from './findings.ts';
import { wrap, type Paint } from './paint.ts';

export interface LiveState {
  corpus: Pick<Corpus, 'source'>;
  findings: readonly Finding[];
  /** What is said under the list: how the site stands. */
  standing: string;
  /** Where the site is. */
  addresses: readonly string[];
  /** The time of day of the look, `14:03:22`. */
  at: string;
  /** The height of the terminal in lines. */
  rows: number;
}

const grave: readonly Finding['severity'][] = ['error', 'warning', 'hint'];

/**
 * The whole screen, never higher than the terminal: errors first, with an excerpt as long as there is room for it, then
 * one line each, then as many as fit and how many more there are. Hints come last and never push anything out.
 */
export function liveScreen(state: LiveState, paint: Paint): string {
  const { corpus, findings, standing, addresses, at, rows } = state;
  const head = [
    `${paint.bold(addresses.join('  '))}${addresses.length > 0 ? paint.dim('  follows every change, Ctrl-C ends it') : ''}`,
    `${mark(findings, paint)} ${paint.bold(tally(findings))} ${paint.dim(`at ${at}`)}`,
    '',
  ];
  const foot = standing === '' ? [] : ['', ...wrap(standing, paint.width).split('\n')];
  const room = Math.max(3, rows - head.length - foot.length - 1);
  const sorted = grave.flatMap((severity) => findings.filter((finding) => finding.severity === severity));
  return [...head, ...list(corpus, sorted, room, paint), ...foot].join('\n');
}

function mark(findings: readonly Finding[], paint: Paint): string {
  if (findings.some(({ severity }) => severity === 'error')) return paint.red('✗');
  return findings.some(({ severity }) => severity === 'warning') ? paint.yellow('!') : paint.green('✓');
}

function list(
  corpus: LiveState['corpus'],
  findings: readonly Finding[],
  room: number,
  paint: Paint,
): string[] {
  const lines: string[] = [];
  for (const [i, finding] of findings.entries()) {
    const left = findings.length - i;
    const whole = findingsText(corpus, [finding], paint).trimEnd().split('\n');
    const short = [
      `${colour(finding, paint)(finding.severity)} ${paint.bold(place(finding))} ${cut(finding, paint)}`,
    ];
    // What still comes needs a line each, and the word of how many more there are needs one.
    const fits = (some: readonly string[]) => lines.length + some.length + Math.min(left - 1, 1) <= room;
    const next = finding.severity !== 'hint' && fits([...whole, '']) ? [...whole, ''] : short;
    if (!fits(next)) {
      lines.push(paint.dim(`and ${left} more: npm run check lists them all`));
      break;
    }
    lines.push(...next);
  }
  return lines;
}

const place = ({ file, line, column }: Finding) => `${file}:${line}:${column}`;

function colour({ severity }: Finding, paint: Paint): (text: string) => string {
  return severity === 'error' ? paint.red : severity === 'warning' ? paint.yellow : paint.cyan;
}

/** The message on one line with its place before it. */
function cut(finding: Finding, paint: Paint): string {
  const room = Math.max(10, paint.width - finding.severity.length - place(finding).length - 3);
  const message = Array.from(finding.message.replace(/\s+/g, ' '));
  return message.length <= room ? message.join('') : `${message.slice(0, room - 1).join('')}…`;
}

/** What is new since the look before, and what is gone, for a log. */
export function sinceBefore(
  before: readonly Finding[],
  now: readonly Finding[],
): { added: Finding[]; gone: number } {
  const key = ({ file, rule, message, severity }: Finding) => JSON.stringify([severity, file, rule, message]);
  const old = new Set(before.map(key));
  const fresh = new Set(now.map(key));
  return {
    added: now.filter((finding) => !old.has(key(finding))),
    gone: before.filter((finding) => !fresh.has(key(finding))).length,
  };
}
