/**
 * Citations and a bibliography set with any CSL 1.0 style, as the fixtures of the public CSL processor suite ask for
 * them: style XML, items of CSL-JSON, citations. Records go through `format.ts`; this is the processor by itself.
 */
import CSL from 'citeproc';
import { englishLocale } from './english-locale.ts';
import { readStyleXml, styleProblem, type StyleNode, type StyleProblem } from './style-xml.ts';

// It would print what it doesn’t know of a style, in the middle of a report that may be one JSON document.
CSL.debug = () => {};

/** One item of a citation, as the suite has it: `locator`, `label`, `prefix`, `suffix`, `position` … */
export interface CiteItem {
  id: string | number;
  [key: string]: unknown;
}

/** A citation with those before and after it, each with the number of its note. */
export type SequencedCitation = readonly [
  citation: { citationID?: string; citationItems: CiteItem[]; properties?: Record<string, unknown> },
  before: readonly (readonly [string, number])[],
  after: readonly (readonly [string, number])[],
];

export interface StyledInput {
  /** XML of an independent style, for notes or for citations in the text. */
  style: string;
  /** Items of CSL-JSON. */
  items: readonly { id: string | number; [key: string]: unknown }[];
  /** Citations one by one. Without these and `citations`, one citation of all items. */
  citationItems?: readonly (readonly CiteItem[])[] | undefined;
  /** Citations in the order in which an author puts them into a text. */
  citations?: readonly SequencedCitation[] | undefined;
  mode: 'citation' | 'bibliography';
  /** Language tag, over the style’s own default. */
  language?: string | undefined;
  /** XML of locales by language tag; English is built in and stands in for any other. */
  locales?: Readonly<Record<string, string>> | undefined;
  /** `html` with `<i>` and `<div class="csl-entry">`, or plain text. */
  output?: 'html' | 'text' | undefined;
}

/** A style or an input that cannot be set, in a sentence. */
export class CannotFormat extends Error {
  override name = 'CannotFormat';
}

/**
 * The text that a fixture of the suite expects: in mode `citation` one citation a line, those set in sequence with
 * `>>[n]` before each that changed last and `..[n]` before the others; in mode `bibliography` the whole list.
 *
 * Throws `CannotFormat` for a style that is none, an item that is cited and not given, and values the processor
 * trips over; nothing else.
 */
export function formatWithStyle(input: StyledInput): string {
  const ids = new Map<string, string>();
  const items = new Map<string, object>();
  for (const item of input.items) {
    const own = `item-${ids.size}`;
    ids.set(String(item.id), own);
    items.set(own, { ...item, id: own });
  }
  const idOf = (id: string | number): string => {
    const own = ids.get(String(id));
    if (own === undefined)
      throw new CannotFormat(`The item ${String(id)} is cited, and is not among the items.`);
    return own;
  };
  const citeOf = (cite: CiteItem) => ({ ...cite, id: idOf(cite.id) });
  try {
    const engine = engineWith(input.style, (id) => structuredClone(items.get(id)!), input);
    engine.setOutputFormat(input.output ?? 'html');
    if (!input.citations) engine.updateItems([...items.keys()]);
    const lines = input.citations
      ? inSequence(engine, input.citations, citeOf)
      : (input.citationItems ?? [input.items.map(({ id }) => ({ id }))])
          .filter((cites) => cites.length > 0)
          .map((cites) => engine.makeCitationCluster(cites.map(citeOf)));
    if (input.mode === 'citation') return lines.join('\n');
    const made = engine.makeBibliography();
    return made ? made[0].bibstart + made[1].join('') + made[0].bibend : '';
  } catch (error) {
    if (error instanceof CannotFormat) throw error;
    throw new CannotFormat(
      `The processor cannot set this with the style given: ${error instanceof Error ? error.message : String(error)}.`,
    );
  }
}

function inSequence(
  engine: CSL.Engine,
  citations: readonly SequencedCitation[],
  citeOf: (cite: CiteItem) => CiteItem,
): string[] {
  // Names of citations come from outside, and the processor keeps them as keys of plain objects.
  const names = new Map<string, string>();
  const nameOf = (name: string) => names.get(name) ?? names.set(name, `cite-${names.size}`).get(name)!;
  const known = (list: readonly (readonly [string, number])[]) =>
    list.map(([name, note]): [string, number] => [nameOf(name), note]);
  let changed: [number, string, string?][] = [];
  citations.forEach(([citation, before, after], i) => {
    changed = engine.processCitationCluster(
      {
        citationID: nameOf(citation.citationID ?? `unnamed ${i}`),
        citationItems: citation.citationItems.map(citeOf),
        properties: { noteIndex: 0, ...citation.properties },
      },
      known(before),
      known(after),
    )[1];
  });
  const now = new Map(changed.map(([index, text]) => [index, text]));
  return engine.registry.citationreg.citationByIndex.map((citation, i) =>
    now.has(i)
      ? `>>[${i}] ${now.get(i)}`
      : `..[${i}] ${engine.process_CitationCluster(citation.sortedItems, citation)}`,
  );
}

/** An engine for a style. Throws `CannotFormat` where the style’s XML is none, and what the processor throws. */
export function engineWith(
  style: string,
  retrieveItem: (id: string) => object,
  options: Pick<StyledInput, 'language' | 'locales'> = {},
): CSL.Engine {
  const root = rootOf(style);
  const language = options.language ?? root.attrs['default-locale'] ?? 'en-US';
  const given = new Map(Object.entries(options.locales ?? {}));
  const engine = new CSL.Engine(
    {
      retrieveLocale: (tag) => rootOf(given.get(tag) ?? given.get(tag.split('-')[0]!) ?? englishLocale(tag)),
      retrieveItem,
    },
    root,
    language,
    options.language !== undefined,
  );
  // Keyed by words of the items, and “constructor” is a word.
  Object.setPrototypeOf(engine.registry.ambigcites, null);
  return engine;
}

function rootOf(xml: string): StyleNode {
  const { root, problem } = readStyleXml(xml);
  if (!root) throw new CannotFormat(`${problem!.message} (line ${problem!.line})`);
  return root;
}

/**
 * What keeps a style from being used for notes; see `styleProblem`. A style that reads well and still stops the
 * processor is found by trying it.
 */
export function noteStyleProblem(style: string): StyleProblem | undefined {
  const problem = styleProblem(style);
  if (problem) return problem;
  try {
    const items = [
      { id: 'a', type: 'document' },
      {
        id: 'b',
        type: 'book',
        title: 'A title',
        author: [{ family: 'Family', given: 'Given' }],
        page: '3-5',
      },
    ];
    for (const mode of ['citation', 'bibliography'] as const) formatWithStyle({ style, items, mode });
    return undefined;
  } catch (error) {
    return {
      line: 1,
      column: 1,
      message: error instanceof Error ? error.message : String(error),
      help: 'Download the style again, or name another.',
    };
  }
}
