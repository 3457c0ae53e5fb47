/** What holds of any content folder, however it came to be. */
import { CannotRun, loadCorpus } from '../../src/corpus/load.ts';
import { examine, type Examination } from '../../src/dossier/examine.ts';
import type { Corpus } from '../../src/corpus/types.ts';

/** The day of every examination here. */
export const today = '2026-06-01';

/** An examination, or nothing where the folder was refused as a whole; and what does not hold of it. */
export interface Checked {
  examination?: Examination;
  broken: string[];
}

/** Checks a folder. What is thrown is returned as a broken promise, with its stack. */
export function checkFolder(dir: string): Checked {
  let corpus: Corpus;
  try {
    corpus = loadCorpus(dir);
  } catch (error) {
    if (error instanceof CannotRun) return { broken: sentence(error.message) };
    return { broken: [`reading broke off: ${told(error)}`] };
  }
  try {
    const examination = examine(corpus, today);
    return { examination, broken: brokenPromises(examination) };
  } catch (error) {
    return { broken: [`examining broke off: ${told(error)}`] };
  }
}

/** Each finding has a place in a file and says what is wrong in a sentence; nothing is left out without a word. */
function brokenPromises({ corpus, findings, ok }: Examination): string[] {
  const broken: string[] = [];
  const lines = new Map<string, string[]>();
  for (const { file, line, column, message, help, rule, severity } of findings) {
    const at = `${rule} at ${file}:${line}:${column}`;
    let text = lines.get(file);
    if (!text) lines.set(file, (text = corpus.source(file).split('\n')));
    const there = text[line - 1];
    if (file === '' && severity === 'error') broken.push(`${at} has no file`);
    if (there === undefined || column < 1 || column > there.length + 1)
      broken.push(`${at} is not in the file`);
    broken.push(...sentence(message).map((why) => `${at}: ${why}`));
    if (/undefined|\[object|Invalid input|(?<![\p{L}“])NaN/u.test(help))
      broken.push(`${at} helps with “${help}”`);
  }
  if (ok && corpus.broken.size > 0)
    broken.push(`${[...corpus.broken].join(', ')} are broken, and nobody says so`);
  if (Object.hasOwn(Object.prototype, 'zqpolluted') || Object.keys(Object.prototype).length > 0)
    broken.push('the prototype of all objects was changed');
  return broken;
}

function sentence(message: string): string[] {
  const plain = message.replaceAll(/“[^]*”/g, '“…”');
  return /[.?!:)”…]$/.test(message.trim()) && !/undefined|\[object|Invalid input|\bNaN\b/.test(plain)
    ? []
    : [`it says “${message.slice(0, 200)}”`];
}

function told(error: unknown): string {
  return error instanceof Error ? (error.stack ?? error.message).slice(0, 1500) : String(error);
}
