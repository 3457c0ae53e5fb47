/**
 * Values that begin with a sign that means something in YAML. A record may well begin so (“? Mullinahone”,
 * “@ the quay”, “&c.”), and then the value must stand in quotes.
 */
import { EVENT_ID, type Event } from 'js-yaml';
import { treeOf, type YamlNode } from './yaml-tree.ts';

/** What is wrong with the beginning of a value, and where the value begins. */
export interface SignProblem {
  offset: number;
  message: string;
  help: string;
}

/** The hyphens of entries of lists that a line begins with. */
const hyphens = /^ *(?:- +)*/;

/** A key, its colon and the space before its value. */
const key = /^(?:[\w.-]+|"[^"]*"|'[^']*') *: +/;

/** Signs no value begins with; those with a space behind them are signs only then. */
const refused = /^(?:[@`%,]|[-?:*&!](?=\s|$)|[|>](?![-+0-9]{0,2}[ \t]*(?:#.*)?$))/;

/** The sign that the value on the line of an offset begins with, where no value can begin so. */
export function signAtStart(text: string, at: number): SignProblem | undefined {
  const start = lineStart(text, at);
  const line = lineFrom(text, start);
  const indent = hyphens.exec(line)![0];
  const ofKey = key.exec(line.slice(indent.length))?.[0].length;
  if (ofKey === undefined && !indent.includes('-')) return undefined;
  const head = indent.length + (ofKey ?? 0);
  return refused.test(line.slice(head))
    ? signProblem(line[head]!, start + head, line.slice(head))
    : undefined;
}

/** The same inside brackets, where only a hyphen and a question mark are left to be told. */
export function signInFlow(text: string, at: number): SignProblem | undefined {
  const start = lineStart(text, at);
  const sign = /(?:[[{,]|:[ ])[ ]*([-?])[ ]/.exec(lineFrom(text, start));
  return sign ? signProblem(sign[1]!, start + sign.index + sign[0].length - 2) : undefined;
}

/** What to say of a value that begins with a sign; `value` is shown in quotes where it is the rest of its line. */
export function signProblem(sign: string, offset: number, value?: string): SignProblem {
  const quote = quoteIt(value);
  switch (sign) {
    case '-':
      return {
        offset,
        message: 'A hyphen and a space begin an entry of a list, which cannot stand here.',
        help: `If a list is meant, begin it on the next line. If the hyphen belongs to the value, ${lower(quote)}`,
      };
    case '?':
      return {
        offset,
        message: 'A value cannot begin with a question mark and a space, which mark a key in YAML.',
        help: quote,
      };
    case ':':
      return { offset, message: 'A value cannot begin with a colon and a space in YAML.', help: quote };
    case '|':
    case '>':
      return {
        offset,
        message: `After ${sign} the text must begin on the next line, and it goes on here.`,
        help: `Put the text on the next line, indented. If the ${sign} belongs to the value, ${lower(quote)}`,
      };
    case '!':
      return { offset, message: 'A value that begins with ! is read as a YAML tag.', help: quote };
    case '*':
      return { offset, message: 'A value that begins with * is read as an alias in YAML.', help: quote };
    case '&':
      return {
        offset,
        message: 'A value that begins with & is read as a mark for aliases in YAML.',
        help: quote,
      };
    default:
      return { offset, message: `A value cannot begin with ${sign} in YAML.`, help: quote };
  }
}

/** How to write a value in quotes; a comment at its end is none of it. */
export function quoteIt(value?: string): string {
  if (value === undefined) return 'Put the value in double quotes.';
  const written = inQuotes(value.replace(/[ \t]#.*$/, '').trim());
  return `Put the value in ${written.startsWith('"') ? 'double' : 'single'} quotes: ${written}`;
}

/** A value in quotes of the kind it does not hold, cut short where it is long. */
export function inQuotes(value: string): string {
  const text = value.length > 60 ? `${value.slice(0, 59)}…` : value;
  return /["\\]/.test(text) ? `'${text.replaceAll("'", "''")}'` : `"${text}"`;
}

function lower(sentence: string): string {
  return sentence.charAt(0).toLowerCase() + sentence.slice(1);
}

/** A sign that YAML takes for its own without a word. `rule` says whether the value can be read without it. */
export interface LostSign extends SignProblem {
  rule: 'sign-is-meant' | 'yaml-is-readable';
}

/**
 * Signs of which YAML makes something else without a word: `&c. farmer` is read as “farmer”, `! Kill` as “Kill”, and
 * `? Kill` in a list as a key. An anchor that an alias repeats is meant as one.
 */
export function lostSigns(events: readonly Event[], text: string): LostSign[] {
  const repeated = new Set<string>();
  for (const event of events)
    if (event.type === EVENT_ID.ALIAS) repeated.add(text.slice(event.anchorStart, event.anchorEnd));
  const problems: LostSign[] = [];
  for (const event of events) {
    if (event.type !== EVENT_ID.SCALAR) continue;
    const { anchorStart: anchor, anchorEnd: end, tagStart: tag, tagEnd } = event;
    const unused = anchor > 0 && !repeated.has(text.slice(anchor, end));
    if (unused && event.valueStart < 0)
      problems.push({
        rule: 'yaml-is-readable',
        ...signProblem('&', anchor - 1, restOfLine(text, anchor - 1)),
      });
    else if (unused) problems.push(lost(text, anchor - 1, end, 'marks a value that is repeated elsewhere'));
    else if (tag >= 0 && tagEnd - tag === 1) problems.push(lost(text, tag, tagEnd, 'marks a kind of value'));
  }
  if (/(?:^|[\s[{,])\?\s/.test(text)) questions(treeOf(events, text));
  return problems;

  function questions(node: YamlNode | undefined): void {
    if (node?.kind === 'sequence') node.items.forEach(questions);
    if (node?.kind !== 'mapping') return;
    for (const { keyStart, value } of node.pairs) {
      const sign = value.start < 0 && /\?[ \t]+$/.exec(text.slice(Math.max(keyStart - 20, 0), keyStart))?.[0];
      const at = sign ? keyStart - sign.length : 0;
      if (sign) problems.push({ rule: 'yaml-is-readable', ...signProblem('?', at, restOfLine(text, at)) });
      questions(value);
    }
  }
}

function lost(text: string, start: number, end: number, meaning: string): LostSign {
  return {
    rule: 'sign-is-meant',
    offset: start,
    message: `“${text.slice(start, end)}” is not read: before a value, ${text[start]} ${meaning} in YAML.`,
    help: quoteIt(restOfLine(text, start)),
  };
}

/** What stands from an offset to the end of its line, unless brackets on the line may end the value before. */
function restOfLine(text: string, at: number): string | undefined {
  return /[[{]/.test(lineFrom(text, lineStart(text, at))) ? undefined : lineFrom(text, at);
}

function lineStart(text: string, at: number): number {
  return text.lastIndexOf('\n', at - 1) + 1;
}

function lineFrom(text: string, start: number): string {
  const end = text.indexOf('\n', start);
  return text.slice(start, end < 0 ? undefined : end);
}
