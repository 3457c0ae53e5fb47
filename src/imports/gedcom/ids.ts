/** Ids for what comes in: readable, and each given once. */

const longest = 60;

/** Words of a text as an id: small letters a to z and digits, joined by hyphens; empty where it has none of those. */
export function slug(text: string, most = longest): string {
  const plain = (/^[\u0000-\u007f]*$/.test(text) ? text.replaceAll("'", '') : withoutMarks(text))
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');
  if (plain.length <= most) return plain;
  const cut = plain.slice(0, most + 1);
  const at = cut.lastIndexOf('-');
  return (at > most / 2 ? cut.slice(0, at) : plain.slice(0, most)).replace(/-$/, '');
}

function withoutMarks(text: string): string {
  return text
    .replaceAll('ß', 'ss')
    .replaceAll(/[Øø]/g, 'o')
    .replaceAll(/[Ææ]/g, 'ae')
    .replaceAll(/[Œœ]/g, 'oe')
    .replaceAll(/[Łł]/g, 'l')
    .replaceAll(/[ÐðĐđ]/g, 'd')
    .replaceAll(/[Þþ]/g, 'th')
    .normalize('NFD')
    .replace(/[\u0300-\u036f’']/g, '');
}

/** Gives out ids of one kind. */
export class Ids {
  readonly #taken: Set<string>;
  readonly #next = new Map<string, number>();

  constructor(taken: Iterable<string>) {
    this.#taken = new Set(taken);
  }

  /** The first of some wishes that is free, else the first with a number after it. */
  give(wishes: readonly string[]): string {
    const wanted = wishes.filter((wish) => wish !== '');
    const free = wanted.find((wish) => !this.#taken.has(wish));
    if (free !== undefined) {
      this.#taken.add(free);
      return free;
    }
    const stem = wanted[0] ?? 'x';
    for (let n = this.#next.get(stem) ?? 2; ; n++) {
      const id = `${stem}-${n}`;
      if (this.#taken.has(id)) continue;
      this.#taken.add(id);
      this.#next.set(stem, n + 1);
      return id;
    }
  }

  /** Takes an id that was given in an earlier import, if nobody else has it. */
  again(id: string): boolean {
    if (this.#taken.has(id)) return false;
    this.#taken.add(id);
    return true;
  }
}
