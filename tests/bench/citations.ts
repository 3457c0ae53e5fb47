/**
 * How long it takes to cite: records all different, each with its full note, short note and entry of the source list,
 * beside citation-js making entries, and entries and one note each, from the same items, style and run. Read the ratios.
 *
 *   node tests/bench/citations.ts [--references 2000] [--runs 3] [--each 200]
 */
import { parseArgs } from 'node:util';
import { plugins } from '@citation-js/core';
import '@citation-js/plugin-csl';
import { bibtexOf } from '../../src/citations/bibtex.ts';
import { cslItemOf } from '../../src/citations/csl-json.ts';
import { formatCitations } from '../../src/citations/format.ts';
import { englishLocale } from '../../src/citations/english-locale.ts';
import type { Formatted } from '../../src/citations/processor.ts';
import { noteStyle } from '../../src/citations/note-style.ts';
import type { Citation } from '../../src/model/citation.ts';
import { recordFile, type SourceRecord } from '../../src/model/record.ts';
import { seeded } from './random.ts';

/** Records with citations all different, of every sort a family’s papers have. */
export function citedRecords(count: number, seed = 1871): SourceRecord[] {
  const random = seeded(seed);
  const family = () =>
    random.pick(['Phelan', 'Kirwan', 'Power', 'Tregear', 'Aho', 'Lindqvist', 'O’Brien', 'Veale']);
  const given = () =>
    random.pick(['Maurice', 'Johanna', 'Thomas', 'Ellen', 'Henrik', 'Alice', 'Mary', 'James']);
  const town = () =>
    random.pick(['Hancock, Michigan', 'Houghton, Michigan', 'Kill, Co. Waterford', 'Dublin', 'Camborne']);
  const day = (i: number) =>
    `${1820 + (i % 100)}-${String(1 + (i % 12)).padStart(2, '0')}-${String(1 + (i % 28)).padStart(2, '0')}`;
  const kept = (i: number) => ({
    archive: random.pick(['County Clerk’s Office', 'National Library', 'State Archives']),
    'archive-place': town(),
    archive_location: `box ${i % 90}, folder ${i % 17}`,
  });
  const sorts: ((i: number) => Citation)[] = [
    (i) => ({
      type: 'manuscript',
      authority: `Parish of ${family()}`,
      title: `Baptism of ${given()} ${family()}`,
      genre: 'baptismal register',
      'event-date': day(i),
      page: String(i),
      ...kept(i),
    }),
    (i) => ({
      type: 'dataset',
      jurisdiction: 'United States',
      authority: 'Census Office',
      title: `Population schedule, ${town()}, household ${i}`,
      issued: day(i),
      page: String(i % 60),
      ...kept(i),
    }),
    (i) => ({
      type: 'document',
      title: `Declaration of intention no. ${i}, ${given()} ${family()}`,
      issued: day(i),
      ...kept(i),
    }),
    (i) => ({
      type: 'article-newspaper',
      title: `Death of ${given()} ${family()} (${i})`,
      'container-title': 'Copper Range Echo',
      'publisher-place': 'Hancock, Michigan',
      issued: day(i),
      page: '4',
    }),
    (i) => ({
      type: 'legal_case',
      authority: 'Probate Court',
      jurisdiction: 'Houghton County',
      title: `Estate of ${given()} ${family()}`,
      number: String(i),
      issued: `${1880 + (i % 20)}/${1905 + (i % 9)}`,
      ...kept(i),
    }),
    (i) => ({
      type: 'personal_communication',
      author: [{ given: given(), family: family() }],
      recipient: [{ given: given(), family: family() }],
      issued: day(i),
      ...kept(i),
    }),
    (i) => ({
      type: 'book',
      author: [
        { given: given(), family: family() },
        { given: given(), family: family() },
      ],
      title: `A history of the parish, part ${i}`,
      publisher: 'Range Press',
      'publisher-place': town(),
      issued: String(1850 + (i % 80)),
      page: `${i}-${i + 7}`,
    }),
    (i) => ({
      type: 'webpage',
      title: `Burials, page ${i}`,
      'container-title': 'City of Hancock',
      URL: `https://records.example/burials?page=${i}`,
      accessed: '2024-05-17',
    }),
  ];
  return Array.from({ length: count }, (_, i) => ({
    ...recordFile.parse({ title: `Record ${i}`, form: 'original', seen: 'image' }),
    cite: sorts[i % sorts.length]!(i),
    id: `record-${i}`,
    body: '',
  }));
}

interface Options {
  references?: number;
  runs?: number;
  /** For how many references citation-js is called one by one; the time is multiplied up. */
  each?: number;
}

/** Rows to print: what, milliseconds, how many times as long as ours. */
export function citationsReport({ references = 2000, runs = 3, each = 200 }: Options = {}): string[][] {
  const records = citedRecords(references);
  const items = records.map((record) => cslItemOf(record, []));
  const csl = plugins.config.get('@csl');
  csl.styles.add('whence', noteStyle);
  csl.locales.add('en-US', englishLocale('en-US'));
  const styled = { template: 'whence', lang: 'en-US', format: 'html' } as const;

  const ours = middle(runs, () => formatCitations(records, { language: 'en' }));
  const before = new Map<string, Formatted>();
  formatCitations(records, { language: 'en', before });
  const again = middle(runs, () => formatCitations(records, { language: 'en', before }));
  const changed = records.map((record, i) =>
    i % 200 === 7 ? { ...record, cite: { ...record.cite!, note: `seen again` } } : record,
  );
  const few = middle(runs, () => formatCitations(changed, { language: 'en', before: new Map(before) }));
  const list = middle(runs, () => plugins.output.format('bibliography', items, styled));
  const listAndNotes = middle(runs, () => {
    plugins.output.format('bibliography', items, styled);
    return plugins.output.format('citation', items, { ...styled, entry: items.map(({ id }) => id) });
  });
  const some = items.slice(0, each);
  const oneByOne =
    (middle(1, () => some.map((item) => plugins.output.format('bibliography', [item], styled))) *
      references) /
    some.length;
  const bibtex = middle(runs, () => records.map((record) => bibtexOf(record, ['seen as an image'])));

  const row = (what: string, milliseconds: number) => [
    what,
    milliseconds.toFixed(0),
    (milliseconds / ours).toFixed(2),
  ];
  return [
    [`${references} references`, 'ms', '× ours'],
    row('full notes, short notes and source list', ours),
    row('the same again, kept from before', again),
    row('one in two hundred changed', few),
    row('citation-js, source list alone, one batch', list),
    row('citation-js, source list and one note each, one batch', listAndNotes),
    row(`citation-js, entries called one by one (${some.length} timed)`, oneByOne),
    row('the library as BibTeX', bibtex),
  ];
}

/**
 * Milliseconds of processor time of the middle run, which what else the machine does hardly lengthens; after one that
 * does not count, where there are several.
 */
function middle(runs: number, work: () => unknown): number {
  if (runs > 1) work();
  const times = Array.from({ length: runs }, () => {
    const start = process.cpuUsage();
    work();
    const { user, system } = process.cpuUsage(start);
    return (user + system) / 1000;
  }).sort((a, b) => a - b);
  return times[runs >> 1]!;
}

if (process.argv[1] === import.meta.filename) {
  const { values } = parseArgs({
    options: { references: { type: 'string' }, runs: { type: 'string' }, each: { type: 'string' } },
  });
  const number = (text: string | undefined) => (text === undefined ? undefined : Number(text));
  const options: Options = {};
  for (const key of ['references', 'runs', 'each'] as const) {
    const given = number(values[key]);
    if (given !== undefined) options[key] = given;
  }
  for (const row of citationsReport(options)) console.log(row.join('\t'));
}
