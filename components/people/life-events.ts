/** The records that name one person, in date order. */
import type { Dossier, PersonView } from '../../src/dossier/types.ts';
import type { Mention } from '../../src/model/record.ts';
import { dateOf, sortableDate } from '../layout/lookup.ts';
import { byText } from '../layout/words.ts';

export interface LifeEvent {
  ref: string;
  record: string;
  title: string;
  language: string | undefined;
  mention: Mention;
  /** Of what the record says happened, else of the record. */
  date: string | undefined;
}

/** The mentions of a person as events, earliest first; the undated come last. */
export function lifeEvents(dossier: Dossier, view: PersonView): LifeEvent[] {
  return view.mentions
    .flatMap(({ ref, record, mention }) => {
      const found = dossier.records.get(record);
      if (!found) return [];
      const date = mention.event?.date ?? mention.voyage?.arrived ?? dateOf(found);
      const { title, language } = found.record;
      return [{ ref, record, title, language, mention, date }];
    })
    .sort((a, b) => byText(sortableDate(a.date), sortableDate(b.date)) || byText(a.ref, b.ref));
}
