/** What the records say of one person, in date order. */
import type { Dossier, PersonView } from '../../src/dossier/types.ts';
import type { Mention } from '../../src/model/record.ts';
import { dateOf, sortableDate } from '../layout/lookup.ts';
import { ageInWords, byText, capital } from '../layout/words.ts';

interface LifeEvent {
  date: string | undefined;
  record: string;
  title: string;
  /** The mention in one clause. */
  says: string;
}

/** The mentions of a person as events, earliest first; the undated come last. */
export function lifeEvents(dossier: Dossier, view: PersonView): LifeEvent[] {
  const events = view.mentions.flatMap(({ record, mention }) => {
    const found = dossier.records.get(record);
    if (!found) return [];
    return [
      {
        date: mention.event?.date ?? mention.voyage?.arrived ?? dateOf(found),
        record,
        title: found.record.title,
        says: mentionInWords(mention),
      },
    ];
  });
  return events.sort(
    (a, b) => byText(sortableDate(a.date), sortableDate(b.date)) || byText(a.record, b.record),
  );
}

/** “Written Morris Whelan, declarant, age 31, of Hancock, born in Kilmacthomas.” */
function mentionInWords(mention: Mention): string {
  const parts = [
    mention.name && `written “${mention.name}”`,
    mention.role,
    mention.event && `${mention.event.kind}${mention.event.place ? ` at ${mention.event.place}` : ''}`,
    mention.age !== undefined && `age ${ageInWords(mention.age)}`,
    mention.occupation,
    mention.residence && `of ${mention.residence}`,
    mention.birthplace && `born in “${mention.birthplace}”`,
  ].filter((part): part is string => Boolean(part));
  return parts.length > 0 ? `${capital(parts.join(', '))}.` : 'Named.';
}
