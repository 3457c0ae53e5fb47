/**
 * Places of a GEDCOM file → the gazetteer. A place is a list of jurisdictions, smallest first. The list is read from
 * its end: a country of the gazetteer, then whatever lies in it; what is not there is made, inside what is.
 *
 * A list that leads to no country makes no place, since every place lies in one; it stays as words where it was said.
 */
import type { Place } from '../../model/place.ts';
import { Ids, slug } from './ids.ts';
import type { PlaceSaid } from './said.ts';

/** A place that the import makes. */
export interface PlaceDraft {
  id: string;
  name: string;
  kind: string;
  within: string;
  variants: Set<string>;
  lat?: number;
  lon?: number;
  line: number;
}

export interface GazetteerOptions {
  /** The country of lists that name none. */
  country?: string | undefined;
  /** Ids that earlier imports of the same file gave, by `placeKey`. */
  before?: ReadonlyMap<string, string>;
}

const wide = new Set(['country', 'sovereign state']);

/** How the place of a name inside another is remembered between imports. */
export function placeKey(name: string, within: string): string {
  return `${fold(name)}|${within}`;
}

export class Gazetteer {
  /** The places made, larger ones first. */
  readonly made = new Map<string, PlaceDraft>();
  /** Lists that led to no country: how often each came up, and where first. */
  readonly unplaced = new Map<string, { count: number; line: number }>();
  /** The id of each place by `placeKey`. */
  readonly keys = new Map<string, string>();
  readonly #existing: ReadonlyMap<string, Place>;
  readonly #options: GazetteerOptions;
  readonly #ids: Ids;
  readonly #known = new Map<string, string | undefined>();
  /** Names inside a place, at any depth, with the places that bear them. */
  readonly #inside = new Map<string, Map<string, string[]>>();
  readonly #wide = new Map<string, string[]>();
  readonly #regions = new Map<string, string[]>();
  readonly #country = new Map<string, boolean>();

  constructor(existing: ReadonlyMap<string, Place>, options: GazetteerOptions = {}) {
    this.#existing = existing;
    this.#options = options;
    this.#ids = new Ids(existing.keys());
    for (const place of existing.values()) this.#index(place);
  }

  /** The id of a place as written, or `undefined` where its list leads to no country. */
  place(said: PlaceSaid): string | undefined {
    let id = this.#known.get(said.text);
    if (id === undefined && !this.#known.has(said.text))
      this.#known.set(said.text, (id = this.#resolve(said)));
    if (id === undefined) {
      const before = this.unplaced.get(said.text);
      if (before) before.count += 1;
      else this.unplaced.set(said.text, { count: 1, line: said.line });
      return undefined;
    }
    const made = this.made.get(id);
    if (made) {
      if (said.lat !== undefined && made.lat === undefined)
        Object.assign(made, { lat: said.lat, lon: said.lon });
      for (const variant of said.variants) {
        const first = variant.split(',')[0]!.trim();
        if (first !== '' && first !== made.name) made.variants.add(first);
      }
    }
    return id;
  }

  #resolve(said: PlaceSaid): string | undefined {
    const forms = said.form.length === said.parts.length ? said.form : [];
    const parts = said.parts
      .map((name, i) => ({ name, kind: forms[i] ?? '' }))
      .filter(({ name }) => name !== '');
    let at = parts.length - 1;
    if (at < 0) return undefined;
    const top = this.#top(parts.map(({ name }) => name));
    if (!top) return undefined;
    let id = top.id;
    // A form that calls a known place something else was not meant for this list.
    const misnamed = parts
      .slice(parts.length - top.taken)
      .some(({ kind }) => kind !== '' && kind.toLowerCase() !== this.#existing.get(id)?.kind);
    let fits = top.taken > 0 && !misnamed;
    at -= top.taken;
    for (; at >= 0; at--) {
      const { name, kind } = parts[at]!;
      const there = this.#under(id, name);
      if (
        there !== undefined &&
        kind !== '' &&
        kind.toLowerCase() !== (this.#existing.get(there) ?? this.made.get(there))?.kind
      )
        fits = false;
      id = there ?? this.#make(name, fits ? kind : '', id, said.line);
    }
    return this.#hasCountry(id) ? id : undefined;
  }

  /** The largest place of a list that the gazetteer has, and how many parts of the list it answers. */
  #top(names: readonly string[]): { id: string; taken: number } | undefined {
    const last = fold(names.at(-1)!);
    const beneath = names.at(-2);
    const wide = this.#wide.get(last) ?? [];
    const regions = this.#regions.get(last) ?? this.#regions.get(withoutCounty(last)) ?? [];
    const countries = wide.filter((id) => this.#hasCountry(id));
    // The same name may be a country’s and a state’s; the next part may tell which.
    if (countries.length === 1 && regions.length === 0) return { id: countries[0]!, taken: 1 };
    if (countries.length === 0 && regions.length === 1) return { id: regions[0]!, taken: 1 };
    const all = [...wide, ...regions];
    if (beneath !== undefined) {
      const holding = all.filter((id) => this.#under(id, beneath) !== undefined);
      if (holding.length === 1 && this.#hasCountry(holding[0]!)) return { id: holding[0]!, taken: 1 };
      // A kingdom above several countries: the part beneath it says which.
      const below = wide.length === 1 ? this.#under(wide[0]!, beneath) : undefined;
      if (below !== undefined && this.#hasCountry(below)) return { id: below, taken: 2 };
    }
    const { country } = this.#options;
    if (all.length > 0 || country === undefined) return undefined;
    return { id: country, taken: 0 };
  }

  /** A place of a name inside another, if there is just one, or one that is nearest. */
  #under(above: string, name: string): string | undefined {
    const names = this.#inside.get(above);
    if (!names) return undefined;
    const folded = fold(name);
    const found =
      names.get(folded) ??
      (withoutCounty(folded) === folded ? undefined : this.#counties(names.get(withoutCounty(folded))));
    return found?.[0];
  }

  #counties(ids: readonly string[] | undefined): string[] | undefined {
    const counties = (ids ?? []).filter(
      (id) => (this.#existing.get(id) ?? this.made.get(id))?.kind === 'county',
    );
    return counties.length > 0 ? counties : undefined;
  }

  #make(name: string, kind: string, within: string, line: number): string {
    const key = placeKey(name, within);
    const before = this.#options.before?.get(key);
    const id =
      before !== undefined && this.#ids.again(before)
        ? before
        : this.#ids.give([
            slug(name, 50),
            slug(`${name} ${within.replaceAll('-', ' ')}`),
            slug(`place ${name}`),
          ]);
    this.keys.set(key, id);
    const draft = { id, name, kind: kindOf(name, kind), within, variants: new Set<string>(), line };
    this.made.set(id, draft);
    this.#index({ id, name, kind: draft.kind, within: [{ place: within }], variants: [] });
    return id;
  }

  #index(place: {
    id: string;
    name: string;
    kind: string;
    within: readonly { place: string }[];
    variants: readonly string[];
  }): void {
    const names = new Set([place.name, ...place.variants].map(fold));
    for (const name of names) {
      if (wide.has(place.kind)) add(this.#wide, name, place.id);
      else if (this.#existing.get(place.id)?.builtIn) add(this.#regions, name, place.id);
    }
    for (const above of this.#above(place.within.map((within) => within.place))) {
      let inside = this.#inside.get(above);
      if (!inside) this.#inside.set(above, (inside = new Map()));
      for (const name of names) add(inside, name, place.id);
    }
  }

  #above(start: readonly string[]): Set<string> {
    const above = new Set<string>(start);
    for (const id of above) for (const next of this.#withinOf(id)) above.add(next);
    return above;
  }

  #withinOf(id: string): readonly string[] {
    const made = this.made.get(id);
    return made ? [made.within] : (this.#existing.get(id)?.within.map(({ place }) => place) ?? []);
  }

  #hasCountry(id: string): boolean {
    let has = this.#country.get(id);
    if (has === undefined) {
      const above = [id, ...this.#above(this.#withinOf(id))];
      has = above.filter((one) => this.#existing.get(one)?.kind === 'country').length === 1;
      this.#country.set(id, has);
    }
    return has;
  }
}

function add(map: Map<string, string[]>, key: string, id: string): void {
  const list = map.get(key);
  if (!list) map.set(key, [id]);
  else if (!list.includes(id)) list.push(id);
}

/** A name as it is compared: letters and digits alone, without their marks. */
function fold(name: string): string {
  return name
    .normalize('NFD')
    .replace(/[\u0300-\u036f]/g, '')
    .toLowerCase()
    .replaceAll('ß', 'ss')
    .replaceAll('ø', 'o')
    .replace(/&/g, ' and ')
    .replace(/\bst\./g, 'saint ')
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim()
    .replace(/^(\p{L}) (\p{L})(?: (\p{L}))?$/u, '$1$2$3')
    .replace(/^usa$|^us$/, 'united states');
}

function withoutCounty(folded: string): string {
  return folded.replace(/^(?:county|co) | (?:county|co)$/g, '');
}

const kinds: readonly [RegExp, string][] = [
  [/\bcounty\b|^co\.? /i, 'county'],
  [/\bparish\b/i, 'parish'],
  [/\b(?:township|twp)\b/i, 'township'],
  [/\b(?:cemetery|churchyard)\b/i, 'cemetery'],
];

function kindOf(name: string, form: string): string {
  return form.toLowerCase() || kinds.find(([pattern]) => pattern.test(name))?.[1] || 'locality';
}
