import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bodiesOf, letter, relationOf } from '../../components/proof/bodies.ts';
import { boxOf, type Lettering } from '../../components/proof/lettering.ts';
import { sightLines } from '../../components/proof/sight-lines.ts';
import { tall, wide, type Sheet, type SheetNames } from '../../components/proof/sheet.ts';
import { english } from '../../src/interface/index.ts';
import { anyCase, type Shape } from './proof-fixture.ts';

const placeNames = [
  'Hove',
  'Knockmahon',
  'Ballymacarbry Upper and Lower',
  'Llanfairpwllgwyngyllgogerychwyrndrobwllllantysiliogogogoch',
  'Decies without Drum',
];
const titles = [
  'Letter',
  'Declaration of intention, Morris Whelan, 11 April 1871, in the circuit court',
  'MMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMM',
];
const named: SheetNames = {
  words: english.proof.sightLines,
  kind: (kind) => kind,
  item: (id: string) => ({
    key: id,
    title: titles[id.length % 3 === 0 ? Number(id.slice(1)) % 3 : 1]!,
    reading: Number(id.slice(1)) % 4 === 0 ? undefined : 'Kilmacthomas, Co. Waterford',
  }),
  place: (id: string) => placeNames[Number(id.slice(1)) % 5] ?? 'Elsewhere',
};

function sheets({ result, evidence }: Shape): { name: string; sheet: Sheet }[] {
  const fix = bodiesOf(result, evidence)!;
  return [wide, tall].map((composition) => ({
    name: composition === wide ? 'wide' : 'tall',
    sheet: sightLines(fix, named, composition),
  }));
}

describe('the bodies of evidence', () => {
  test('that reach the mark are as many as the independent items counted at the concluded place', () => {
    fc.assert(
      fc.property(anyCase(14), ({ result, evidence }) => {
        const fix = bodiesOf(result, evidence)!;
        expect(
          fix.bodies
            .filter((body) => body.reach === 0)
            .map((body) => body.item)
            .sort(),
        ).toEqual([...result.support[0]!.witnesses].sort());
        expect(fix.levels.map((level) => level.counted.length)).toEqual(
          result.support.map((level) => level.independent),
        );
      }),
    );
  });

  test('are headed by items that are independent of one another, and every item is found exactly once', () => {
    fc.assert(
      fc.property(anyCase(16), ({ result, evidence }) => {
        const fix = bodiesOf(result, evidence)!;
        const heads = fix.bodies.map((body) => body.item);
        for (const pair of result.pairs)
          if (heads.includes(pair.a) && heads.includes(pair.b)) expect(relationOf(pair)).toBe('independent');
        const all = [
          ...fix.bodies.flatMap((body) => [body.item, ...body.joined.map((j) => j.item)]),
          ...fix.misses.map((m) => m.item),
          ...fix.outside.map((o) => o.item),
        ];
        expect(all.sort()).toEqual(result.items.map((item) => item.id).sort());
      }),
    );
  });

  test('hold an item that depends on them before one that only may', () => {
    const fix = bodiesOf(
      ...caseOf({ a: 0, b: 0, c: 0 }, { 'a b': 'undetermined', 'a c': 'dependent', 'b c': 'independent' }),
    )!;
    expect(fix.bodies.map((body) => [body.item, body.joined])).toEqual([
      ['b', []],
      ['c', [{ item: 'a', reach: 0, levels: [0], relation: 'dependent', insteadAt: [] }]],
    ]);
  });

  test('do not exist where no place is named', () => {
    const [result, evidence] = caseOf({ a: 0 }, {});
    expect(bodiesOf({ ...result, place: null, support: [] }, evidence)).toBeNull();
  });

  test('are lettered A to Z, then AA', () => {
    expect([0, 25, 26, 27, 52].map(letter)).toEqual(['A', 'Z', 'AA', 'AB', 'BA']);
  });
});

describe('the sight-line drawing', () => {
  test('has as many solid lines at the mark as there are independent items', () => {
    fc.assert(
      fc.property(anyCase(14), (shape) => {
        for (const { sheet } of sheets(shape)) {
          const atMark = sheet.rays.filter((ray) => ray.kind === 'body' && ray.bar === null);
          expect(atMark).toHaveLength(shape.result.independent);
          for (const ray of atMark)
            expect(Math.hypot(ray.counted!.x - sheet.mark.x, ray.counted!.y - sheet.mark.y)).toBeLessThan(5);
        }
      }),
    );
  });

  test('stops every other line at its arc or lets it pass the mark by', () => {
    fc.assert(
      fc.property(anyCase(14), (shape) => {
        for (const { sheet } of sheets(shape)) {
          for (const ray of sheet.rays) {
            if (ray.kind === 'body' && ray.bar === null) continue;
            const end = ray.uncounted ?? ray.counted!;
            expect(Math.hypot(end.x - sheet.mark.x, end.y - sheet.mark.y)).toBeGreaterThan(
              sheet.mark.radius * 0.9,
            );
          }
          expect(sheet.ends.map((end) => [end.item, end.answered]).sort()).toEqual(
            shape.result.conflicts.map((c) => [c.evidence, c.answered]).sort(),
          );
        }
      }),
    );
  });

  test('holds only finite numbers, inside its view box', () => {
    fc.assert(
      fc.property(anyCase(24), (shape) => {
        for (const { sheet } of sheets(shape)) {
          const text = JSON.stringify(sheet);
          expect(text).not.toMatch(/NaN|Infinity|null,"y"|"x":null/);
          for (const station of sheet.stations) expect(station.y).toBeLessThan(sheet.height);
          for (const end of sheet.ends) expect(end.y).toBeLessThan(sheet.height);
        }
      }),
    );
  });

  test('letters nothing over anything else, and nothing past its edges, for up to 24 items', () => {
    fc.assert(
      fc.property(anyCase(24), (shape) => {
        for (const { name, sheet } of sheets(shape)) {
          for (const line of sheet.lettering) {
            const box = boxOf(line);
            expect(box.left, say(name, line)).toBeGreaterThanOrEqual(-0.5);
            expect(box.right, say(name, line)).toBeLessThanOrEqual(sheet.width + 0.5);
            expect(box.top, say(name, line)).toBeGreaterThanOrEqual(0);
            expect(box.bottom, say(name, line)).toBeLessThanOrEqual(sheet.height);
          }
          for (const [i, one] of sheet.lettering.entries())
            for (const other of sheet.lettering.slice(i + 1))
              expect(overlap(one, other), `${say(name, one)} and ${say(name, other)}`).toBe(false);
        }
      }),
      { numRuns: 150 },
    );
  });

  test('comes out the same twice', () => {
    fc.assert(
      fc.property(anyCase(10), (shape) => {
        expect(JSON.stringify(sheets(shape))).toBe(JSON.stringify(sheets(shape)));
      }),
    );
  });
});

function say(name: string, line: Lettering): string {
  return `${name}: “${line.lead ?? ''} ${line.text}” (${line.role}) at ${line.x}, ${line.y}`;
}

function overlap(a: Lettering, b: Lettering): boolean {
  const [one, other] = [boxOf(a), boxOf(b)];
  return (
    one.left < other.right - 0.5 &&
    other.left < one.right - 0.5 &&
    one.top < other.bottom - 0.5 &&
    other.top < one.bottom - 0.5
  );
}

/** A case at one level; the reach of an item is not varied here. */
function caseOf(
  items: Record<string, number>,
  relations: Record<string, 'independent' | 'undetermined' | 'dependent'>,
): [Shape['result'], Shape['evidence']] {
  const ids = Object.keys(items);
  const evidence = ids.map((id) => ({
    id,
    from: [`${id}#m1`],
    kind: 'direct',
    place: 'p0',
  })) as Shape['evidence'];
  const pairs = Object.entries(relations).map(([pair, relation]) => ({
    a: pair.split(' ')[0]!,
    b: pair.split(' ')[1]!,
    relation,
    reasons: [],
  }));
  const witnesses = ids.length > 1 ? ['b', 'c'] : ids;
  const [{ result }] = fc.sample(anyCase(0), 1) as [Shape];
  return [
    {
      ...result,
      independent: witnesses.length,
      support: [{ place: 'p0', kind: 'townland', independent: witnesses.length, evidence: ids, witnesses }],
      pairs,
      items: ids.map((id, index) => ({
        id,
        index,
        cited: true,
        counts: true,
        needsTie: false,
        tie: 'not-needed',
        tieReasons: [],
        roots: [],
        records: [id],
        exemplars: [id],
        mentions: [],
        onQuestion: true,
      })),
    },
    evidence,
  ];
}
