/** Sentences about those who travelled together, for pages and tables alike. */
import { addMonths, civil } from '../model/days.ts';
import { english, type Wording } from '../interface/index.ts';
import { mentionAt, type Facts } from '../model/facts.ts';
import { worded } from '../model/said.ts';
import type { TieSaid } from '../model/tie.ts';
import type { Party, PartyMember } from '../reasoning/migration/types.ts';
import { byAccident } from './associate-words.ts';

/** Reasons given for each member. */
const mostReasons = 4;

/** The name of a place key: of the place it is, or the words a record has for it, as some of these mentions write them. */
function placeKeyName(facts: Facts, key: string, refs: readonly string[], wording: Wording): string {
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
    if (written !== undefined) return wording.journeys.reading(written);
  }
  return key;
}

/** Why somebody is counted among a party, the strongest first. */
export function memberReasons(
  facts: Facts,
  { why, ref }: PartyMember,
  size: number,
  wording: Wording,
): string[] {
  const t = wording.journeys;
  const seen = new Set<string>();
  const reasons: string[] = [];
  for (const { kind, because, with: others } of why) {
    // Of one kind the strongest says enough: next to one is two lines from the other.
    if (seen.has(kind) || reasons.length === mostReasons) continue;
    seen.add(kind);
    const names = others.slice(0, 2).map((other) => mentionAt(facts, other)?.mention.name ?? t.unnamed);
    const whom =
      others.length === size - 1 && size > 3 ? t.allOthers : t.others(names, Math.max(0, others.length - 2));
    reasons.push(reasonOf(facts, because, whom, [ref, ...others], wording));
  }
  return reasons;
}

function reasonOf(
  facts: Facts,
  because: TieSaid,
  whom: string,
  refs: readonly string[],
  wording: Wording,
): string {
  const t = wording.journeys;
  if (because.key === 'stated-kin')
    return t.recordSays(statedBy(facts, refs[0]!, refs[1]!, wording) ?? t.kinOf(whom));
  const told =
    because.key === 'origin' || because.key === 'bound'
      ? { ...because, place: placeKeyName(facts, because.place, refs, wording), whom }
      : { ...because, whom };
  return worded(told, t.ties);
}

const turned: Readonly<Record<string, string>> = {
  spouse: 'spouse',
  sibling: 'sibling',
  child: 'parent',
  parent: 'child',
};

/** “spouse of Martha Do.”, from whichever of the two the record says it of. */
function statedBy(facts: Facts, ref: string, other: string, wording: Wording): string | undefined {
  const t = wording.journeys;
  const [mine, its] = [mentionAt(facts, ref)?.mention, mentionAt(facts, other)?.mention];
  if (!mine || !its) return undefined;
  const name = its.name ?? t.unnamed;
  const own = mine.relations.find(({ of }) => of.slice(of.indexOf('#') + 1) === its.id);
  if (own) return t.relationOf(own.as, name);
  const theirs = its.relations.find(({ of }) => of.slice(of.indexOf('#') + 1) === mine.id);
  if (!theirs) return undefined;
  const back = turned[theirs.as.toLowerCase()];
  return back === undefined ? t.isRelation(name, theirs.as) : t.relationOf(back, name);
}

/** What several members share, each with how common it is on the list. */
export function sharedSentences(facts: Facts, { shared, members }: Party, wording: Wording): string[] {
  const t = wording.journeys.shared;
  return shared.map(({ what, value, refs, having, of }) => {
    const name = what === 'origin' || what === 'bound' ? placeKeyName(facts, value, refs, wording) : value;
    return t.sentence(t.what[what] ?? what, name, { who: refs.length, all: members.length, having, of });
  });
}

/** Where a party comes from, only as far as members state it themselves: `says`, the place if it is known, then `after`. */
export function originSentence(
  facts: Facts,
  { origin, members }: Party,
  wording: Wording,
): { place?: string; says: string; after: string } {
  const t = wording.journeys.origin;
  if (origin) {
    const [says, after] = t.stated(origin.refs.length, members.length);
    return facts.places.has(origin.place)
      ? { place: origin.place, says, after }
      : { says: says + placeKeyName(facts, origin.place, origin.refs, wording) + after, after: '' };
  }
  const stating = members.filter(({ ref }) => {
    const mention = mentionAt(facts, ref)?.mention;
    return mention?.lastResidence !== undefined || mention?.birthplace !== undefined;
  }).length;
  return { says: stating === 0 ? t.none : stating === 1 ? t.one : t.nothingShared, after: '' };
}

/** How easily a list of strangers would show such a group. */
export function accidentOfParty(
  { chance, expected }: Pick<Party, 'chance' | 'expected'>,
  wording: Wording,
): string {
  const t = wording.journeys.accident;
  if (expected >= 0.5) return t.asLikely;
  if (chance < 0.001) return t.hardly;
  return t.inThousand(Math.max(1, Math.round(chance * 1000)), byAccident(chance, wording));
}

/** “2 years 5 months”, “3 months”, “20 days”. */
export function gapInWords(from: number, to: number, wording: Wording = english): string {
  const [a, b] = [civil(from), civil(to)];
  let months = (b.year - a.year) * 12 + b.month - a.month;
  if (months > 0 && addMonths(from, months) > to) months--;
  if (months < 1) return wording.journeys.days(Math.max(0, to - from));
  return wording.journeys.gap(Math.floor(months / 12), months % 12);
}
