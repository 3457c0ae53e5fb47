/**
 * A candidate family beside the family as the new country knows it, field by field.
 *
 * Rule: Fellegi–Sunter weights in bits, value-specific for names (see `identity/weight.ts`); what one side does not say
 * weighs nothing. Where one side gives several values, the pair that agrees best speaks, less the chance of choosing
 * among those that differ. A field that agrees never weighs below nothing.
 */
import { childrenOfAMarriage, familyFields, patronymicCountries } from '../../catalogue/families.ts';
import { identityFields, leastShare, type FieldShares } from '../../catalogue/identity.ts';
import { civil, isoDay } from '../../model/days.ts';
import type { Facts } from '../../model/facts.ts';
import { containmentOf } from '../containment.ts';
import { gapLevel, plainText, textLevel, yearsApart } from '../identity/agreement.ts';
import { placesJudged } from '../identity/place-agreement.ts';
import { levelWeight, rarityBits, rarityClaimOf } from '../identity/weight.ts';
import { agreeGiven, agreeSurname } from '../names/agree.ts';
import { preparedGiven, preparedSurname } from '../names/prepared.ts';
import { afterwards } from './afterwards.ts';
import {
  childByChance,
  childrenTrait,
  communityOf,
  nameTrait,
  type ChildSought,
  type Trait,
} from './by-chance.ts';
import {
  bestGiven,
  familyRarity,
  joined,
  matchChildren,
  orderOf,
  reachOfLevel,
  yearsWithin,
} from './children.ts';
import { fullest } from './family.ts';
import { fathersName, givenShare, surnameShare, type TraitShare } from './shares.ts';
import type { Shores } from './shores.ts';
import type { Found } from './there.ts';
import type { Family, FamilyField, FamilyRow, Naming } from './types.ts';

export interface Compared {
  rows: FamilyRow[];
  /** What agrees, as a share of families. */
  traits: Trait[];
  /** The place whose families it is one of. */
  community: string | undefined;
}

/** Every field that at least one of the two families states. */
export function compareFamilies(
  facts: Facts,
  subject: string,
  here: Family,
  found: Found,
  shores: Shores,
): Compared {
  const there = found.family;
  const place = placeRow(facts, here, there);
  const community = found.made === undefined ? undefined : communityOf(facts, found.made, place?.claim);
  // Names are asked for where the family lived, since a count of a civil parish serves a Catholic one too.
  const lived = there.places[0]?.place ?? found.made;
  const chain = lived === undefined ? shores.overThere : containmentOf(facts).outward(lived);
  const norse = chain.some((id) => patronymicCountries.has(id));
  const given = (name: string, sex: 'M' | 'F' | undefined) => givenShare(facts, chain, name, sex);
  const surname = (name: string, patronymic: boolean) => surnameShare(facts, chain, name, patronymic);

  const rows: (FamilyRow | undefined)[] = [];
  const traits: Trait[] = [];
  const child = childRows(here, there, given);
  rows.push(...child.rows);
  traits.push(...child.traits);

  const add = (one: { row?: FamilyRow; trait?: Trait } | undefined) => {
    if (one?.row) rows.push(one.row);
    if (one?.trait) traits.push(one.trait);
  };
  const families = norse ? undefined : familyNames(here, there);
  if (families) add(surnameField('surname', 'the family’s surname', families.here, families.there, surname));
  const father = { here: fathersOf(here, norse), there: fathersOf(there, norse) };
  add(kinField('father', 'the father', 'M', father.here, father.there, given));
  if (norse)
    add(
      surnameField(
        'father-patronymic',
        'the father’s patronymic',
        patronymics(here.father),
        patronymics(there.father),
        surname,
      ),
    );
  add(kinField('mother', 'the mother', 'F', here.mother, there.mother, given));
  add(
    surnameField(
      'maiden',
      'the mother’s maiden name',
      families ? maidenNames(here.mother, families.here) : patronymics(here.mother),
      families ? maidenNames(there.mother, families.there) : patronymics(there.mother),
      surname,
    ),
  );
  const matched = matchChildren(here.siblings, there.siblings, given);
  rows.push(...matched.map(({ row }) => row));
  const sought = matched.flatMap((one) => (one.sought ? [one.sought] : []));
  if (sought.length > 0) traits.push(siblingsTrait(matched, here, given));
  rows.push(orderRow(here, there, matched));
  add(spouseField(here, there, given, surname));
  rows.push(place?.row);
  const occupation = occupationField(here, there);
  add(occupation);
  rows.push(afterwardsRow(facts, subject, found, shores));
  return { rows: rows.filter((row) => row !== undefined), traits, community };
}

type GivenShare = (name: string, sex: 'M' | 'F' | undefined) => TraitShare;
type SurnameShare = (name: string, patronymic: boolean) => TraitShare;
interface Field {
  row?: FamilyRow;
  trait?: Trait;
}

const refsOf = (names: readonly Naming[]) =>
  [...new Set(names.map(({ ref }) => ref))].filter((ref) => ref !== '');
const each = (texts: readonly string[]) => [...new Set(texts)].filter((text) => text !== '').join(', ');

function unsaid(
  field: FamilyField,
  a: string,
  b: string,
  aRefs: readonly string[],
  bRefs: readonly string[],
  because?: string,
): FamilyRow | undefined {
  if (a === '' && b === '') return undefined;
  return {
    field,
    a,
    b,
    aRefs,
    bRefs,
    agreement: 'missing',
    verdict: 'unsaid',
    weight: 0,
    because:
      because ??
      (a === '' ? 'the records of the new country do not say' : 'the candidate’s records do not say'),
  };
}

const levelOf = ({ levels }: FieldShares, level: string) => levels.find((one) => one.level === level)!;

/** Two sets of names of one part: the pair that agrees best, weighed by its rarity. */
function namesField(
  field: FamilyField,
  what: string,
  here: readonly Naming[],
  there: readonly Naming[],
  part: {
    text: (name: Naming) => string;
    agree: (a: string, b: string) => { level: string; why: string };
    shares: FieldShares;
    share: (name: Naming) => TraitShare;
  },
): Field | undefined {
  const mine = here.filter((name) => part.text(name) !== '');
  const its = there.filter((name) => part.text(name) !== '');
  const a = each(mine.map(part.text));
  const b = each(its.map(part.text));
  if (mine.length === 0 || its.length === 0) {
    const row = unsaid(field, a, b, refsOf(mine), refsOf(its));
    return row ? { row } : undefined;
  }
  const { levels } = part.shares;
  const seen = new Map<string, { level: string; why: string; rank: number }>();
  const judged = (x: Naming, y: Naming) => {
    const key = `${part.text(x)} / ${part.text(y)}`;
    let one = seen.get(key);
    if (!one) {
      const { level, why } = part.agree(part.text(x), part.text(y));
      seen.set(key, (one = { level, why, rank: levels.findIndex((each) => each.level === level) }));
    }
    return one;
  };
  let best = { x: mine[0]!, y: its[0]!, ...judged(mine[0]!, its[0]!) };
  for (const x of mine)
    for (const y of its) {
      const one = judged(x, y);
      const fuller =
        part.text(x).length + part.text(y).length > part.text(best.x).length + part.text(best.y).length;
      if (one.rank < best.rank || (one.rank === best.rank && fuller)) best = { x, y, ...one };
    }
  const agreeing = (x: Naming) => its.some((y) => rarityClaimOf(judged(x, y).level) > 0);
  const others = new Set(mine.filter((x) => !agreeing(x)).map((x) => part.text(x).toLowerCase())).size;
  const claim = rarityClaimOf(best.level);
  const share = part.share(best.x);
  const plain =
    levelWeight(levelOf(part.shares, best.level)) +
    rarityBits(best.level, [share.share, share.share], levels[0]!.u, leastShare);
  const choice = claim > 0 ? Math.min(Math.max(0, plain), Math.log2(1 + others)) : 0;
  const agrees = claim > 0 || best.level === 'initial';
  const weight = agrees ? Math.max(0, plain - choice) : plain;
  const reach = reachOfLevel(best.level);
  return {
    row: {
      field,
      a,
      b,
      aRefs: refsOf(mine),
      bRefs: refsOf(its),
      agreement: best.level,
      verdict: agrees ? 'agrees' : 'differs',
      weight,
      because: joined(
        best.why,
        claim > 0 ? share.because : '',
        choice > 0
          ? `the best of ${1 + others} values that differ, which takes off ${choice.toFixed(1)}`
          : '',
      ),
    },
    ...(claim > 0
      ? {
          trait:
            reach === 1
              ? nameTrait(`${what} ${part.text(best.y)}`, share)
              : {
                  ...nameTrait(`${what} ${part.text(best.y)}, or a spelling as near`, share),
                  of: ([one = 0]: readonly number[]) => Math.min(1, one * reach),
                },
        }
      : {}),
  };
}

function kinField(
  field: 'father' | 'mother' | 'spouse',
  what: string,
  sex: 'M' | 'F' | undefined,
  here: readonly Naming[],
  there: readonly Naming[],
  share: GivenShare,
): Field | undefined {
  return namesField(field, what, here, there, {
    text: ({ given }) => given,
    agree: (a, b) => agreeGiven(preparedGiven(a), preparedGiven(b)),
    shares: identityFields[field],
    share: ({ given }) => share(given, sex),
  });
}

function surnameField(
  field: FamilyField,
  what: string,
  here: readonly Naming[],
  there: readonly Naming[],
  share: SurnameShare,
): Field | undefined {
  return namesField(field, what, here, there, {
    text: ({ surname }) => surname,
    agree: (a, b) => agreeSurname(preparedSurname(a), preparedSurname(b)),
    shares: identityFields.surname,
    share: ({ surname, patronymic }) => share(surname, patronymic),
  });
}

const alike = (a: Naming, b: Naming) =>
  rarityClaimOf(agreeSurname(preparedSurname(a.surname), preparedSurname(b.surname)).level) > 0;

/** Surnames of the two families: the father's, and the child's own where it is not a husband's. */
function familyNames(here: Family, there: Family) {
  const of = (family: Family, husbands: readonly Naming[]) => {
    const own = family.child?.names ?? [];
    const married = family.child?.sex === 'F' ? husbands : [];
    const maiden = own.filter((name) => !married.some((husband) => alike(name, husband)));
    const all = [...family.father, ...maiden].filter(({ surname }) => surname !== '');
    return [...new Map(all.map((name) => [`${name.surname} ${name.ref}`, name])).values()];
  };
  return { here: of(here, here.spouse), there: of(there, there.spouse) };
}

/** Surnames of a mother that are not the family's. */
function maidenNames(mother: readonly Naming[], family: readonly Naming[]): Naming[] {
  return ownSurnames(mother).filter((name) => !family.some((other) => alike(name, other)));
}

const patronymics = (names: readonly Naming[]) => names.filter(({ patronymic }) => patronymic);
const ownSurnames = (names: readonly Naming[]) => names.filter(({ surname }) => surname !== '');

/** The father as named, and where children are called after him, as their names tell. */
function fathersOf(family: Family, norse: boolean): Naming[] {
  const called = !norse
    ? []
    : [family.child, ...family.siblings].flatMap((one) =>
        (one?.names ?? []).flatMap((name): Naming[] => {
          const husbands = one?.sex === 'F' && one === family.child ? family.spouse : [];
          if (husbands.some((husband) => alike(name, husband))) return [];
          const father = name.patronymic ? fathersName(name.surname) : undefined;
          return father === undefined ? [] : [{ ...name, given: father, surname: '' }];
        }),
      );
  const named = family.father.filter(({ given }) => given !== '');
  const fits = (one: Naming) => named.length === 0 || bestGiven([one], named) === undefined;
  return [...named, ...called.filter(fits)];
}

function childRows(here: Family, there: Family, given: GivenShare): { rows: FamilyRow[]; traits: Trait[] } {
  const mine = here.child;
  const its = there.child;
  if (!mine) return { rows: [], traits: [] };
  const text = (names: readonly Naming[]) => each(names.map((name) => name.given));
  const sex = mine.sex ?? its?.sex;
  const name = its && bestGiven(mine.names, its.names);
  const a = text(mine.names);
  const b = its ? text(its.names) : '';
  const aRefs = refsOf(mine.names);
  const bRefs = its ? refsOf(its.names) : [];
  if (!its || b === '' || a === '') {
    const row = unsaid('given', a, b, aRefs, bRefs, 'one of the two does not name the child');
    return { rows: row ? [row] : [], traits: [] };
  }
  if (!name)
    return {
      rows: [
        {
          field: 'given',
          a,
          b,
          aRefs,
          bRefs,
          agreement: 'different',
          verdict: 'differs',
          weight: levelWeight(levelOf(identityFields.given, 'different')),
          because: '',
        },
      ],
      traits: [],
    };
  const share = given(name.a.given, sex);
  const also = reachOfLevel(name.level);
  const u = childByChance({ name: share, sex }, share.share);
  const rows: FamilyRow[] = [
    {
      field: 'given',
      a,
      b,
      aRefs,
      bRefs,
      agreement: name.level,
      verdict: 'agrees',
      weight: Math.max(
        0,
        levelWeight(levelOf(identityFields.given, name.level)) + familyRarity('given', name.level, u),
      ),
      because: joined(
        name.why,
        share.because,
        `of ${childrenOfAMarriage.children} children in a family, any may have the name`,
      ),
    },
  ];
  const sought: ChildSought = { name: share, sex, also };
  const birth = birthRow(mine.birth, its.birth);
  if (birth) rows.push(birth.row);
  if (birth?.years !== undefined) sought.years = birth.years;
  const day = birthdayRow(mine.birthdays, its.birthdays);
  if (day) rows.push(day);
  if (day?.agreement === 'same') {
    sought.years = 1;
    sought.also = also / 365;
  }
  return {
    rows,
    traits: [
      childrenTrait(
        `a child called ${name.b.given}${sought.years === undefined ? '' : day?.agreement === 'same' ? ' born on that day' : ' of about that age'}`,
        [sought],
        1,
      ),
    ],
  };
}

type Birth = NonNullable<Family['child']>['birth'];

function birthRow(a: Birth, b: Birth): { row: FamilyRow; years?: number } | undefined {
  const text = (birth: Birth) => (birth ? spanText(birth.first, birth.last) : '');
  const aRefs = a ? [a.ref] : [];
  const bRefs = b ? [b.ref] : [];
  if (!a || !b) {
    const row = unsaid('birth', text(a), text(b), aRefs, bRefs);
    return row && { row };
  }
  const apart = yearsApart(a, b);
  const level = gapLevel(apart);
  const shares = levelOf(identityFields.birth, level);
  const agrees = apart <= 5;
  const weight = levelWeight(shares);
  return {
    row: {
      field: 'birth',
      a: text(a),
      b: text(b),
      aRefs,
      bRefs,
      agreement: level,
      verdict: agrees ? 'agrees' : 'differs',
      weight: agrees ? Math.max(0, weight) : Math.min(0, weight),
      because: apart === 0 ? '' : apart === 1 ? 'one year apart' : `${apart} years apart`,
    },
    ...(agrees ? { years: yearsWithin(level) } : {}),
  };
}

/** A span of days as the day, the year or the years it stands for. */
function spanText(first: number, last: number): string {
  if (first === last) return isoDay(first);
  const [from, to] = [civil(first), civil(last)];
  if (from.year === to.year && from.month === to.month) return isoDay(first).slice(0, 7);
  return from.year === to.year ? String(from.year) : `${from.year}–${to.year}`;
}

function birthdayRow(
  here: readonly { day: number; ref: string }[],
  there: readonly { day: number; ref: string }[],
): FamilyRow | undefined {
  if (here.length === 0 || there.length === 0) return undefined;
  const days = (all: readonly { day: number }[]) => each(all.map(({ day }) => isoDay(day).slice(5)));
  const same = (x: number, y: number) => {
    const [one, other] = [civil(x), civil(y)];
    const [month, day] = [one.month === other.month, one.day === other.day];
    return month && day ? 'same' : month || day ? 'close' : 'different';
  };
  const rank = ['same', 'close', 'different'];
  const level = here
    .flatMap((x) => there.map((y) => same(x.day, y.day)))
    .reduce((best, one) => (rank.indexOf(one) < rank.indexOf(best) ? one : best));
  const values = new Set(here.map(({ day }) => isoDay(day).slice(5))).size;
  const weight = levelWeight(levelOf(identityFields.birthday, level));
  return {
    field: 'birthday',
    a: days(here),
    b: days(there),
    aRefs: here.map(({ ref }) => ref),
    bRefs: there.map(({ ref }) => ref),
    agreement: level,
    verdict: level === 'same' ? 'agrees' : 'differs',
    weight: weight > 0 ? Math.max(0, weight - Math.log2(values)) : weight,
    because: level === 'close' ? 'the day or the month is the same' : '',
  };
}

function siblingsTrait(matched: ReturnType<typeof matchChildren>, here: Family, given: GivenShare): Trait {
  // Whoever is not matched was another chance to agree; what counts is that so many of all were.
  const all = matched.flatMap((one, i): ChildSought[] => {
    if (one.sought) return [one.sought];
    const child = here.siblings[i]!;
    const name = child.names.find((naming) => naming.given !== '');
    return name ? [{ name: given(name.given, child.sex), sex: child.sex, years: 11 }] : [];
  });
  const k = matched.filter((one) => one.sought).length;
  const names = matched.flatMap((one) => (one.pair ? [fullest(one.pair[1].names)?.given ?? ''] : []));
  return childrenTrait(
    k === all.length
      ? `beside ${k === 1 ? 'the child' : 'children'} ${names.join(', ')}`
      : `beside ${k} of ${all.length} other children known here (${names.join(', ')})`,
    all,
    k,
  );
}

function orderRow(
  here: Family,
  there: Family,
  matched: ReturnType<typeof matchChildren>,
): FamilyRow | undefined {
  const pairs = matched.flatMap((one) => (one.pair ? [one.pair] : []));
  if (here.child && there.child) pairs.push([here.child, there.child]);
  const { same, pairs: all, byAge } = orderOf(pairs);
  if (all === 0) return undefined;
  const level = same === all ? 'same order' : same * 2 > all ? 'mostly so' : 'another order';
  const weight = levelWeight(levelOf(familyFields.order, level));
  return {
    field: 'order',
    a: '',
    b: `${same} of ${all} ${all === 1 ? 'pair' : 'pairs'} in the same order`,
    aRefs: [],
    bRefs: [],
    agreement: level,
    verdict: level === 'another order' ? 'differs' : 'agrees',
    weight:
      byAge && level === 'same order'
        ? 0
        : level === 'same order'
          ? Math.max(0, weight)
          : Math.min(0, weight),
    because:
      byAge && level === 'same order' ? 'the order follows from the ages, which are weighed already' : '',
  };
}

function spouseField(
  here: Family,
  there: Family,
  given: GivenShare,
  surname: SurnameShare,
): Field | undefined {
  if (here.spouse.length === 0 || there.spouse.length === 0) return undefined;
  const sex = here.child?.sex === 'M' ? 'F' : here.child?.sex === 'F' ? 'M' : undefined;
  const first = kinField('spouse', 'married to', sex, here.spouse, there.spouse, given);
  if (!first?.row || first.row.verdict !== 'agrees') return first;
  const own = familyNames(here, there);
  const last = surnameField(
    'spouse',
    'whose surname is',
    maidenNames(here.spouse, own.here),
    maidenNames(there.spouse, own.there),
    surname,
  );
  if (last?.row?.verdict !== 'agrees') return first;
  return {
    row: {
      ...first.row,
      a: each([first.row.a, last.row.a]),
      b: each([first.row.b, last.row.b]),
      weight: first.row.weight + last.row.weight,
      because: joined(first.row.because, 'the surname agrees too', last.row.because),
    },
    ...(first.trait && last.trait
      ? {
          trait: {
            what: `${first.trait.what}, ${last.trait.what}`,
            because: joined(first.trait.because, last.trait.because),
            names: [...first.trait.names, ...last.trait.names],
            of: ([one = 0, other = 0]: readonly number[]) => one * other,
          },
        }
      : {}),
  };
}

function placeRow(
  facts: Facts,
  here: Family,
  there: Family,
): { row: FamilyRow; claim: string | undefined } | undefined {
  const name = (id: string) => facts.places.get(id)?.name ?? id;
  const mine = here.places;
  const its = there.places;
  const text = (all: Family['places']) => each(all.map(({ place }) => name(place)));
  const aRefs = [...new Set(mine.map(({ ref }) => ref))];
  const bRefs = [...new Set(its.map(({ ref }) => ref))];
  if (mine.length === 0 || its.length === 0) {
    const row = unsaid('place', text(mine), text(its), aRefs, bRefs);
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
      aRefs,
      bRefs,
      agreement: best.level,
      verdict: agrees ? 'agrees' : 'differs',
      weight: best.weight - choice,
      because: joined(
        best.because,
        choice > 0
          ? `the best of ${1 + others} places that differ, which takes off ${choice.toFixed(1)}`
          : '',
      ),
    },
    claim: agrees ? best.claim.place : undefined,
  };
}

function occupationField(here: Family, there: Family): Field | undefined {
  const mine = here.occupation;
  const its = there.occupation;
  const a = each(mine.map(({ text }) => text));
  const b = each(its.map(({ text }) => text));
  const aRefs = mine.map(({ ref }) => ref);
  const bRefs = its.map(({ ref }) => ref);
  if (a === '' || b === '') {
    const row = unsaid('occupation', a, b, aRefs, bRefs);
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
      aRefs,
      bRefs,
      agreement: level,
      verdict: agrees ? 'agrees' : 'differs',
      weight: agrees ? Math.max(0, weight) : weight,
      because: '',
    },
    ...(agrees
      ? {
          trait: {
            what: `the father a ${its[0]!.text}`,
            because: `of two fathers taken at hand ${Math.round(100 * reachOf(level))} in 100 have trades that agree so`,
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

function afterwardsRow(facts: Facts, subject: string, found: Found, shores: Shores): FamilyRow {
  const { level, text, refs, because } = afterwards(facts, subject, found, shores);
  const line = {
    field: 'afterwards' as const,
    a: shores.hereBy ? `here by ${isoDay(shores.hereBy.day)}` : '',
    b: text,
    aRefs: shores.hereBy ? [shores.hereBy.ref] : [],
    bRefs: refs,
    agreement: level,
    because,
  };
  if (level === 'missing') return { ...line, verdict: 'unsaid', weight: 0 };
  return {
    ...line,
    verdict: level === 'still there' ? 'differs' : 'agrees',
    weight: levelWeight(levelOf(familyFields.afterwards, level)),
  };
}
