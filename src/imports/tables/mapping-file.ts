/** Mapping files: how a table was taken, saved for the next of its kind. */
import { readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { SourceText } from '../../corpus/source-text.ts';
import { CannotRun } from '../../corpus/types.ts';
import { readYaml } from '../../corpus/yaml.ts';
import { block } from '../../corpus/yaml-text.ts';
import { demandPlainFile } from '../plain-file.ts';
import { mappingFile, type MappingFile } from './mapping.ts';

/** Reads a mapping file. Throws `CannotRun` with its file and line where it can’t be used. */
export function readMapping(path: string): MappingFile {
  const name = basename(path);
  demandPlainFile(path);
  let text: string;
  try {
    text = readFileSync(path, 'utf8')
      .replace(/^\uFEFF/, '')
      .replace(/\r\n?/g, '\n');
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code;
    throw new CannotRun(
      code === 'ENOENT'
        ? `There is no mapping file ${path}.`
        : `${path} can’t be read: ${(error as Error).message}.`,
    );
  }
  const { value, findings } = readYaml(new SourceText(name, text));
  const [wrong] = findings.filter(({ severity }) => severity === 'error');
  if (wrong) throw new CannotRun(`${name}:${wrong.line}:${wrong.column}: ${wrong.message} ${wrong.help}`);
  const judged = mappingFile.safeParse(value ?? {});
  if (judged.success) return judged.data;
  const { path: at, message, code } = judged.error.issues[0]!;
  throw new CannotRun(
    code === 'unrecognized_keys'
      ? `${name} has keys that no mapping has: ${judged.error.issues[0]!.code === 'unrecognized_keys' ? (judged.error.issues[0] as { keys: string[] }).keys.join(', ') : ''}. A mapping has columns, group, id, title, dates, record and mention.`
      : `In ${name}, ${at.join('.') || 'the file'} is not as a mapping has it: ${message}`,
  );
}

/** A mapping as a file, with a word of what may be changed in it. */
export function mappingText(mapping: MappingFile): string {
  const { columns, group, record, mention, ...rest } = mapping;
  return [
    '# How the columns of a table become records. Change what is wrong, and use it with --mapping.',
    '# Column: field. “npm run import -- table --help” tells more; ignore leaves a column out.',
    ...block({ columns }),
    '# The columns that tell one record from another; [] for one record of the whole table.',
    ...block({ group: group ?? [] }),
    ...block(rest),
    '# What is said of every record; {Heading} is filled in from the first row of each.',
    ...block({ record }),
    ...(Object.keys(mention).length > 0 ? block({ mention }) : []),
    '',
  ].join('\n');
}
