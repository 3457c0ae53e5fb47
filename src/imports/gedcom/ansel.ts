/**
 * ANSEL, the extended Latin set of ANSI/NISO Z39.47 (1985, revised 1993), in which files of GEDCOM 5.5.1 may be
 * written. Its combining marks stand before the letter they belong to, those of Unicode after it.
 *
 * The signs are those of the standard's table, as Unicode names them in the Library of Congress code tables for MARC 21
 * (Extended Latin); BE, BF, CD, CE, CF and FC are the additions of GEDCOM 5.5.1. All from memory, checked against words
 * in the tests.
 */

/** Signs that stand for themselves, from A1 on. */
const signs: Readonly<Record<number, string>> = {
  0xa1: 'Ł',
  0xa2: 'Ø',
  0xa3: 'Đ',
  0xa4: 'Þ',
  0xa5: 'Æ',
  0xa6: 'Œ',
  0xa7: '\u02b9',
  0xa8: '·',
  0xa9: '♭',
  0xaa: '®',
  0xab: '±',
  0xac: 'Ơ',
  0xad: 'Ư',
  0xae: '\u02bc',
  0xb0: '\u02bb',
  0xb1: 'ł',
  0xb2: 'ø',
  0xb3: 'đ',
  0xb4: 'þ',
  0xb5: 'æ',
  0xb6: 'œ',
  0xb7: '\u02ba',
  0xb8: 'ı',
  0xb9: '£',
  0xba: 'ð',
  0xbc: 'ơ',
  0xbd: 'ư',
  0xbe: '□',
  0xbf: '■',
  0xc0: '°',
  0xc1: 'ℓ',
  0xc2: '℗',
  0xc3: '©',
  0xc4: '♯',
  0xc5: '¿',
  0xc6: '¡',
  0xc7: 'ß',
  0xc8: '€',
  0xcd: 'e',
  0xce: 'o',
  0xcf: 'ß',
};

/** Combining marks, E0 to FE. */
const marks: Readonly<Record<number, string>> = {
  0xe0: '\u0309',
  0xe1: '\u0300',
  0xe2: '\u0301',
  0xe3: '\u0302',
  0xe4: '\u0303',
  0xe5: '\u0304',
  0xe6: '\u0306',
  0xe7: '\u0307',
  0xe8: '\u0308',
  0xe9: '\u030c',
  0xea: '\u030a',
  0xeb: '\ufe20',
  0xec: '\ufe21',
  0xed: '\u0315',
  0xee: '\u030b',
  0xef: '\u0310',
  0xf0: '\u0327',
  0xf1: '\u0328',
  0xf2: '\u0323',
  0xf3: '\u0324',
  0xf4: '\u0325',
  0xf5: '\u0333',
  0xf6: '\u0332',
  0xf7: '\u0326',
  0xf8: '\u031c',
  0xf9: '\u032e',
  0xfa: '\ufe22',
  0xfb: '\ufe23',
  0xfc: '\u0338',
  0xfe: '\u0313',
};

/** Decodes ANSEL piece by piece; a mark at the end of a piece waits for its letter. What the table lacks is U+FFFD. */
export class AnselDecoder {
  #waiting = '';

  decode(bytes: Uint8Array): string {
    let text = '';
    for (const byte of bytes) {
      const mark = marks[byte];
      if (mark !== undefined) {
        this.#waiting += mark;
        continue;
      }
      const sign = byte < 0x80 ? String.fromCharCode(byte) : (signs[byte] ?? '\ufffd');
      if (this.#waiting === '') text += sign;
      else if (sign < ' ') {
        // A mark at the end of a line has no letter; it stands alone, on a space.
        text += ` ${this.#waiting}${sign}`;
        this.#waiting = '';
      } else {
        text += (sign + this.#waiting).normalize('NFC');
        this.#waiting = '';
      }
    }
    return text;
  }

  /** What waits at the end of the file. */
  end(): string {
    const rest = this.#waiting === '' ? '' : ` ${this.#waiting}`;
    this.#waiting = '';
    return rest;
  }
}
