/** What each informant of a record answers for, in words. */
import type { SourceRecord } from '../../src/model/record.ts';
import { gather } from '../../src/model/multimap.ts';
import { capital } from '../layout/words.ts';
import { wording } from '../layout/wording.ts';

/** “Primary knowledge: was there, or did it; for all of it.” for every informant, by their keys in the record. */
export function answersOf(record: SourceRecord): ReadonlyMap<string, string> {
  const { words, records: t, everywhere } = wording();
  const keys = Object.keys(record.informants);
  const standard = record.informant ?? (keys.length === 1 ? keys[0] : undefined);
  const named = new Map<string, string[]>();
  for (const mention of record.mentions)
    for (const [statement, who] of Object.entries(mention.informants))
      gather(named, who, words.statement(statement));
  return new Map(
    keys.map((key) => {
      const statements = [...new Set(named.get(key))];
      const list =
        statements.length < 2
          ? (statements[0] ?? '')
          : `${statements.slice(0, -1).join(', ')}${everywhere.and}${statements.at(-1)}`;
      const scope =
        key === standard
          ? list
            ? t.forTheRestAnd(list)
            : keys.length === 1
              ? t.forAll
              : t.forTheRest
          : list && t.forThese(list);
      const knowledge = capital(words.knowledge(record.informants[key]!.knowledge ?? 'undetermined'));
      return [key, `${knowledge}${scope && `; ${scope}`}.`];
    }),
  );
}
