import { mkdirSync, readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { bringIn, inFolder, look } from './through.ts';

const family = readFileSync(join(import.meta.dirname, 'files/family.ged'), 'utf8');
const file = (lines: string, version = '7.0') =>
  `0 HEAD\n1 GEDC\n2 VERS ${version}\n${lines.trim()}\n0 TRLR\n`;
const doubts = (done: Awaited<ReturnType<typeof bringIn>>['done']) =>
  done.log.doubts.list.map(({ line, text }) => `${line}: ${text}`);

/** Imports a text and gives what the content holds then. */
const through = (gedcom: string, options: Parameters<typeof bringIn>[2] = {}) =>
  inFolder(async (dir) => {
    const { done, content, report } = await bringIn(dir, gedcom, { audience: 'family', ...options });
    const { corpus, errors } = look(content);
    expect(errors).toEqual([]);
    return {
      done,
      report,
      corpus,
      person: (id: string) => corpus.people.get(id)!,
      record: (id: string) => corpus.records.get(id)!,
    };
  });

test('the report of a family tells what came in, was changed, kept aside and left, by line', () =>
  inFolder(async (dir) => {
    const { content, report } = await bringIn(dir, family);
    expect(look(content).errors).toEqual([]);
    await expect(report).toMatchFileSnapshot('report.golden.txt');
    const texts = [
      'people/family.yaml',
      'places/family.yaml',
      ...readdirSync(join(content, 'records'))
        .sort()
        .map((name) => `records/${name}`),
    ];
    await expect(
      texts.map((name) => `=== ${name}\n${readFileSync(join(content, name), 'utf8')}`).join('\n'),
    ).toMatchFileSnapshot('family.golden.txt');
  }));

describe('people and families', () => {
  test('partners of one sex, a remarriage of the same two, and pointers to nobody', async () => {
    const { person, done } = await through(
      file(`
0 @I1@ INDI
1 NAME Ann /Lee/
1 SEX F
1 FAMS @F1@
0 @I2@ INDI
1 NAME Bea /Ray/
1 SEX F
1 FAMS @F1@
1 ALIA @VOID@
1 ASSO @VOID@
2 PHRASE Mr Stockdale
2 ROLE OTHER
3 PHRASE Teacher
0 @F1@ FAM
1 HUSB @I1@
1 WIFE @I2@
1 CHIL @VOID@
1 MARR
2 DATE 1 APR 1911
1 DIV
2 DATE 1 APR 1912
1 MARR
2 DATE 1 APR 1914
0 @F2@ FAM
1 HUSB @VOID@
1 WIFE @I2@`),
    );
    expect(person('ann-lee').spouses).toMatchObject([{ person: 'bea-ray', married: '1911-04-01' }]);
    expect(person('ann-lee').mentions).toEqual(['family-f1#m1', 'family-f1#m3']);
    expect(done.log.doubts.list).toEqual([]);
    expect(done.log.leftByPath.get('INDI.ALIA')).toBe(1);
  });

  test('a circle of descent is cut where it closes, and adoptive parents are no parents by birth', async () => {
    const { person, done, record } = await through(
      file(`
0 @I1@ INDI
1 NAME Ann /Lee/
1 FAMC @F1@
0 @I2@ INDI
1 NAME Bo /Lee/
1 FAMC @F2@
0 @I3@ INDI
1 NAME Cy /Lee/
1 FAMC @F3@
2 PEDI ADOPTED
0 @F1@ FAM
1 HUSB @I2@
0 @F2@ FAM
1 HUSB @I1@
0 @F3@ FAM
1 HUSB @I1@
1 CHIL @I3@
1 NCHI 0`),
    );
    expect([person('ann-lee').parents.length, person('bo-lee').parents.length]).toEqual([1, 0]);
    expect(person('cy-lee').parents).toEqual([]);
    expect(record('family-i3').mentions[1]).toMatchObject({ name: 'Ann Lee', role: 'adoptive parent' });
    expect(doubts(done)).toEqual([
      '21: The family is said to have 0 children, and 1 are named.',
      '9: @I1@ would be their own ancestor through @I2@; that bond was left out.',
    ]);
  });

  test('ages of every form, and those of 5.5.1', async () => {
    const ages = ['35y', '35y 11m', '8w 3d', '0y', '> 8y', '< 1y', '21d', 'CHILD', '31'];
    const { record } = await through(
      file(
        `0 @I1@ INDI\n1 NAME Ann /Lee/\n${ages.map((age, i) => `1 CENS\n2 DATE ${1850 + i}\n2 AGE ${age}`).join('\n')}`,
        '5.5.1',
      ),
    );
    expect(record('family-i1').mentions.map(({ age, says }) => age ?? says.age)).toEqual([
      35,
      '35y 11m',
      '8w 3d',
      0,
      '> 8y',
      '< 1y',
      '21d',
      'CHILD',
      31,
    ]);
  });

  test('who is said to have died is not living, and who is marked confidential is kept out', async () => {
    const { person } = await through(
      file(
        '0 @I1@ INDI\n1 NAME Ann /Lee/\n1 DEAT Y\n0 @I2@ INDI\n1 NAME Bo /Lee/\n1 RESN CONFIDENTIAL, LOCKED',
      ),
    );
    expect([person('ann-lee').living, person('bo-lee').living]).toEqual([false, true]);
  });

  test('a death without Y, a date or a place asserts nothing; its cause does', async () => {
    // GEDCOM 5.5.1 and 7.0: without DATE or PLAC a Y is required to assert that an event happened.
    const dead = async (under: string) =>
      (await through(file(`0 @I1@ INDI\n1 NAME Ann /Lee/\n${under}`))).person('ann-lee').living;
    expect(await dead('1 DEAT')).toBeUndefined();
    expect(await dead('1 DEAT N')).toBeUndefined();
    expect(await dead('1 DEAT\n2 DATE (still living in 2019)')).toBeUndefined();
    expect(await dead('1 DEAT\n2 CAUS Fever')).toBe(false);
    expect(await dead('1 DEAT Y')).toBe(false);
  });

  test('names in other scripts, without a surname, in parts, and none', async () => {
    const { corpus } = await through(
      file(`
0 @I1@ INDI
1 NAME /山田/ 太郎
2 TRAN Taro /Yamada/
3 LANG ja-Latn
0 @I2@ INDI
1 NAME Madonna
0 @I3@ INDI
1 NAME
2 GIVN Pat
2 SURN Lee
0 @I4@ INDI
0 @I5@ INDI
1 NAME Madonna`),
    );
    expect(
      [...corpus.people.values()].map(({ id, name, placeholder }) => [id, name, placeholder]).sort(),
    ).toEqual([
      ['madonna', 'Madonna', false],
      ['madonna-2', 'Madonna', false],
      ['pat-lee', 'Pat Lee', false],
      ['person-i1', '山田 太郎', false],
      ['person-i4', '—', true],
    ]);
  });
});

describe('sources', () => {
  test('each page is a record of its volume; without a page, each person; and nothing is said to be independent', async () => {
    const { corpus } = await through(
      file(
        `
0 @I1@ INDI
1 NAME Ann /Lee/
1 BIRT
2 DATE 1801
2 SOUR @S1@
3 PAGE 7
1 DEAT
2 DATE 1861
2 SOUR @S1@
3 NOTE @N1@
0 @I2@ INDI
1 NAME Bo /Lee/
1 BIRT
2 DATE 1803
2 SOUR @S1@
3 PAGE 7
1 DEAT
2 DATE 1871
2 SOUR @S1@
0 @S1@ SOUR
1 TITL Register of Kill
0 @N1@ NOTE seen on film`,
        '5.5.1',
      ),
    );
    expect([...corpus.records.keys()]).toEqual([
      'register-of-kill-7',
      'register-of-kill-i1',
      'register-of-kill-i2',
    ]);
    for (const { form, volume, derivedFrom, seen } of corpus.records.values()) {
      expect({ form, volume, seen }).toEqual({
        form: 'derivative',
        volume: 'family-register-of-kill',
        seen: 'report',
      });
      expect(derivedFrom).toHaveLength(1);
    }
    expect(
      corpus.records.get('register-of-kill-7')!.mentions.map(({ born, inferred }) => ({ born, inferred })),
    ).toEqual([
      { born: '1801', inferred: ['born'] },
      { born: '1803', inferred: ['born'] },
    ]);
    expect(corpus.records.get('register-of-kill-i1')!.body).toBe('\nseen on film\n');
  });

  test('pictures come along only from beside the file, and only as pictures', () =>
    inFolder(async (dir) => {
      mkdirSync(join(dir, 'scans'));
      const png = Buffer.from(
        'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==',
        'base64',
      );
      writeFileSync(join(dir, 'scans/Page 1.png'), png);
      writeFileSync(join(dir, 'secret.png'), 'no picture');
      const files = [
        'scans/Page%201.png',
        '../secret.png',
        '/etc/passwd',
        'secret.png',
        'https://example.org/x.png',
        'gone.png',
        'scans\\Page 1.png',
      ];
      const gedcom = file(
        `0 @I1@ INDI\n1 NAME Ann /Lee/\n1 DEAT\n2 DATE 1801\n2 SOUR @S1@\n3 PAGE 1\n${files.map((_, i) => `3 OBJE @O${i}@`).join('\n')}\n0 @S1@ SOUR\n1 TITL Register\n${files.map((name, i) => `0 @O${i}@ OBJE\n1 FILE ${name}\n2 FORM image/png\n2 TITL Picture ${i}`).join('\n')}`,
      );
      const { done, content } = await bringIn(dir, gedcom);
      const { corpus, errors } = look(content);
      expect(errors).toEqual([]);
      expect(corpus.records.get('register-1')!.media).toMatchObject([
        { file: 'page-1.png', alt: 'Picture 0' },
      ]);
      expect(readdirSync(join(content, 'media'))).toEqual(['page-1.png']);
      expect(doubts(done)).toHaveLength(5);
    }));
});

test('a picture never comes over another of its name, and comes in once', () =>
  inFolder(async (dir) => {
    const pixel = (colour: string) =>
      Buffer.concat([
        Buffer.from(
          'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==',
          'base64',
        ),
        Buffer.from(colour),
      ]);
    const places = { 'content/media/page.png': 'mine', 'a/page.png': 'first', 'b/Page.png': 'second' };
    for (const [path, colour] of Object.entries(places)) {
      mkdirSync(dirname(join(dir, path)), { recursive: true });
      writeFileSync(join(dir, path), pixel(colour));
    }
    const gedcom = file(
      '0 @I1@ INDI\n1 NAME Ann /Lee/\n1 DEAT\n2 DATE 1801\n2 SOUR @S1@\n3 PAGE 1\n3 OBJE @A@\n3 OBJE @B@\n0 @S1@ SOUR\n1 TITL Register\n0 @A@ OBJE\n1 FILE a/page.png\n2 FORM image/png\n0 @B@ OBJE\n1 FILE b/Page.png\n2 FORM image/png',
    );
    for (const round of [1, 2]) {
      const { done, content } = await bringIn(dir, gedcom);
      const media = join(content, 'media');
      expect(
        readdirSync(media)
          .sort()
          .map((name) => `${name}: ${readFileSync(join(media, name)).subarray(70).toString()}`),
      ).toEqual(['page-2.png: first', 'page-3.png: second', 'page.png: mine']);
      expect(
        look(content)
          .corpus.records.get('register-1')!
          .media.map((one) => one.file),
      ).toEqual(['page-2.png', 'page-3.png']);
      expect(done.copies.length).toBe(round === 1 ? 2 : 0);
    }
  }));

describe('places', () => {
  const placed = (places: string[], options: Parameters<typeof bringIn>[2] = {}) =>
    through(
      file(places.map((place, i) => `0 @I${i}@ INDI\n1 NAME P /${i}/\n1 BIRT\n2 PLAC ${place}`).join('\n')),
      options,
    );

  test('take the country and the county of the gazetteer where the chain agrees', async () => {
    const { corpus, done } = await placed([
      'Kill, Waterford, Ireland',
      'Kill, Co. Waterford, Éire',
      'Kill, , County Waterford, Munster, Ireland',
      'Troy, Rensselaer County, New York, USA',
      'Troy, Rensselaer County, New York',
      'Kew, Surrey, England',
      'Leeds, Yorkshire, UK',
      'Atlanta, Georgia',
      'Nowhere',
    ]);
    expect([...corpus.people.values()].map(({ born }) => born?.place ?? null)).toEqual([
      'kill',
      'kill',
      'kill',
      'troy',
      'troy',
      'kew',
      'leeds',
      null,
      null,
    ]);
    expect(corpus.places.get('kill')!.within[0]!.place).toBe('co-waterford');
    expect(corpus.places.get('kew')!.within[0]!.place).toBe('surrey');
    expect([...done.unplaced.keys()]).toEqual(['Atlanta, Georgia', 'Nowhere']);
  });

  test('that name no country lie in the one that is said', async () => {
    const { corpus } = await placed(['Nowhere'], { country: 'ireland' });
    expect(corpus.places.get('nowhere')!.within[0]!.place).toBe('ireland');
  });
});

describe('a newer file', () => {
  const older = file(
    '0 @I1@ INDI\n1 NAME Ann /Lee/\n1 BIRT\n2 DATE 1801\n0 @I2@ INDI\n1 NAME Bo /Lee/\n1 BIRT\n2 DATE 1803\n0 @I3@ INDI\n1 NAME Cy /Lee/\n1 BIRT\n2 DATE 1805',
  );
  const newer = older
    .replace('1801', '1802')
    .replace('1803', '1804')
    .replace('0 @I3@ INDI\n1 NAME Cy /Lee/\n1 BIRT\n2 DATE 1805', '0 @I4@ INDI\n1 NAME Di /Lee/');
  const people = (content: string) => join(content, 'people/family.yaml');

  test('touches only what the import wrote and the author has not edited', () =>
    inFolder(async (dir) => {
      const { content } = await bringIn(dir, older);
      writeFileSync(
        people(content),
        readFileSync(people(content), 'utf8').replace('name: Bo Lee', 'name: Bob Lee # so he signed'),
      );
      const { done } = await bringIn(dir, newer);
      const fates = Object.fromEntries(
        done.plan.changes.map(({ place, fate }) => [place.split('#')[1]!, fate]),
      );
      expect(fates).toEqual({ 'ann-lee': 'changed', 'bo-lee': 'edited', 'di-lee': 'new', 'cy-lee': 'gone' });
      expect(readFileSync(people(content), 'utf8')).toContain('name: Bob Lee # so he signed');
      const { corpus, errors } = look(content);
      expect(errors).toEqual([]);
      expect([...corpus.people.values()].map(({ id, born }) => [id, born?.date])).toEqual([
        ['ann-lee', '1802'],
        ['bo-lee', '1803'],
        ['cy-lee', '1805'],
        ['di-lee', undefined],
      ]);
    }));

  test('changes nothing when nothing has changed', () =>
    inFolder(async (dir) => {
      await bringIn(dir, family);
      const { done } = await bringIn(dir, family);
      expect(new Set(done.plan.changes.map(({ fate }) => fate))).toEqual(new Set(['same']));
      expect(done.plan.files.size).toBe(0);
    }));

  test('brings nothing back that the author deleted or moved', () =>
    inFolder(async (dir) => {
      const { content } = await bringIn(dir, older);
      const text = readFileSync(people(content), 'utf8');
      writeFileSync(
        people(content),
        text.replace(/- id: ann-lee\n(?: .*\n)*/, '').replace(/- id: bo-lee\n(?: .*\n)*/, ''),
      );
      writeFileSync(join(content, 'people/bo-lee.md'), '---\nname: Bo Lee\n---\n');
      const { done } = await bringIn(dir, newer);
      const fates = Object.fromEntries(
        done.plan.changes.map(({ place, fate }) => [place.split('#')[1]!, fate]),
      );
      expect(fates).toMatchObject({ 'ann-lee': 'deleted', 'bo-lee': 'elsewhere' });
      expect(look(content).errors).toEqual([]);
    }));

  test('knows people again though the identifiers were given anew', () =>
    inFolder(async (dir) => {
      const { content } = await bringIn(dir, older);
      const { done } = await bringIn(
        dir,
        older.replace('@I1@', '@X@').replace('@I2@', '@I1@').replace('@X@', '@I2@'),
      );
      expect(new Set(done.plan.changes.map(({ fate }) => fate))).toEqual(new Set(['same']));
      expect(look(content).corpus.people.size).toBe(3);
    }));

  test('takes rows of its memory that somebody spoilt for rows that are not there', () =>
    inFolder(async (dir) => {
      const { content } = await bringIn(dir, older);
      const memory = join(content, '.imported/gedcom/family.json');
      writeFileSync(
        memory,
        readFileSync(memory, 'utf8').replace(/"people":\[\[[^\]]*\]/, '"people":[7,["I1"],null'),
      );
      const { done } = await bringIn(dir, older);
      // Ann has no row any more, and what stands under her id is the same.
      expect(new Set(done.plan.changes.map(({ fate }) => fate))).toEqual(new Set(['same']));
      writeFileSync(
        memory,
        readFileSync(memory, 'utf8').replace(/"given":\{.*\}\}/, '"given":{"people":"Ann"}}'),
      );
      expect((await bringIn(dir, older)).done.plan.files.size).toBe(0);
    }));

  test('never touches what an author wrote before', () =>
    inFolder(async (dir) => {
      mkdirSync(join(dir, 'content/people'), { recursive: true });
      const mine = '- id: ann-lee\n  name: Ann Lee of Kill\n';
      writeFileSync(join(dir, 'content/people/family.yaml'), mine);
      const { content } = await bringIn(dir, older);
      expect(readFileSync(people(content), 'utf8').startsWith(mine)).toBe(true);
      expect(look(content).corpus.people.get('ann-lee-1801')!.born!.date).toBe('1801');
    }));
});

test('words that name the living, or are theirs, stay out of public content and stand in the report', async () => {
  const gedcom = file(
    '0 @I1@ INDI\n1 NAME Ann Maria /Quill/\n1 BIRT\n2 DATE 1990\n1 NOTE Her own words\n0 @I2@ INDI\n1 NAME Bo /Lee/\n1 DEAT\n2 DATE 1850\n2 SOUR @S1@\n3 PAGE 4\n1 NOTE Great-uncle of Ann Maria Quill\n0 @S1@ SOUR\n1 TITL Papers of Ann Maria Quill',
  );
  const { corpus, report } = await through(gedcom, { audience: 'public' });
  expect(JSON.stringify([...corpus.records.values()])).not.toMatch(/Quill|Her own words/);
  expect([...corpus.records.keys()].join(' ')).not.toContain('quill');
  expect(report).toContain('line 8 (belongs to somebody living): Her own words');
  expect(report).toContain('line 15 (names somebody living): Great-uncle of Ann Maria Quill');
});
