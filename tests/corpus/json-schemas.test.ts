import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { jsonSchemas, schemaGlobs } from '../../src/corpus/editor/json-schemas.ts';

const editor = join(import.meta.dirname, '..', '..', '.vscode');

describe('JSON Schemas for editors', () => {
  test('are the ones kept with the project (node src/cli/schemas.ts writes them anew)', () => {
    const kept = readdirSync(join(editor, 'schemas')).toSorted();
    expect(kept).toEqual([...jsonSchemas().keys()].toSorted());
    for (const [name, text] of jsonSchemas())
      expect(readFileSync(join(editor, 'schemas', name), 'utf8')).toBe(text);
  });

  test('are wired to the files they describe', () => {
    const settings = JSON.parse(readFileSync(join(editor, 'settings.json'), 'utf8')) as Record<
      string,
      unknown
    >;
    expect(settings['yaml.schemas']).toEqual(schemaGlobs('.vscode/schemas', 'content'));
  });

  test('know the keys of the content contract', () => {
    const record = JSON.parse(jsonSchemas().get('record.json')!) as {
      required: string[];
      properties: Record<string, unknown>;
      additionalProperties: boolean;
    };
    expect(record.required).toEqual(['title', 'form']);
    expect(record.additionalProperties).toBe(false);
    expect(Object.keys(record.properties)).toContain('mentions');
  });
});
