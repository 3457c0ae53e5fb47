/** The family around people as pages show it: marriages with their children, in the order of births. */
import type { Dossier, PersonView } from '../../src/dossier/types.ts';
import { lifeYears, yearOf } from '../layout/dates.ts';
import { sortableDate } from '../layout/lookup.ts';
import { byText } from '../layout/words.ts';
import type { DrawingWords, Kinfolk } from './family-drawing.ts';

/** Husband, wife, or only the other parent, with the children by them. */
export interface MarriageView {
  /** Absent for children of whom no other parent is shown. */
  spouse: string | undefined;
  isMarried: boolean;
  married: string | undefined;
  place: string | undefined;
  children: string[];
}

/** Those of some people who are shown, by their births; of equals in the order given. */
export function byBirth(dossier: Dossier, ids: readonly string[]): string[] {
  const key = (id: string) => sortableDate(dossier.people.get(id)!.person.born?.date);
  return shown(dossier, ids).sort((a, b) => byText(key(a), key(b)));
}

const shown = (dossier: Dossier, ids: readonly string[]): string[] =>
  ids.filter((id) => dossier.people.has(id));

/** The parents who are shown, the father before the mother. */
export function parentsOf(dossier: Dossier, view: PersonView): string[] {
  const rank = (id: string) => ({ M: 0, F: 2 })[dossier.people.get(id)!.person.sex as string] ?? 1;
  return shown(dossier, view.parents).sort((a, b) => rank(a) - rank(b));
}

/** Marriages by their dates, then children by anybody else, then those of whom no other parent is shown. */
export function marriagesOf(dossier: Dossier, view: PersonView): MarriageView[] {
  const found = new Map<string, MarriageView>();
  for (const { person, married, place } of view.spouses)
    if (dossier.people.has(person))
      found.set(person, { spouse: person, isMarried: true, married, place, children: [] });
  const alone: string[] = [];
  for (const child of byBirth(dossier, view.children)) {
    const others = shown(dossier, dossier.people.get(child)!.parents).filter((id) => id !== view.id);
    const other = others.find((id) => found.get(id)?.isMarried) ?? others[0];
    if (other === undefined) {
      alone.push(child);
      continue;
    }
    const known = found.get(other) ?? {
      spouse: other,
      isMarried: false,
      married: undefined,
      place: undefined,
      children: [],
    };
    known.children.push(child);
    found.set(other, known);
  }
  const first = (one: MarriageView) =>
    sortableDate(
      one.married ??
        (one.children[0] === undefined ? undefined : dossier.people.get(one.children[0])!.person.born?.date),
    );
  const all = [...found.values()].sort((a, b) => byText(first(a), first(b)));
  if (alone.length > 0)
    all.push({ spouse: undefined, isMarried: false, married: undefined, place: undefined, children: alone });
  return all;
}

/** The family as a drawing asks for it. */
export function kinfolkOf(dossier: Dossier): Kinfolk {
  const words = dossier.wording.people.family;
  return {
    parents: (id) => parentsOf(dossier, dossier.people.get(id)!),
    marriages: (id) =>
      marriagesOf(dossier, dossier.people.get(id)!).map(({ spouse, isMarried, married, children }) => ({
        spouse,
        married: isMarried,
        note: isMarried ? words.marriedIn(yearOf(married)) : '',
        children,
      })),
    label(id) {
      const { person } = dossier.people.get(id)!;
      return {
        name: person.name,
        years: lifeYears(person.born?.date, person.died?.date),
        placeholder: person.placeholder,
      };
    },
  };
}

/** The words that stand in a drawing, in the language of the site. */
export function drawingWords({ wording }: Dossier): DrawingWords {
  const { drawnAbove, drawnBelow, otherParentNotKnown, moreChildren, furtherChildren } =
    wording.people.family;
  return { drawnAbove, drawnBelow, otherParentNotKnown, moreChildren, furtherChildren };
}
