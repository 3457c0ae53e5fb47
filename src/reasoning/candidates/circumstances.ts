/** The place, the father's work, and what is heard of the child afterwards, as lines of the ledger. */
import { familyFields } from '../../catalogue/families.ts';
import { identityFields } from '../../catalogue/identity.ts';
import { isoDay } from '../../model/days.ts';
import type { Facts } from '../../model/facts.ts';
import { containmentOf } from '../containment.ts';
import { plainText, textLevel } from '../identity/agreement.ts';
import { placesJudged } from '../identity/place-agreement.ts';
import { levelWeight } from '../identity/weight.ts';
import { afterwards } from './afterwards.ts';
import { reasons } from './children.ts';
import { each, levelOf, saidOnce, unsaid, type Field } from './rows.ts';
import type { Shores } from './shores.ts';
import type { Found } from './there.ts';
import type { Family, FamilyRow } from './types.ts';

/** Places that the new country's records name beside those of the candidate; `claim` is the one that agrees best. */
export function placeRow(
  facts: Facts,
  here: Family,
  there: Family,
): { row: FamilyRow; claim: string | undefined } | undefined {
  const name = (id: string) => facts.places.get(id)?.name ?? id;
  const mine = here.places;
  const its = there.places;
  const text = (all: Family['places']) => each(all.map(({ place }) => name(place)));
  const said = (all: Family['places']) => saidOnce(all.map(({ place, ref }) => ({ text: name(place), ref })));
  const aFrom = said(mine);
  const bFrom = said(its);
  if (mine.length === 0 || its.length === 0) {
    const row = unsaid('place', text(mine), text(its), aFrom, bFrom);
    return row && { row, claim: undefined };
  }
  const judged = mine.map((claim) => {
    const all = its.map((one) => {
      const [level, because] = placesJudged(facts, [claim.place], [one.place]);
      return { claim, level, because, weight: levelWeight(levelOf(identityFields.birthplace, level)) };
    });
    return all.reduce((best, one) => (one.weight > best.weight ? one : best));
  });
  const depth = (id: string) => containmentOf(facts).above(id).size;
  const best = judged.reduce((top, one) =>
    one.weight > top.weight || (one.weight === top.weight && depth(one.claim.place) > depth(top.claim.place))
      ? one
      : top,
  );
  const others = judged.filter(({ weight }) => weight <= 0).length;
  const agrees = best.weight > 0;
  const choice = agrees ? Math.min(best.weight, Math.log2(1 + others)) : 0;
  return {
    row: {
      field: 'place',
      a: text(mine),
      b: text(its),
      aFrom,
      bFrom,
      agreement: best.level,
      verdict: agrees ? 'agrees' : 'differs',
      weight: best.weight - choice,
      because: [
        ...reasons(best.because),
        ...(choice > 0 ? [{ key: 'best-of-places' as const, values: 1 + others, bits: choice }] : []),
      ],
    },
    claim: agrees ? best.claim.place : undefined,
  };
}

/** The father's work. */
export function occupationField(here: Family, there: Family): Field | undefined {
  const mine = here.occupation;
  const its = there.occupation;
  const a = each(mine.map(({ text }) => text));
  const b = each(its.map(({ text }) => text));
  const aFrom = saidOnce(mine);
  const bFrom = saidOnce(its);
  if (a === '' || b === '') {
    const row = unsaid('occupation', a, b, aFrom, bFrom);
    return row ? { row } : undefined;
  }
  const { levels } = identityFields.occupation;
  const rank = (level: string) => levels.findIndex((one) => one.level === level);
  const level = mine
    .flatMap((x) => its.map((y) => textLevel(plainText(x.text), plainText(y.text))))
    .reduce((best, one) => (rank(one) < rank(best) ? one : best));
  const agrees = level === 'exact' || level === 'part' || level === 'close';
  const weight = levelWeight(levelOf(identityFields.occupation, level));
  return {
    row: {
      field: 'occupation',
      a,
      b,
      aFrom,
      bFrom,
      agreement: level,
      verdict: agrees ? 'agrees' : 'differs',
      weight: agrees ? Math.max(0, weight) : weight,
      because: [],
    },
    ...(agrees
      ? {
          trait: {
            what: { key: 'work', occupation: its[0]!.text },
            because: [{ key: 'trades-agree-so', share: reachOf(level) }],
            names: [],
            of: () => reachOf(level),
          },
        }
      : {}),
  };
}

/** Two occupations taken at hand agree at a level or better. */
function reachOf(level: string): number {
  const { levels } = identityFields.occupation;
  return levels
    .slice(0, levels.findIndex((one) => one.level === level) + 1)
    .reduce((sum, { u }) => sum + u, 0);
}

/** What is heard of the child over there once the subject had left. */
export function afterwardsRow(facts: Facts, subject: string, found: Found, shores: Shores): FamilyRow {
  const { level, said, because } = afterwards(facts, subject, found, shores);
  const line = {
    field: 'afterwards' as const,
    a: shores.hereBy ? isoDay(shores.hereBy.day) : '',
    b: said.map(({ text }) => text).join('; '),
    aFrom: shores.hereBy
      ? [{ text: isoDay(shores.hereBy.day), ref: shores.hereBy.ref, as: 'here-by' as const }]
      : [],
    bFrom: said,
    agreement: level,
    because: [because],
  };
  if (level === 'missing') return { ...line, verdict: 'unsaid', weight: 0 };
  return {
    ...line,
    verdict: level === 'still there' ? 'differs' : 'agrees',
    weight: levelWeight(levelOf(familyFields.afterwards, level)),
  };
}
