/**
 * Explains YAML that cannot be read. js-yaml decides that it cannot; the second parser, `yaml`, goes on after an error
 * and knows the kind of each, and the text around it tells what the author was trying to write.
 */
import { parseDocument, visit, type Document, type YAMLError } from 'yaml';
import type { Finding } from '../model/finding.ts';
import { finding, quoted } from './finding.ts';
import type { SourceText } from './source-text.ts';
import { bracketAtEdge, endOfLine, fromReason, quoteFrom, type Problem } from './yaml-reasons.ts';
import { signAtStart, signInFlow } from './yaml-signs.ts';
import type { YamlReason } from './yaml.ts';

const foldedHelp =
  'Put the value in double quotes, or write the key, >- and the text on the next line, indented.';

/** One finding for each separate slip, each a sentence about what the author wrote; never empty. */
export function explainYaml(source: SourceText, text: string, reason: YamlReason): Finding[] {
  const known = fromReason(text, reason);
  const problems = known ? [known] : fromSecondParser(text);
  if (problems.length === 0) problems.push(unexplained(text, reason));
  return problems.map(({ offset, message, help, rule }) =>
    finding(rule ?? 'yaml-is-readable', source.position(offset), message, help),
  );
}

function fromSecondParser(text: string): Problem[] {
  let document: Document.Parsed;
  try {
    document = parseDocument(text, {
      keepSourceTokens: true,
      prettyErrors: false,
      logLevel: 'silent',
    });
  } catch {
    return [];
  }
  const errors = document.errors.toSorted((a, b) => a.pos[0] - b.pos[0]);
  const problems: Problem[] = [];
  const lines = new Set<number>();
  for (const error of errors) {
    // After the first slip most others are its echo; these kinds stand by themselves.
    if (problems.length > 0 && !['TAB_AS_INDENT', 'BAD_SCALAR_START', 'DUPLICATE_KEY'].includes(error.code))
      continue;
    const problem = explain(error, text, document);
    const line = text.lastIndexOf('\n', problem.offset - 1);
    if (lines.has(line)) continue;
    lines.add(line);
    problems.push(problem);
  }
  return problems;
}

function explain(error: YAMLError, text: string, document: Document.Parsed): Problem {
  const at = error.pos[0];
  if (error.code === 'TAB_AS_INDENT') return tab(text, at);
  if (error.code === 'DUPLICATE_KEY')
    return { offset: at, message: 'This key stands twice in one place.', help: 'Keep one of the two.' };
  const sign = signAtStart(text, at);
  if (sign) return sign;
  switch (error.code) {
    case 'BAD_SCALAR_START':
      return {
        offset: at,
        message: `A value cannot begin with ${text[at]} in YAML.`,
        help: quoteFrom(text, at),
      };
    case 'BAD_DQ_ESCAPE':
      return {
        offset: at,
        message: 'Inside double quotes a backslash begins a special sign, and this one is unknown.',
        help: 'Write two backslashes for one, or put the value in single quotes.',
      };
    case 'MISSING_CHAR':
      if (error.message.includes('quote')) return openQuote(text, document, at);
      return noColon(text, at);
    case 'MULTILINE_IMPLICIT_KEY':
      return lineHasBeenBegun(text, at) ? colonOrIndent(text, at, document) : noColon(text, at);
    case 'BLOCK_AS_IMPLICIT_KEY':
      return colonOrIndent(text, at, document);
    case 'BLOCK_IN_FLOW':
      return colonInFlow(text, at);
    case 'BAD_INDENT':
      return error.message.startsWith('Flow') ? openBracket(text, document, at) : indentation(text, at);
    case 'UNEXPECTED_TOKEN':
      return unexpected(text, at);
    default:
      return unexplained(text, { reason: error.message, offset: at });
  }
}

function tab(text: string, at: number): Problem {
  const start = text.lastIndexOf('\n', at - 1) + 1;
  const inIndent = /^[ \t]*/.exec(text.slice(start, start + 400))![0].indexOf('\t');
  return {
    offset: inIndent >= 0 ? start + inIndent : at,
    message: 'A tab stands in the indentation; YAML allows only spaces there.',
    help: 'Replace the tab by two spaces for each step.',
  };
}

function openQuote(text: string, document: Document.Parsed, at: number): Problem {
  let start: number | undefined;
  visit(document, {
    Scalar(_, node) {
      const source = node.srcToken && 'source' in node.srcToken ? node.srcToken.source : '';
      const sign = source[0];
      if ((sign === '"' || sign === "'") && (source.length < 2 || !source.endsWith(sign)) && node.range)
        start ??= node.range[0];
    },
  });
  const offset = start ?? at;
  return {
    offset,
    message: `The quotation mark ${text[offset] === "'" ? "'" : '"'} opened here is never closed.`,
    help: 'Close it at the end of the value. An apostrophe or quotation mark that begins a value belongs inside the other kind of quotes.',
  };
}

function openBracket(text: string, document: Document.Parsed, at: number): Problem {
  if (text[at] === ']' || text[at] === '}') return bracketAtEdge(text, at);
  let start: number | undefined;
  visit(document, {
    Collection(_, node) {
      const token = node.srcToken;
      if (token?.type !== 'flow-collection') return;
      const closed = token.end.some((end) => end.type === 'flow-seq-end' || end.type === 'flow-map-end');
      const range = node.range;
      if (range && (!closed || (range[0] < at && range[1] >= at))) start = range[0]; // the innermost
    },
  });
  const offset = start ?? at;
  const sign = text[offset] === '{' ? '{' : '[';
  return {
    offset,
    message: `The ${sign} opened here is not closed before the next key.`,
    help: `Put ${sign === '{' ? '}' : ']'} at its end.`,
  };
}

/** A colon and a space in a sentence read as a new key; a deeper line under a finished value does too. */
function colonOrIndent(text: string, at: number, document: Document.Parsed): Problem {
  const lineEnd = endOfLine(text, at);
  const sentence = text.slice(at, lineEnd);
  const first = /:(?= |$)/.exec(sentence);
  if (first && lineHasBeenBegun(text, at))
    return {
      offset: at + first.index,
      rule: 'sentence-is-whole',
      message: `The colon after ${quoted(sentence.slice(0, first.index), 40)} breaks the sentence: a colon and a space begin a new key.`,
      help: foldedHelp,
    };
  const next = firstDeeperLine(text, at, document);
  return indentation(text, next);
}

/** Something other than white space and list signs stands before the offset on its line. */
function lineHasBeenBegun(text: string, at: number): boolean {
  return /[^\s-]/.test(text.slice(text.lastIndexOf('\n', at - 1) + 1, at));
}

function firstDeeperLine(text: string, at: number, document: Document.Parsed): number {
  const nested = document.errors.find(
    (error) => error.code === 'MULTILINE_IMPLICIT_KEY' && error.pos[0] >= at,
  );
  const end = nested?.pos[1] ?? at;
  const lineEnd = endOfLine(text, at);
  return lineEnd < end ? lineEnd + 1 : at;
}

function indentation(text: string, at: number): Problem {
  const sign = signInFlow(text, at);
  if (sign) return sign;
  const start = text.lastIndexOf('\n', at - 1) + 1;
  const indent = /^ */.exec(text.slice(start, start + 400))![0].length;
  return {
    offset: start + indent,
    message: `This line is indented by ${indent === 1 ? 'one space' : `${indent} spaces`}, which fits neither the line above it nor any key before.`,
    help: 'Let keys of one entry begin in the same column, and what belongs to a key begin two spaces further in.',
  };
}

function colonInFlow(text: string, at: number): Problem {
  const sentence = text.slice(at, endOfLine(text, at));
  const colon = /:(?= |$)/.exec(sentence);
  return {
    offset: at + (colon?.index ?? 0),
    rule: 'sentence-is-whole',
    message: colon
      ? `The colon after ${quoted(sentence.slice(0, colon.index), 40)} breaks the sentence: inside { } a colon and a space begin a new key.`
      : 'Inside { } only values in one piece may stand.',
    help: 'Write the entry in block style, one key to a line, with the sentence folded under >-.',
  };
}

function noColon(text: string, at: number): Problem {
  const start = text.lastIndexOf('\n', at - 1) + 1;
  const line = text.slice(start, endOfLine(text, at));
  const indent = /^[\s-]*/.exec(line)![0].length;
  const joined = /^[\s-]*([A-Za-z][A-Za-z-]*):(?=\S)/.exec(line);
  if (joined)
    return {
      offset: start + joined[0].length,
      message: `A space is missing after the colon of “${joined[1]}”.`,
      help: `Write ${joined[1]}: and a space before the value.`,
    };
  if (/:(?: |$)/.test(line)) return indentation(text, at);
  return {
    offset: start + indent,
    message: `${quoted(line.slice(indent), 40)} is no key with a value: the colon is missing.`,
    help: 'Write a key, a colon and a space before the value; a line that goes on from the one above must be indented further than its key.',
  };
}

function unexpected(text: string, at: number): Problem {
  const before = text.slice(text.lastIndexOf('\n', at - 1) + 1, at).trimEnd();
  if (/["']$/.test(before))
    return {
      offset: at,
      message: `Text goes on after the closing quotation mark: ${quoted(text.slice(at, endOfLine(text, at)), 40)}.`,
      help: 'Put the whole value in quotes. An apostrophe inside single quotes ends them; use double quotes around it.',
    };
  if (/[\]}]$/.test(before) && /^[^\]},]/.test(text.slice(at)))
    return {
      offset: at,
      message: `Text goes on after the closing ${before.at(-1)}: ${quoted(text.slice(at, endOfLine(text, at)), 40)}.`,
      help: `A value that begins with ${before.at(-1) === ']' ? '[ is read as a list' : '{ is read as keys with values'}; if it is text, put the whole value in double quotes.`,
    };
  if (text[at] === ']' || text[at] === '}')
    return {
      offset: at,
      message: `The ${text[at]} here closes nothing that was opened.`,
      help: 'Remove it, or put the value in double quotes.',
    };
  return {
    offset: at,
    message: `${quoted(text.slice(at, endOfLine(text, at)), 40)} cannot stand here.`,
    help: foldedHelp,
  };
}

function unexplained(text: string, { offset = 0 }: YamlReason): Problem {
  return {
    offset,
    message: `YAML cannot be read from here on: ${quoted(text.slice(offset, endOfLine(text, offset)) || text.slice(text.lastIndexOf('\n', offset - 1) + 1, endOfLine(text, offset)), 40)}.`,
    help:
      'Compare this line with the one above it: its indentation, its quotation marks and its brackets. ' +
      foldedHelp,
  };
}
