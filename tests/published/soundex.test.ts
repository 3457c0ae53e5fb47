import { describe, expect, test } from 'vitest';
import { soundexCodes, soundexOlder } from '../../src/reasoning/names/soundex.ts';

/** Rows of names with their codes: “Lee L000”. */
const rows = (text: string): [string, string][] =>
  text
    .trim()
    .split(/,\s*/u)
    .map((row) => {
      const at = row.lastIndexOf(' ');
      return [row.slice(0, at), row.slice(at + 1)];
    });

describe('American Soundex', () => {
  /* Source: US National Archives, The Soundex Indexing System (2007) and General Information Leaflet 55 (1995). */
  test.each(
    rows(
      'Washington W252, Lee L000, Gutierrez G362, Pfister P236, Jackson J250, Tymczak T522, Ashcraft A261',
    ),
  )('%s is %s, as the archives have it', (name, code) => expect(soundexCodes(name)).toEqual([code]));

  test('a name with a prefix is filed with and without it', () => {
    expect(soundexCodes('VanDeusen')).toEqual(['V532', 'D250']);
    expect(soundexCodes('Van Deusen')).toEqual(['V532', 'D250']);
    expect(soundexCodes('Vandeusen')).toEqual(['V532', 'D250']);
  });
  test.each([
    'Vance',
    'Denis',
    'Connor',
    'Lacey',
    'Leary',
    'Dillon',
    'McCarthy',
    'MacDonald',
    'Vann',
    'De',
    'Van',
  ])('%s begins with no prefix', (name) => expect(soundexCodes(name)).toHaveLength(1));

  /* Source: D. E. Knuth, The Art of Computer Programming 3 (1973) 391–392; the second half from memory. */
  test.each(
    rows(
      'Euler E460, Gauss G200, Hilbert H416, Knuth K530, Lloyd L300, Lukasiewicz L222, ' +
        'Ellery E460, Ghosh G200, Heilbronn H416, Kant K530, Ladd L300, Lissajous L222',
    ),
  )('%s is %s, as Knuth has it', (name, code) => expect(soundexCodes(name)).toEqual([code]));

  /* Source: the public tests of Apache commons-codec (SoundexTest). */
  test.each(
    rows(
      'Allricht A462, Eberhard E166, Engebrethson E521, Heimbach H512, Hanselmann H524, Hildebrand H431, ' +
        'Kavanagh K152, Lind L530, Lukaschowsky L222, McDonnell M235, McGee M200, Opnian O155, Oppenheimer O155, ' +
        'Riedemanas R355, Zita Z300, Zitzmeinn Z325, Booth-Davis B312, Sgler S460, Swhgler S460, Holmes H452, ' +
        'Adomomi A355, Vonderlehr V536, Ball B400, Shaw S000, Scanlon S545, SaintJohn S532, Kingsmith K525, ' +
        "King-smith K525, -Kingsmith K525, Kingsmith- K525, O'Brien O165, 'OBrien O165, OBrien' O165, O’Brien O165",
    ),
  )('%s is %s, as public tests have it', (name, code) => expect(soundexCodes(name)).toEqual([code]));
  test.each(
    [...rows('Barham B650')].concat(
      'Barone Birney Boren Bourne Brain Braun Breen Brien Brown Bryan Burn Burney Byrne Byron'
        .split(' ')
        .map((name): [string, string] => [name, 'B650']),
    ),
  )('%s is %s, as public tests have it', (name, code) => expect(soundexCodes(name)).toEqual([code]));

  /* Worked out from the rule by hand for names of Ireland; not published. */
  test.each(
    rows(
      "Robert R163, Rupert R163, Rubin R150, Honeyman H555, Carman C655, Murphy M610, Sullivan S415, O'Sullivan O241, " +
        'Burns B652, Cavanagh C152, Gallagher G426, Gallaher G460, Callaghan C425, Callahan C450, Donoghue D520, ' +
        'Donahue D500, Doherty D630, Dougherty D263, Keogh K200, Kehoe K000, Whelan W450, Phelan P450, Reilly R400, ' +
        "O'Reilly O640, Connor C560, Connors C562, O'Connor O256, McCarthy M263, Carthy C630, Walsh W420, Quinn Q500, " +
        'Fitzgerald F326',
    ),
  )('%s is %s, by the rule', (name, code) => expect(soundexCodes(name)).toEqual([code]));

  /* Source: the archives' own note that Ashcraft is “not A226”, which the cards of the older rule have. */
  test('the older rule, by which H and W part equal digits', () => {
    expect(soundexOlder('Ashcraft')).toEqual(['A226']);
    expect(soundexOlder('Burroughs')).toEqual(['B622']);
    expect(soundexCodes('Burroughs')).toEqual(['B620']);
    expect(soundexOlder('Jackson')).toEqual(soundexCodes('Jackson'));
  });

  test('accents are folded, other scripts have no code', () => {
    expect(soundexCodes('Ó Briain')).toEqual(['O165']);
    expect(soundexCodes('Müller')).toEqual(soundexCodes('Muller'));
    expect(soundexCodes('Мерфи')).toEqual([]);
    expect(soundexCodes('')).toEqual([]);
  });
});
