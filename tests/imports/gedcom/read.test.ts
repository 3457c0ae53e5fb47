import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { AnselDecoder } from '../../../src/imports/gedcom/ansel.ts';
import { BrokenFile } from '../../../src/imports/gedcom/problem.ts';
import { readTree, type Tree } from '../../../src/imports/gedcom/tree.ts';
import { bringIn, inFolder, look } from './through.ts';

/** Reads a text or bytes as a file. */
const read = (content: string | Uint8Array, options: { lenient?: boolean } = {}): Promise<Tree> =>
  inFolder((dir) => {
    const path = join(dir, 'x.ged');
    writeFileSync(path, content);
    return readTree(path, 'x.ged', options);
  });

const head7 = '0 HEAD\n1 GEDC\n2 VERS 7.0\n';
const head5 = (charset = 'UTF-8') =>
  `0 HEAD\n1 GEDC\n2 VERS 5.5.1\n2 FORM LINEAGE-LINKED\n1 CHAR ${charset}\n`;
const faults = ({ faults: { list } }: Tree) => list.map(({ line, text }) => `${line}: ${text}`);
const remarks = ({ remarks: { list } }: Tree) => list.map(({ line, text }) => `${line}: ${text}`);
const name = (tree: Tree) => tree.individuals.values().next().value!.children[0]!.value;

describe('character sets', () => {
  const text = (charset: string) => `${head5(charset)}0 @I1@ INDI\n1 NAME Björg /Ó Faoláin/\n0 TRLR\n`;
  const utf16 = (content: string, swap: boolean) => {
    const bytes = Buffer.from(content, 'utf16le');
    return swap ? bytes.swap16() : bytes;
  };
  test.each([
    ['UTF-8', Buffer.from(text('UTF-8'))],
    ['UTF-8 with a mark', Buffer.from(`\ufeff${text('UTF-8')}`)],
    ['UTF-16 little endian', utf16(`\ufeff${text('UNICODE')}`, false)],
    ['UTF-16 little endian without a mark', utf16(text('UNICODE'), false)],
    ['UTF-16 big endian', utf16(`\ufeff${text('UNICODE')}`, true)],
    ['UTF-16 big endian without a mark', utf16(text('UNICODE'), true)],
    ['Windows-1252', Buffer.from(text('ANSI'), 'latin1')],
    ['Latin-1 that calls itself UTF-8', Buffer.from(text('UTF-8'), 'latin1')],
    // ANSEL: combining marks before their letters (E8 umlaut, E2 acute).
    [
      'ANSEL',
      Buffer.from(text('ANSEL').replace('ö', '\xe8o').replace('Ó', '\xe2O').replace('á', '\xe2a'), 'latin1'),
    ],
    ['lines that end in CR', Buffer.from(text('UTF-8').replaceAll('\n', '\r'))],
    ['lines that end in CR LF', Buffer.from(text('UTF-8').replaceAll('\n', '\r\n'))],
  ])('%s', async (_, bytes) => expect(name(await read(bytes))).toBe('Björg /Ó Faoláin/'));

  // Words as the Library of Congress writes them in its examples of the extended Latin set (from memory).
  test.each([
    [[0xa1, 0x6f, 0xe2, 0x64, 0xe2, 0x7a], 'Łod́ź'],
    [[0xa2, 0x73, 0x74, 0xb2], 'Østø'],
    [[0xf0, 0x63, 0x61], 'ça'],
    [[0xe9, 0x43, 0x65, 0x63, 0x68], 'Čech'],
    [[0xea, 0x41, 0x72], 'År'],
    [[0xf2, 0xe5, 0x61], 'ạ̄'],
    [[0xcf, 0xc7], 'ßß'],
    [[0xa5, 0xb5, 0xa4, 0xb4, 0xba], 'ÆæÞþð'],
  ])('ANSEL %j', (bytes, word) =>
    expect(new AnselDecoder().decode(Uint8Array.from(bytes)).normalize('NFC')).toBe(word.normalize('NFC')),
  );

  test('7.0 that is not UTF-8 ends in a sentence with the line', async () => {
    await expect(
      read(Buffer.from(`${head7}0 @I1@ INDI\n1 NAME Bj\xf6rg\n0 TRLR\n`, 'latin1')),
    ).rejects.toThrow(/the byte F6 cannot stand here/);
  });
});

describe('lines', () => {
  test('the least file that 7.0 allows', async () => {
    const tree = await read('\ufeff0 HEAD\n1 GEDC\n2 VERS 7.0\n0 TRLR\n');
    expect([faults(tree), remarks(tree)]).toEqual([[], []]);
  });

  // Vectors of the sample file on escapes: only the first @ of a payload is doubled.
  test.each([
    ['@@me and @I are', '@me and @I are'],
    ['@@@@@ has four', '@@@@ has four'],
    ['me@example.com', 'me@example.com'],
    ['one @@ two', 'one @@ two'],
  ])('in 7.0 %s is %s', async (written, said) => {
    const tree = await read(`${head7}0 @N1@ SNOTE ${written}\n1 CONT ${written}\n0 TRLR\n`);
    expect(tree.notes.get('N1')!.value).toBe(`${said}\n${said}`);
  });

  test('5.5.1 doubles every @, joins with CONC, and may be indented', async () => {
    const tree = await read(`${head5()}0 @N1@ NOTE one @@ tw\n  1 CONC o@@x\n\t1 CONT  three\n0 TRLR\n`);
    expect(tree.notes.get('N1')!.value).toBe('one @ two@x\n three');
  });

  test('spaces at the head and the end of a payload are kept, and lines may be long', async () => {
    const long = 'x'.repeat(100_000);
    const tree = await read(
      `${head7}0 @N1@ SNOTE  two before\n1 CONT two after  \n1 CONT\n1 CONT ${long}\n0 TRLR\n`,
    );
    expect(tree.notes.get('N1')!.value).toBe(` two before\ntwo after  \n\n${long}`);
  });

  test('identifiers of every form', async () => {
    const tree = await read(`${head7}0 @_@ INDI\n0 @1@ INDI\n0 @0XFFFFFFFFF@ INDI\n0 @I_1@ INDI\n0 TRLR\n`);
    expect([...tree.individuals.keys()]).toEqual(['_', '1', '0XFFFFFFFFF', 'I_1']);
    expect(faults(tree)).toEqual([]);
  });
});

const broken: Readonly<Record<string, string | Uint8Array>> = {
  'nothing at all': '',
  'another kind of text': 'name,born\nAnn,1840\n',
  'bytes of no text': Uint8Array.from([1, 2, 3, 0xff, 0xfe, 0, 7]),
  'a zip': 'PK\u0003\u0004',
  'a line without end': `${head5()}0 @I1@ INDI\n1 NAME ${'x'.repeat(5_000_000)}`,
};

const damaged: Readonly<Record<string, string>> = {
  'no trailer': `${head7}0 @I1@ INDI\n1 NAME Ann /Lee/`,
  'a line after the trailer': `${head7}0 TRLR\n0 @I1@ INDI\n`,
  'a level too deep': `${head7}0 @I1@ INDI\n2 DATE 1840\n0 TRLR\n`,
  'a level before any record': '1 HEAD\n',
  'white space before a level': `${head7} 0 @I1@ INDI\n0 TRLR\n`,
  'an empty line': `${head7}\n0 TRLR\n`,
  'a small letter in a tag': `${head7}0 @I1@ INDI\n1 Name Ann\n0 TRLR\n`,
  'a small letter in an identifier': `${head7}0 @i1@ INDI\n0 TRLR\n`,
  'a level with a zero before it': `${head7}00 @I1@ INDI\n0 TRLR\n`,
  'text without a level': `${head7}0 @I1@ INDI\n1 NOTE one\ntwo\n0 TRLR\n`,
  'CONC in 7.0': `${head7}0 @N1@ SNOTE one\n1 CONC two\n0 TRLR\n`,
  'a control character': `${head7}0 @I1@ INDI\n1 NAME Ann\u0007\n0 TRLR\n`,
  'one identifier twice': `${head7}0 @I1@ INDI\n0 @I1@ INDI\n0 TRLR\n`,
  'levels beyond any meaning': `${head7}0 @I1@ INDI\n${Array.from({ length: 150 }, (_, i) => `${i + 1} NOTE x`).join('\n')}\n0 TRLR\n`,
  'line ends that change': `${head7}0 @I1@ INDI\r\n1 NAME Ann\n0 TRLR\n`,
};

test('every fault of a file is a sentence with its line', async () => {
  const said: string[] = [];
  for (const [what, content] of Object.entries(broken)) {
    const error = await read(content).then(
      () => undefined,
      (thrown: unknown) => thrown,
    );
    expect(error, what).toBeInstanceOf(BrokenFile);
    said.push(`${what}\n  line ${(error as BrokenFile).line}: ${(error as BrokenFile).message}`);
  }
  for (const [what, content] of Object.entries(damaged)) {
    if (!content.startsWith('0 HEAD')) continue;
    const strict = await read(content);
    const lenient = await read(content, { lenient: true });
    expect(strict.faults.count + strict.remarks.count, what).toBeGreaterThan(0);
    expect(faults(lenient), what).toEqual([]);
    said.push(
      `${what}\n${[...faults(strict).map((text) => `  strict, ${text}`), ...remarks(strict).map((text) => `  strict, read all the same, ${text}`), ...remarks(lenient).map((text) => `  lenient, ${text}`)].join('\n')}`,
    );
  }
  await expect(`${said.join('\n\n')}\n`).toMatchFileSnapshot('faults.golden.txt');
});

test('whatever stands in a file, its import ends in words', { timeout: 60_000 }, () =>
  fc.assert(
    fc.asyncProperty(
      fc.array(
        fc.tuple(
          fc.integer({ min: 0, max: 4 }),
          fc.constantFrom('', '', '', '@I1@ ', '@F1@ ', '@S1@ '),
          fc.constantFrom(
            'INDI',
            'FAM',
            'NAME',
            'BIRT',
            'DATE',
            'PLAC',
            'SOUR',
            'NOTE',
            'CONT',
            'CONC',
            'FAMC',
            'FAMS',
            'HUSB',
            'CHIL',
            'ASSO',
            'RESN',
            'OBJE',
            'FILE',
            'PAGE',
            'TITL',
            'DATA',
            'TEXT',
            'ROLE',
            'EVEN',
            'MAP',
            'LATI',
            'REPO',
            'AGE',
            'SEX',
            '_X',
            'TRLR',
          ),
          fc.oneof(
            fc.constantFrom(
              '@I1@',
              '@F1@',
              '@S1@',
              '@VOID@',
              '1840',
              'Kill, Waterford, Ireland',
              'CONFIDENTIAL',
              '../x.jpg',
              '- ',
              ': #',
              '{{',
              '[@x]',
              '<b>',
            ),
            fc.string({ unit: 'binary', maxLength: 12 }),
          ),
        ),
        { maxLength: 60 },
      ),
      async (lines) => {
        const text = `${head5()}${lines.map(([level, xref, tag, value]) => `${level} ${xref}${tag} ${value}`).join('\n')}\n0 TRLR\n`;
        await inFolder(async (dir) => {
          const { content, report } = await bringIn(dir, text);
          expect(report).toContain('Import of');
          expect(look(content).errors).toEqual([]);
        });
      },
    ),
    {
      numRuns: 40,
      examples: [
        [
          [
            [0, '', 'INDI', '@I1@'],
            [1, '', 'SOUR', 'ȴ'],
          ],
        ],
      ],
    },
  ),
);
