import type { Finding } from '../model/finding.ts';
import { finding } from './finding.ts';
import type { SourceText } from './source-text.ts';

/**
 * Where the front matter of a Markdown file ends and its body begins, as offsets. The YAML is the text before
 * `yamlEnd`: the opening line of three hyphens is a document mark to a YAML parser, so offsets need no shift.
 */
export interface FrontMatter {
  yamlEnd: number;
  bodyStart: number;
}

/** Finds the front matter of a Markdown file, or says why there is none. */
export function findFrontMatter(source: SourceText): FrontMatter | Finding {
  const { text } = source;
  if (!isFence(text, 0)) return notGiven(source);
  for (let line = text.indexOf('\n') + 1; line > 0; line = text.indexOf('\n', line) + 1) {
    if (!isFence(text, line)) continue;
    const end = text.indexOf('\n', line);
    return { yamlEnd: line, bodyStart: end < 0 ? text.length : end + 1 };
  }
  const dots = /^\.\.\.[ \t]*$/m.exec(text);
  return finding(
    'front-matter-is-closed',
    source.position(0),
    'The front matter that begins here has no end.',
    dots
      ? `Write three hyphens in place of the three dots in line ${source.position(dots.index).line}.`
      : 'Put a line with three hyphens and nothing else between the keys and the text below them.',
  );
}

/** A line of three hyphens, perhaps with spaces after them. */
function isFence(text: string, start: number): boolean {
  if (!text.startsWith('---', start)) return false;
  for (let at = start + 3; at < text.length && text[at] !== '\n'; at++)
    if (text[at] !== ' ' && text[at] !== '\t') return false;
  return true;
}

function notGiven(source: SourceText): Finding {
  const blank = /^\s+(?=---)/.exec(source.text);
  if (blank)
    return finding(
      'front-matter-is-given',
      source.position(blank[0].length),
      'Something stands before the front matter, if only an empty line.',
      'Let the three hyphens be the very first thing in the file.',
    );
  return finding(
    'front-matter-is-given',
    source.position(0),
    source.text.trim() === '' ? 'This file is empty.' : 'This file has no front matter.',
    'Begin it with a line of three hyphens, then the keys, such as title: …, then another line of three hyphens.',
  );
}
