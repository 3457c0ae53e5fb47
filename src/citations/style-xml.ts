/**
 * A CSL style from its XML, read strictly, and what stands in the way of setting notes with it. The processor’s own
 * reader takes text apart by patterns, and mistakes a comment or a quotation mark for a tag.
 */
import { parseXml, XmlElement, XmlError, XmlText, type XmlNode } from '@rgrove/parse-xml';

/** An element as the processor takes it; text is a plain string among the children. */
export interface StyleNode {
  name: string;
  attrs: Record<string, string>;
  children: (StyleNode | string)[];
}

/** What is wrong with a style, and where in its text. */
export interface StyleProblem {
  /** Counted from 1. */
  line: number;
  column: number;
  message: string;
  help: string;
}

export interface ReadStyle {
  /** Absent where the text is no XML at all. */
  root?: StyleNode;
  problem?: StyleProblem;
}

export const cslNamespace = 'http://purl.org/net/xbiblio/csl';

/** Reads the XML of a style or locale. Never throws. */
export function readStyleXml(xml: string): ReadStyle {
  try {
    const { root } = parseXml(xml);
    if (root) return { root: nodeOf(root) };
    return { problem: noStyle(xml, 0, 'This file holds no element at all.') };
  } catch (error) {
    if (error instanceof XmlError)
      return {
        problem: {
          line: error.line,
          column: error.column,
          message: `This is not well-formed XML: ${firstSentence(error.message)}.`,
          help: 'Download the style again and save it unchanged, or mend the place named.',
        },
      };
    return { problem: noStyle(xml, 0, 'This file cannot be read as XML.') };
  }
}

/**
 * What keeps a style from setting notes and a source list: no XML, no style of CSL 1.0, one that only points to
 * another, one that sets its citations in the text, a macro that is called and missing or calls itself.
 */
export function styleProblem(xml: string): StyleProblem | undefined {
  const read = readStyleXml(xml);
  if (!read.root) return read.problem;
  const { root } = parseXml(xml, { includeOffsets: true });
  const style = root!;
  const at = (node: XmlElement, message: string, help: string) => ({
    ...lineOf(xml, node.start),
    message,
    help,
  });
  if (style.name !== 'style' || style.attributes['xmlns'] !== cslNamespace)
    return at(
      style,
      `This is no CSL style: it begins with <${style.name}>${style.name === 'style' ? ' without the namespace of CSL' : ''}.`,
      `A style begins with <style xmlns="${cslNamespace}" class="note" version="1.0">.`,
    );
  const version = style.attributes['version'] ?? '';
  if (!/^1\.[01](?:\.\d+)?/.test(version))
    return at(
      style,
      version === '' ? 'This style names no version of CSL.' : `This style is of version ${version} of CSL.`,
      'Take the style in its form for CSL 1.0, which says version="1.0".',
    );
  const all = [...elementsIn(style)];
  const parent = all.find(
    ({ name, attributes }) => name === 'link' && attributes['rel'] === 'independent-parent',
  );
  const citation = elementsOf(style).find(({ name }) => name === 'citation');
  if (parent && !citation)
    return at(
      parent,
      'This style holds no rules of its own; it only points to another.',
      `Save the style it points to in its place: ${parent.attributes['href'] ?? 'the address is missing'}`,
    );
  if (!citation || !elementsOf(citation).some(({ name }) => name === 'layout'))
    return at(
      citation ?? style,
      'This style says nothing of how a citation looks: it has no citation with a layout.',
      'Take a whole style, with a citation and a bibliography.',
    );
  if (style.attributes['class'] !== 'note')
    return at(
      style,
      'This style sets its citations in the running text, by author and date or by numbers; here citations are notes.',
      'Name a style for notes: its first element says class="note". Many styles are published in both forms.',
    );
  return macroProblem(all, at);
}

function macroProblem(
  all: readonly XmlElement[],
  at: (node: XmlElement, message: string, help: string) => StyleProblem,
): StyleProblem | undefined {
  const macros = new Map(
    all.filter(({ name }) => name === 'macro').map((macro) => [macro.attributes['name'] ?? '', macro]),
  );
  const isCall = ({ attributes, name }: XmlElement) =>
    attributes['macro'] !== undefined && (name === 'text' || name === 'key');
  const missing = all.find((node) => isCall(node) && !macros.has(node.attributes['macro']!));
  if (missing)
    return at(
      missing,
      `This style asks for the macro ${missing.attributes['macro']}, which it does not have.`,
      'Download the style again, or correct the name of the macro.',
    );
  // Macros that lead to no others are taken away until none is left, or only circles.
  const calls = new Map(
    [...macros].map(([name, macro]) => [
      name,
      new Set([...elementsIn(macro)].filter(isCall).map((node) => node.attributes['macro']!)),
    ]),
  );
  const callers = new Map<string, string[]>();
  for (const [name, called] of calls)
    for (const one of called) callers.set(one, [...(callers.get(one) ?? []), name]);
  const done = [...calls].filter(([, called]) => called.size === 0).map(([name]) => name);
  for (let name = done.pop(); name !== undefined; name = done.pop()) {
    calls.delete(name);
    for (const caller of callers.get(name) ?? []) {
      calls.get(caller)?.delete(name);
      if (calls.get(caller)?.size === 0) done.push(caller);
    }
  }
  const [round] = calls.keys();
  return round === undefined
    ? undefined
    : at(
        macros.get(round)!,
        `The macro ${round} calls itself, directly or by way of others.`,
        'Download the style again, or take the call out.',
      );
}

function noStyle(xml: string, offset: number, message: string): StyleProblem {
  return { ...lineOf(xml, offset), message, help: 'Put the .csl file of a style in its place.' };
}

function nodeOf(element: XmlElement): StyleNode {
  const children: (StyleNode | string)[] = [];
  let text = '';
  for (const child of element.children) {
    if (child instanceof XmlElement) children.push(nodeOf(child));
    else if (child instanceof XmlText) text += child.text;
  }
  if (children.length === 0 && (text.trim() !== '' || takesText.has(element.name))) children.push(text);
  return { name: element.name, attrs: { ...element.attributes }, children };
}

/** A term without words prints nothing, which is not the same as a term that is missing. */
const takesText: ReadonlySet<string> = new Set(['term', 'single', 'multiple']);

function elementsOf(element: XmlElement): XmlElement[] {
  return element.children.filter((child: XmlNode): child is XmlElement => child instanceof XmlElement);
}

function* elementsIn(element: XmlElement): Generator<XmlElement> {
  for (const child of elementsOf(element)) {
    yield child;
    yield* elementsIn(child);
  }
}

function lineOf(text: string, offset: number): { line: number; column: number } {
  const before = text.slice(0, Math.max(0, offset));
  const start = before.lastIndexOf('\n') + 1;
  return { line: before.split('\n').length, column: before.length - start + 1 };
}

/** The parser’s own words, without the excerpt it prints below them. */
function firstSentence(message: string): string {
  return message
    .split('\n')[0]!
    .replace(/\(line \d+, column \d+\)\s*$/, '')
    .trimEnd()
    .replace(/[.:]$/, '');
}
