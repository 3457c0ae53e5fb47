/** The English terms, quotation marks and ordinals that the note style asks for, as a CSL 1.0.2 locale. */

const simple: Readonly<Record<string, string>> = {
  accessed: 'accessed',
  and: 'and',
  'et-al': 'et al.',
  'no date': 'n.d.',
  'open-quote': '“',
  'close-quote': '”',
  'open-inner-quote': '‘',
  'close-inner-quote': '’',
  'page-range-delimiter': '–',
  colon: ':',
  comma: ',',
  semicolon: ';',
  ordinal: 'th',
  'ordinal-01': 'st',
  'ordinal-02': 'nd',
  'ordinal-03': 'rd',
  'ordinal-11': 'th',
  'ordinal-12': 'th',
  'ordinal-13': 'th',
};

const short: Readonly<Record<string, [string, string]>> = {
  compiler: ['comp.', 'comps.'],
  edition: ['ed.', 'eds.'],
  editor: ['ed.', 'eds.'],
  page: ['p.', 'pp.'],
};

const verbs: Readonly<Record<string, string>> = {
  compiler: 'compiled by',
  'container-author': 'by',
  contributor: 'contributed by',
  editor: 'edited by',
  interviewer: 'interviewed by',
  recipient: 'to',
  translator: 'translated by',
};

const terms = [
  ...Object.entries(simple).map(([name, words]) => `<term name="${name}">${words}</term>`),
  ...Object.entries(short).map(
    ([name, [one, several]]) =>
      `<term name="${name}" form="short"><single>${one}</single><multiple>${several}</multiple></term>`,
  ),
  ...Object.entries(verbs).map(([name, words]) => `<term name="${name}" form="verb">${words}</term>`),
];

export const noteLocale = `<?xml version="1.0" encoding="utf-8"?>
<locale xmlns="http://purl.org/net/xbiblio/csl" version="1.0" xml:lang="en-US">
  <style-options punctuation-in-quote="true"/>
  <date form="text"><date-part name="day" suffix=" "/><date-part name="month" suffix=" "/><date-part name="year"/></date>
  <date form="numeric"><date-part name="year"/><date-part name="month" form="numeric-leading-zeros" prefix="-"/><date-part name="day" form="numeric-leading-zeros" prefix="-"/></date>
  <terms>
    ${terms.join('\n    ')}
  </terms>
</locale>
`;
