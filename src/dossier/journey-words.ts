/** Sentences about those who travelled together, for pages and tables alike. */
import { addMonths, civil } from '../model/days.ts';
import { mentionAt, type Facts } from '../model/facts.ts';
import type { Party, PartyMember, SharedValue } from '../reasoning/migration/types.ts';
import { byAccident, inList } from './associate-words.ts';

/** Reasons given for each member. */
const mostReasons = 4;

/** The name of a place key: of the place it is, or the words a record has for it, as some of these mentions write them. */
function placeKeyName(facts: Facts, key: string, refs: readonly string[]): string {
  const known = facts.places.get(key)?.name;
  if (known !== undefined) return known;
  const folded = (text: string) =>
    `“${text
      .toLowerCase()
      .replace(/[^\p{L}\p{N}]+/gu, ' ')
      .trim()}”`;
  for (const ref of refs) {
    const mention = mentionAt(facts, ref)?.mention;
    const texts = [
      mention?.lastResidence,
      mention?.birthplace,
      mention?.voyage?.bound,
      ...Object.values(mention?.says ?? {}),
    ];
    const written = texts.find((text) => text !== undefined && folded(text.slice(0, 200)) === key);
    if (written !== undefined) return `“${written}”`;
  }
  return key;
}

/** Why somebody is counted among a party, the strongest first. */
export function memberReasons(facts: Facts, { why, ref }: PartyMember, size: number): string[] {
  const seen = new Set<string>();
  const reasons: string[] = [];
  for (const { kind, because, with: others } of why) {
    // Of one kind the strongest says enough: next to one is two lines from the other.
    if (seen.has(kind) || reasons.length === mostReasons) continue;
    seen.add(kind);
    const names = others
      .slice(0, 2)
      .map((other) => mentionAt(facts, other)?.mention.name ?? 'one without a name');
    const whom =
      others.length === size - 1 && size > 3
        ? 'all the others'
        : inList(others.length > 2 ? [...names, `${others.length - 2} more`] : names);
    reasons.push(reasonOf(facts, kind, because, whom, [ref, ...others]));
  }
  return reasons;
}

function reasonOf(
  facts: Facts,
  kind: string,
  because: string,
  whom: string,
  refs: readonly string[],
): string {
  if (kind === 'kin') return `the record says: ${statedBy(facts, refs[0]!, refs[1]!) ?? `kin of ${whom}`}`;
  if (kind === 'origin') return `of ${placeKeyName(facts, because, refs)}, like ${whom}`;
  if (kind === 'bound') return `bound for ${placeKeyName(facts, because, refs)}, like ${whom}`;
  return `${because}: ${whom}`;
}

const turned: Readonly<Record<string, string>> = {
  spouse: 'spouse',
  sibling: 'sibling',
  child: 'parent',
  parent: 'child',
};

/** “spouse of Martha Do.”, from whichever of the two the record says it of. */
function statedBy(facts: Facts, ref: string, other: string): string | undefined {
  const [mine, its] = [mentionAt(facts, ref)?.mention, mentionAt(facts, other)?.mention];
  if (!mine || !its) return undefined;
  const name = its.name ?? 'one without a name';
  const own = mine.relations.find(({ of }) => of.slice(of.indexOf('#') + 1) === its.id);
  if (own) return `${own.as} of ${name}`;
  const theirs = its.relations.find(({ of }) => of.slice(of.indexOf('#') + 1) === mine.id);
  if (!theirs) return undefined;
  const back = turned[theirs.as.toLowerCase()];
  return back === undefined ? `${name} is ${theirs.as}` : `${back} of ${name}`;
}

const sharedWords: Partial<Record<SharedValue['what'], string>> = {
  household: 'family or party number',
  origin: 'last residence or birthplace',
  bound: 'destination',
  joining: 'whom they join:',
  nearest: 'whom they left:',
};

/** What several members share, each with how common it is on the list. */
export function sharedSentences(facts: Facts, { shared, members }: Party): string[] {
  return shared.map(({ what, value, refs, having, of }) => {
    const name = what === 'origin' || what === 'bound' ? placeKeyName(facts, value, refs) : value;
    const who = refs.length < members.length ? `${refs.length} of them` : refs.length === 2 ? 'both' : 'all';
    const others =
      of === 0
        ? 'nobody else on the list states one'
        : having === 0
          ? `none of the other ${of} parties and lone travellers`
          : `so ${having === 1 ? 'has' : 'have'} ${having} of the other ${of} parties and lone travellers`;
    return `${sharedWords[what] ?? what} ${name} (${who}; ${others})`;
  });
}

/** Where they come from, only as far as members state it themselves. */
export function originSentence(facts: Facts, { origin, members }: Party): { place?: string; says: string } {
  if (origin) {
    const known = facts.places.has(origin.place);
    const some = origin.refs.length < members.length;
    const who = some
      ? `${origin.refs.length} of the ${members.length}`
      : members.length === 2
        ? 'Both'
        : 'All of them';
    return known
      ? { place: origin.place, says: `${who} are said to be of ` }
      : { says: `${who} are said to be of ${placeKeyName(facts, origin.place, origin.refs)}.` };
  }
  const stating = members.filter(({ ref }) => {
    const mention = mentionAt(facts, ref)?.mention;
    return mention?.lastResidence !== undefined || mention?.birthplace !== undefined;
  }).length;
  return {
    says:
      stating === 0
        ? 'They seem to have travelled together; this record does not say from where.'
        : stating === 1
          ? 'They seem to have travelled together; only one of them states a place, and it is not evidence for the others.'
          : 'They seem to have travelled together; the places they state share nothing narrower than a country.',
  };
}

/** How easily a list of strangers would show such a group. */
export function accidentOfParty({ chance, expected }: Pick<Party, 'chance' | 'expected'>): string {
  if (expected >= 0.5) return 'a list of strangers of this length would as likely as not show such a group';
  if (chance < 0.001)
    return 'a list of strangers of this length would show such a group less than once in 1,000';
  return `a list of strangers of this length would show such a group about ${Math.max(1, Math.round(chance * 1000))} times in 1,000 (${byAccident(chance)})`;
}

/** “2 years 5 months”, “3 months”, “20 days”. */
export function gapInWords(from: number, to: number): string {
  const [a, b] = [civil(from), civil(to)];
  let months = (b.year - a.year) * 12 + b.month - a.month;
  if (months > 0 && addMonths(from, months) > to) months--;
  if (months < 1) return counted(Math.max(0, to - from), 'day');
  const [years, rest] = [Math.floor(months / 12), months % 12];
  return [years > 0 && counted(years, 'year'), rest > 0 && counted(rest, 'month')].filter(Boolean).join(' ');
}

const counted = (n: number, word: string) => `${n} ${word}${n === 1 ? '' : 's'}`;
