/**
 * YAML as authors write it, read with js-yaml's core schema: dates stay text, `<<` is an ordinary key, and a number is
 * one only where nothing of its writing is lost. The same events give the values and, only when a finding asks for a
 * place, the positions. What cannot be read is explained by yaml-problems.ts.
 */
import {
  CORE_SCHEMA,
  EVENT_ID,
  NOT_RESOLVED,
  YAMLException,
  constructFromEvents,
  defineScalarTag,
  floatCoreTag,
  intCoreTag,
  parseEvents,
  type Event,
} from 'js-yaml';
import type { Finding } from '../model/finding.ts';
import { finding, quoted } from './finding.ts';
import type { SourceText } from './source-text.ts';
import { explainYaml } from './yaml-problems.ts';
import { lostSigns } from './yaml-signs.ts';
import { expandedSize, repeatedKeys, treeOf, type YamlNode } from './yaml-tree.ts';

/** What a document is read as: its value (`null` when it is empty), or why it has none. */
export interface YamlResult {
  /** `undefined` when the YAML cannot be read. */
  value: unknown;
  findings: Finding[];
}

/**
 * `412` is a number and `007548705`, `2.10`, `0x1F` and `1e3` are text as written: numbers of films, pages and shelves
 * would otherwise lose their zeros, or become other numbers altogether.
 */
const exact = (core: typeof intCoreTag) =>
  defineScalarTag<number>(core.tagName, {
    implicit: true,
    implicitFirstChars: [...'-0123456789'],
    identify: () => false,
    resolve: (text, isExplicit, tagName) => {
      const value = core.resolve(text, isExplicit, tagName);
      return isExplicit || value === NOT_RESOLVED || String(value) === text ? value : NOT_RESOLVED;
    },
  });
const schema = CORE_SCHEMA.withTags(exact(intCoreTag), exact(floatCoreTag));

/** More values than any list an author writes; reached only by aliases that repeat aliases. */
const mostValues = 200_000;

/** Reads the YAML in the first `end` characters of a file. */
export function readYaml(source: SourceText, end = source.text.length): YamlResult {
  const text = end === source.text.length ? source.text : source.text.slice(0, end);
  let events: Event[];
  try {
    events = parseEvents(text, {});
  } catch (error) {
    return { value: undefined, findings: explainYaml(source, text, reasonOf(error)) };
  }
  if (text.includes('*')) {
    const { values, circular } = expandedSize(events, text);
    if (circular || values > mostValues)
      return { value: undefined, findings: [tooLarge(source, text, circular)] };
  }
  try {
    const documents = constructFromEvents(events, { source: text, schema });
    if (documents.length > 1)
      return {
        value: undefined,
        findings: explainYaml(source, text, { reason: 'several documents', offset: undefined }),
      };
    const signs = /[&!?]/.test(text) ? lostSigns(events, text) : [];
    const lost = signs.map(({ rule, offset, message, help }) =>
      finding(rule, source.position(offset), message, help),
    );
    if (signs.some(({ rule }) => rule === 'yaml-is-readable')) return { value: undefined, findings: lost };
    return { value: documents[0] ?? null, findings: [...lost, ...strayComments(source, text, events)] };
  } catch (error) {
    const reason = reasonOf(error);
    if (reason.reason !== 'duplicated mapping key')
      return { value: undefined, findings: explainYaml(source, text, reason) };
    return withRepeatedKeys(source, text, events);
  }
}

/** The tree of positions of the YAML in the first `end` characters of a file that can be read. */
export function yamlTree(source: SourceText, end: number): YamlNode | undefined {
  const text = source.text.slice(0, end);
  try {
    return treeOf(parseEvents(text, {}), text);
  } catch {
    return undefined;
  }
}

/** Every repeated key is a finding; the values are read all the same, so that other problems come to light too. */
function withRepeatedKeys(source: SourceText, text: string, events: readonly Event[]): YamlResult {
  const findings = repeatedKeys(treeOf(events, text)).map(({ key, first, again }) =>
    finding(
      'key-stands-once',
      source.position(again),
      `The key ${quoted(key)} stands twice; it was already given in line ${source.position(first).line}.`,
      'Keep one of the two. To say several things under one key, write a list.',
    ),
  );
  try {
    const documents = constructFromEvents([...events], { source: text, schema, json: true });
    return { value: documents[0] ?? null, findings };
  } catch (error) {
    return { value: undefined, findings: [...findings, ...explainYaml(source, text, reasonOf(error))] };
  }
}

/**
 * `title: Deed #412` is read as “Deed”: a number sign after a space begins a comment. One with no space behind it was
 * hardly meant as one.
 */
function strayComments(source: SourceText, text: string, events: readonly Event[]): Finding[] {
  const findings: Finding[] = [];
  for (const sign of text.matchAll(/(?<=\S[ \t]{1,9})#(?=[^\s#])/g)) {
    const at = sign.index;
    if (
      events.some((event) => event.type === EVENT_ID.SCALAR && event.valueStart <= at && at < event.valueEnd)
    )
      continue;
    const lineStart = text.lastIndexOf('\n', at) + 1;
    if (/(?:^|\s)#/.test(text.slice(lineStart, at))) continue; // inside a comment that was meant
    const end = text.indexOf('\n', at);
    const lost = text.slice(at, end < 0 ? undefined : end);
    findings.push(
      finding(
        'comment-is-meant',
        source.position(at),
        `${quoted(lost, 40)} is not read: a number sign after a space begins a comment.`,
        'If it belongs to the value, put the whole value in double quotes; if it is a comment, write a space after the sign.',
      ),
    );
  }
  return findings;
}

function tooLarge(source: SourceText, text: string, circular: boolean): Finding {
  const star = text.search(/(?<=[\s[{,:-])\*/);
  return finding(
    'yaml-is-of-bounded-size',
    source.position(Math.max(star, 0)),
    circular
      ? 'An alias (*) stands inside the very value that it repeats, so the value would never end.'
      : `The aliases (*) in this file repeat one another so often that it stands for more than ${mostValues.toLocaleString('en')} values.`,
    'Write the values out instead of repeating them with & and *.',
  );
}

/** Why js-yaml gave up, and the offset at which it did. */
export interface YamlReason {
  reason: string;
  offset: number | undefined;
}

function reasonOf(error: unknown): YamlReason {
  if (error instanceof YAMLException) return { reason: error.reason, offset: error.mark?.position };
  return { reason: error instanceof Error ? error.message : String(error), offset: undefined };
}
