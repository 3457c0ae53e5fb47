/*
 * Who is presumed living. The cut-off of 110 years is the trade’s usual one where nothing is known, 16 years are what
 * British archives assume for an adult of unknown age; both common practice, from memory. The other years are our
 * choice on the side of the living (a mother at 60, a father at 80, a parent at 13).
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dayNumber } from '../../src/model/days.ts';
import { mentionAt, type Facts } from '../../src/model/facts.ts';
import { personFile } from '../../src/model/person.ts';
import { recordFile } from '../../src/model/record.ts';
import { siteFile } from '../../src/model/site.ts';
import { livingMentions, livingPeople, presumptionOf } from '../../src/reasoning/living.ts';

type Written = Record<string, unknown>;
interface Content {
  people: Record<string, Written>;
  records?: Record<string, Written>;
  site?: Written;
}

function factsOf({ people, records = {}, site = {} }: Content): Facts {
  return {
    site: siteFile.parse(site),
    cases: new Map(),
    records: new Map(
      Object.entries(records).map(([id, record]) => [
        id,
        { ...recordFile.parse({ title: id, form: 'original', ...record }), id, body: '' },
      ]),
    ),
    people: new Map(
      Object.entries(people).map(([id, person]) => [
        id,
        { ...personFile.parse({ name: `Person ${id}`, ...person }), id, body: '' },
      ]),
    ),
    places: new Map(),
    series: new Map(),
    searches: new Map(),
    reviews: [],
    replies: [],
    nameCounts: [],
  };
}

const day = (iso: string) => dayNumber(...(iso.split('-').map(Number) as [number, number, number]));
const today = '2026-06-01';
const living = (content: Content, who = 'x', on = today) => presumptionOf(factsOf(content), who, day(on));
const record = (made: string | undefined, ...mentions: Written[]) => ({
  ...(made === undefined ? {} : { made }),
  mentions: mentions.map((mention, i) => ({ id: `m${i + 1}`, name: 'X', ...mention })),
});

describe('the person’s own entry', () => {
  test.each<[string, Written, boolean]>([
    ['nothing is known', {}, true],
    ['born in a year whose last day is not yet 110 years ago', { born: { date: 1916 } }, true],
    ['born in the year before', { born: { date: 1915 } }, false],
    ['born 110 years ago to the day', { born: { date: '1916-06-01' } }, true],
    ['born a day before that', { born: { date: '1916-05-31' } }, false],
    ['born on a leap day', { born: { date: '1916-02-29' } }, false],
    ['born about 1915: five years are added', { born: { date: '1915~' } }, true],
    ['born about 1910', { born: { date: '1910~' } }, false],
    ['born before some day, or after', { born: { date: '1900/..' } }, true],
    [
      'born in 1985, and married in 1900: one of them is wrong',
      { born: { date: 1985 }, spouses: [{ person: 'y', married: 1900 }] },
      true,
    ],
    ['born in 1850, but living, the author says', { born: { date: 1850 }, living: true }, true],
    ['dead, the author says', { living: false }, false],
    ['died', { died: { date: 2001 } }, false],
    ['died in 2001 or after, which may be not yet', { died: { date: '2001/..' } }, true],
    ['died in 1880 or after, and so born by then', { died: { date: '1880/..' } }, false],
    ['died, nobody knows when, by 1850', { died: { date: '../1850' } }, false],
    ['died at a time that is open', { died: { date: '..' } }, true],
    ['died somewhere', { died: { place: 'hancock' } }, false],
    ['a death that nobody can know of yet', { died: { date: '2031-01-01' } }, true],
    ['married in 1085, which is mistyped', { spouses: [{ person: 'y', married: 1085 }] }, true],
    ['married in 1931: born by 1915', { spouses: [{ person: 'y', married: 1931 }] }, false],
    ['married in 1933: born by 1917', { spouses: [{ person: 'y', married: 1933 }] }, true],
  ])('%s', (_, person, expected) => expect(living({ people: { x: person, y: {} } }).living).toBe(expected));

  test('the last day on which they count as living is told', () => {
    const { until, because } = living({ people: { x: { born: { date: 1916 } } } });
    expect(until).toBe(day('2026-12-31'));
    expect(because).toMatchObject({ kind: 'born-by', bound: { day: day('1916-12-31') } });
    expect(living({ people: { x: { born: { date: 1916 } } } }, 'x', '2026-12-31').living).toBe(true);
    expect(living({ people: { x: { born: { date: 1916 } } } }, 'x', '2027-01-01').living).toBe(false);
  });

  test('other years than 110 move it', () => {
    const at = (livingYears: number) =>
      living({ people: { x: { born: { date: 1920 } } }, site: { livingYears } }).living;
    expect([at(100), at(105), at(106), at(120)]).toEqual([false, false, true, true]);
  });
});

describe('what records say', () => {
  const own = (...refs: string[]) => ({ x: { mentions: refs }, y: {} });
  test.each<[string, Record<string, Written>, boolean]>([
    ['named in 1915', { r: record('1915-12-31', {}) }, false],
    ['named in 1916, perhaps as an infant', { r: record('1916-12-31', {}) }, true],
    ['named without a date', { r: record(undefined, {}) }, true],
    [
      'named in what was published in 1910',
      { r: { ...record(undefined, {}), cite: { type: 'book', issued: 1910 } } },
      false,
    ],
    [
      'copied in 1990 from what said so in 1890',
      { r: record('1990', { event: { kind: 'baptism', date: 1890 } }) },
      false,
    ],
    ['20 years old in 1936, with two for wobbling', { r: record('1936-01-01', { age: 20 }) }, true],
    ['23 years old in 1936', { r: record('1936-01-01', { age: 23 }) }, false],
    ['an age without a date', { r: record(undefined, { age: 90 }) }, true],
    ['said in 1960 to have been born in 1910', { r: record('1960', { born: 1910 }) }, false],
    ['arrived in 1912', { r: record(undefined, { immigrated: 1912 }) }, false],
    ['head of a household in 1931', { r: record('1931', { role: 'head' }) }, false],
    ['a child of the house in 1931', { r: record('1931', { role: 'child' }) }, true],
    [
      'groom in 1931',
      { r: record('1931', { role: 'groom', event: { kind: 'marriage', date: 1931 } }) },
      false,
    ],
    ['arrived about 1915: five years are added', { r: record(undefined, { immigrated: '1915~' }) }, true],
    ['baptised about 1915', { r: record(undefined, { event: { kind: 'baptism', date: '1915~' } }) }, true],
    [
      'a bride of about 1930',
      { r: record(undefined, { role: 'bride', event: { kind: 'marriage', date: '1930~' } }) },
      true,
    ],
    [
      'a birth of 1951 on a leaf of a Bible printed in 1866',
      {
        r: {
          ...record('1866/1955', { event: { kind: 'birth', date: '1951-03-14' } }),
          cite: { type: 'book', issued: 1866 },
        },
      },
      true,
    ],
    [
      'who copied in 2015 what was made in 1871',
      {
        r: {
          ...record('2015', { role: 'transcriber' }),
          form: 'derivative',
          derivedFrom: [{ unseen: 'the register' }],
          cite: { type: 'document', issued: 1871 },
        },
      },
      true,
    ],
    [
      'whom the copy of 2015 names from 1871',
      {
        r: {
          ...record('2015', {}),
          form: 'derivative',
          derivedFrom: [{ unseen: 'the register' }],
          cite: { type: 'document', issued: 1871 },
        },
      },
      false,
    ],
    [
      'on a gravestone that waits for the second of two',
      { r: record('2001', { role: 'wife', event: { kind: 'death', date: '..' } }) },
      true,
    ],
    [
      'the informant of a death of 2001',
      { r: record('2001', { role: 'informant', event: { kind: 'death', date: 2001 } }) },
      true,
    ],
    ['aged 25 in 1995, arrived in 1895', { r: record('1995', { age: 25, immigrated: 1895 }) }, true],
    ['buried in 1990', { r: record('1990', { event: { kind: 'burial', date: 1990 } }) }, false],
    ['called deceased in 1990', { r: record('1990', { role: 'deceased' }) }, false],
    [
      'an heir in a probate of 1990',
      { r: record('1990', { role: 'heir', event: { kind: 'probate', date: 1990 } }) },
      true,
    ],
    [
      'somebody in a probate of 1990',
      { r: record('1990', { event: { kind: 'probate', date: 1990 } }) },
      true,
    ],
    [
      'the testator in it',
      { r: record('1990', { role: 'testator', event: { kind: 'probate', date: 1990 } }) },
      false,
    ],
    [
      'a parent in 1927, 13 at least',
      { r: record('1927', { relations: [{ as: 'mother', of: 'm2' }] }, {}) },
      false,
    ],
    [
      'whose child somebody is in 1927',
      { r: record('1927', {}, { relations: [{ as: 'child', of: 'm1' }] }) },
      false,
    ],
    ['a spouse in 1931', { r: record('1931', {}, { relations: [{ as: 'wife', of: 'm1' }] }) }, false],
    ['a sister in 1931', { r: record('1931', { relations: [{ as: 'sibling', of: 'm2' }] }, {}) }, true],
  ])('%s', (_, records, expected) => expect(living({ people: own('r#m1'), records }).living).toBe(expected));

  test('who wrote a letter in 2019 did not marry in 1874, whatever the entry says', () => {
    const content = {
      people: { x: { mentions: ['r#m1'], spouses: [{ person: 'y', married: 1874 }] }, y: {} },
      records: { r: record('2019-05-01', { role: 'writer' }) },
    };
    const { living: alive, because } = living(content);
    expect([alive, because.kind]).toEqual([true, 'recent']);
    expect(because).toMatchObject({
      bound: { fact: { ref: 'r#m1' } },
      against: { fact: { kind: 'married' } },
    });
  });

  test('a mention of nobody’s is judged by itself', () => {
    const facts = factsOf({
      people: {},
      records: {
        old: record('1880', { age: '2m' }),
        late: record(
          '2019',
          {},
          { role: 'deceased' },
          { age: 97 },
          { relations: [{ as: 'parent', of: 'm5' }] },
          { born: 1890 },
        ),
        undated: record(undefined, {}),
      },
    });
    // Born by 1890, their parent by 1877; 97 years before 2019 and two for wobbling are 1924.
    expect([...livingMentions(facts, day(today))].sort()).toEqual(['late#m1', 'late#m3', 'undated#m1']);
  });
});

describe('relatives, both ways', () => {
  test.each<[string, Record<string, Written>, boolean]>([
    ['a child born in 1928: 13 at least', { x: {}, c: { parents: ['x'], born: { date: 1928 } } }, false],
    ['a child born in 1930', { x: {}, c: { parents: ['x'], born: { date: 1930 } } }, true],
    [
      'a mother born in 1855: at most 60',
      { x: { parents: ['p'] }, p: { sex: 'F', born: { date: 1855 } } },
      false,
    ],
    [
      'a father born in 1855: at most 80',
      { x: { parents: ['p'] }, p: { sex: 'M', born: { date: 1855 } } },
      true,
    ],
    ['a parent born in 1855', { x: { parents: ['p'] }, p: { born: { date: 1855 } } }, true],
    ['a father who died in 1914', { x: { parents: ['p'] }, p: { died: { date: 1914 } } }, false],
    ['a spouse born in 1820', { x: { spouses: ['s'] }, s: { born: { date: 1820 } } }, false],
    ['a spouse born in 1823', { x: { spouses: ['s'] }, s: { born: { date: 1823 } } }, true],
    ['of whom one is the spouse', { x: {}, s: { spouses: ['x'], born: { date: 1820 } } }, false],
    ['a spouse who died in 1931', { x: { spouses: ['s'] }, s: { died: { date: 1931 } } }, false],
    [
      'a grandchild born in 1915',
      { x: {}, c: { parents: ['x'] }, g: { parents: ['c'], born: { date: 1915 } } },
      false,
    ],
    [
      'a sibling by one mother, born in 1850',
      { x: { parents: ['p'] }, p: { sex: 'F' }, s: { parents: ['p'], born: { date: 1850 } } },
      false,
    ],
  ])('%s', (_, people, expected) => expect(living({ people }).living).toBe(expected));

  test('the way to the fact is told', () => {
    const { because } = living({ people: { x: {}, c: { parents: ['x'], born: { date: 1928 } } } });
    expect(because).toMatchObject({
      kind: 'born-by',
      bound: {
        fact: { kind: 'parent-of' },
        via: { who: 'c', bound: { fact: { kind: 'born', date: '1928' } } },
      },
    });
  });

  test('parents in a circle, which is an error, make nobody older than they are', () => {
    const people = { x: { parents: ['y'] }, y: { parents: ['x'], born: { date: 1990 } } };
    expect([living({ people }).living, living({ people }, 'y').living]).toEqual([true, true]);
  });
});

describe('on random families', () => {
  const ids = ['a', 'b', 'c', 'd', 'e'];
  const year = fc.integer({ min: 1780, max: 2026 }).map(String);
  const date = fc.oneof(
    year,
    year.map((y) => `${y}-05-17`),
    year.map((y) => `${y}~`),
    year.map((y) => `../${y}`),
  );
  const some = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: undefined, freq: 2 });
  const mention = fc.record(
    {
      role: fc.constantFrom('head', 'child', 'deceased', 'testator', 'heir'),
      age: fc.integer({ min: 0, max: 99 }),
      born: date,
      immigrated: date,
      event: fc.record(
        { kind: fc.constantFrom('death', 'burial', 'probate', 'birth', 'marriage'), date },
        { requiredKeys: ['kind'] },
      ),
      relations: fc.array(
        fc.record({
          as: fc.constantFrom('parent', 'child', 'spouse', 'sibling'),
          of: fc.constantFrom('m1', 'm2', 'm3'),
        }),
        { maxLength: 2 },
      ),
    },
    { requiredKeys: [] },
  );
  const families: fc.Arbitrary<Content> = fc
    .tuple(
      fc.array(
        fc.record({
          sex: some(fc.constantFrom('M', 'F')),
          parents: fc.subarray(ids, { maxLength: 2 }),
          spouses: fc.array(
            fc.record({ person: fc.constantFrom(...ids), married: date }, { requiredKeys: ['person'] }),
            { maxLength: 1 },
          ),
          born: some(fc.record({ date })),
          died: some(fc.record({ date: year })),
          mentions: fc.subarray(['m1', 'm2', 'm3'], { maxLength: 2 }),
        }),
        { minLength: 5, maxLength: 5 },
      ),
      fc.array(fc.tuple(some(date), fc.array(mention, { minLength: 3, maxLength: 3 })), {
        minLength: 5,
        maxLength: 5,
      }),
    )
    .map(([people, records]) => ({
      people: Object.fromEntries(
        // Each person has mentions in a record of their own, so that none belongs to two.
        people.map(({ mentions, ...person }, i) => [
          ids[i]!,
          { ...person, mentions: mentions.map((m) => `r${i}#${m}`) },
        ]),
      ),
      records: Object.fromEntries(records.map(([made, mentions], i) => [`r${i}`, record(made, ...mentions)])),
    }));

  /** Every way to say one thing less. */
  function lesser(content: Content): Content[] {
    const ways: Content[] = [];
    const kept = new Set(['id', 'name', 'as', 'of', 'kind', 'person']);
    const visit = (value: unknown, rebuild: (value: unknown) => Content): void => {
      if (Array.isArray(value))
        value.forEach((item, i) => {
          // A mention stays, with less in it: others refer to it.
          if (!(typeof item === 'object' && item !== null && 'id' in item))
            ways.push(rebuild(value.toSpliced(i, 1)));
          visit(item, (next) => rebuild(value.with(i, next)));
        });
      else if (value !== null && typeof value === 'object')
        for (const [key, item] of Object.entries(value)) {
          if (item === undefined || kept.has(key)) continue;
          const { [key]: _gone, ...rest } = value as Written;
          ways.push(rebuild(rest));
          visit(item, (next) => rebuild({ ...value, [key]: next }));
        }
    };
    for (const part of ['people', 'records'] as const)
      for (const [id, entry] of Object.entries(content[part]!))
        visit(entry, (next) => ({ ...content, [part]: { ...content[part], [id]: next as Written } }));
    return ways;
  }

  const alive = (content: Content, on: number) => {
    const facts = factsOf(content);
    return [...livingPeople(facts, on), ...livingMentions(facts, on)].sort();
  };

  test('saying less makes nobody count as dead', () => {
    fc.assert(
      fc.property(families, fc.nat({ max: 5 }), (content, which) => {
        const before = alive(content, day(today));
        const all = factsOf(content);
        // A sign of our own time overrules what other dates would have, while it is there.
        const contested = (who: string) => presumptionOf(all, who, day(today)).because.kind === 'recent';
        // Whose part in a record of a death is not said may be the dead one.
        const partsOnly = (who: string, less: Content) => {
          const refs = who.includes('#') ? [who] : ((content.people[who]!['mentions'] as string[]) ?? []);
          return refs.some((ref) => {
            const [record = '', id = ''] = ref.split('#');
            const role = (from: Content) =>
              (from.records![record]!['mentions'] as Written[]).find((mention) => mention['id'] === id)?.[
                'role'
              ];
            return role(content) !== role(less);
          });
        };
        // Every sixth way, which ones is chance’s.
        for (const less of lesser(content).filter((_, i) => i % 6 === which)) {
          const facts = factsOf(less);
          const after = new Set(alive(less, day(today)));
          for (const who of before)
            if ((facts.people.has(who) || mentionAt(facts, who)) && !contested(who) && !partsOnly(who, less))
              expect([who, after.has(who)]).toEqual([who, true]);
        }
      }),
      { seed: 15, numRuns: 80 },
    );
  });

  test('a year later nobody is living who was not before', () => {
    fc.assert(
      fc.property(families, fc.integer({ min: 0, max: 130 }), (content, years) => {
        const on = dayNumber(1950 + years, 6, 1);
        const before = new Set(alive(content, on));
        // Deaths that lie ahead come true as the years go by, and none is undone.
        expect(alive(content, on + 366).filter((who) => !before.has(who))).toEqual([]);
      }),
      { seed: 15, numRuns: 300 },
    );
  });
});
