/**
 * The cases of a Latin name, since registers write whom they baptised in the accusative and whose child it was in the
 * genitive: “baptizavi Thomam, filium Mauritii”.
 *
 * Rule: the declensions of any Latin grammar; common practice. Names that decline otherwise give their stem.
 */

/** Endings by that of the nominative, the longest first; `stem` is what the other cases are put behind. */
const declensions: readonly (readonly [ending: string, stem: string, cases: readonly string[]])[] = [
  ['ius', 'i', ['i', 'o', 'um', 'e', '']],
  ['us', '', ['i', 'o', 'um', 'e']],
  ['as', '', ['ae', 'am', 'a', 'e']],
  ['aes', '', ['is', 'em', 'i', 'e']],
  ['es', '', ['is', 'em', 'i', 'e']],
  ['is', '', ['is', 'em', 'i', 'e']],
  ['a', '', ['ae', 'am', 'e']],
  ['er', 'r', ['i', 'o', 'um']],
  ['o', 'on', ['is', 'em', 'i', 'e']],
  ['or', 'or', ['is', 'em', 'i', 'e']],
];

/** All cases of a name given in the nominative, that first; only the name itself where it does not decline. */
export function latinCases(nominative: string): string[] {
  const row = declensions.find(([ending]) => nominative.endsWith(ending));
  if (!row) return [nominative];
  const [ending, link, cases] = row;
  const stem = nominative.slice(0, nominative.length - ending.length) + link;
  return [nominative, ...cases.map((one) => stem + one)];
}
