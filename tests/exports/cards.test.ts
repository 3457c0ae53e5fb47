import { mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseXml, type XmlElement } from '@rgrove/parse-xml';
import sharp from 'sharp';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { Card } from '../../src/dossier/publishing.ts';
import { cardPicture } from '../../src/exports/cards/card.ts';
import { drawCard } from '../../src/exports/cards/draw.ts';
import { setLine } from '../../src/exports/cards/letters.ts';
import { setText, setToFit } from '../../src/exports/cards/lines.ts';

const card: Card = {
  over: 'Maurice Phelan',
  text: 'In which townland of County Waterford was Maurice Phelan born?',
  answer: {
    shape: 'established',
    word: 'Established',
    place: 'Knockmahon',
    within: 'County Waterford, Ireland',
  },
  sight: { reaching: 2, missing: 1, rings: 4, mark: 'concluded' },
  site: 'From What Place',
  notice: 'An invented family',
  alt: 'A card',
};
const long = Array.from({ length: 40 }, (_, i) => `Øvre-Ytterløkken${i}`).join(' ');

describe('letters become outlines', () => {
  const box = setLine('\u4e00', 'serif', 100);
  test.each(['serif', 'serif-bold', 'sans', 'sans-bold'] as const)(
    'those of Norwegian, Irish, Icelandic and Polish are there, in %s',
    (hand) => {
      for (const letter of 'ÆØÅæøåÁÉÍÓÚáéíóúÞþÐðÖöČŋŁł“”‘’–—…«»&§€') {
        const { path, width } = setLine(letter, hand, 100);
        expect([letter, path.length > 20, width > 10]).toEqual([letter, true, true]);
        if (hand === 'serif') expect([letter, path === box.path]).toEqual([letter, false]);
      }
    },
  );
  test('a letter composed of two signs is the letter', () =>
    expect(setLine('A\u030a', 'serif', 50)).toEqual(setLine('Å', 'serif', 50)));
  test('a letter the typeface lacks is set without its signs, and one it knows nothing of as a box', () => {
    expect(setLine('Ṫ', 'serif', 50)).toEqual(setLine('T', 'serif', 50));
    expect(setLine('\u4e01', 'serif', 50)).toEqual(setLine('\u4e00', 'serif', 50));
  });
  test('a line is as wide as its parts, more or less what kerning takes', () => {
    const parts = [...'Ødegård'].reduce((sum, letter) => sum + setLine(letter, 'serif', 50).width, 0);
    const { width } = setLine('Ødegård', 'serif', 50);
    expect(Math.abs(width - parts)).toBeLessThan(10);
    expect(setLine('AVAVAV', 'serif', 50).width).toBeLessThan(6 * setLine('A', 'serif', 50).width);
  });
  test('letters of two files stand one after the other', () => {
    const { width } = setLine('aŋa', 'sans', 100);
    expect(width).toBeCloseTo(2 * setLine('a', 'sans', 100).width + setLine('ŋ', 'sans', 100).width, 5);
  });
});

describe('text in lines', () => {
  const setting = { hand: 'serif', size: 40, width: 400, lines: 4 } as const;
  test.each([
    ['one word', 'Knockmahon', 1],
    ['nothing', '', 0],
    ['white space', ' \n\t ', 0],
    ['a long text', long, 4],
    ['a word wider than a line', 'x'.repeat(200), 4],
    ['a word wider than a line among others', `In ${'Llanfair'.repeat(5)} or not`, 4],
  ])('%s', (_what, text, count) => {
    const lines = setText(text, setting);
    expect(lines.length).toBe(count);
    for (const { width } of lines) expect(width).toBeLessThanOrEqual(setting.width);
  });
  test('what doesn’t fit ends in an ellipsis', () => {
    const ellipsis = setLine('…', 'serif', 40).path.length;
    const whole = setText('In which townland was he born?', { ...setting, lines: 2 });
    const cut = setText('In which townland was he born, and when, and of whom?', { ...setting, lines: 2 });
    expect(cut.length).toBe(2);
    expect(cut[1]!.path.length).toBeGreaterThan(ellipsis);
    expect(cut[1]!.path).not.toBe(whole[1]!.path);
  });
  test('the largest setting that holds the whole text is taken, and the last one where none does', () => {
    const settings = [60, 40, 30].map((size) => ({ ...setting, size, lines: 2 }));
    const sizes = ['Where?', 'In which townland was he born?', long].map(
      (text) => setToFit(text, settings).setting.size,
    );
    expect(sizes).toEqual([60, 40, 30]);
  });
  test('a text without end takes no longer than a line or two', () => {
    const begun = performance.now();
    setText('x'.repeat(1_000_000), setting);
    setText('x '.repeat(500_000), setting);
    expect(performance.now() - begun).toBeLessThan(5000);
  });
});

describe('a card', () => {
  const shapes = (svg: string): XmlElement[] => {
    const all: XmlElement[] = [];
    const walk = (at: XmlElement) => {
      all.push(at);
      for (const child of at.children) if (child.type === 'element') walk(child as XmlElement);
    };
    walk(parseXml(svg).root!);
    return all;
  };
  test.each([
    ['as usual', card],
    ['of the home page', { ...card, answer: undefined, below: long, text: 'From What Place' }],
    [
      'with everything too long',
      {
        ...card,
        over: long,
        text: long,
        site: long,
        notice: long,
        answer: { ...card.answer!, place: long, within: long },
      },
    ],
    ['of an open question', { ...card, sight: { reaching: 0, missing: 0, rings: 0, mark: 'none' } }],
    [
      'with more of everything than can be drawn',
      { ...card, sight: { reaching: 99, missing: 99, rings: 99, mark: 'sought' } },
    ],
  ] as [string, Card][])('%s is drawn without a letter the machine would set', (_what, one) => {
    const svg = drawCard(one);
    const names = new Set(shapes(svg).map(({ name }) => name));
    expect(
      [...names].sort().filter((name) => !['circle', 'g', 'path', 'rect', 'svg'].includes(name)),
    ).toEqual([]);
    expect(svg).not.toMatch(/NaN|undefined|Infinity/);
  });
  test('has a line of sight and a station for each independent body of evidence, up to seven', () => {
    const lines = (reaching: number) =>
      shapes(drawCard({ ...card, sight: { ...card.sight, reaching } })).filter(
        ({ attributes }) => attributes['stroke-width'] === '3.4',
      ).length;
    expect([0, 1, 2, 3, 7, 12].map(lines)).toEqual([0, 1, 2, 3, 7, 7]);
  });
});

describe('the picture of a card', () => {
  let cache: string;
  beforeEach(() => (cache = mkdtempSync(join(tmpdir(), 'whence-cards-'))));
  afterEach(() => rmSync(cache, { recursive: true, force: true }));

  test('is a PNG of 1200 by 630 that says nothing of where it was made, small, and the same each time', async () => {
    const [one, two] = [await cardPicture(card, cache, undefined), await cardPicture(card, cache, undefined)];
    expect(one.equals(two)).toBe(true);
    expect(one.length).toBeLessThan(80_000);
    const meta = await sharp(one).metadata();
    expect(meta).toMatchObject({ format: 'png', width: 1200, height: 630 });
    expect([meta.exif, meta.icc, meta.iptc, meta.xmp, meta.comments]).toEqual(Array(5).fill(undefined));
    // PNG 1.2, 11.2 and 11.3: the chunks of a palette image, and no text or time
    const chunks: string[] = [];
    for (let at = 8; at < one.length; at += 12 + one.readUInt32BE(at))
      chunks.push(one.toString('latin1', at + 4, at + 8));
    expect(chunks.filter((name) => !['IHDR', 'PLTE', 'IDAT', 'IEND', 'pHYs', 'tRNS'].includes(name))).toEqual(
      [],
    );
    expect(readdirSync(cache)).toEqual([]);
  });

  test('is kept by what it says and by what draws it, and made anew where the kept one is spoiled', async () => {
    const made = await cardPicture(card, cache, 'one');
    expect(readdirSync(cache)).toHaveLength(1);
    const begun = performance.now();
    expect((await cardPicture(card, cache, 'one')).equals(made)).toBe(true);
    expect(performance.now() - begun).toBeLessThan(60);
    await cardPicture({ ...card, text: 'Where?' }, cache, 'one');
    await cardPicture(card, cache, 'two');
    expect(readdirSync(cache)).toHaveLength(3);
    for (const name of readdirSync(cache)) writeFileSync(join(cache, name), made.subarray(0, 500));
    expect((await cardPicture(card, cache, 'one')).equals(made)).toBe(true);
  });
});
