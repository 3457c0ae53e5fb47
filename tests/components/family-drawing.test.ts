import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  ascendingDrawing,
  broken,
  descendingDrawing,
  drawingWidth,
  mostDrawn,
  type FamilyDrawing,
  type Kinfolk,
  type Marriage,
} from '../../components/people/family-drawing.ts';
import { widthOf } from '../../components/proof/lettering.ts';
import { english } from '../../src/interface/index.ts';

const words = english.people.family;
const longName = 'Wilhelmina Philippa Featherstonehaugh Cholmondeley of Ballymacarbry Upper and Lower';

/** A family from lines: `ann: tom mary` is a child of Tom and Mary; `tom + mary` a marriage. */
function family(text: string, name = (id: string) => id): Kinfolk {
  const parents = new Map<string, string[]>();
  const married = new Map<string, string[]>();
  const put = (map: Map<string, string[]>, id: string, value: string) => {
    const all = map.get(id) ?? map.set(id, []).get(id)!;
    if (!all.includes(value)) all.push(value);
  };
  for (const line of text.split('\n').map((one) => one.trim())) {
    const [one, other] = line.split(' + ');
    if (other !== undefined) {
      put(married, one!, other);
      put(married, other, one!);
      continue;
    }
    const [child = '', above = ''] = line.split(':');
    for (const id of above.trim().split(' ')) if (id !== '') put(parents, child.trim(), id);
  }
  const children = (id: string) => [...parents].filter(([, all]) => all.includes(id)).map(([child]) => child);
  return {
    parents: (id) => parents.get(id) ?? [],
    marriages(id) {
      const all = new Map<string | undefined, Marriage>(
        (married.get(id) ?? []).map((spouse) => [
          spouse,
          { spouse, married: true, note: 'married 1866', children: [] },
        ]),
      );
      for (const child of children(id)) {
        const other = parents.get(child)!.find((one) => one !== id);
        const one = all.get(other) ?? { spouse: other, married: false, note: '', children: [] };
        all.set(other, { ...one, children: [...one.children, child] });
      }
      return [...all.values()];
    },
    label: (id) => ({ name: name(id), years: '1840–1903', placeholder: id.startsWith('x') }),
  };
}

const said = ({ rows }: FamilyDrawing) =>
  rows.map(
    ({ kind, generation, lines }) => `${generation} ${kind} ${lines.map(({ text }) => text).join(' | ')}`,
  );

/** What must hold of every drawing. */
function expectSound(drawing: FamilyDrawing, root: string): void {
  const { rows, width, height, strokes } = drawing;
  for (const [i, row] of rows.entries()) {
    const { left, top, right, bottom } = row.box;
    expect(left).toBeGreaterThanOrEqual(0);
    expect(top).toBeGreaterThanOrEqual(0);
    expect(right).toBeLessThanOrEqual(width);
    expect(bottom).toBeLessThanOrEqual(height);
    // Every row stands below the one before: no lettering lies on other lettering.
    if (i > 0) expect(top).toBeGreaterThan(rows[i - 1]!.box.bottom);
    for (const line of row.lines) {
      expect(line.size).toBeGreaterThanOrEqual(12);
      expect(line.x + widthOf(line.text, line.size)).toBeLessThanOrEqual(width);
      expect(line.y - line.size * 0.8).toBeGreaterThanOrEqual(top - 0.5);
      expect(line.y + line.size * 0.25).toBeLessThanOrEqual(bottom + 0.5);
    }
  }
  for (const { d } of strokes)
    for (const [, x, y] of d.matchAll(/M(-?[\d.]+) (-?[\d.]+)/g)) {
      expect(Number(x)).toBeGreaterThanOrEqual(0);
      expect(Number(x)).toBeLessThanOrEqual(width);
      expect(Number(y)).toBeGreaterThanOrEqual(0);
      expect(Number(y)).toBeLessThanOrEqual(height);
    }
  // Nobody has two stations, and whoever is referred to has one.
  const stations = rows
    .filter(({ kind }) => ['person', 'spouse', 'other-parent'].includes(kind))
    .map(({ person }) => person);
  expect(new Set(stations).size).toBe(stations.length);
  expect(rows.filter(({ isRoot }) => isRoot).map(({ person }) => person)).toEqual([root]);
  for (const { kind, person } of rows)
    if (kind === 'again' || kind === 'again-spouse') expect(stations).toContain(person);
  // The lists say whom the drawing shows.
  expect(
    drawing.generations.flatMap((all) => all.flatMap(({ person, beside }) => [person, ...beside])).sort(),
  ).toEqual([...stations].sort());
}

describe('forebears drawn', () => {
  test('a father stands above his child and a mother below', () => {
    const drawing = ascendingDrawing(
      family(`ann: tom mary
        tom: abel beth
        mary: carl dora`),
      'ann',
      words,
    );
    expect(drawing.rows.map(({ person, generation }) => `${generation} ${person}`)).toEqual([
      '2 abel',
      '1 tom',
      '2 beth',
      '0 ann',
      '2 carl',
      '1 mary',
      '2 dora',
    ]);
    expectSound(drawing, 'ann');
  });

  test('a line breaks off once for each parent not known', () => {
    const breaks = (text: string) =>
      ascendingDrawing(family(text), 'ann', words)
        .strokes.filter(({ kind }) => kind === 'broken')
        .map(({ d }) => d.match(/M/g)!.length)
        .reduce((sum, n) => sum + n, 0);
    expect(breaks('ann: tom')).toBe(3);
    expect(breaks('ann: tom mary')).toBe(4);
    expect(breaks('')).toBe(2);
  });

  test('in the fourth generation nothing is said to be missing, only that more are known', () => {
    const line = `a: b
      b: c
      c: d
      d: e
      e: f`;
    const drawing = ascendingDrawing(family(line), 'a', words);
    expect(drawing.rows.map(({ person }) => person)).toEqual(['e', 'd', 'c', 'b', 'a']);
    expect(drawing.strokes.filter(({ kind }) => kind === 'broken')).toHaveLength(4);
    expect([drawing.goesOn, drawing.left]).toEqual([true, 0]);
    expect(ascendingDrawing(family('a: b'), 'a', words).goesOn).toBe(false);
  });

  test('a couple from whom both parents descend is drawn once', () => {
    const drawing = ascendingDrawing(
      family(`ann: tom mary
        tom: abel beth
        mary: carl dora
        abel: old
        carl: old`),
      'ann',
      words,
    );
    expect(drawing.rows.filter(({ person }) => person === 'old').map(({ kind }) => kind)).toEqual([
      'person',
      'again',
    ]);
    expect(said(drawing)).toContain('3 again old | drawn above');
    expectSound(drawing, 'ann');
  });

  test('an ancestor met by a longer line first stands where the shorter line has them', () => {
    const drawing = ascendingDrawing(
      family(`ann: tom mary
        tom: abel
        abel: old
        mary: old
        old: older`),
      'ann',
      words,
    );
    expect(said(drawing)).toContain('3 again old | drawn below');
    expect(drawing.rows.find(({ kind, person }) => kind === 'person' && person === 'old')!.generation).toBe(
      2,
    );
    expect(drawing.rows.some(({ person }) => person === 'older')).toBe(true);
    expectSound(drawing, 'ann');
  });
});

describe('descendants drawn', () => {
  test('several marriages one after another, half brothers and sisters under their own', () => {
    const drawing = descendingDrawing(
      family(`tom + mary
        tom + kate
        ann: tom mary
        bob: tom kate
        cid: tom`),
      'tom',
      words,
    );
    expect(said(drawing)).toEqual([
      '0 person tom | 1840–1903',
      '0 spouse mary | married 1866',
      '1 person ann | 1840–1903',
      '0 spouse kate | married 1866',
      '1 person bob | 1840–1903',
      '0 no-parent other parent not known',
      '1 person cid | 1840–1903',
    ]);
    expectSound(drawing, 'tom');
  });

  test('cousins who married: each has a station, and their children stand by one of them', () => {
    const drawing = descendingDrawing(
      family(`one: tom
        two: tom
        ann: one
        bob: two
        ann + bob
        kid: ann bob`),
      'tom',
      words,
    );
    expect(said(drawing).slice(2)).toEqual([
      '2 person ann | 1840–1903',
      '2 again-spouse bob | drawn below',
      '3 person kid | 1840–1903',
      '1 person two | 1840–1903',
      '2 person bob | 1840–1903',
      '2 again-spouse ann | drawn above',
    ]);
    expectSound(drawing, 'tom');
  });

  test('twelve children are all drawn; of sixty descendants it is said how many are not', () => {
    const twelve = Array.from({ length: 12 }, (_, i) => `c${i}: tom`).join('\n');
    expect(descendingDrawing(family(twelve), 'tom', words).rows).toHaveLength(13);
    const sixty = `${twelve}\n${Array.from({ length: 48 }, (_, i) => `g${i}: c${Math.floor(i / 4)}`).join('\n')}`;
    const drawing = descendingDrawing(family(sixty), 'tom', words);
    const drawn = drawing.rows.filter(({ kind }) => kind === 'person').length;
    expect(drawn).toBe(mostDrawn);
    expect(drawing.left).toBe(61 - mostDrawn);
    // Where they are missing, the line breaks off and says how many.
    const missing = drawing.rows
      .filter(({ kind }) => kind === 'more')
      .map(({ lines }) => Number(/^\d+/.exec(lines[0]!.text)![0]));
    expect(missing.reduce((sum, n) => sum + n, 0)).toBe(drawing.left);
    expectSound(drawing, 'tom');
  });

  test('the fourth generation says that the family goes on', () => {
    const drawing = descendingDrawing(
      family(`b: a
        c: b
        d: c
        e: d
        f: e
        g: e`),
      'a',
      words,
    );
    expect(said(drawing).at(-1)).toBe('5 more 2 children');
    expect(drawing.goesOn).toBe(true);
    expectSound(drawing, 'a');
  });
});

const anyFamily = fc.integer({ min: 1, max: 70 }).chain((size) =>
  fc.record({
    parents: fc.array(fc.uniqueArray(fc.nat({ max: size - 1 }), { maxLength: 3 }), {
      minLength: size,
      maxLength: size,
    }),
    spouses: fc.array(fc.tuple(fc.nat({ max: size - 1 }), fc.nat({ max: size - 1 })), { maxLength: 12 }),
    names: fc.array(
      fc.constantFrom('Ann', 'Johannes Johannesen Hove', longName, 'M'.repeat(60), '— Phelan'),
      { minLength: size, maxLength: size },
    ),
    root: fc.nat({ max: size - 1 }),
  }),
);

describe('any family at all, people who are their own ancestors included', () => {
  test.each([
    ['ascending', ascendingDrawing],
    ['descending', descendingDrawing],
  ] as const)('%s: nothing overlaps, everything is inside, everybody stands once', (_, draw) => {
    fc.assert(
      fc.property(anyFamily, ({ parents, spouses, names, root }) => {
        const text = [
          ...parents.map(
            (all, i) =>
              `p${i}: ${all
                .filter((one) => one !== i)
                .map((one) => `p${one}`)
                .join(' ')}`,
          ),
          ...spouses.filter(([a, b]) => a !== b).map(([a, b]) => `p${a} + p${b}`),
        ].join('\n');
        const kinfolk = family(text, (id) => names[Number(id.slice(1))]!);
        const drawing = draw(kinfolk, `p${root}`, words);
        expectSound(drawing, `p${root}`);
        expect(drawing.rows.filter(({ kind }) => kind === 'person').length).toBeLessThanOrEqual(mostDrawn);
      }),
      { numRuns: 150 },
    );
  });

  test('a drawing of very many looks at each of them a bounded number of times', () => {
    const asked = (children: number) => {
      let count = 0;
      const kinfolk: Kinfolk = {
        parents: () => [],
        marriages(id) {
          count += 1;
          const all = id === 'root' ? Array.from({ length: children }, (_, i) => `c${i}`) : [];
          return [{ spouse: undefined, married: false, note: '', children: all }];
        },
        label: (id) => ({ name: id, years: '', placeholder: false }),
      };
      descendingDrawing(kinfolk, 'root', words);
      return count;
    };
    expect(asked(4000)).toBeLessThan(asked(1000) * 4.5);
  });
});

describe('lettering', () => {
  test('is broken at spaces, and within a word that is wider than the line: nothing is lost', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 80 }), fc.integer({ min: 40, max: 300 }), (text, room) => {
        const plain = text.replace(/\s+/g, ' ').trim();
        const lines = broken(plain, 15, room);
        expect(lines.join('').replace(/ /g, '')).toBe(plain.replace(/ /g, ''));
        for (const line of lines)
          expect(widthOf(line, 15) <= room + 0.001 || [...line].length === 1).toBe(true);
      }),
    );
  });

  test('the drawing is narrower than a phone', () => {
    expect(drawingWidth).toBeLessThanOrEqual(330);
  });
});
