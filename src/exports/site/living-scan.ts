/**
 * The last look before a site goes out: no text of it may name anyone withheld as living. The check has already
 * looked at what the author wrote; this looks at what is about to be published, whatever it was made from.
 */
import { fold } from '../../dossier/living-named.ts';
import { gather } from '../../model/multimap.ts';

/** Finds the id of someone withheld whom a text names, if it names any. `\0` in the text parts what stands apart. */
export type LivingScan = (text: string) => string | undefined;

/**
 * A scan for names, as `tellingNames` gives them: folded name → person id. A name counts as whole words only. `undefined`
 * when there is nobody to look for.
 */
export function livingScan(names: ReadonlyMap<string, string>): LivingScan | undefined {
  if (names.size === 0) return undefined;
  const byFirstWord = new Map<string, { pattern: RegExp; person: string }[]>();
  for (const [name, person] of names) {
    const first = /[\p{L}\p{N}]+/u.exec(name);
    if (!first) continue;
    const escaped = name
      .slice(first.index)
      .split(' ')
      .map((part) => part.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'));
    const pattern = new RegExp(`${escaped.join('\\s+')}(?![\\p{L}\\p{N}])`, 'uy');
    gather(byFirstWord, first[0], { pattern, person });
  }
  return (text) => {
    const folded = fold(text);
    const word = /[\p{L}\p{N}]+/gu;
    for (let found = word.exec(folded); found; found = word.exec(folded))
      for (const { pattern, person } of byFirstWord.get(found[0]) ?? []) {
        pattern.lastIndex = found.index;
        if (pattern.test(folded)) return person;
      }
    return undefined;
  };
}

/** The text of a file that isn’t a page, with what its format writes in another way read: `&eacute;` no, `\u00e9` and `&#233;` yes. */
export function plainText(source: string): string {
  return source
    .replaceAll(/\\u\{?([0-9a-f]{4,6})\}?/gi, (all, code: string) => character(all, parseInt(code, 16)))
    .replaceAll(/&#x([0-9a-f]{1,6});/gi, (all, code: string) => character(all, parseInt(code, 16)))
    .replaceAll(/&#(\d{1,7});/g, (all, code: string) => character(all, Number(code)))
    .replaceAll(/&(amp|lt|gt|quot|apos|nbsp);/g, (_all, name: string) => named[name]!)
    .replaceAll(/\\[nrt]/g, ' ');
}

const named: Record<string, string> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'", nbsp: ' ' };

function character(all: string, code: number): string {
  return code > 0 && code <= 0x10ffff ? String.fromCodePoint(code) : all;
}
