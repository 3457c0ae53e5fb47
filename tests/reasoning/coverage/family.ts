/** Small families for tests of coverage and plans, written as a content folder and read by the program's own reader. */
import { loadCorpus } from '../../../src/corpus/load.ts';
import type { Facts } from '../../../src/model/facts.ts';
import { withContent } from '../../corpus/content.ts';

export interface FamilyFiles {
  people: readonly unknown[];
  records?: Readonly<Record<string, object>>;
  searches?: readonly object[];
  series?: readonly object[];
  places?: readonly object[];
  case?: object;
}

const places = [
  { id: 'hancock', name: 'Hancock', kind: 'city', within: ['houghton-county'] },
  { id: 'houghton-county', name: 'Houghton County', kind: 'county', within: ['michigan'] },
  { id: 'kill', name: 'Kill', kind: 'civil parish', within: ['co-waterford'] },
  { id: 'knockmahon', name: 'Knockmahon', kind: 'townland', within: ['kill'] },
];

/** The facts of a family, with a case `c` about the first person unless another is given. */
export function familyFacts(files: FamilyFiles): Facts {
  const list = (items: readonly unknown[]) => items.map((item) => `- ${JSON.stringify(item)}\n`).join('');
  const subject = (files.people[0] as { id: string }).id;
  const texts: Record<string, string> = {
    'site.yaml': 'title: Test\ninvented: true\n',
    'places/p.yaml': list([...places, ...(files.places ?? [])]),
    'people/p.yaml': list(files.people),
    'cases/c.md': `---\n${JSON.stringify({ question: 'From where?', subject, ...files.case })}\n---\n`,
  };
  if (files.searches?.length) texts['searches/s.yaml'] = list(files.searches);
  if (files.series?.length) texts['series/s.yaml'] = list(files.series);
  for (const [id, record] of Object.entries(files.records ?? {}))
    texts[`records/${id}.md`] =
      `---\n${JSON.stringify({ title: id, form: 'original', informants: {}, ...record })}\n---\n`;
  return withContent(texts, (dir) => {
    const corpus = loadCorpus(dir);
    const errors = corpus.findings.filter(({ severity }) => severity === 'error');
    if (errors.length > 0) throw new Error(errors.map(({ message }) => message).join('\n'));
    return corpus;
  });
}

/** A census record of one household at Hancock. */
export const census = (year: number, mentions: readonly object[], day = '06-01') => ({
  series: `us-federal-census-${year}`,
  made: `${year}-${day}`,
  place: 'hancock',
  mentions,
});
