import { cpSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { readGedcom } from 'read-gedcom';
import { describe, expect, test } from 'vitest';
import { bringIn, facts, inFolder, look, takeOut } from '../imports/gedcom/through.ts';

const family = readFileSync(join(import.meta.dirname, '../imports/gedcom/files/family.ged'), 'utf8');

/** `Line = Level D [Xref D] Tag [D LineVal] EOL` of GEDCOM 7.0, chapter 1, written anew from its grammar. */
const line =
  /^(?:0|[1-9]\d*) (?:@[A-Z0-9_]+@ )?(?:[A-Z][A-Z0-9_]*|_[A-Z0-9_]+)(?: (?:@[A-Z0-9_]+@|@@.*|[^@].*))?$/;

/** What is wrong with a file by the grammar: lines, levels, pointers, tags of extensions. */
function faultsOf(text: string): string[] {
  const lines = text
    .replace(/^\ufeff/, '')
    .replace(/\n$/, '')
    .split('\n');
  const xrefs = new Set(lines.map((one) => /^0 @([^@]+)@/.exec(one)?.[1]).filter((one) => one !== undefined));
  const documented = new Set(lines.map((one) => /^2 TAG (_\S+) /.exec(one)?.[1]));
  let level = -1;
  return lines.filter((one) => {
    const own = Number(/^\d+/.exec(one)?.[0]);
    const pointer = /^\d+ \S+ @([A-Z0-9_]+)@$/.exec(one)?.[1];
    const tag = /^\d+ (?:@\S+@ )?(\S+)/.exec(one)?.[1] ?? '';
    const good =
      line.test(one) &&
      own <= level + 1 &&
      (pointer === undefined || xrefs.has(pointer)) &&
      (!tag.startsWith('_') || documented.has(tag));
    level = own;
    return !good;
  });
}

describe('in, out and in again', () => {
  test('a family comes back as it was', () =>
    inFolder(async (dir) => {
      const first = await bringIn(join(dir), family, { audience: 'family' });
      const out = takeOut(first.content);
      expect(faultsOf(out)).toEqual([]);
      await inFolder(async (other) => {
        const second = await bringIn(other, out, { audience: 'family' });
        const [a, b] = [look(first.content), look(second.content)];
        expect(a.errors).toEqual([]);
        expect(b.errors).toEqual([]);
        expect(facts(b.corpus)).toEqual(facts(a.corpus));
      });
    }));

  test('a reader of the format that is not ours takes it', () =>
    inFolder(async (dir) => {
      const { content } = await bringIn(dir, family, { audience: 'family' });
      const bytes = new TextEncoder().encode(takeOut(content));
      const root = readGedcom(bytes.buffer as ArrayBuffer);
      expect(root.getHeader().get('GEDC').get('VERS').value()).toEqual(['7.0']);
      const people = root.getIndividualRecord();
      expect(people.length).toBe(5);
      const garrett = people.arraySelect().find((one) => one.getName().value()[0] === 'Garrett /Dunworth/')!;
      expect(garrett.getEventBirth().getDate().value()[0]).toBe('ABT 1836');
      expect(garrett.getEventBirth().getPlace().value()[0]).toBe(
        'Ballinroad, Clonea, County Waterford, Munster, Ireland',
      );
      expect(garrett.getFamilyAsSpouse().getChild().value().length).toBe(1);
      expect(garrett.getFamilyAsSpouse().getEventMarriage().getDate().value()).toEqual(['11 FEB 1866']);
      expect(root.getSourceRecord().length).toBeGreaterThan(3);
    }));

  test('a picture whose name has signs of an address is named as RFC 3986 has a path', () =>
    inFolder(async (dir) => {
      const name = 'deed #2? of 5%.png';
      const { content } = await bringIn(dir, family, { audience: 'family' });
      mkdirSync(join(content, 'media'));
      writeFileSync(
        join(content, 'media', name),
        Buffer.from(
          'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==',
          'base64',
        ),
      );
      writeFileSync(
        join(content, 'records/deed.md'),
        `---\ntitle: A deed\nform: original\nseen: image\nmedia: [{ file: "${name}", alt: The deed }]\n---\n`,
      );
      expect(look(content).errors).toEqual([]);
      const out = takeOut(content);
      expect(out).toContain('1 FILE media/deed%20%232%3F%20of%205%25.png\n');
      expect(new URL('media/deed%20%232%3F%20of%205%25.png', 'file:///x/').pathname).toBe(
        `/x/media/${encodeURIComponent(name)}`,
      );
      cpSync(join(content, 'media'), join(dir, 'other/media'), { recursive: true });
      const again = await bringIn(join(dir, 'other'), out, { audience: 'family' });
      expect(look(again.content).corpus.records.get('deed')!.media).toMatchObject([
        { file: 'deed-2-of-5.png', alt: 'The deed' },
      ]);
    }));

  test('the living are not in a public file', () =>
    inFolder(async (dir) => {
      const { content } = await bringIn(dir, family);
      const out = takeOut(content);
      expect(out).not.toContain('Ellen');
      expect(out).toContain('Garrett /Dunworth/');
      expect(faultsOf(out)).toEqual([]);
    }));

  const word = fc.constantFrom(
    'Ann',
    'Owen',
    'Björg',
    'Dunworth',
    'O’Fay',
    'de la Tour',
    '@home',
    'Nil',
    '#5',
    'yes',
    '1840',
  );
  const date = fc.constantFrom(
    '1 JAN 1801',
    'ABT 1820',
    'BET 1801 AND 1809',
    'FROM 1810 TO 1820',
    'JULIAN 3 MAR 1699',
    'AFT 1799',
    '(Easter)',
    'HEBREW 2 TVT 5570',
    '30 JAN 1648/9',
  );
  const place = fc.constantFrom(
    'Kill, Waterford, Ireland',
    'Troy, Rensselaer County, New York, USA',
    'Nowhere',
    'Kew, Surrey, England',
    'Bonn, Germany',
  );
  const maybe = <T>(of: fc.Arbitrary<T>) => fc.option(of, { nil: undefined, freq: 3 });
  const event = fc.record({
    date: maybe(date),
    place: maybe(place),
    source: maybe(fc.integer({ min: 1, max: 3 })),
    page: maybe(word),
    note: maybe(word),
  });
  const person = fc.record({
    names: fc.array(fc.tuple(word, word), { maxLength: 2 }),
    sex: fc.constantFrom('M', 'F', 'X', 'U', undefined),
    events: fc.array(
      fc.tuple(fc.constantFrom('BIRT', 'DEAT', 'BAPM', 'BURI', 'IMMI', 'RESI', 'OCCU', 'EVEN'), event),
      { maxLength: 4 },
    ),
    note: maybe(fc.string({ unit: 'grapheme', maxLength: 30 })),
    of: maybe(fc.integer({ min: 1, max: 3 })),
  });
  const couples = fc.array(
    fc.tuple(fc.integer({ min: 1, max: 6 }), fc.integer({ min: 1, max: 6 }), maybe(event)),
    { minLength: 3, maxLength: 3 },
  );

  test('so does any family', { timeout: 60_000 }, () =>
    fc.assert(
      fc.asyncProperty(
        fc.array(person, { minLength: 6, maxLength: 6 }),
        couples,
        async (people, families) => {
          const gedcom = written(people, families);
          await inFolder(async (dir) => {
            const first = await bringIn(dir, gedcom, { audience: 'family', lenient: true });
            const out = takeOut(first.content);
            expect(faultsOf(out)).toEqual([]);
            await inFolder(async (other) => {
              const second = await bringIn(other, out, { audience: 'family' });
              const [a, b] = [look(first.content), look(second.content)];
              expect(a.errors).toEqual([]);
              expect(b.errors).toEqual([]);
              expect(facts(b.corpus)).toEqual(facts(a.corpus));
            });
          });
        },
      ),
      { numRuns: 12, seed: 20 },
    ),
  );

  type Event = typeof event extends fc.Arbitrary<infer T> ? T : never;
  type Someone = typeof person extends fc.Arbitrary<infer T> ? T : never;

  function written(people: Someone[], families: [number, number, Event | undefined][]): string {
    const of = (one: Event, level: number): string[] => [
      ...(one.date === undefined ? [] : [`${level} DATE ${one.date}`]),
      ...(one.place === undefined ? [] : [`${level} PLAC ${one.place}`]),
      ...(one.note === undefined ? [] : [`${level} NOTE ${one.note.replace(/^@/, '@@')}`]),
      ...(one.source === undefined
        ? []
        : [
            `${level} SOUR @S${one.source}@`,
            ...(one.page === undefined ? [] : [`${level + 1} PAGE ${one.page.replace(/^@/, '@@')}`]),
          ]),
    ];
    return [
      '0 HEAD',
      '1 GEDC',
      '2 VERS 5.5.1',
      ...people.flatMap((one, i) => [
        `0 @I${i + 1}@ INDI`,
        ...one.names.map(([given, surname]) => `1 NAME ${given.replace(/^@/, '@@')} /${surname}/`),
        ...(one.sex === undefined ? [] : [`1 SEX ${one.sex}`]),
        ...one.events.flatMap(([tag, what]) => [
          `1 ${tag}${tag === 'OCCU' ? ' miner' : ''}`,
          ...(tag === 'EVEN' ? ['2 TYPE Inquest'] : []),
          ...of(what, 2),
        ]),
        ...(one.note === undefined ? [] : [`1 NOTE ${one.note.replace(/[\r\n]/g, ' ').replace(/^@/, '@@')}`]),
        ...(one.of === undefined ? [] : [`1 FAMC @F${one.of}@`]),
      ]),
      ...families.flatMap(([husband, wife, marriage], i) => [
        `0 @F${i + 1}@ FAM`,
        `1 HUSB @I${husband}@`,
        `1 WIFE @I${wife}@`,
        ...(marriage === undefined ? [] : ['1 MARR', ...of(marriage, 2)]),
      ]),
      ...[1, 2, 3].flatMap((n) => [`0 @S${n}@ SOUR`, `1 TITL Register ${n}`, '1 TEXT Words of the register']),
      '0 TRLR',
      '',
    ].join('\n');
  }
});
