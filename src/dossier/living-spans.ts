/**
 * Words about the living in an author’s own text, marked by the author:
 *
 *     told by [living]Nora Quillinan[/living] in 2019
 *     told by [living=her granddaughter]Nora Quillinan[/living] in 2019
 *     told in 2019[living=], by Nora Quillinan[/living]
 *
 * In public the marked words drop out, and “a living person” stands for them, or the words the author gives, or nothing.
 * For the family they stay, and the marks go. Such spans may stand in every text, in bodies and in front matter, and run
 * over lines; not one inside another. `\[living]` is text.
 */

/** A span, by offsets in its text: from the first bracket to after the last, and the words between. */
export interface LivingSpan {
  start: number;
  end: number;
  from: number;
  to: number;
  /** What stands for the words in public; `undefined` for the site’s own words. */
  instead: string | undefined;
}

export interface SpanProblem {
  offset: number;
  message: string;
  help: string;
}

const mark = /(\\?)\[(?:living(?:\](?!\()|(=[^[\]\n]*)\])|\/living\])/gi;

/** Whether a text may hold a mark; quick. */
export function mayHoldSpans(text: string): boolean {
  return text.includes('[') && /\[\/?living/i.test(text);
}

/** Whoever has mended so many marks of one text looks again. */
const mostProblems = 50;

/** The spans of a text in their order, and what is wrong with its marks. A span that is not closed runs to the end. */
export function readSpans(text: string): { spans: LivingSpan[]; problems: SpanProblem[] } {
  const spans: LivingSpan[] = [];
  const problems: SpanProblem[] = [];
  let open: { start: number; from: number; instead: string | undefined } | undefined;
  for (const found of text.matchAll(mark)) {
    if (found[1] !== '') continue;
    const offset = found.index;
    const after = offset + found[0].length;
    if (found[0].startsWith('[/')) {
      if (open) spans.push({ ...open, to: offset, end: after });
      else if (problems.length < mostProblems)
        problems.push({
          offset,
          message: 'This [/living] closes a span that was never opened.',
          help: 'Write [living] where the words about the living begin, or take this mark out; for brackets that belong to the text write \\[/living].',
        });
      open = undefined;
    } else if (open) {
      if (problems.length >= mostProblems) continue;
      problems.push({
        offset,
        message: 'A [living] span is opened here inside another one.',
        help: 'Close the first with [/living] before; one span can hold several people.',
      });
    } else open = { start: offset, from: after, instead: found[2]?.slice(1).trim() };
  }
  if (open) {
    spans.push({ ...open, to: text.length, end: text.length });
    problems.push({
      offset: open.start,
      message: 'This [living] span is never closed.',
      help: 'Write [/living] where the words about the living end; for brackets that belong to the text write \\[living].',
    });
  }
  return { spans, problems: problems.sort((a, b) => a.offset - b.offset) };
}

/** A text as the public reads it: `someone` (“a living person”) or the author’s words in place of each span. */
export function publicText(text: string, someone: string): string {
  return replaced(text, (span, before, after) => {
    const instead = span.instead ?? (beginsSentence(before) ? capital(someone) : someone);
    if (instead !== '') return { instead };
    // Where nothing is left, neither is the space before it.
    if (before === '' || before.endsWith('\n')) return { instead, without: 'space after' };
    return /^(?:[\s,.;:!?)\]]|$)/.test(after) ? { instead, without: 'space before' } : { instead };
  });
}

/** A text as the family reads it: all of it, without the marks. */
export function familyText(text: string): string {
  return replaced(text, (span) => ({ instead: text.slice(span.from, span.to) }));
}

/** What stands for a span, and which blanks beside it go with it. */
interface Put {
  instead: string;
  without?: 'space before' | 'space after';
}

/** So much of what has been put together is looked at to tell whether a sentence begins. */
const inSight = 500;

/** `put` sees the end of what stands before a span, and the character after it. */
function replaced(text: string, put: (span: LivingSpan, before: string, after: string) => Put): string {
  if (!mayHoldSpans(text)) return text;
  const pieces: string[] = [];
  let before = '';
  let at = 0;
  const add = (piece: string) => {
    pieces.push(piece);
    before = piece.length >= inSight ? piece.slice(-inSight) : (before + piece).slice(-inSight);
  };
  for (const span of readSpans(text).spans) {
    add(text.slice(at, span.start));
    const { instead, without } = put(span, before, text.slice(span.end, span.end + 1));
    at = span.end;
    if (without === 'space after') while (text[at] === ' ' || text[at] === '\t') at++;
    if (without === 'space before') {
      for (let last = pieces.pop(); last !== undefined; last = pieces.pop()) {
        const kept = withoutSpaceAtEnd(last);
        if (kept === '') continue;
        pieces.push(kept);
        break;
      }
      before = withoutSpaceAtEnd(before);
    }
    add(instead);
  }
  pieces.push(text.slice(at));
  return pieces.join('');
}

/** Whether a sentence begins after a text: at its beginning, after a blank line or after a full stop, behind the marks of lists and the like. */
function beginsSentence(before: string): boolean {
  let end = before.length;
  while (end > 0 && /[\s\-*>#_]/.test(before[end - 1]!)) end--;
  const marks = before.slice(end);
  if (end === 0) return true;
  const lines = marks.split('\n');
  if (lines.slice(1, -1).some((line) => line.trim() === '')) return true;
  while (end > 0 && /[”’"')]/.test(before[end - 1]!)) end--;
  return end > 0 && /[.!?]/.test(before[end - 1]!) && /^\s/.test(marks);
}

function withoutSpaceAtEnd(text: string): string {
  let end = text.length;
  while (end > 0 && (text[end - 1] === ' ' || text[end - 1] === '\t')) end--;
  return text.slice(0, end);
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/**
 * A value with the spans in all its texts resolved; the same object where it holds none. `\[living]` of texts that are
 * not Markdown loses its backslash; in a `body` Markdown takes it off.
 */
export function inAllTexts<T>(value: T, resolve: (text: string) => string): T {
  const change = (one: unknown, isMarkdown: boolean): unknown => {
    if (typeof one === 'string') {
      if (!mayHoldSpans(one)) return one;
      const text = resolve(one);
      return isMarkdown ? text : text.replaceAll(/\\(\[\/?living(?:=[^[\]\n]*)?\])/gi, '$1');
    }
    if (one === null || typeof one !== 'object') return one;
    if (Array.isArray(one)) {
      const items = one.map((item) => change(item, false));
      return items.some((item, i) => item !== one[i]) ? items : one;
    }
    let changed: Record<string, unknown> | undefined;
    for (const [key, item] of Object.entries(one)) {
      const now = change(item, key === 'body');
      if (now !== item) (changed ??= { ...one })[key] = now;
    }
    return changed ?? one;
  };
  return change(value, false) as T;
}
