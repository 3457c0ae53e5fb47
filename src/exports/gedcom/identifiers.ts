/** The identifiers under which an export has its records. */
import type { Dossier } from '../../dossier/types.ts';
import { isBuiltIn } from './places.ts';
import { archiveOf } from './sources.ts';

export class Identifiers {
  /** Of people, records and the author’s own places, by their ids. */
  readonly people: ReadonlyMap<string, string>;
  readonly sources: ReadonlyMap<string, string>;
  readonly places: ReadonlyMap<string, string>;
  /** Of archives, by name and place. */
  readonly archives: ReadonlyMap<string, string>;
  /** Of pictures, by the names of their files. */
  readonly pictures: ReadonlyMap<string, string>;

  constructor({ people, records, places }: Dossier['facts']) {
    this.people = numbered(people.keys(), 'I');
    this.sources = numbered(records.keys(), 'S');
    this.places = numbered(
      [...places.values()].filter((place) => !isBuiltIn(place)).map(({ id }) => id),
      'P',
    );
    const all = [...records.values()];
    this.archives = numbered(
      all.map(({ cite }) => archiveOf(cite)).filter((archive) => archive !== undefined),
      'R',
    );
    this.pictures = numbered(
      all.flatMap(({ media }) => media.map(({ file }) => file)),
      'O',
    );
  }
}

/** Each once, in the order in which they come. */
function numbered(keys: Iterable<string>, letter: string): Map<string, string> {
  return new Map([...new Set(keys)].map((key, i) => [key, `${letter}${i + 1}`]));
}
