/**
 * What is heard, over there, of the child who would be the emigrant once the emigrant had left.
 *
 * Rule (common practice): whoever is at home after the departure is somebody else. A search for them there that finds
 * nothing, or a list of the family without them, supports but little, since people died and moved; a record that says
 * they went abroad supports more.
 */
import { yearsAtHome } from '../../catalogue/families.ts';
import { addYears } from '../../model/days.ts';
import { daySpan } from '../../model/edtf.ts';
import { mentionAt, type Facts } from '../../model/facts.ts';
import type { Reason } from '../../model/reason.ts';
import type { Mention, SourceRecord } from '../../model/record.ts';
import { containmentOf } from '../containment.ts';
import { kinOf } from '../kin.ts';
import { placesMeant } from '../identity/place-agreement.ts';
import { agreeSurname } from '../names/agree.ts';
import { preparedSurname } from '../names/prepared.ts';
import { rarityClaimOf } from '../identity/weight.ts';
import { headOfRole, relativeOf, sameChild } from './family.ts';
import type { Shores } from './shores.ts';
import type { Found } from './there.ts';
import type { Relative, Said } from './types.ts';
import { saidOnce } from './rows.ts';

export interface Afterwards {
  level: 'said to have left' | 'not there' | 'still there' | 'missing';
  /** What the candidate's records say, with the mention, or `search:` and the id of a search. */
  said: readonly Said[];
  because: Reason;
}

/** What becomes of the candidate's child after the subject had left. */
export function afterwards(facts: Facts, subject: string, found: Found, shores: Shores): Afterwards {
  const { child } = found.family;
  const none = (because: Reason): Afterwards => ({ level: 'missing', said: [], because });
  if (!shores.hereBy) return none({ key: 'departure-not-known' });
  if (!child) return none({ key: 'no-child-who-could-be' });
  const left = shores.hereBy.day;
  const own = child.refs.flatMap((ref) => {
    const at = mentionAt(facts, ref);
    return at ? [{ ref, ...at }] : [];
  });
  const later = [...own, ...namesakes(facts, found, child)].filter(
    ({ record, mention }) =>
      shores.isThere(record) &&
      mention.present &&
      !/recipient|addressee/.test(headOfRole(mention)) &&
      (earliest(record, mention) ?? -Infinity) > left &&
      !abroad(facts, mention, shores),
  );
  if (later.length > 0)
    return {
      level: 'still there',
      said: saidOnce(later.map(({ record, ref }) => ({ text: record.title, ref }))),
      because: { key: 'there-afterwards' },
    };
  const gone = own.filter(({ record, mention }) => shores.isThere(record) && abroad(facts, mention, shores));
  if (gone.length > 0)
    return {
      level: 'said to have left',
      said: gone.map(({ mention, ref }) => ({ text: abroad(facts, mention, shores)!, ref })),
      because: { key: 'said-to-be-abroad' },
    };
  const without = listedWithout(facts, found, child, left);
  const searched = [...facts.searches.values()].filter(
    ({ for: people, series, result, coverage }) =>
      result === 'not-found' &&
      people.some((id) => id === child.key || id === subject) &&
      (shores.overThere.length === 0 ||
        containmentOf(facts)
          .countries(facts.series.get(series)?.of ?? '')
          .some((id) => shores.overThere.includes(id))) &&
      coverage !== undefined &&
      (daySpan(coverage).last ?? -Infinity) > left,
  );
  if (without.length + searched.length === 0) return none({ key: 'nothing-later-entered' });
  return {
    level: 'not there',
    said: [
      ...without.map(({ record, ref }) => ({ text: record.title, ref, as: 'without' as const })),
      ...searched.map(({ id }) => ({ text: id, ref: `search:${id}`, as: 'not-found' as const })),
    ],
    because: { key: 'looked-for-afterwards' },
  };
}

/** Mentions of the candidate's own records that name the child again and that nobody has joined to anyone. */
function namesakes(facts: Facts, found: Found, child: Relative) {
  if (facts.people.has(child.key)) return [];
  const kin = kinOf(facts);
  const parents = new Set(found.parents);
  return found.refs.flatMap((ref) => {
    const at = mentionAt(facts, ref)!;
    if (child.refs.includes(ref) || parents.has(ref) || kin.owner(ref) !== undefined) return [];
    const one = relativeOf(facts, [ref]);
    const surname = one.names.some((a) =>
      child.names.some(
        (b) => rarityClaimOf(agreeSurname(preparedSurname(a.surname), preparedSurname(b.surname)).level) > 0,
      ),
    );
    return surname && one.birth && child.birth && sameChild(one, child) ? [{ ref, ...at }] : [];
  });
}

/** The earliest day a mention may speak of; a copy's own date says nothing. */
function earliest(record: SourceRecord, mention: Mention): number | null {
  const date = mention.event?.date ?? (record.form === 'original' ? record.made : undefined);
  return date === undefined ? null : daySpan(date).first;
}

/** The place outside the country over there where a mention has somebody live or go; nothing where it has not. */
function abroad(facts: Facts, mention: Mention, shores: Shores): string | undefined {
  const { countries } = containmentOf(facts);
  const readings = [mention.residence, mention.voyage?.bound, mention.voyage?.to, mention.says.destination];
  for (const reading of readings) {
    if (typeof reading !== 'string') continue;
    const where = new Set(placesMeant(facts, reading).flatMap((id) => countries(id)));
    if (where.size > 0 && ![...where].some((id) => shores.overThere.includes(id))) return reading;
    if (where.size === 0 && /america|amerika/i.test(reading)) return reading;
  }
  return undefined;
}

/** Lists of a household made after the departure that have a parent or another child of the family, and not this one. */
function listedWithout(facts: Facts, found: Found, child: Relative, left: number) {
  const parents = new Set(found.parents);
  const members = new Set([...parents, ...found.family.siblings.flatMap(({ refs }) => refs)]);
  const lists = new Map<string, { ref: string; record: SourceRecord }>();
  const listed = new Set(child.refs.map((ref) => ref.slice(0, ref.indexOf('#'))));
  for (const ref of members) {
    const { record, mention } = mentionAt(facts, ref)!;
    const kind = facts.series.get(record.series ?? '')?.kind;
    if (kind !== 'census' || !mention.present || listed.has(record.id) || lists.has(record.id)) continue;
    const day = earliest(record, mention) ?? -Infinity;
    // Years on, a grown child is not looked for under a brother's roof.
    if (day <= left || (!parents.has(ref) && day > addYears(left, yearsAtHome))) continue;
    lists.set(record.id, { ref, record });
  }
  return [...lists.values()];
}
