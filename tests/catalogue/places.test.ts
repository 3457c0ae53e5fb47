import { describe, expect, test } from 'vitest';
import { builtInPlaces } from '../../src/catalogue/places/index.ts';

const byId = new Map(builtInPlaces.map((place) => [place.id, place]));

/** A place and everything it lies in. */
function chain(id: string): string[] {
  const seen = new Set<string>();
  const waiting = [id];
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    if (seen.has(next)) continue;
    seen.add(next);
    waiting.push(...(byId.get(next)?.within ?? []).map((above) => above.place));
  }
  return [...seen];
}

describe('the built-in places', () => {
  test('ids are unique', () => {
    expect(byId.size).toBe(builtInPlaces.length);
  });

  test('ids are lower-case words joined by hyphens', () => {
    expect(builtInPlaces.filter(({ id }) => !/^[a-z]+(-[a-z]+)*$/.test(id)).map(({ id }) => id)).toEqual([]);
  });

  test('every place it lies in or overlaps is built in too', () => {
    const dangling = builtInPlaces.flatMap(({ id, within, overlaps }) =>
      [...within.map((above) => above.place), ...overlaps]
        .filter((other) => !byId.has(other))
        .map((other) => `${id}: ${other}`),
    );
    expect(dangling).toEqual([]);
  });

  test('nothing lies in itself, by any way round', () => {
    const circular = builtInPlaces.filter(({ id, within }) =>
      within.some((above) => chain(above.place).includes(id)),
    );
    expect(circular).toEqual([]);
  });

  test('each is a country or lies in exactly one; only the United Kingdom holds several', () => {
    const odd = builtInPlaces
      .map(({ id }) => [id, chain(id).filter((above) => byId.get(above)?.kind === 'country').length])
      .filter(([, count]) => count !== 1);
    expect(odd).toEqual([['united-kingdom', 0]]);
  });

  test("Ireland's country is Ireland, north and south", () => {
    const counties = builtInPlaces.filter(({ id }) => id.startsWith('co-'));
    expect(counties).toHaveLength(32);
    for (const { id, kind } of counties) {
      expect(kind).toBe('county');
      expect(chain(id)).toContain('ireland');
      expect(chain(id)).not.toContain('united-kingdom');
    }
  });

  test('fifty states, the district and five territories lie in the United States', () => {
    const kinds = builtInPlaces
      .filter(({ within }) => within.some((above) => above.place === 'united-states'))
      .map(({ kind }) => kind);
    const count = (kind: string): number => kinds.filter((one) => one === kind).length;
    expect([count('state'), count('district'), count('territory')]).toEqual([50, 1, 5]);
  });

  test('Georgia the state and Georgia the country are two', () => {
    expect(chain('georgia')).toContain('united-states');
    expect(byId.get('georgia-country')?.kind).toBe('country');
  });

  /* Common practice: the names under which records hide these places. */
  test.each([
    ["King's County", 'co-offaly'],
    ["Queen's County", 'co-laois'],
    ['Derry', 'co-londonderry'],
    ['Irish Free State', 'ireland'],
    ['Éire', 'ireland'],
    ['Norge', 'norway'],
    ['Great Britain', 'united-kingdom'],
    ['Upper Canada', 'ontario'],
    ['Canada West', 'ontario'],
    ['Lower Canada', 'quebec'],
    ['Michigan Territory', 'michigan'],
    ['Salop', 'shropshire'],
    ['Forfarshire', 'angus'],
    ["Van Diemen's Land", 'tasmania'],
    ['Holland', 'netherlands'],
  ])('%s is a name of %s', (name, id) => {
    expect(byId.get(id)?.variants).toContain(name);
  });

  test('no variant repeats the name or another variant', () => {
    const repeated = builtInPlaces.filter(
      ({ name, variants }) => new Set([name, ...variants]).size !== variants.length + 1,
    );
    expect(repeated.map(({ id }) => id)).toEqual([]);
  });

  test('names and variants are trimmed, composed text', () => {
    const rough = builtInPlaces.filter(({ name, variants }) =>
      [name, ...variants].some((text) => text !== text.trim().normalize('NFC') || text === ''),
    );
    expect(rough.map(({ id }) => id)).toEqual([]);
  });

  test('every row names its source', () => {
    expect(builtInPlaces.filter(({ source }) => source.trim() === '')).toEqual([]);
  });
});
