/** Writes the JSON Schemas of the content contract for editors: `node src/cli/schemas.ts [--out DIR]`. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { jsonSchemas } from '../corpus/json-schemas.ts';

const { values } = parseArgs({ options: { out: { type: 'string' }, help: { type: 'boolean', short: 'h' } } });

if (values.help) {
  console.log(
    'Usage: schemas [--out DIR]\n\nWrites a JSON Schema for each kind of file, for editors. DIR is .vscode/schemas unless given.',
  );
} else {
  const out =
    values.out === undefined
      ? join(import.meta.dirname, '..', '..', '.vscode', 'schemas')
      : resolve(process.env['INIT_CWD'] ?? process.cwd(), values.out);
  mkdirSync(out, { recursive: true });
  for (const [name, text] of jsonSchemas()) writeFileSync(join(out, name), text);
}
