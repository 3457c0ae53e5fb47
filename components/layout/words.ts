/** The words the pages use for the values of the content contract, so that one value is called one thing everywhere. */
import { currentDossier, isDossierProvided } from '../../src/dossier/current.ts';
import { english } from '../../src/interface/index.ts';
import { langOf } from './wording.ts';

/**
 * The `lang` of a value the room `words` was asked to say: where it came back as the author wrote it, it is in the
 * language of the author’s writing.
 */
export function langOfWord(own: string, said: string): string | undefined {
  return own === said ? langOf() : undefined;
}

/** An age as the contract has it, in the language of the site. */
export function ageInWords(age: string | number): string {
  const { words } = isDossierProvided() ? currentDossier().wording : english;
  return words.age(age);
}

/** The first letter as a capital. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** Plain code-unit order, the same on every machine. */
export function byText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

/**
 * The word a name is filed under: the last before a comma, a parenthesis, “of …” or a suffix. Empty when nothing but
 * a dash stands for the name.
 */
export function surnameOf(name: string): string {
  const words = name
    .replace(/\([^()]*\)/g, ' ')
    .replace(/(?:,| of | later |,? (?:Jr|Sr|II|III)\.?$).*/, '')
    .trim()
    .split(/\s+/);
  return words.at(-1)!.replace(/^[—–-]+$/, '');
}
