/**
 * Elements of Irish place names and their English spellings, as P. W. Joyce gives them in The Origin and History of
 * Irish Names of Places (1869–1913); the pairs below are *from memory* of that book and of the maps.
 */
import { expect, test } from 'vitest';
import { elementSets } from '../../src/catalogue/place-names/index.ts';
import { gazetteerOf } from '../../src/reasoning/places/gazetteer.ts';
import { resolveReading } from '../../src/reasoning/places/resolve.ts';
import { placeOf, places } from '../reasoning/places/island.ts';

// prettier-ignore
const pairs: [string, string][] = [
  ['Ballymote', 'Baile Mote'], ['Kilbride', 'Cill Bhride'], ['Knockbrack', 'Cnoc Breac'], ['Dunmore', 'Dún Mór'],
  ['Lismore', 'Lios Mór'], ['Rathmore', 'Ráth Mór'], ['Gortmore', 'Gort Mór'], ['Clonmore', 'Cluain Mór'],
  ['Tobermore', 'Tobar Mór'], ['Carrickbeg', 'Carraig Bheag'], ['Drumbeg', 'Droim Beag'], ['Inishmore', 'Inis Mór'],
  ['Letterbeg', 'Leitir Beag'], ['Maghera', 'Machaire'], ['Mullaghmore', 'Mullach Mór'], ['Carrowbeg', 'Ceathrú Bheag'],
  ['Derrybeg', 'Doire Beag'], ['Glenmore', 'Gleann Mór'], ['Tullybeg', 'Tulach Beag'], ['Clonduff', 'Cluain Dubh'],
  ['Knockroe', 'Cnoc Rua'], ['Ardmore', 'Aird Mhór'], ['Cloghbrack', 'Cloch Breac'], ['Bunbeg', 'Bun Beag'],
];
const gazetteer = gazetteerOf([
  ...places,
  ...pairs.map(([english]) => placeOf(english.toLowerCase(), english, 'townland', ['co-galway'])),
]);

test.each(pairs)('%s is found by %s', (english, irish) => {
  const { outcome, candidates } = resolveReading(gazetteer, `${irish}, Co. Galway`);
  expect([outcome, candidates[0]?.name]).toEqual(['clear', english]);
});

// prettier-ignore
test.each([
  ['Balimote', 'Ballymote'], ['Kylbride', 'Kilbride'], ['Nockbrack', 'Knockbrack'], ['Crockroe', 'Knockroe'], ['Doonmore', 'Dunmore'],
  ['Downmore', 'Dunmore'], ['Clonemore', 'Clonmore'], ['Tubbermore', 'Tobermore'], ['Carrigbeg', 'Carrickbeg'], ['Drombeg', 'Drumbeg'],
  ['Ennismore', 'Inishmore'], ['Carhoobeg', 'Carrowbeg'], ['Glanmore', 'Glenmore'], ['Tullaghbeg', 'Tullybeg'], ['Rawmore', 'Rathmore'],
])('%s is %s, by the English spellings of one element', (said, name) => {
  expect(resolveReading(gazetteer, `${said}, Galway`).candidates[0]?.name).toBe(name);
});

test('every element has a source, several spellings, and no spelling twice', () => {
  for (const { source, elements } of elementSets) {
    expect(source).not.toBe('');
    for (const { forms } of elements) {
      expect(forms.length).toBeGreaterThan(2);
      expect([...new Set(forms)]).toEqual(forms);
      for (const form of forms) expect(form).toMatch(/^[a-z ]+$/);
    }
  }
});
