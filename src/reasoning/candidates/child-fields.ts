/** The child who would be the emigrant, and the order of the children, as lines of the ledger. */
import { childrenOfAMarriage, familyFields } from '../../catalogue/families.ts';
import { identityFields } from '../../catalogue/identity.ts';
import { civil, isoDay } from '../../model/days.ts';
import { gapLevel, yearsApart } from '../identity/agreement.ts';
import { levelWeight } from '../identity/weight.ts';
import { childByChance, childrenTrait, type ChildSought, type Trait } from './by-chance.ts';
import {
  bestGiven,
  familyRarity,
  orderOf,
  reachOfLevel,
  reasons,
  yearsWithin,
  type Matched,
} from './children.ts';
import { fullest } from './family.ts';
import { each, levelOf, namesSaid, saidOnce, unsaid, type GivenShare } from './rows.ts';
import type { Family, FamilyRow, Naming, Relative } from './types.ts';

const givenOf = ({ given }: Naming) => given;

/** The child's name and birth, and what of families have such a child. */
export function childRows(
  here: Family,
  there: Family,
  given: GivenShare,
): { rows: FamilyRow[]; traits: Trait[] } {
  const mine = here.child;
  const its = there.child;
  if (!mine) return { rows: [], traits: [] };
  const text = (names: readonly Naming[]) => each(names.map((name) => name.given));
  const sex = mine.sex ?? its?.sex;
  const name = its && bestGiven(mine.names, its.names);
  const a = text(mine.names);
  const b = its ? text(its.names) : '';
  const aFrom = namesSaid(mine.names, givenOf);
  const bFrom = its ? namesSaid(its.names, givenOf) : [];
  if (!its || b === '' || a === '') {
    const row = unsaid('given', a, b, aFrom, bFrom, {
      key: 'one-does-not-name-the-child',
    });
    return { rows: row ? [row] : [], traits: [] };
  }
  if (!name)
    return {
      rows: [
        {
          field: 'given',
          a,
          b,
          aFrom,
          bFrom,
          agreement: 'different',
          verdict: 'differs',
          weight: levelWeight(levelOf(identityFields.given, 'different')),
          because: [],
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
      aFrom,
      bFrom,
      agreement: name.level,
      verdict: 'agrees',
      weight: Math.max(
        0,
        levelWeight(levelOf(identityFields.given, name.level)) + familyRarity('given', name.level, u),
      ),
      because: [
        ...reasons(name.why),
        ...share.because,
        { key: 'any-child-may-have-it', children: childrenOfAMarriage.children },
      ],
    },
  ];
  const sought: ChildSought = { name: share, sex, also };
  const birth = birthRow(mine, its);
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
        {
          key: 'child',
          name: name.b.given,
          born:
            sought.years === undefined ? 'any-time' : day?.agreement === 'same' ? 'that-day' : 'about-then',
        },
        [sought],
        1,
      ),
    ],
  };
}

type Birth = NonNullable<Family['child']>['birth'];

function birthRow(
  { birth: a, births: here }: Relative,
  { birth: b, births: there }: Relative,
): { row: FamilyRow; years?: number } | undefined {
  const text = (birth: Birth) => (birth ? spanText(birth.first, birth.last) : '');
  const said = (all: Relative['births']) => saidOnce(all.map((one) => ({ text: text(one), ref: one.ref })));
  const [aFrom, bFrom] = [said(here), said(there)];
  if (!a || !b) {
    const row = unsaid('birth', text(a), text(b), aFrom, bFrom);
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
      aFrom,
      bFrom,
      agreement: level,
      verdict: agrees ? 'agrees' : 'differs',
      weight: agrees ? Math.max(0, weight) : Math.min(0, weight),
      because: apart === 0 ? [] : [{ key: 'years-apart', years: apart }],
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
    aFrom: saidOnce(here.map(({ day, ref }) => ({ text: isoDay(day).slice(5), ref }))),
    bFrom: saidOnce(there.map(({ day, ref }) => ({ text: isoDay(day).slice(5), ref }))),
    agreement: level,
    verdict: level === 'same' ? 'agrees' : 'differs',
    weight: weight > 0 ? Math.max(0, weight - Math.log2(values)) : weight,
    because: level === 'close' ? [{ key: 'day-or-month-the-same' }] : [],
  };
}

/** What of families have as many of the children known here. */
export function siblingsTrait(matched: readonly Matched[], here: Family, given: GivenShare): Trait {
  // Whoever is not matched was another chance to agree; what counts is that so many of all were.
  const all = matched.flatMap((one, i): ChildSought[] => {
    if (one.sought) return [one.sought];
    const child = here.siblings[i]!;
    const name = child.names.find((naming) => naming.given !== '');
    return name ? [{ name: given(name.given, child.sex), sex: child.sex, years: 11 }] : [];
  });
  const k = matched.filter((one) => one.sought).length;
  const names = matched.flatMap((one) => (one.pair ? [fullest(one.pair[0].names)?.given ?? ''] : []));
  return childrenTrait({ key: 'children', names, found: k, of: all.length }, all, k);
}

/** Whether the children were born in the same order. */
export function orderRow(here: Family, there: Family, matched: readonly Matched[]): FamilyRow | undefined {
  const pairs = matched.flatMap((one) => (one.pair ? [one.pair] : []));
  if (here.child && there.child) pairs.push([here.child, there.child]);
  const { same, pairs: all, byAge } = orderOf(pairs);
  if (all === 0) return undefined;
  const level = same === all ? 'same order' : same * 2 > all ? 'mostly so' : 'another order';
  const weight = levelWeight(levelOf(familyFields.order, level));
  return {
    field: 'order',
    a: '',
    b: '',
    order: { same, pairs: all },
    aFrom: [],
    bFrom: [],
    agreement: level,
    verdict: level === 'same order' ? 'agrees' : 'differs',
    weight:
      byAge && level === 'same order'
        ? 0
        : level === 'same order'
          ? Math.max(0, weight)
          : Math.min(0, weight),
    because: byAge && level === 'same order' ? [{ key: 'order-follows-from-ages' }] : [],
  };
}
