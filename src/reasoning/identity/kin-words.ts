/**
 * Who is kin to whom within one record, from the relations the author noted between its mentions. A relation counts
 * from either side: “child of m1” on one line is “parent of m3” on the other.
 */
import type { Mention, SourceRecord } from '../../model/record.ts';
import { gather } from '../../model/multimap.ts';
import { once } from '../once.ts';

export interface KinInRecord {
  spouses: Mention[];
  fathers: Mention[];
  mothers: Mention[];
  children: Mention[];
}

type Kind = 'spouse' | 'parent' | 'child';

const turned: Record<Kind, Kind> = { spouse: 'spouse', parent: 'child', child: 'parent' };

/** The kin each mention of a record has within it, by mention id. */
export const kinWithin: (record: SourceRecord) => ReadonlyMap<string, KinInRecord> = once(
  (record: SourceRecord) => {
    const byId = new Map(record.mentions.map((mention) => [mention.id, mention]));
    const of: Record<Kind, Map<string, Mention[]>> = {
      spouse: new Map(),
      parent: new Map(),
      child: new Map(),
    };
    // “As child of m1”: the mention is the child, so m1 is kept as its parent.
    const put = (kind: Kind, whose: string, who: Mention) => {
      if (!of[kind].get(whose)?.includes(who)) gather(of[kind], whose, who);
    };
    for (const mention of record.mentions)
      for (const relation of mention.relations) {
        const kind = relation.as.toLowerCase();
        const other = byId.get(relation.of.slice(relation.of.indexOf('#') + 1));
        if (!other || other === mention || !isKind(kind)) continue;
        if (relation.of.includes('#') && !relation.of.startsWith(`${record.id}#`)) continue;
        put(turned[kind], mention.id, other);
        put(kind, other.id, mention);
      }
    return new Map(
      record.mentions.map((mention) => {
        const parents = of.parent.get(mention.id) ?? [];
        return [
          mention.id,
          {
            spouses: of.spouse.get(mention.id) ?? [],
            fathers: parents.filter((p) => sexOf(p) === 'M'),
            mothers: parents.filter((p) => sexOf(p) === 'F'),
            children: of.child.get(mention.id) ?? [],
          },
        ];
      }),
    );
  },
);

function isKind(word: string): word is Kind {
  return Object.hasOwn(turned, word);
}

const women = /\b(?:mother|wife|widow|daughter|sister|niece|aunt|bride|grandmother|godmother)\b/;
const men = /\b(?:father|husband|widower|son|brother|nephew|uncle|groom|bridegroom|grandfather|godfather)\b/;

/** The sex a mention states, or that its role says as a word of kinship does. */
export function sexOf(mention: Mention): 'M' | 'F' | undefined {
  if (mention.sex === 'M' || mention.sex === 'F') return mention.sex;
  const role = mention.role?.toLowerCase() ?? '';
  // “Father of bride”: the first word of kinship names the person, the rest whom they belong to.
  const head = role.split(/\bof\b/)[0]!;
  if (women.test(head) === men.test(head)) return undefined;
  return women.test(head) ? 'F' : 'M';
}
