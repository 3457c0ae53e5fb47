/**
 * Tags and braces in `.mdx` cases. A case is something to read and is never compiled: braces, imports and exports
 * are refused with their place, tags are taken from a list, attributes are literal text.
 */
import type { MdxJsxFlowElement, MdxJsxTextElement } from 'mdast-util-mdx-jsx';
import type { Position } from 'unist';
import { components, type ComponentShape } from './components.ts';
import { didYouMean } from './nearest.ts';
import { harmlessTags } from './safe-html.ts';
import { startOf } from './tree.ts';
import type { BodyContext, BodyProblem } from './types.ts';

export type Tag = MdxJsxFlowElement | MdxJsxTextElement;
type TagAttribute = Tag['attributes'][number];

const braces =
  'Write the text itself. Curly braces that belong to the text are written with a backslash: \\{ and \\}.';

/** Braces: an expression in the text. A comment between braces says nothing and is left out without a word. */
export function isComment(expression: string): boolean {
  return /^\s*\/\*(?:(?!\*\/)[^])*\*\/\s*$/.test(expression);
}

/** The problem with an expression of any kind at an offset. */
export function expressionProblem(offset: number, where = 'Braces'): BodyProblem {
  return {
    rule: 'content-is-not-code',
    severity: 'error',
    offset,
    message: `${where} hold code, and a case is never run.`,
    help: braces,
  };
}

const importOrExport =
  /^(?:import\s*(?:["'{*]|[\w$]+\s*,|(?:type\s+)?[\w$]+\s+from\b)|export\s*(?:[{*]|(?:default|const|let|var|function|class|async|type|interface|enum)\b))/;

/** Whether a paragraph is an import or export rather than a sentence that begins with the word. */
export function isImportOrExport(source: string): boolean {
  return importOrExport.test(source);
}

/** The problem with an import or export. */
export function importProblem(offset: number): BodyProblem {
  return {
    rule: 'content-is-not-code',
    severity: 'error',
    offset,
    message: 'This line imports or exports code, and a case is never run.',
    help: 'Take the line out; the components of the site can be used without importing them.',
  };
}

/** A component as its tag names it, with its literal attributes; problems are added to the list. */
export function readComponent(
  node: Tag,
  ctx: BodyContext,
  problems: BodyProblem[],
): { name: string; shape: ComponentShape; props: Record<string, string | number | boolean> } | undefined {
  const name = node.name ?? '';
  const problem = (message: string, help: string, offset = startOf(node) + 1, rule = 'component-is-known') =>
    void problems.push({ rule, severity: 'error', offset, message, help });

  const shape = components.get(name);
  if (!shape) {
    const all = `The components are ${[...components.keys()].join(', ')}.`;
    const message = name === '' ? 'An empty tag <> shows nothing.' : `There is no component ${name}.`;
    problem(message, name === '' ? all : didYouMean(name, components.keys(), all));
    for (const attribute of node.attributes) readAttribute(attribute, problems);
    return undefined;
  }
  if (ctx.kind !== 'case') {
    problem(
      `${name} stands in the text of a ${ctx.kind}; components stand only in cases.`,
      'Leave it out here.',
    );
    return undefined;
  }
  const props: Record<string, string | number | boolean> = {};
  for (const attribute of node.attributes) {
    const literal = readAttribute(attribute, problems);
    if (!literal) continue;
    const known = Object.hasOwn(shape.attributes, literal.name) ? shape.attributes[literal.name] : undefined;
    if (!known) {
      const names = Object.keys(shape.attributes);
      const otherwise = names.length > 0 ? `It has ${names.join(' and ')}.` : 'It has no attributes.';
      problem(
        `${name} has no attribute ${literal.name}.`,
        didYouMean(literal.name, names, otherwise),
        literal.offset,
      );
      continue;
    }
    if (literal.value === true || literal.value === '') {
      problem(`${literal.name} of ${name} says nothing.`, `Write ${literal.name}="…".`, literal.offset);
      continue;
    }
    props[literal.name] = literal.value;
    if (known.kind === 'record' && !ctx.hasRecord(literal.value))
      problem(
        `${name} shows the record “${literal.value}”, and there is no such record.`,
        didYouMean(
          literal.value,
          ctx.recordIds(),
          'Write the name of a file in records/, without its ending.',
        ),
        literal.offset,
        'reference-resolves',
      );
    if (known.kind === 'person' && !ctx.hasPerson(literal.value))
      problem(
        `${name} shows the person “${literal.value}”, and there is no such person.`,
        'Write the id of somebody in people/.',
        literal.offset,
        'reference-resolves',
      );
  }
  for (const [key, { required }] of Object.entries(shape.attributes))
    if (
      required &&
      !(key in props) &&
      !node.attributes.some((a) => a.type === 'mdxJsxAttribute' && a.name === key)
    )
      problem(`${name} does not say which ${key}.`, `Write <${name} ${key}="…" />.`);
  return { name, shape, props };
}

/** A lower-case tag, if it is one of the harmless ones; otherwise the problem is added to the list. */
export function readHarmlessTag(
  node: Tag,
  problems: BodyProblem[],
): { name: string; attributes: Record<string, string> } | undefined {
  const name = node.name!;
  const allowed = harmlessTags.get(name);
  if (!allowed) {
    problems.push({
      rule: 'html-is-safe',
      severity: 'error',
      offset: startOf(node) + 1,
      message: `<${name}> is not one of the few tags prose may hold.`,
      help: `Write Markdown instead, or &lt; for the sign itself. Tags that may stand: ${[...harmlessTags.keys()].join(', ')}.`,
    });
    for (const attribute of node.attributes) readAttribute(attribute, problems);
    return undefined;
  }
  const attributes: Record<string, string> = {};
  for (const attribute of node.attributes) {
    const literal = readAttribute(attribute, problems);
    if (!literal) continue;
    if (allowed.includes(literal.name) && typeof literal.value === 'string')
      attributes[literal.name] = literal.value;
    else
      problems.push({
        rule: 'html-is-safe',
        severity: 'error',
        offset: literal.offset,
        message: `<${name}> may not have the attribute ${literal.name}.`,
        help: `Take it out; <${name}> may have ${allowed.join(' and ')}.`,
      });
  }
  return { name, attributes };
}

function readAttribute(
  attribute: TagAttribute,
  problems: BodyProblem[],
): { name: string; value: string | true; offset: number } | undefined {
  const offset = (attribute as { position?: Position }).position?.start.offset ?? 0;
  if (attribute.type === 'mdxJsxExpressionAttribute') {
    problems.push(expressionProblem(offset, 'Braces in a tag'));
    return undefined;
  }
  if (attribute.value !== null && typeof attribute.value === 'object') {
    problems.push({
      ...expressionProblem(offset, `Braces after ${attribute.name}=`),
      help: `Write the text between quotation marks: ${attribute.name}="…".`,
    });
    return undefined;
  }
  return { name: attribute.name, value: attribute.value ?? true, offset };
}

interface ParseError {
  reason: string;
  ruleId?: string | undefined;
  place?: { offset?: number | undefined; start?: { offset?: number | undefined } } | undefined;
}

/** A sentence for what the parser could not get past. */
export function parseProblem(error: unknown, body: string): BodyProblem {
  const { reason = '', ruleId, place } = error as Partial<ParseError>;
  const offset = Math.min(place?.offset ?? place?.start?.offset ?? 0, body.length);
  const importAt = firstImport(body);
  if (importAt !== undefined) return importProblem(importAt);

  if (/in expression/.test(reason) && ruleId !== 'unexpected-lazy') {
    const brace = body.lastIndexOf('{', offset);
    return {
      rule: 'content-is-not-code',
      severity: 'error',
      offset: Math.max(brace, 0),
      message: 'A { here starts code and is never closed; a case holds no code.',
      help: braces,
    };
  }
  const problem = (at: number, message: string, help: string): BodyProblem => ({
    rule: 'prose-is-readable',
    severity: 'error',
    offset: at,
    message,
    help,
  });
  if (ruleId === 'unexpected-closing-slash') {
    const at = Math.max(body.lastIndexOf('<', offset), 0);
    const name = /^<\/\s*([\w.:-]*)/.exec(body.slice(at))?.[1] ?? '';
    return problem(
      at,
      `</${name}> closes a tag that was never opened.`,
      'Take it out, or open the tag before it.',
    );
  }
  if (ruleId === 'end-tag-mismatch') {
    // The parser names the tag that was opened, with its line and column: “… for `<em>` (3:1-3:5)”.
    const [, opened, line, column] = /`<([^`>]*)>` \((\d+):(\d+)/.exec(reason) ?? [];
    const name = opened ?? /`<\/([^`>]*)>`/.exec(reason)?.[1] ?? '';
    const at = line === undefined ? offset : offsetOf(body, Number(line), Number(column));
    return problem(
      at,
      opened === undefined
        ? `</${name}> is closed here, and not opened in the same paragraph or block.`
        : `<${name}> is opened here, and not closed in the same paragraph or block.`,
      `Write </${name}> where it ends, or <${name} /> for a tag that holds nothing.`,
    );
  }
  const less = body.lastIndexOf('<', offset);
  return problem(
    less < 0 ? offset : less,
    'A < here starts a tag, and what follows is not one.',
    'Write &lt; for the sign itself. In an .mdx file web addresses are written [words](https://…), comments {/* … */}.',
  );
}

function offsetOf(body: string, line: number, column: number): number {
  let start = 0;
  for (const match of body.matchAll(/\r\n|\n|\r/g)) {
    if (--line === 0) break;
    start = match.index + match[0].length;
  }
  return Math.min(start + column - 1, body.length);
}

function firstImport(body: string): number | undefined {
  for (const match of body.matchAll(/(?<=^|\n[ \t]*\n)(?:import|export)\b[^\n]*/g))
    if (isImportOrExport(match[0])) return match.index;
  return undefined;
}
