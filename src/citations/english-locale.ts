/**
 * A whole English locale for CSL styles other than our own: every term of CSL 1.0.2, appendix II, with the forms that
 * English has. The words are those of English scholarly usage (common practice); a style’s own terms go over them.
 */

type Forms = readonly [string, string];

/** Terms that never change. */
const simple: Readonly<Record<string, string>> = {
  accessed: 'accessed',
  ad: 'AD',
  'advance-online-publication': 'advance online publication',
  album: 'album',
  and: 'and',
  'and others': 'and others',
  anonymous: 'anonymous',
  at: 'at',
  'audio-recording': 'audio recording',
  'available at': 'available at',
  bc: 'BC',
  bce: 'BCE',
  by: 'by',
  ce: 'CE',
  circa: 'circa',
  cited: 'cited',
  'et-al': 'et al.',
  film: 'film',
  forthcoming: 'forthcoming',
  from: 'from',
  henceforth: 'henceforth',
  ibid: 'ibid.',
  in: 'in',
  'in press': 'in press',
  internet: 'internet',
  letter: 'letter',
  'loc-cit': 'loc. cit.',
  'no date': 'no date',
  'no-place': 'no place',
  'no-publisher': 'no publisher',
  on: 'on',
  online: 'online',
  'op-cit': 'op. cit.',
  'original-work-published': 'original work published',
  'personal-communication': 'personal communication',
  podcast: 'podcast',
  'podcast-episode': 'podcast episode',
  preprint: 'preprint',
  'presented at': 'presented at the',
  'radio-broadcast': 'radio broadcast',
  'radio-series': 'radio series',
  'radio-series-episode': 'radio series episode',
  retrieved: 'retrieved',
  'review-of': 'review of',
  scale: 'scale',
  'special-issue': 'special issue',
  'special-section': 'special section',
  'television-broadcast': 'television broadcast',
  'television-series': 'television series',
  'television-series-episode': 'television series episode',
  video: 'video',
  'working-paper': 'working paper',
  'page-range-delimiter': '–',
  colon: ':',
  comma: ',',
  semicolon: ';',
};

const simpleShort: Readonly<Record<string, string>> = {
  anonymous: 'anon.',
  circa: 'c.',
  'no date': 'n.d.',
  'no-place': 'n.p.',
  'no-publisher': 'n.p.',
  'review-of': 'rev. of',
};

/** One and several, in full and short. */
const counted: Readonly<Record<string, readonly [Forms, Forms?]>> = {
  act: [['act', 'acts']],
  appendix: [
    ['appendix', 'appendices'],
    ['app.', 'apps.'],
  ],
  'article-locator': [
    ['article', 'articles'],
    ['art.', 'arts.'],
  ],
  book: [
    ['book', 'books'],
    ['bk.', 'bks.'],
  ],
  canon: [
    ['canon', 'canons'],
    ['can.', 'cann.'],
  ],
  chapter: [
    ['chapter', 'chapters'],
    ['chap.', 'chaps.'],
  ],
  'chapter-number': [
    ['chapter', 'chapters'],
    ['chap.', 'chaps.'],
  ],
  'citation-number': [['citation', 'citations']],
  'collection-number': [
    ['number', 'numbers'],
    ['no.', 'nos.'],
  ],
  column: [
    ['column', 'columns'],
    ['col.', 'cols.'],
  ],
  edition: [
    ['edition', 'editions'],
    ['ed.', 'eds.'],
  ],
  elocation: [
    ['location', 'locations'],
    ['loc.', 'locs.'],
  ],
  equation: [
    ['equation', 'equations'],
    ['eq.', 'eqs.'],
  ],
  figure: [
    ['figure', 'figures'],
    ['fig.', 'figs.'],
  ],
  folio: [
    ['folio', 'folios'],
    ['fol.', 'fols.'],
  ],
  issue: [
    ['number', 'numbers'],
    ['no.', 'nos.'],
  ],
  line: [
    ['line', 'lines'],
    ['l.', 'll.'],
  ],
  note: [
    ['note', 'notes'],
    ['n.', 'nn.'],
  ],
  number: [
    ['number', 'numbers'],
    ['no.', 'nos.'],
  ],
  'number-of-pages': [
    ['page', 'pages'],
    ['p.', 'pp.'],
  ],
  'number-of-volumes': [
    ['volume', 'volumes'],
    ['vol.', 'vols.'],
  ],
  opus: [
    ['opus', 'opera'],
    ['op.', 'opp.'],
  ],
  page: [
    ['page', 'pages'],
    ['p.', 'pp.'],
  ],
  'page-first': [
    ['page', 'pages'],
    ['p.', 'pp.'],
  ],
  paragraph: [
    ['paragraph', 'paragraphs'],
    ['para.', 'paras.'],
  ],
  part: [
    ['part', 'parts'],
    ['pt.', 'pts.'],
  ],
  'part-number': [
    ['part', 'parts'],
    ['pt.', 'pts.'],
  ],
  printing: [
    ['printing', 'printings'],
    ['print.', 'prints.'],
  ],
  'printing-number': [
    ['printing', 'printings'],
    ['print.', 'prints.'],
  ],
  reference: [
    ['reference', 'references'],
    ['ref.', 'refs.'],
  ],
  rule: [
    ['rule', 'rules'],
    ['r.', 'rr.'],
  ],
  scene: [
    ['scene', 'scenes'],
    ['sc.', 'scs.'],
  ],
  section: [
    ['section', 'sections'],
    ['sec.', 'secs.'],
  ],
  'sub-verbo': [
    ['sub verbo', 'sub verbis'],
    ['s.v.', 's.vv.'],
  ],
  supplement: [
    ['supplement', 'supplements'],
    ['supp.', 'supps.'],
  ],
  'supplement-number': [
    ['supplement', 'supplements'],
    ['supp.', 'supps.'],
  ],
  table: [
    ['table', 'tables'],
    ['tbl.', 'tbls.'],
  ],
  timestamp: [['', '']],
  title: [
    ['title', 'titles'],
    ['tit.', 'tits.'],
  ],
  verse: [
    ['verse', 'verses'],
    ['v.', 'vv.'],
  ],
  version: [
    ['version', 'versions'],
    ['v.', 'v.'],
  ],
  volume: [
    ['volume', 'volumes'],
    ['vol.', 'vols.'],
  ],
  chair: [['chair', 'chairs']],
  'collection-editor': [
    ['editor', 'editors'],
    ['ed.', 'eds.'],
  ],
  compiler: [
    ['compiler', 'compilers'],
    ['comp.', 'comps.'],
  ],
  composer: [
    ['composer', 'composers'],
    ['comp.', 'comps.'],
  ],
  contributor: [
    ['contributor', 'contributors'],
    ['contrib.', 'contribs.'],
  ],
  curator: [
    ['curator', 'curators'],
    ['cur.', 'curs.'],
  ],
  director: [
    ['director', 'directors'],
    ['dir.', 'dirs.'],
  ],
  editor: [
    ['editor', 'editors'],
    ['ed.', 'eds.'],
  ],
  'editor-translator': [
    ['editor & translator', 'editors & translators'],
    ['ed. & tran.', 'eds. & trans.'],
  ],
  'editorial-director': [
    ['editor', 'editors'],
    ['ed.', 'eds.'],
  ],
  'executive-producer': [
    ['executive producer', 'executive producers'],
    ['exec. prod.', 'exec. prods.'],
  ],
  guest: [['guest', 'guests']],
  host: [['host', 'hosts']],
  illustrator: [
    ['illustrator', 'illustrators'],
    ['ill.', 'ills.'],
  ],
  interviewer: [['interviewer', 'interviewers']],
  narrator: [
    ['narrator', 'narrators'],
    ['narr.', 'narrs.'],
  ],
  organizer: [
    ['organizer', 'organizers'],
    ['org.', 'orgs.'],
  ],
  performer: [
    ['performer', 'performers'],
    ['perf.', 'perfs.'],
  ],
  producer: [
    ['producer', 'producers'],
    ['prod.', 'prods.'],
  ],
  'script-writer': [
    ['writer', 'writers'],
    ['writ.', 'writs.'],
  ],
  'series-creator': [
    ['series creator', 'series creators'],
    ['cre.', 'cres.'],
  ],
  translator: [
    ['translator', 'translators'],
    ['tran.', 'trans.'],
  ],
};

const symbols: Readonly<Record<string, Forms>> = { paragraph: ['¶', '¶¶'], section: ['§', '§§'] };

/** What somebody did, in full and short. */
const verbs: Readonly<Record<string, readonly [string, string?]>> = {
  chair: ['chaired by'],
  'collection-editor': ['edited by', 'ed. by'],
  compiler: ['compiled by', 'comp. by'],
  composer: ['composed by', 'comp. by'],
  'container-author': ['by'],
  contributor: ['with'],
  curator: ['curated by', 'cur. by'],
  director: ['directed by', 'dir. by'],
  editor: ['edited by', 'ed. by'],
  'editor-translator': ['edited & translated by', 'ed. & trans. by'],
  'editorial-director': ['edited by', 'ed. by'],
  'executive-producer': ['executive produced by', 'exec. prod. by'],
  guest: ['with guest'],
  host: ['hosted by'],
  illustrator: ['illustrated by', 'illus. by'],
  interviewer: ['interview by'],
  narrator: ['narrated by', 'narr. by'],
  organizer: ['organized by', 'org. by'],
  performer: ['performed by', 'perf. by'],
  producer: ['produced by', 'prod. by'],
  recipient: ['to'],
  'reviewed-author': ['by'],
  'script-writer': ['written by', 'writ. by'],
  'series-creator': ['created by', 'cre. by'],
  translator: ['translated by', 'trans. by'],
};

const months = 'January February March April May June July August September October November December'.split(
  ' ',
);
const seasons = 'Spring Summer Autumn Winter'.split(' ');
const ordinals: Readonly<Record<string, string>> = {
  ordinal: 'th',
  'ordinal-01': 'st',
  'ordinal-02': 'nd',
  'ordinal-03': 'rd',
  'ordinal-11': 'th',
  'ordinal-12': 'th',
  'ordinal-13': 'th',
};
const longOrdinals = 'first second third fourth fifth sixth seventh eighth ninth tenth'.split(' ');

function term(name: string, words: string | Forms, form?: string): string {
  const escaped = (text: string) => text.replaceAll('&', '&amp;');
  const inside =
    typeof words === 'string'
      ? escaped(words)
      : `<single>${escaped(words[0])}</single><multiple>${escaped(words[1])}</multiple>`;
  return `<term name="${name}"${form ? ` form="${form}"` : ''}>${inside}</term>`;
}

const number = (i: number) => String(i + 1).padStart(2, '0');
const words = [
  ...Object.entries(simple).map(([name, text]) => term(name, text)),
  ...Object.entries(simpleShort).map(([name, text]) => term(name, text, 'short')),
  ...Object.entries(counted).flatMap(([name, [long, short]]) => [
    term(name, long),
    ...(short ? [term(name, short, 'short')] : []),
  ]),
  ...Object.entries(symbols).map(([name, forms]) => term(name, forms, 'symbol')),
  ...Object.entries(verbs).flatMap(([name, [long, short]]) => [
    term(name, long, 'verb'),
    ...(short ? [term(name, short, 'verb-short')] : []),
  ]),
  ...months.flatMap((month, i) => [
    term(`month-${number(i)}`, month),
    term(`month-${number(i)}`, month.length > 3 ? `${month.slice(0, 3)}.` : month, 'short'),
  ]),
  ...seasons.map((season, i) => term(`season-${number(i)}`, season)),
  ...Object.entries(ordinals).map(([name, text]) => term(name, text)),
  ...longOrdinals.map((text, i) => term(`long-ordinal-${number(i)}`, text)),
].join('\n    ');

interface Usage {
  quotes: readonly [string, string, string, string];
  punctuationInQuote: boolean;
  dates: string;
}

const american: Usage = {
  quotes: ['“', '”', '‘', '’'],
  punctuationInQuote: true,
  dates: `<date form="text"><date-part name="month" suffix=" "/><date-part name="day" suffix=", "/><date-part name="year"/></date>
  <date form="numeric"><date-part name="month" form="numeric-leading-zeros" suffix="/"/><date-part name="day" form="numeric-leading-zeros" suffix="/"/><date-part name="year"/></date>`,
};
const british: Usage = {
  quotes: ['‘', '’', '“', '”'],
  punctuationInQuote: false,
  dates: `<date form="text"><date-part name="day" suffix=" "/><date-part name="month" suffix=" "/><date-part name="year"/></date>
  <date form="numeric"><date-part name="day" form="numeric-leading-zeros" suffix="/"/><date-part name="month" form="numeric-leading-zeros" suffix="/"/><date-part name="year"/></date>`,
};

/** The English locale for a language tag: British for any English but that of the United States. */
export function englishLocale(language: string): string {
  const isBritish = /^en-/i.test(language) && !/^en-us$/i.test(language);
  const { quotes, punctuationInQuote, dates } = isBritish ? british : american;
  const names = ['open-quote', 'close-quote', 'open-inner-quote', 'close-inner-quote'];
  return `<?xml version="1.0" encoding="utf-8"?>
<locale xmlns="http://purl.org/net/xbiblio/csl" version="1.0" xml:lang="${isBritish ? 'en-GB' : 'en-US'}">
  <style-options punctuation-in-quote="${punctuationInQuote}"/>
  ${dates}
  <terms>
    ${names.map((name, i) => term(name, quotes[i]!)).join('\n    ')}
    ${words}
  </terms>
</locale>
`;
}
