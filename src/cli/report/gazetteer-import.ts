/** What an import of a gazetteer has to say: what is new, what is there already, what could not be placed. */
import type { PlannedChange } from '../../imports/changes.ts';
import type { Merged } from '../../imports/gazetteers/merge.ts';
import type { GazetteerFile } from '../../imports/gazetteers/types.ts';
import { wrap, type Paint } from './paint.ts';

export interface GazetteerImport {
  file: GazetteerFile;
  merged: Merged;
  lists: readonly { file: string; text: string }[];
  /** What becomes of each list. */
  changes: readonly PlannedChange[];
  /** The files written; absent where it was only a look. */
  written: readonly string[] | undefined;
  addVariants: boolean;
  variantFiles: readonly string[];
  /** Lists of the author’s in which variants could not be added surely. */
  refused: readonly string[];
  /** The content folder as the author names it. */
  content: string;
}

/** The import as one JSON document. */
export function gazetteerJson({
  file,
  merged,
  lists,
  written,
  variantFiles,
  refused,
}: GazetteerImport): string {
  return `${JSON.stringify(
    {
      version: 1,
      gazetteer: { file: file.name, form: file.form, encoding: file.encoding, rows: file.rows },
      chosen: file.places.length,
      added: merged.added.length,
      already: merged.already,
      outside: merged.outside,
      variants: Object.fromEntries([...merged.known].map(([id, names]) => [id, [...names]])),
      problems: [...file.problems, ...merged.problems].map((problem) => ({ file: file.name, ...problem })),
      lists: lists.map((list) => list.file),
      variantFiles,
      refused,
      written: written ?? [],
    },
    null,
    2,
  )}\n`;
}

/** The import as text. */
export function gazetteerText(done: GazetteerImport, show: number, paint: Paint): string {
  const { file, merged, lists, written, content } = done;
  const lines: string[] = [];
  const say = (text: string, indent = '') => lines.push(wrap(text, paint.width, indent, indent));
  const { added, known, already, outside } = merged;
  say(
    `${paint.bold(file.name)}: ${file.form === 'geonames' ? 'a gazetteer of the GeoNames format' : `a table, ${file.encoding}`}, ${plural(file.rows, 'row')}, ${file.places.length.toLocaleString('en')} of them asked for.`,
  );
  lines.push('');
  say(
    [
      `${plural(added.length, 'place')} ${added.length === 1 ? 'is' : 'are'} new`,
      ...(already > 0
        ? [`${already.toLocaleString('en')} ${already === 1 ? 'is' : 'are'} there already`]
        : []),
      ...(outside > 0
        ? [`${outside.toLocaleString('en')} ${outside === 1 ? 'lies' : 'lie'} outside what was asked for`]
        : []),
    ].join(', ') + '.',
  );
  for (const [kind, count] of kindsOf(added)) lines.push(`  ${String(count).padStart(7)}  ${kind}`);
  if (added.length > 0) lines.push('');
  const entries = lists.flatMap(({ text }) => text.split('\n').filter((line) => line.startsWith('- ')));
  for (const line of entries.slice(0, show)) lines.push(`  ${line}`);
  if (entries.length > show)
    lines.push(paint.dim(`  … and ${(entries.length - show).toLocaleString('en')} more.`));
  const problems = [...file.problems, ...merged.problems];
  if (problems.length > 0) {
    lines.push(
      '',
      paint.bold(`What could not be taken (${problems.length}${problems.length >= 500 ? ' or more' : ''})`),
    );
    for (const { line, column, value, message, help } of problems.slice(0, 10)) {
      lines.push(`  ${file.name}:${line}:${column}${value === '' ? '' : `  “${value.slice(0, 50)}”`}`);
      say(`${message} ${help}`, '    ');
    }
    if (problems.length > 10) lines.push(`  … and ${plural(problems.length - 10, 'more')}`);
  }
  lines.push('');
  if (known.size > 0 && !done.addVariants)
    say(
      `The file has other names for ${plural(known.size, 'place')} you have already, such as ${example(known)}. They were left as they are; --add-variants adds them.`,
    );
  if (done.addVariants && known.size > 0)
    say(
      `Other names ${written ? 'were added' : 'would be added'} to ${plural(known.size, 'place')} in ${done.variantFiles.join(', ') || 'no list'}.`,
    );
  for (const refused of done.refused)
    say(`${refused} is written in a way in which names can’t be added surely; it was left as it is.`);
  const kept = done.changes.filter(({ fate }) => fate === 'deleted').map(({ place }) => place);
  if (kept.length > 0)
    say(
      `${kept.join(', ')} ${kept.length === 1 ? 'was' : 'were'} imported before, and taken away by you since: not brought back. To have the places again, give the list another name with --name.`,
    );
  const files = lists
    .map((list) => list.file)
    .filter((file) => !kept.includes(file))
    .join(', ');
  if (written && written.length > 0)
    say(`Written: ${written.join(', ')}. Next: npm run check -- --content ${content}`);
  else if (files !== '' || done.variantFiles.length > 0)
    say(`Nothing was written. To write ${files || 'the names'} into ${content}, add --write.`);
  else say('There is nothing to write.');
  return `${lines.join('\n')}\n`;
}

function kindsOf(places: Merged['added']): [string, number][] {
  const counts = new Map<string, number>();
  for (const { kind } of places) counts.set(kind, (counts.get(kind) ?? 0) + 1);
  return [...counts].sort(([a, m], [b, n]) => n - m || (a < b ? -1 : 1)).slice(0, 12);
}

function example(known: Merged['known']): string {
  const [id, names] = [...known][0]!;
  return `“${[...names][0]!}” for ${id}`;
}

const plural = (n: number, what: string) =>
  `${n.toLocaleString('en')} ${what}${n === 1 || what === 'more' ? '' : 's'}`;
