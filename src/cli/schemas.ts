/** `npm run schemas`: JSON Schemas and snippets for editors, with the ids of a content folder or without any. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { jsonSchemas } from '../corpus/editor/json-schemas.ts';
import { editorSettings, schemaFolder, writeEditorFiles } from '../corpus/editor/write.ts';
import { loadCorpus } from '../corpus/load.ts';
import { CannotRun } from '../corpus/types.ts';
import { whyNot } from './new/folder.ts';
import { verb } from './shared/options.ts';
import { fromCaller, projectRoot } from './shared/paths.ts';
import { exitWith } from './shared/run.ts';

const options = verb(
  'npm run schemas --',
  'Writes what completes an author’s typing in VS Code. With --content, the ids of that folder are in it, and npm start keeps them fresh; settings that are there already are never changed.',
)
  .option('--content <dir>', 'a content folder, which gets .vscode/whence and snippets', fromCaller)
  .option(
    '--out <dir>',
    'a folder for the schemas alone, without ids: .vscode/schemas of the project',
    fromCaller,
  )
  .parse()
  .opts<{ content?: string; out?: string }>();

await exitWith(() => {
  const { content, out = join(projectRoot, '.vscode', 'schemas') } = options;
  try {
    if (content === undefined) {
      mkdirSync(out, { recursive: true });
      for (const [name, text] of jsonSchemas()) writeFileSync(join(out, name), text);
      process.stdout.write(`Wrote the schemas into ${out}.\n`);
    } else {
      const { settings } = writeEditorFiles(loadCorpus(content, { schemaOnly: true }));
      process.stdout.write(
        `Wrote the schemas into ${join(content, schemaFolder)} and the snippets beside them. Open ${content} as the folder in VS Code.\n${
          settings === 'without'
            ? `Your .vscode/settings.json was left as it is. For completion in lists, add to it:\n${JSON.stringify(editorSettings, null, 2)}\n`
            : ''
        }`,
      );
    }
  } catch (error) {
    const { code, path } = error as NodeJS.ErrnoException;
    if (code === undefined || error instanceof CannotRun) throw error;
    throw new CannotRun(whyNot(path ?? content ?? out, code));
  }
  return 0;
});
