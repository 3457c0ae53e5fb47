/**
 * The canonical form against RFC 8785 (JSON Canonicalization Scheme), its examples of sections 3.2.2 to 3.2.4 and the
 * number samples of its appendix B; and against the test data its author publishes with it
 * (github.com/cyberphone/json-canonicalization, testdata/).
 */
import canonicalize from 'canonicalize';
import { describe, expect, test } from 'vitest';
import { canonicalForm } from '../../src/dossier/digest.ts';

describe('RFC 8785', () => {
  test('section 3.2.2: the sample of numbers, strings and literals', () => {
    const sample: unknown = JSON.parse(
      String.raw`{"numbers":[333333333.33333329,1E30,4.50,2e-3,0.000000000000000000000000001],"string":"\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/","literals":[null,true,false]}`,
    );
    const canonical = String.raw`{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\u000f\nA'B\"\\\\\"/"}`;
    expect(canonicalForm(sample)).toBe(canonical);
    // Section 3.2.4 gives its bytes.
    expect(Buffer.from(canonicalForm(sample)).toString('hex')).toBe(
      '7b226c69746572616c73223a5b6e756c6c2c747275652c66616c73655d2c226e756d62657273223a5b3333333333333333332e333333333333332c31652b33302c342e352c302e3030322c31652d32375d2c22737472696e67223a22e282ac245c75303030665c6e4127425c225c5c5c5c5c222f227d',
    );
  });

  test('section 3.2.3: keys in the order of UTF-16 code units', () => {
    const sample = {
      '\u20ac': 'Euro Sign',
      '\r': 'Carriage Return',
      '\ufb33': 'Hebrew Letter Dalet With Dagesh',
      '1': 'One',
      '\ud83d\ude00': 'Emoji: Grinning Face',
      '\u0080': 'Control',
      '\u00f6': 'Latin Small Letter O With Diaeresis',
    };
    const order = Object.values(JSON.parse(canonicalize(sample)!) as Record<string, string>);
    // JSON.parse puts the key 1 first by itself; the text shows where it stands.
    expect(canonicalize(sample)).toMatch(/^\{"\\r":"Carriage Return","1":"One","\u0080":"Control",/);
    expect(order.slice(3)).toEqual([
      'Latin Small Letter O With Diaeresis',
      'Euro Sign',
      'Emoji: Grinning Face',
      'Hebrew Letter Dalet With Dagesh',
    ]);
  });

  // Appendix B: bits of IEEE 754 doubles, and how they are written.
  test.each([
    ['0000000000000000', '0'],
    ['8000000000000000', '0'],
    ['0000000000000001', '5e-324'],
    ['8000000000000001', '-5e-324'],
    ['7fefffffffffffff', '1.7976931348623157e+308'],
    ['ffefffffffffffff', '-1.7976931348623157e+308'],
    ['4340000000000000', '9007199254740992'],
    ['c340000000000000', '-9007199254740992'],
    ['4430000000000000', '295147905179352830000'],
    ['44b52d02c7e14af5', '9.999999999999997e+22'],
    ['44b52d02c7e14af6', '1e+23'],
    ['44b52d02c7e14af7', '1.0000000000000001e+23'],
    ['444b1ae4d6e2ef4e', '999999999999999700000'],
    ['444b1ae4d6e2ef4f', '999999999999999900000'],
    ['444b1ae4d6e2ef50', '1e+21'],
    ['3eb0c6f7a0b5ed8c', '9.999999999999997e-7'],
    ['3eb0c6f7a0b5ed8d', '0.000001'],
    ['41b3de4355555553', '333333333.3333332'],
    ['41b3de4355555554', '333333333.33333325'],
    ['41b3de4355555555', '333333333.3333333'],
    ['41b3de4355555556', '333333333.3333334'],
    ['41b3de4355555557', '333333333.33333343'],
    ['becbf647612f3696', '-0.0000033333333333333333'],
    ['43143ff3c1cb0959', '1424953923781206.2'],
  ])('appendix B: the number %s is %s', (bits, written) => {
    expect(canonicalForm(Buffer.from(bits, 'hex').readDoubleBE())).toBe(written);
  });

  test('what is no number of JSON is refused', () => {
    for (const number of [NaN, Infinity]) expect(() => canonicalForm([number])).toThrow();
  });
});

describe('the test data of its author', () => {
  test.each([
    [
      'structures.json',
      String.raw`{"1": {"f": {"f": "hi","F": 5} ,"\n": 56.0}, "10": { }, "": "empty", "a": { }, "111": [ { } ], "A": { }}`,
      String.raw`{"":"empty","1":{"\n":56,"f":{"F":5,"f":"hi"}},"10":{},"111":[{}],"A":{},"a":{}}`,
    ],
    [
      'values.json',
      String.raw`{"numbers": [1E30, 4.50, 333333333.33333329, 2e-3, 0.000000000000000000000000001], "escaping": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/", "literals": [null, true, false]}`,
      String.raw`{"escaping":"€$\u000f\nA'B\"\\\\\"/","literals":[null,true,false],"numbers":[1e+30,4.5,333333333.3333333,0.002,1e-27]}`,
    ],
    [
      'french.json',
      '{"péché": "2", "peach": "1", "sin": "4", "pêche": "3"}',
      '{"peach":"1","péché":"2","pêche":"3","sin":"4"}',
    ],
  ])('%s', (_name, input, output) => expect(canonicalForm(JSON.parse(input))).toBe(output));

  test('unicode.json: the scheme leaves letters as they are written; a digest takes them in their composed form', () => {
    const sample = { 'Unnormalized Unicode': '\u1e0d\u0307' };
    expect(canonicalize(sample)).toBe('{"Unnormalized Unicode":"\u1e0d\u0307"}');
    expect(canonicalForm({ name: 'A\u030a' })).toBe(canonicalForm({ name: '\u00c5' }));
  });
});
