/**
 * The items of evidence of one case, with what the other questions need to know of each: its records, whose mentions
 * it uses, its roots, and whether it must be tied to the subject.
 */
import { sourcesOf, type Case, type Evidence } from '../model/case.ts';
import { mentionAt, statementOf, type Facts } from '../model/facts.ts';
import type { MentionEvent } from '../model/record.ts';
import { containmentOf } from './containment.ts';
import { lineageOf } from './derivation.ts';
import { birthOrBaptism } from './event-kinds.ts';
import { kinOf } from './kin.ts';
import { mergeRoots, rootsOf } from './roots.ts';
import type { Root, TieReason } from './types.ts';

export interface Item {
  id: string;
  index: number;
  evidence: Evidence;
  cited: boolean;
  mentions: { ref: string; record: string; mention: string; person: string | null }[];
  search: string | undefined;
  /** Records it uses, each once. */
  records: string[];
  /** Records it uses or certainly derives from. */
  exemplars: ReadonlySet<string>;
  roots: Root[];
  tieReasons: TieReason[];
  onQuestion: boolean;
}

/** The place a case concludes or supposes, if it does either. */
export function answerOf(
  c: Case,
): { place: string; cites: string[]; path: 'conclusion' | 'hypothesis' } | undefined {
  if (c.conclusion) return { place: c.conclusion.place, cites: c.conclusion.cites, path: 'conclusion' };
  if (c.hypothesis) return { place: c.hypothesis.place, cites: c.hypothesis.cites, path: 'hypothesis' };
  return undefined;
}

/** The items of a case in file order. */
export function itemsOf(facts: Facts, c: Case): Item[] {
  const answer = answerOf(c);
  const cites = new Set(answer?.cites);
  const countries = answer ? containmentOf(facts).countries(answer.place) : [];
  return c.evidence.map((evidence, index) => {
    const { mentions: refs, records, searches } = sourcesOf(evidence);
    const mentions = refs.map((ref) => {
      const [record = '', mention = ''] = ref.split('#');
      return { ref, record, mention, person: kinOf(facts).owner(ref) ?? null };
    });
    const exemplars = new Set(records.flatMap((record) => [...lineageOf(facts, record).certain]));
    return {
      id: evidence.id,
      index,
      evidence,
      cited: cites.has(evidence.id),
      mentions,
      search: searches[0],
      records,
      exemplars,
      roots: mergeRoots(refs.map((ref) => rootsOf(facts, ref, evidence.states))),
      tieReasons: answer ? tieReasons(facts, c.subject, mentions, exemplars, countries) : [],
      onQuestion:
        mentions.length > 0 &&
        mentions.every((m) => m.person === c.subject) &&
        mentions.some((m) => answersQuestion(facts, m.ref, evidence.states, c.asks)),
    };
  });
}

/**
 * Whether a mention's statement is what the case asks; a birth or baptism states a birthplace. An item that does not
 * name its statement states whatever its mention does: a word left out must not hide a conflict.
 */
function answersQuestion(facts: Facts, ref: string, states: string | undefined, asks: string): boolean {
  if (states === undefined) return statesWhatIsAsked(facts, ref, asks);
  if (states === asks) return true;
  if (asks !== 'birthplace' || states !== 'event') return false;
  const event = mentionAt(facts, ref)?.mention.event;
  return event !== undefined && isBirth(event);
}

/** A birth or a baptism, whose place is taken for the birthplace (*common practice*). */
export function isBirth(event: MentionEvent): boolean {
  return birthOrBaptism(event.kind) !== undefined;
}

/** Whether a mention says anything that answers what a case asks. */
export function statesWhatIsAsked(facts: Facts, ref: string, asks: string): boolean {
  const mention = mentionAt(facts, ref)?.mention;
  if (!mention) return false;
  if (statementOf(mention, asks) !== undefined) return true;
  return (
    asks === 'birthplace' &&
    mention.event !== undefined &&
    isBirth(mention.event) &&
    mention.event.place !== undefined
  );
}

/**
 * Why an item must be tied to the subject: a mention of it is somebody else's or nobody's, or a record behind it was
 * made nowhere known or over there, where a family of the name must be shown to be this family (*common practice*).
 */
function tieReasons(
  facts: Facts,
  subject: string,
  mentions: Item['mentions'],
  exemplars: ReadonlySet<string>,
  countries: readonly string[],
): TieReason[] {
  const reasons: TieReason[] = [];
  for (const { ref, person } of mentions) {
    if (person === null) reasons.push({ kind: 'nobody-yet', ref });
    else if (person !== subject) reasons.push({ kind: 'other-person', ref, person });
  }
  for (const record of exemplars) {
    const place = facts.records.get(record)?.place;
    if (place === undefined) reasons.push({ kind: 'no-place', record });
    else {
      const shared = containmentOf(facts)
        .countries(place)
        .find((country) => countries.includes(country));
      if (shared !== undefined) reasons.push({ kind: 'same-country', record, country: shared });
    }
  }
  return reasons;
}
