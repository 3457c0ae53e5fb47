import { describe, expect, test } from 'vitest';
import { addressFrom, inScript, linkedData } from '../../src/dossier/linked-data.ts';
import { caseFile, dossierOf } from '../exports/published-content.ts';

describe('in a page', () => {
  test('nothing in it ends the element or opens a comment, and it reads as the same', () => {
    const nasty = '</script><!--<script>\u2028&amp;';
    const small = dossierOf({ 'cases/phelan.md': caseFile('', `Where ${nasty}?`) });
    const document = linkedData(
      small,
      [...small.cases.values()],
      addressFrom('/cases/phelan.html', undefined),
    );
    const text = inScript(document);
    expect(text).not.toMatch(/[<>&\u2028\u2029]/);
    expect(JSON.parse(text)).toEqual(JSON.parse(JSON.stringify(document)));
    expect(text).toContain('\\u003c/script');
  });

  test('addresses are relative to the page, or those of the site where it has one', () => {
    expect(addressFrom('/cases/x.html', undefined)('/people/y.html')).toBe('../people/y.html');
    expect(addressFrom('/index.html', undefined)('/people/y.html')).toBe('people/y.html');
    expect(addressFrom('/cases/x.html', 'https://a.example/b/')('/people/y.html')).toBe(
      'https://a.example/b/people/y.html',
    );
  });
});

test('nobody living is in it', () => {
  const files = {
    'people/niece.yaml': '- { id: nora-niece, name: Nora Quillinan, mentions: [deed#m2], living: true }\n',
    'records/deed.md': [
      '---',
      'title: Deed of 1870',
      'form: original',
      'made: 1870-05-01',
      'informants: { self: { person: nora-niece, knowledge: secondary } }',
      'mentions:',
      '  - { id: m1, name: Morris Whelan, birthplace: Bonmahon }',
      '  - { id: m2, name: Nora Quillinan }',
      '---',
      '',
    ].join('\n'),
  };
  const small = dossierOf(files);
  const text = JSON.stringify(
    linkedData(small, [...small.cases.values()], addressFrom('/index.html', undefined)),
  );
  expect(text).not.toMatch(/nora|quillinan/i);
  expect(text).toContain('a living person');
});
