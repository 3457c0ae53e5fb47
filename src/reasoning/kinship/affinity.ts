/**
 * Relations through one marriage: a spouse's kin, and the spouses of kin.
 *
 * Rule: affinity joins one of a couple to the kin of the other, in the line and degree of that kinship, and does not
 * beget further affinity (Codex Iuris Canonici 1917, canon 97). English calls those of the direct line step-kin where
 * they come by a parent's or a spouse's other marriage (common practice).
 */
import type { Family } from './family.ts';
import type { Line } from './lines.ts';
import type { Relationship } from './types.ts';
import { bloodWord, halfWord, inLawWord, possessive, spouseWord, stepWord } from './words.ts';

export interface Affinity {
  /** A spouse's relative, the line leading from the spouse; or a relative's spouse, the line leading to the relative. */
  of: 'spouse' | 'relative';
  line: Line;
  spouse: string;
  /** The person who is related. */
  end: string;
}

/** Relations by affinity of a person, in words and degrees. Nobody is their own. */
export function affinities(family: Family, from: string, all: readonly Affinity[]): Relationship[] {
  return all.flatMap((one) => {
    const { of, line, spouse, end } = one;
    const { up, down } = line;
    // A line that leads through the other of the couple is no relation by that marriage.
    if (end === from || line.through.includes(of === 'spouse' ? from : end)) return [];
    const through = of === 'spouse' ? [from, ...line.through] : [...line.through, spouse];
    const step = stepOf(family, one);
    return [
      {
        from,
        to: end,
        kind: step === 'step' ? ('step' as const) : ('in-law' as const),
        up,
        down,
        civil: up + down,
        canonOld: Math.max(up, down),
        canonNew: up + down,
        through,
        marriageAt: of === 'spouse' ? 0 : through.length - 2,
        commonAncestors: [],
        words:
          step === 'step' ? stepWord(up, down, family.sex(end)) : inLawWords(family, one, step === 'perhaps'),
      },
    ];
  });
}

/**
 * Whether somebody is a step-relation: an ancestor's spouse who is no ancestor, a spouse's descendant who is not one's
 * own. Where the other parent of the child between them is not entered, it is only perhaps so: that parent may be meant.
 */
function stepOf(family: Family, { of, line }: Affinity): 'step' | 'perhaps' | 'no' {
  const { up, down, through } = line;
  if (of === 'relative' && down === 0) return family.parents(through.at(-2)!).length > 1 ? 'step' : 'perhaps';
  if (of === 'spouse' && up === 0) return family.parents(through[1]!).length > 1 ? 'step' : 'perhaps';
  return 'no';
}

function inLawWords(family: Family, { of, line, spouse, end }: Affinity, perhaps: boolean): string {
  const { up, down, through, sharing } = line;
  const sex = family.sex(end);
  const kin = (id: string) => (sharing === 'half' ? halfWord : bloodWord)(up, down, family.sex(id));
  const words =
    of === 'spouse'
      ? `${possessive(spouseWord(family.sex(spouse)))} ${kin(end)}`
      : `${possessive(kin(through.at(-1)!))} ${spouseWord(sex)}`;
  if (perhaps) {
    const blood = bloodWord(up, down, sex);
    return `${words} (perhaps ${down > 0 ? 'an own' : 'the'} ${blood}: only one parent is entered)`;
  }
  const own =
    of === 'relative' && ((up === 2 && down === 1) || (up === 1 && down === 2))
      ? `${bloodWord(up, down, sex)} by marriage`
      : inLawWord(up, down, sex);
  return own === undefined ? words : `${words} (${own})`;
}
