/** Reasons of the first parser for giving up that say enough by themselves. */
import { quoteIt } from './yaml-signs.ts';
import type { YamlReason } from './yaml.ts';

/** What is wrong with YAML, and where; the rule is that YAML is readable unless it says otherwise. */
export interface Problem {
  offset: number;
  message: string;
  help: string;
  rule?: 'yaml-is-readable' | 'sentence-is-whole';
}

/** What the first parser’s reason means, where it is plain from the reason. */
export function fromReason(text: string, { reason, offset = 0 }: YamlReason): Problem | undefined {
  if (reason === 'several documents') {
    const second = /\n(---|\.\.\.)(?=\s|$)/.exec(text);
    const offset = second ? second.index + 1 : 0;
    if (second?.[1] === '...')
      return {
        offset,
        message: 'Three dots end the YAML here, and more of it stands below them.',
        help: 'Remove the line of three dots. Front matter ends with a line of three hyphens.',
      };
    return {
      offset,
      message: 'A second document begins here; a file holds one.',
      help: 'Remove the line of three hyphens, or move what follows it into a file of its own.',
    };
  }
  if (reason.includes('non-printable')) {
    const at = text.search(
      /[\0-\x08\x0b\x0c\x0e-\x1f\x7f-\x84\x86-\x9f\ufffe\uffff]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/,
    );
    const code = text.charCodeAt(Math.max(at, 0)).toString(16).toUpperCase().padStart(4, '0');
    return {
      offset: Math.max(at, 0),
      message: `An invisible control character (U+${code}) stands here.`,
      help: 'Delete it; it usually comes along when text is copied from another program.',
    };
  }
  if (reason.startsWith('nesting exceeded'))
    return {
      offset,
      message: 'Values are nested here more deeply than any content needs.',
      help: 'Close the brackets opened before this one.',
    };
  if (reason.startsWith('unknown') && reason.includes('tag'))
    return {
      offset,
      message: 'A value that begins with ! is read as a YAML tag, and this one is unknown.',
      help: quoteFrom(text, offset),
    };
  if (reason.startsWith('unidentified alias')) {
    const star = text[offset - 1] === '*' ? offset - 1 : offset;
    return {
      offset: star,
      message: 'A value that begins with * is read as an alias, and nothing in this file has that name.',
      help: quoteFrom(text, star),
    };
  }
  if (reason === 'deficient indentation' && (text[offset] === ']' || text[offset] === '}'))
    return bracketAtEdge(text, offset);
  if (reason.includes('complex keys'))
    return {
      offset,
      message: 'A list or a mapping stands here in place of a key.',
      help: 'Write a plain word as the key, then a colon and the value.',
    };
  return undefined;
}

/** A closing bracket in the first column, where a key would stand. */
export function bracketAtEdge(text: string, at: number): Problem {
  return {
    offset: at,
    message: `The closing ${text[at]} is not indented, and stands where only a key may stand.`,
    help: `Indent the ${text[at]} by two spaces more than the key, or put it at the end of the line before.`,
  };
}

/** Shows the value that begins at an offset in quotes, where it is all that stands on the rest of the line. */
export function quoteFrom(text: string, at: number): string {
  const value = text.slice(at, endOfLine(text, at));
  return quoteIt(/[,\]}]/.test(value) ? undefined : value);
}

/** The offset at which the line of an offset ends. */
export function endOfLine(text: string, at: number): number {
  const end = text.indexOf('\n', at);
  return end < 0 ? text.length : end;
}
