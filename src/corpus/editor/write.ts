/**
 * What a content folder holds for VS Code: schemas and snippets that are the tool's own, written anew whenever ids
 * change, and settings that are the author's, written only where there are none.
 */
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { Corpus } from '../types.ts';
import { editorIds } from './ids.ts';
import { jsonSchemas, schemaGlobs } from './json-schemas.ts';
import { snippetsText } from './snippets.ts';

/** Where the schemas lie in a content folder. A folder that begins with a dot is never read as content. */
export const schemaFolder = '.vscode/whence';

/** The settings that wire the schemas to the files, and let Markdown files be completed while typing. */
export const editorSettings = {
  'yaml.schemas': schemaGlobs(schemaFolder),
  '[markdown]': { 'editor.quickSuggestions': { comments: 'off', strings: 'off', other: 'on' } },
};

/** Whether the files were asked for once; then they are kept fresh. */
export function hasEditorFiles(dir: string): boolean {
  return existsSync(join(dir, schemaFolder));
}

/**
 * Writes what has changed. `settings` says what became of the author's settings: made, there already and left alone, or
 * left alone without naming the schemas. Throws what the system throws where nothing can be written.
 */
export function writeEditorFiles(corpus: Corpus): { settings: 'made' | 'theirs' | 'without' } {
  const at = (path: string) => join(corpus.root, path);
  const ids = editorIds(corpus);
  for (const [name, text] of jsonSchemas(ids)) freshen(at(`${schemaFolder}/${name}`), text);
  freshen(at('.vscode/whence.code-snippets'), snippetsText(ids));
  const settings = at('.vscode/settings.json');
  try {
    writeFileSync(settings, `${JSON.stringify(editorSettings, null, 2)}\n`, { flag: 'wx' });
    return { settings: 'made' };
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw error;
    return { settings: readFileSync(settings, 'utf8').includes(schemaFolder) ? 'theirs' : 'without' };
  }
}

/** A file that is the same already is not touched: editors would load it again. */
function freshen(file: string, text: string): void {
  if (existsSync(file) && readFileSync(file, 'utf8') === text) return;
  mkdirSync(dirname(file), { recursive: true });
  writeFileSync(file, text);
}
