import { mkdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { editorIds } from '../../src/corpus/editor/ids.ts';
import { jsonSchemas } from '../../src/corpus/editor/json-schemas.ts';
import { snippetsText } from '../../src/corpus/editor/snippets.ts';
import { hasEditorFiles, schemaFolder, writeEditorFiles } from '../../src/corpus/editor/write.ts';
import { loadCorpus } from '../../src/corpus/load.ts';
import { references } from '../../src/corpus/reference-table.ts';
import { goodContent, withContent } from './content.ts';

const corpus = withContent(goodContent, (dir) => loadCorpus(dir));
const ids = editorIds(corpus);
type Schema = {
  items?: Schema;
  properties: Record<string, unknown>;
  $defs: Record<string, { enum: string[]; enumDescriptions: string[] }>;
};
const schema = (name: string) => JSON.parse(jsonSchemas(ids).get(name)!) as Schema;

describe('schemas with the ids of a content folder', () => {
  test('offer what there is and accept what is not there yet', () => {
    const { $defs, properties } = schema('case.json');
    expect($defs['person']!.enum).toEqual(['maurice-phelan', 'johanna-kirwan']);
    expect($defs['place']!.enum.slice(0, 2)).toEqual(['kill', 'knockmahon']);
    expect($defs['place']!.enum).toContain('co-waterford');
    expect($defs['source']!.enum).toEqual(['deed#m1', 'deed#m2']);
    expect($defs['source']!.enumDescriptions[0]).toBe('Morris Whelan in: Deed of 1870');
    expect(properties['subject']).toMatchObject({ anyOf: [{ $ref: '#/$defs/person' }, { type: 'string' }] });
  });
  test('reach every place where something outside the file is named', () => {
    const files = {
      record: 'record',
      case: 'case',
      person: 'people',
      place: 'places',
      series: 'series',
      search: 'searches',
    } as const;
    for (const [kind, file] of Object.entries(files)) {
      const text = jsonSchemas(ids).get(`${file}.json`)!;
      const targets = new Set((references.get(kind as keyof typeof files) ?? []).map(({ target }) => target));
      for (const target of targets)
        if (['person', 'place', 'record', 'series', 'mention', 'source'].includes(target))
          expect([kind, target, text.includes(`"#/$defs/${target}"`)]).toEqual([kind, target, true]);
    }
  });
  test('a list and the one bare value that stands for it both offer them', () => {
    const text = JSON.stringify(schema('searches.json').items!.properties['for']);
    expect(text.match(/#\/\$defs\/person/g)).toHaveLength(2);
  });
});

test('snippets give the ids in Markdown too, by id and by name', () => {
  const snippets = JSON.parse(snippetsText(ids)) as Record<
    string,
    { scope: string; prefix: string[]; body: unknown }
  >;
  expect(snippets['person maurice-phelan']).toEqual({
    scope: 'markdown,mdx,yaml',
    prefix: ['maurice-phelan', 'Maurice Phelan'],
    body: 'maurice-phelan',
    description: 'person: Maurice Phelan',
  });
  expect(snippets['mention deed#m1']).toMatchObject({ body: 'deed#m1' });
  expect(
    Object.keys(snippets).filter((name) => name.startsWith('a') && !name.includes('#')).length,
  ).toBeGreaterThan(4);
});

describe('the files in a content folder', () => {
  test('are written once asked for, fresh afterwards, and are no content', () =>
    withContent(goodContent, (dir) => {
      expect(hasEditorFiles(dir)).toBe(false);
      expect(writeEditorFiles(loadCorpus(dir))).toEqual({ settings: 'made' });
      expect(hasEditorFiles(dir)).toBe(true);
      expect(loadCorpus(dir).findings).toEqual(corpus.findings);
      const file = join(dir, schemaFolder, 'people.json');
      const { mtimeMs } = statSync(file);
      writeEditorFiles(loadCorpus(dir));
      expect(statSync(file).mtimeMs).toBe(mtimeMs);
      writeFileSync(join(dir, 'people/new.yaml'), '- { id: bridget-phelan, name: Bridget }\n');
      writeEditorFiles(loadCorpus(dir));
      expect(readFileSync(file, 'utf8')).toContain('bridget-phelan');
    }));
  test('never touch settings of the author', () =>
    withContent(goodContent, (dir) => {
      mkdirSync(join(dir, '.vscode'));
      const mine = '{ // mine\n  "editor.fontSize": 15,\n}\n';
      writeFileSync(join(dir, '.vscode/settings.json'), mine);
      expect(writeEditorFiles(loadCorpus(dir))).toEqual({ settings: 'without' });
      expect(readFileSync(join(dir, '.vscode/settings.json'), 'utf8')).toBe(mine);
      writeFileSync(
        join(dir, '.vscode/settings.json'),
        mine.replace('15', `15, "yaml.schemas": { "${schemaFolder}/people.json": [] }`),
      );
      expect(writeEditorFiles(loadCorpus(dir))).toEqual({ settings: 'theirs' });
    }));
});
