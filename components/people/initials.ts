/** The letters a list of names is parted by. */

export interface Initial {
  /** As it heads its part: “Ø”; a dash for names that begin with no letter. */
  letter: string;
  /** What an address may hold. */
  key: string;
  /** Which names of the list stand under it. */
  at: number[];
}

/** The initials of names, each once, in the order in which the list first has them. */
export function initials(names: readonly string[]): Initial[] {
  const found = new Map<string, { letter: string; key: string; at: number[] }>();
  for (const [i, name] of names.entries()) {
    const letter = /\p{L}/u.exec(name)?.[0].toUpperCase() ?? '—';
    const known = found.get(letter) ?? { letter, key: letter.codePointAt(0)!.toString(16), at: [] };
    known.at.push(i);
    found.set(letter, known);
  }
  return [...found.values()];
}
