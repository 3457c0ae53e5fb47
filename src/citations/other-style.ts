/**
 * Records in a CSL style that the author has brought. Such a style tells likenesses apart and sorts its list itself, so
 * what a citation becomes depends on all the others: all are formatted together, and kept together.
 *
 * Dates go to the style in their parts, so that it sets them in its own way; and locators with their label.
 */
import { createHash } from 'node:crypto';
import type { Citation } from '../model/citation.ts';
import { cslDate, type CslDate } from './csl-date.ts';
import { cslItem } from './csl-json.ts';
import { hyphen, sealed, unsealed } from './escape.ts';
import { locatorParts } from './locator.ts';
import { harmless } from './markup.ts';
import {
  entriesById,
  prepare,
  sealedValues,
  tidy,
  withoutFaults,
  type Formatted,
  type FormattedBefore,
} from './processor.ts';
import { readStyleXml, type StyleNode } from './style-xml.ts';
import { engineWith } from './with-style.ts';

/** All citations in one style. */
export interface InStyle {
  /** In the order of the citations; `item` is the whole note, and empty where the style prints nothing. */
  formatted: Formatted[];
  /** A note with a locator, in full or in short form, by the place of its citation among all. */
  at(index: number, locator: string, form: 'full' | 'short'): string;
}

/**
 * Formats citations in a style of which `styleProblem` has nothing to say. `language` is that of the site, and holds
 * where the style names none. Never throws.
 */
export function inStyle(
  style: string,
  citations: readonly Citation[],
  options: { language: string; before?: FormattedBefore | undefined },
): InStyle {
  const before = options.before ?? new Map<string, Formatted>();
  const root = readStyleXml(style).root;
  const language = root?.attrs['default-locale'] ? undefined : english(options.language);
  const ended = endsNotes(root);
  const whole = createHash('sha256')
    .update(JSON.stringify([style, language ?? '', citations]))
    .digest('base64url');
  const keyOf = (...parts: (string | number)[]) => JSON.stringify([whole, ...parts]);

  const engineOf = (some: readonly Citation[]) => {
    const items = new Map(some.map((cite, i) => [`r${i}`, cslItem(cite, `r${i}`, asParts)]));
    const engine = engineWith(style, (id) => structuredClone(items.get(id)!), { language });
    prepare(engine);
    engine.updateItems([...items.keys()]);
    return engine;
  };
  const printed = (html: string) => {
    const text = harmless(tidy(html));
    return ended ? text.replace(/\.$/, '') : text;
  };
  const batch = (some: readonly Citation[]): Formatted[] => {
    const engine = engineOf(some);
    const entries = entriesById(engine);
    return some.map((_, i) => {
      const entry = entries.get(`r${i}`);
      return {
        item: printed(engine.makeCitationCluster([{ id: `r${i}`, position: 0 }])),
        held: '',
        short: printed(engine.makeCitationCluster([{ id: `r${i}`, position: 1 }])),
        entry: harmless(entry?.html ?? ''),
        ...(entry ? { rank: entry.rank } : {}),
      };
    });
  };

  const known = citations.map((_, i) => before.get(keyOf(i)));
  const formatted = known.every((one) => one !== undefined) ? known : withoutFaults(citations, batch);
  if (formatted !== known) formatted.forEach((one, i) => before.set(keyOf(i), one));

  let engine: ReturnType<typeof engineOf> | undefined;
  const located = (index: number, locator: string, form: 'full' | 'short'): string => {
    const { suffix, ...parts } = locatorParts(locator);
    try {
      engine ??= engineOf(citations);
      return printed(
        engine.makeCitationCluster([
          {
            id: `r${index}`,
            position: form === 'full' ? 0 : 1,
            ...(parts.label ? { label: parts.label, locator: sealedNumber(parts.locator!) } : {}),
            ...(suffix === undefined ? {} : { suffix: sealed(suffix) }),
          },
        ]),
      );
    } catch {
      return '';
    }
  };
  return {
    formatted,
    at(index, locator, form) {
      const key = keyOf(index, locator, form);
      let note = before.get(key);
      if (!note) {
        const plain = form === 'full' ? formatted[index]!.item : formatted[index]!.short;
        const item = located(index, locator, form) || `${plain}, ${harmless(sealed(locator))}`;
        before.set(key, (note = { item, held: '', short: '', entry: '' }));
      }
      return unsealed(note.item);
    },
  };
}

const asParts = {
  ...sealedValues,
  date: (edtf: string): CslDate => {
    const date = cslDate(edtf);
    return 'literal' in date ? { literal: sealed(date.literal) } : date;
  },
};

/** “11-C” is one sheet. */
function sealedNumber(locator: string): string {
  return sealed(locator).replace(/(\d)-(?=[a-z])/gi, `$1${hyphen}`);
}

/** Whether the style itself puts a full stop after a note. */
function endsNotes(root: StyleNode | undefined): boolean {
  const inside = (node: StyleNode | undefined, name: string) =>
    node?.children.find((child): child is StyleNode => typeof child !== 'string' && child.name === name);
  return (inside(inside(root, 'citation'), 'layout')?.attrs['suffix'] ?? '').trimEnd().endsWith('.');
}

function english(language: string): string {
  return /^en-/i.test(language) ? language : 'en-US';
}
