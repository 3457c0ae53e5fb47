import { describe, expect, test } from 'vitest';
import { CannotFormat, formatWithStyle, type StyledInput } from '../../src/citations/with-style.ts';
import { styleOf } from './styles.ts';

/*
 * Source of the rules: Citation Style Language 1.0.2, specification. The inputs are of our own writing; each names the
 * rule it tries. Expected texts follow from the rule as printed there.
 */
const set = (
  citation: string,
  input: Partial<StyledInput> & { more?: Parameters<typeof styleOf>[1] } = {},
) => {
  const { more, ...rest } = input;
  return formatWithStyle({
    style: styleOf(citation, more),
    items: [{ id: 'a', type: 'book', title: 'A title' }],
    mode: 'citation',
    ...rest,
  });
};
const one = (citation: string, item: object, more?: Parameters<typeof styleOf>[1]) =>
  set(citation, { items: [{ id: 'a', type: 'book', ...item }], ...(more ? { more } : {}) });

describe('page ranges (appendix V)', () => {
  const pages = (format: string, range: string) =>
    one('<text variable="page"/>', { page: range }, { attributes: `page-range-format="${format}"` });

  // The examples the specification prints for each format.
  test.each([
    ['expanded', '42-45', '42–45'],
    ['expanded', '321-8', '321–328'],
    ['expanded', '2787-816', '2787–2816'],
    ['minimal', '42-45', '42–5'],
    ['minimal', '321-328', '321–8'],
    ['minimal', '2787-2816', '2787–816'],
    ['minimal-two', '42-45', '42–45'],
    ['minimal-two', '321-328', '321–28'],
    ['minimal-two', '2787-2816', '2787–816'],
    ['chicago', '3-10', '3–10'],
    ['chicago', '71-72', '71–72'],
    ['chicago', '100-104', '100–104'],
    ['chicago', '107-108', '107–8'],
    ['chicago', '321-325', '321–25'],
    ['chicago', '415-532', '415–532'],
    ['chicago', '1536-1538', '1536–38'],
    ['chicago-15', '1496-1504', '1496–1504'],
    ['chicago-15', '2787-2816', '2787–2816'],
    ['chicago-16', '321-325', '321–25'],
    ['chicago-16', '1087-1089', '1087–89'],
    ['chicago-16', '1496-1500', '1496–500'],
    ['chicago-16', '13792-13803', '13792–803'],
    ['chicago-16', '12991-13001', '12991–3001'],
    ['chicago-16', '107-108', '107–8'],
    ['chicago-16', '600-613', '600–613'],
    ['chicago-16', '1100-1113', '1100–1113'],
    ['chicago-16', '505-517', '505–17'],
  ])('%s: %s', (format, range, expected) => expect(pages(format, range)).toBe(expected));
});

describe('text', () => {
  test('title case leaves the small words small, but first and last', () => {
    expect(
      one('<text variable="title" text-case="title"/>', { title: 'the history of a house and its people' }),
    ).toBe('The History of a House and Its People');
  });
  test('title case is for English alone', () => {
    expect(
      one('<text variable="title" text-case="title"/>', { title: 'et hus i dalen', language: 'nb' }),
    ).toBe('et hus i dalen');
  });
  test.each([
    ['lowercase', 'A Parish'],
    ['uppercase', 'A Parish'],
    ['capitalize-first', 'a parish'],
  ])('case: %s', (name, title) =>
    expect(one(`<text variable="title" text-case="${name}"/>`, { title })).toBe(
      { lowercase: 'a parish', uppercase: 'A PARISH', 'capitalize-first': 'A parish' }[name],
    ),
  );
  test('quotation marks change inside quotation marks, and a full stop goes inside in American usage', () => {
    expect(one('<text variable="title" quotes="true" suffix="."/>', { title: 'The "Harvest" of 1864' })).toBe(
      '“The ‘Harvest’ of 1864.”',
    );
  });
  test('British usage for a style that says en-GB', () => {
    expect(
      one(
        '<text variable="title" quotes="true" suffix="."/>',
        { title: 'The harvest' },
        { attributes: 'default-locale="en-GB"' },
      ),
    ).toBe('‘The harvest’.');
  });
  test('affixes stand only around what prints', () => {
    expect(
      one(
        '<group delimiter=", "><text variable="title"/><text variable="genre" prefix="(" suffix=")"/></group>',
        { title: 'T' },
      ),
    ).toBe('T');
    expect(one('<group><text value="no. "/><text variable="number"/></group>', { title: 'T' })).not.toContain(
      'no.',
    );
  });
  test('an affix that is a sign of markup is text', () => {
    expect(one('<text variable="title" prefix="A &amp; B: "/>', { title: 'T' })).toBe('A &#38; B: T');
  });
});

describe('names', () => {
  const people = (n: number) =>
    ['Aho Henrik', 'Tregear Ellen', 'Power Thomas', 'Kirwan Johanna'].slice(0, n).map((name) => {
      const [family, given] = name.split(' ');
      return { family, given };
    });
  const author = (names: string, n: number) =>
    one(`<names variable="author">${names}</names>`, { author: people(n) });

  test.each([
    ['<name and="text"/>', 2, 'Henrik Aho and Ellen Tregear'],
    ['<name and="text"/>', 3, 'Henrik Aho, Ellen Tregear, and Thomas Power'],
    [
      '<name and="symbol" delimiter-precedes-last="never"/>',
      3,
      'Henrik Aho, Ellen Tregear &#38; Thomas Power',
    ],
    [
      '<name name-as-sort-order="first" delimiter-precedes-last="always" and="text"/>',
      2,
      'Aho, Henrik, and Ellen Tregear',
    ],
    ['<name initialize-with=". "/>', 1, 'H. Aho'],
    ['<name form="short"/>', 1, 'Aho'],
    ['<name et-al-min="3" et-al-use-first="1"/>', 4, 'Henrik Aho et al.'],
    [
      '<name et-al-min="4" et-al-use-first="2" et-al-use-last="true"/>',
      4,
      'Henrik Aho, Ellen Tregear, … Johanna Kirwan',
    ],
    ['<name/><label form="short" prefix=" (" suffix=")"/>', 1, 'Henrik Aho'],
  ])('%s of %i', (names, n, expected) => expect(author(names, n)).toBe(expected));

  test('labels count the names', () => {
    const editors = (n: number) =>
      one('<names variable="editor"><name/><label form="short" prefix=", "/></names>', { editor: people(n) });
    expect([editors(1), editors(2)]).toEqual(['Henrik Aho, ed.', 'Henrik Aho, Ellen Tregear, eds.']);
  });
  test('a substitute stands in for missing authors and is not printed twice', () => {
    expect(
      one(
        '<group delimiter=". "><names variable="author"><name/><substitute><names variable="editor"/></substitute></names><names variable="editor"><name/></names></group>',
        { editor: people(1) },
      ),
    ).toBe('Henrik Aho');
  });
  test('people who would read alike are told apart by their given names', () => {
    const items = [
      { id: 'a', type: 'book', author: [{ family: 'Aho', given: 'Henrik' }] },
      { id: 'b', type: 'book', author: [{ family: 'Aho', given: 'Hilda' }] },
      { id: 'c', type: 'book', author: [{ family: 'Power', given: 'Thomas' }] },
    ];
    const citation = '<names variable="author"><name form="short" initialize-with=". "/></names>';
    const cites = [[{ id: 'a' }], [{ id: 'b' }], [{ id: 'c' }]];
    const more = { citation: 'disambiguate-add-givenname="true"' };
    expect(set(citation, { items, citationItems: cites, more })).toBe('Henrik Aho\nHilda Aho\nPower');
    expect(set(citation, { items, citationItems: cites })).toBe('Aho\nAho\nPower');
  });
  test('works of one author and year get letters', () => {
    const items = ['One', 'Two'].map((title) => ({
      id: title,
      type: 'book',
      title,
      author: [{ family: 'Aho', given: 'Henrik' }],
      issued: { 'date-parts': [[1894]] },
    }));
    expect(
      set(
        '<group delimiter=" "><names variable="author"><name form="short"/></names><date variable="issued"><date-part name="year"/></date></group>',
        {
          items,
          citationItems: [[{ id: 'One' }], [{ id: 'Two' }]],
          more: {
            styleClass: 'in-text',
            citation: 'disambiguate-add-year-suffix="true"',
            bibliography: '<text variable="title"/>',
          },
        },
      ),
    ).toBe('Aho 1894a\nAho 1894b');
  });
});

describe('dates', () => {
  const date = (issued: object, form = 'text') => one(`<date variable="issued" form="${form}"/>`, { issued });
  test.each([
    [{ 'date-parts': [[1871, 4, 11]] }, 'text', 'April 11, 1871'],
    [{ 'date-parts': [[1871, 4, 11]] }, 'numeric', '04/11/1871'],
    [{ 'date-parts': [[1871, 4]] }, 'text', 'April 1871'],
    [{ 'date-parts': [[1838], [1842]] }, 'text', '1838–1842'],
    [
      {
        'date-parts': [
          [1871, 4, 11],
          [1871, 4, 15],
        ],
      },
      'text',
      'April 11–15, 1871',
    ],
    [
      {
        'date-parts': [
          [1871, 4],
          [1871, 6],
        ],
      },
      'text',
      'April–June 1871',
    ],
    [{ 'date-parts': [[1846]], season: 3 }, 'text', 'Autumn 1846'],
    [{ literal: '1850 or 1852' }, 'text', '1850 or 1852'],
    [{ 'date-parts': [[-43]] }, 'text', '43BC'],
  ])('%j as %s', (issued, form, expected) => expect(date(issued, form)).toBe(expected));

  test('a style can ask whether a date is approximate', () => {
    const style =
      '<choose><if is-uncertain-date="issued"><text term="circa" form="short" suffix=" "/></if></choose><date variable="issued" form="text"/>';
    expect(one(style, { issued: { 'date-parts': [[1840]], circa: true } })).toBe('C. 1840');
    expect(one(style, { issued: { 'date-parts': [[1840]] } })).toBe('1840');
  });
  test('days in British order for a style that says en-GB', () => {
    expect(
      one(
        '<date variable="issued" form="text"/>',
        { issued: { 'date-parts': [[1871, 4, 11]] } },
        { attributes: 'default-locale="en-GB"' },
      ),
    ).toBe('11 April 1871');
  });
});

/* A term that begins a note begins it with a capital letter (the processor’s way with note styles). */
describe('numbers and terms', () => {
  test.each([
    ['<number variable="edition" form="ordinal"/>', { edition: '2' }, '2nd'],
    ['<number variable="edition" form="ordinal"/>', { edition: '11' }, '11th'],
    ['<number variable="edition" form="ordinal"/>', { edition: '21' }, '21st'],
    ['<number variable="edition" form="long-ordinal"/>', { edition: '2' }, 'second'],
    ['<number variable="volume" form="roman"/>', { volume: '14' }, 'xiv'],
    ['<label variable="page" form="short" suffix=" "/><text variable="page"/>', { page: '3' }, 'p. 3'],
    ['<label variable="page" form="short" suffix=" "/><text variable="page"/>', { page: '3-5' }, 'pp. 3–5'],
    ['<text term="edition" form="short"/>', { title: 'T' }, 'Ed.'],
    ['<text term="section" form="symbol"/>', { title: 'T' }, '§'],
    ['<text term="translator" form="verb-short"/>', { title: 'T' }, 'Trans. by'],
    ['<text term="chapter" plural="true"/>', { title: 'T' }, 'Chapters'],
  ])('%s of %j', (citation, item, expected) => expect(one(citation, item)).toBe(expected));

  test('a style’s own terms go before those built in', () => {
    const locale =
      '<locale xml:lang="en"><terms><term name="page" form="short"><single>S.</single><multiple>S.</multiple></term></terms></locale>';
    expect(
      one(
        '<label variable="page" form="short" suffix=" "/><text variable="page"/>',
        { page: '3' },
        { locale },
      ),
    ).toBe('S. 3');
  });
  test('a locale given goes before English', () => {
    const nb =
      '<locale xmlns="http://purl.org/net/xbiblio/csl" version="1.0" xml:lang="nb-NO"><terms><term name="and">og</term></terms></locale>';
    expect(set('<text term="and"/>', { language: 'nb-NO', locales: { 'nb-NO': nb } })).toBe('Og');
    expect(set('<text term="and"/>', { language: 'nb-NO' })).toBe('And');
  });
});

describe('places in the text', () => {
  const citation = `<choose>
      <if position="ibid-with-locator"><group delimiter=", "><text term="ibid" text-case="capitalize-first"/><group delimiter=" "><label variable="locator" form="short"/><text variable="locator"/></group></group></if>
      <else-if position="ibid"><text term="ibid" text-case="capitalize-first"/></else-if>
      <else-if position="subsequent"><text variable="title" form="short"/></else-if>
      <else><text variable="title"/></else>
    </choose>`;
  const items = [
    { id: 'a', type: 'book', title: 'A long title', 'title-short': 'Long title' },
    { id: 'b', type: 'book', title: 'Another' },
  ];
  const cite = (n: number, id: string, more: object = {}) => ({
    citationID: `c${n}`,
    citationItems: [{ id, ...more }],
    properties: { noteIndex: n },
  });
  const before = (n: number) =>
    Array.from({ length: n - 1 }, (_, i): [string, number] => [`c${i + 1}`, i + 1]);

  test('the same again is ibid, with another place in it, and a short title later', () => {
    const citations = [
      cite(1, 'a'),
      cite(2, 'a'),
      cite(3, 'a', { locator: '12v', label: 'folio' }),
      cite(4, 'b'),
      cite(5, 'a'),
    ].map((citation, i): [typeof citation, [string, number][], []] => [citation, before(i + 1), []]);
    expect(set(citation, { items, citations })).toBe(
      '..[0] A long title\n..[1] Ibid.\n..[2] Ibid., fol. 12v\n..[3] Another\n>>[4] Long title',
    );
  });

  test('every label of the closed list has its word, and several numbers the plural', () => {
    const located = (label: string, locator: string) =>
      set('<label variable="locator" form="short" suffix=" "/><text variable="locator"/>', {
        citationItems: [[{ id: 'a', label, locator }]],
      });
    expect(located('folio', '12')).toBe('fol. 12');
    expect(located('folio', '12-14')).toBe('fols. 12–14');
    expect(located('column', '3')).toBe('col. 3');
    expect(located('sub-verbo', 'Phelan')).toBe('s.v. Phelan');
  });
});

describe('a bibliography', () => {
  test('is sorted as the style says, and each entry is an element', () => {
    expect(
      set('<text variable="title"/>', {
        mode: 'bibliography',
        items: ['zinc', 'Abel', 'mine'].map((title) => ({ id: title, type: 'book', title })),
        more: {
          bibliography: '<text variable="title" font-style="italic"/>',
          sort: '<sort><key variable="title"/></sort>',
        },
      }),
    ).toBe(
      '<div class="csl-bib-body">\n  <div class="csl-entry"><i>Abel</i></div>\n  <div class="csl-entry"><i>mine</i></div>\n  <div class="csl-entry"><i>zinc</i></div>\n</div>',
    );
  });
});

describe('odd input', () => {
  test('ids of any form', () => {
    const ids = ['__proto__', 'constructor', 'a"><script>', '</div>', '1', ' '];
    const items = ids.map((id, i) => ({ id, type: 'book', title: `Title ${i}` }));
    expect(set('<text variable="title"/>', { items, citationItems: ids.map((id) => [{ id }]) })).toBe(
      ids.map((_, i) => `Title ${i}`).join('\n'),
    );
    expect(
      set('<text variable="title"/>', {
        items,
        citations: ids.map((id, i) => [
          { citationID: id, citationItems: [{ id }], properties: { noteIndex: i + 1 } },
          ids.slice(0, i).map((name, n): [string, number] => [name, n + 1]),
          [],
        ]),
      }).split('\n'),
    ).toHaveLength(ids.length);
  });

  test('the same item twice in one citation, and numbers for ids', () => {
    expect(
      set('<text variable="title"/>', {
        items: [{ id: 1, type: 'book', title: 'T' }],
        citationItems: [[{ id: 1 }, { id: '1' }]],
      }),
    ).toBe('T; T');
  });

  test('what cannot be set is said in a sentence', () => {
    const fails = (input: Partial<StyledInput>) => {
      try {
        set('<text variable="title"/>', input);
      } catch (error) {
        expect(error).toBeInstanceOf(CannotFormat);
        return (error as Error).message;
      }
      return undefined;
    };
    expect(fails({ citationItems: [[{ id: 'none' }]] })).toBe(
      'The item none is cited, and is not among the items.',
    );
    expect(fails({ style: '<style' })).toMatch(/^This is not well-formed XML: .*\(line 1\)$/);
    expect(fails({ style: '' })).toMatch(/^This is not well-formed XML/);
    expect(fails({ style: '<other/>' })).toMatch(/^The processor cannot set this with the style given: /);
  });

  test('comments and single quotation marks in a style are no tags', () => {
    const style = styleOf('<!-- <text value="wrong"/> > --><text value="it\'s" />').replace(
      'class="note"',
      "class='note'",
    );
    expect(set('', { style })).toBe('it’s');
  });
});
