/** What was computed of a case, as it may be shown in public: without the ids of the withheld, and with what is shown counted. */
import type { Facts } from '../model/facts.ts';
import { searchesForFamily } from '../reasoning/points.ts';
import type { CaseResult, PointResult, Root, TieReason } from '../reasoning/types.ts';
import { isNobody, plainMentionRef, withoutLiving, type Withheld } from './withhold.ts';

/** A computed case with the ids of the withheld taken out of it, and with what is shown counted. */
export function maskResult(
  facts: Facts,
  result: CaseResult,
  withheld: Withheld,
  someone: string,
  shown?: Facts,
): CaseResult {
  if (isNobody(withheld)) return result;
  const hiddenMention = (ref: string) => withheld.mentions.has(ref);
  const plainRef = (ref: string) => plainMentionRef(facts, withheld, ref);
  const maskRoot = (root: Root): Root =>
    root.kind === 'person' && withheld.people.has(root.of)
      ? { ...root, key: 'living', of: 'living', label: someone }
      : root;
  const maskTie = (reason: TieReason): TieReason => {
    if (!('ref' in reason)) return reason;
    const ref = plainRef(reason.ref);
    if (reason.kind === 'other-person' && withheld.people.has(reason.person))
      return { ...reason, ref, person: 'living' };
    return ref === reason.ref ? reason : { ...reason, ref };
  };
  return {
    ...result,
    items: result.items.map((item) => ({
      ...item,
      roots: item.roots.map(maskRoot),
      tieReasons: item.tieReasons.map(maskTie),
      mentions: item.mentions.map((m) => {
        if (!hiddenMention(m.ref)) return m;
        const ref = plainRef(m.ref);
        return { ...m, ref, mention: ref.slice(ref.indexOf('#') + 1), person: 'living' };
      }),
    })),
    pairs: result.pairs.map((pair) => ({
      ...pair,
      reasons: pair.reasons.map((reason) =>
        'root' in reason ? { ...reason, root: maskRoot(reason.root) } : reason,
      ),
    })),
    points: result.points.map((point) =>
      maskPoint(point, shown ?? shownOf(facts, withheld, someone), result.subject),
    ),
    problems: result.problems.filter(
      (problem) =>
        ![...withheld.people].some((id) => names(facts, id, problem.message)) &&
        !(
          problem.message.includes('#') && [...withheld.mentions].some((ref) => problem.message.includes(ref))
        ),
    ),
  };
}

const shownFacts = new WeakMap<Withheld, Facts>();

function shownOf(facts: Facts, withheld: Withheld, someone: string): Facts {
  const known = shownFacts.get(withheld);
  if (known) return known;
  const shown = withoutLiving(facts, withheld, { someone, oneOfSeveral: someone });
  shownFacts.set(withheld, shown);
  return shown;
}

/** A reviewer’s point with the searches counted and named that are shown. Whether it holds stays as it was computed. */
function maskPoint(point: PointResult, shown: Facts, subject: string): PointResult {
  const { said } = point;
  if (said.key === 'rivals-searched') {
    const searches = said.searches.filter((id) => shown.searches.has(id));
    return searches.length === said.searches.length ? point : { ...point, said: { ...said, searches } };
  }
  if (!('searches' in said)) return point;
  const logged = searchesForFamily(shown, subject);
  if (logged.length === said.searches || logged.length === 0) return point;
  const nothing = logged.filter((search) => search.result === 'not-found').length;
  return {
    ...point,
    said:
      said.key === 'searches-with-nothing'
        ? { ...said, searches: logged.length, nothing }
        : { ...said, searches: logged.length },
  };
}

function names(facts: Facts, person: string, text: string): boolean {
  return text.includes(person) || text.includes(facts.people.get(person)?.name ?? person);
}
