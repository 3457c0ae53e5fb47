/** What a box of the provenance drawing says. */
import type { Namer } from '../../src/dossier/words.ts';
import type { Phrase } from '../../src/interface/phrase.ts';
import type { Source } from './provenance.ts';

/** The name of a source: an item’s id, a record’s title, who spoke, or what was not seen. */
export function sourcePhrase(source: Source, names: Namer): Phrase {
  const t = names.wording.proof.provenance;
  switch (source.kind) {
    case 'item':
      return [names.item(source.item)];
    case 'record':
      return [names.record(source.record)];
    case 'unseen':
      return [t.unseen(source.text)];
    case 'person':
      return [names.person(source.person)];
    case 'described':
      return [source.text || t.described];
    case 'unknown':
      return [t.unknown];
  }
}
