/** What an import has to say: in short on the terminal, in full in a file beside what it remembers. */
import type { Fate } from '../changes.ts';
import type { GedcomImport } from './import.ts';
import type { LineNotes } from './problem.ts';
import type { Tree } from './tree.ts';

export interface ImportReport {
  version: 1;
  kind: 'gedcom';
  /** The import’s name, and the file it read. */
  name: string;
  file: string;
  gedcom: string;
  characterSet: string;
  dryRun: boolean;
  cameIn: GedcomImport['counts'];
  /** Texts by what became of them. */
  texts: Record<Fate, number>;
  media: number;
  /** Notes by line: what was read for all its form, what came in otherwise than it stood, what wants an eye. */
  remarks: readonly { line: number; text: string }[];
  changed: readonly { line: number; text: string }[];
  doubts: readonly { line: number; text: string }[];
  aside: readonly { line: number; why: string }[];
  left: Record<string, number>;
  unplaced: readonly { place: string; count: number; line: number }[];
  /** Where the whole report is, relative to the content folder. */
  report: string;
}

/** Where the whole report of an import is. */
export function reportFile(name: string): string {
  return `imports/${name}.report.txt`;
}

export function importReport(done: GedcomImport, dryRun: boolean): ImportReport {
  const { tree, log } = done;
  const texts: Record<Fate, number> = {
    new: 0,
    changed: 0,
    same: 0,
    edited: 0,
    taken: 0,
    deleted: 0,
    elsewhere: 0,
    gone: 0,
  };
  for (const { fate } of done.plan.changes) texts[fate] += 1;
  return {
    version: 1,
    kind: 'gedcom',
    name: done.name,
    file: tree.file,
    gedcom: tree.head.version,
    characterSet: tree.head.charset,
    dryRun,
    cameIn: done.counts,
    texts,
    media: done.copies.length,
    remarks: tree.remarks.list,
    changed: log.changed.list,
    doubts: byLine(log.doubts.list),
    aside: log.aside.map(({ line, why }) => ({ line, why })),
    left: Object.fromEntries([...log.leftByPath].sort(([a], [b]) => (a < b ? -1 : 1))),
    unplaced: [...done.unplaced].map(([place, { count, line }]) => ({ place, count, line })),
    report: reportFile(done.name),
  };
}

function byLine<T extends { line: number }>(list: readonly T[]): T[] {
  return list.toSorted((a, b) => a.line - b.line);
}

const few = 5;

/** The report in short. */
export function shortReport(done: GedcomImport, dryRun: boolean): string {
  const { counts, tree, log } = done;
  const { texts } = importReport(done, dryRun);
  const lines = [
    `${tree.file}: GEDCOM ${tree.head.version || 'of no stated version'}, ${tree.head.charset}.`,
    `${dryRun ? 'Would come in' : 'Came in'}: ${counted(counts.people, 'person', 'people')}, ${counted(counts.families, 'family', 'families')}, ${counted(counts.places, 'place')} and ${counted(counts.records, 'record')} of ${counted(counts.sources, 'source')}${done.copies.length > 0 ? `, ${counted(done.copies.length, 'picture')}` : ''}.`,
    ...fates(texts, dryRun, done.again),
  ];
  if (dryRun) lines.push(...someFates(done));
  lines.push(
    ...some('Read all the same', tree.remarks),
    ...some('Changed on the way', log.changed),
    ...some('Look at', log.doubts),
  );
  if (log.aside.length > 0)
    lines.push(
      `Kept aside: ${counted(log.aside.length, 'text')} that ${log.aside.length === 1 ? 'belongs' : 'belong'} to somebody living or ${log.aside.length === 1 ? 'names' : 'name'} one. The report has ${log.aside.length === 1 ? 'it' : 'them'} in full.`,
    );
  const left = [...log.leftByPath].sort(([a, m], [b, n]) => n - m || (a < b ? -1 : 1));
  if (left.length > 0)
    lines.push(
      `Left in the file: ${left
        .slice(0, 8)
        .map(([path, n]) => `${path} (${n})`)
        .join(', ')}${left.length > 8 ? `, and ${left.length - 8} more kinds` : ''}.`,
    );
  if (done.unplaced.size > 0)
    lines.push(
      `${counted(done.unplaced.size, 'place')} ${done.unplaced.size === 1 ? 'names' : 'name'} no country that is known here, and ${done.unplaced.size === 1 ? 'stays' : 'stay'} as words, such as ${[
        ...done.unplaced.keys(),
      ]
        .slice(0, 2)
        .map((text) => `“${text}”`)
        .join(' and ')}. If they all lie in one country, say --country and its id.`,
    );
  lines.push(
    dryRun
      ? 'Nothing was written. To write it, add --write.'
      : `All of it, by line: ${reportFile(done.name)}`,
  );
  return `${lines.join('\n')}\n`;
}

const fateWords: Record<Fate, string> = {
  new: 'new',
  changed: 'changed since the last import',
  same: 'as they were',
  edited: 'edited by you, so left as they are',
  taken: 'yours and not from this import, so left as they are',
  deleted: 'deleted by you, so not brought back',
  elsewhere: 'moved by you, so left as they are',
  gone: 'not in this file any more, and kept',
};

function fates(texts: Record<Fate, number>, dryRun: boolean, again: boolean): string[] {
  if (!again) return [];
  const said = (Object.keys(fateWords) as Fate[])
    .filter((fate) => texts[fate] > 0)
    .map((fate) => `${texts[fate]} ${fateWords[fate]}`);
  return [`${dryRun ? 'Entries would be' : 'Entries'}: ${said.join('; ')}.`];
}

function someFates({ plan, again }: GedcomImport): string[] {
  const lines: string[] = [];
  for (const fate of ['new', 'changed', 'edited', 'taken', 'elsewhere', 'deleted', 'gone'] as const) {
    const places = plan.changes.filter((change) => change.fate === fate).map(({ place }) => place);
    if (places.length === 0 || (fate === 'new' && !again && places.length > 40)) continue;
    const shown = places.slice(0, 20);
    lines.push(
      ...shown.map((place) => `  ${signs[fate]} ${place}`),
      ...(places.length > 20 ? [`  ${signs[fate]} and ${places.length - 20} more`] : []),
    );
  }
  return lines.length > 0
    ? ['  + new   ~ changed   ! yours, left alone   - not in the file any more', ...lines]
    : [];
}

const signs: Record<Exclude<Fate, 'same'>, string> = {
  new: '+',
  changed: '~',
  edited: '!',
  taken: '!',
  elsewhere: '!',
  deleted: '!',
  gone: '-',
};

function some(title: string, notes: LineNotes): string[] {
  if (notes.count === 0) return [];
  const shown = byLine(notes.list)
    .slice(0, few)
    .map(({ line, text }) => `  line ${line}: ${text}`);
  return [
    `${title}:`,
    ...shown,
    ...(notes.count > few ? [`  and ${notes.count - few} more in the report.`] : []),
  ];
}

function counted(n: number, one: string, many = `${one}s`): string {
  return `${n.toLocaleString('en')} ${n === 1 ? one : many}`;
}

/** The report in full. */
export function* wholeReport(done: GedcomImport): Generator<string> {
  const { tree, log, plan } = done;
  yield `Import of ${tree.file} as “${done.name}”\n\n${shortReport(done, false)}`;
  yield* section('Read all the same, for all its form', tree.remarks);
  yield* section('Came in, but not as it stood', log.changed);
  yield* section('Wants an eye', log.doubts);
  if (done.unplaced.size > 0) {
    yield '\nPlaces that lead to no country, kept as words\n\n';
    for (const [place, { count, line }] of done.unplaced)
      yield `line ${line}: ${place}${count > 1 ? ` (${count} times)` : ''}\n`;
  }
  if (log.aside.length > 0) {
    yield '\nKept aside, since the living are not published. Bring in by hand what may be seen.\n\n';
    for (const { line, why, text } of byLine(log.aside))
      yield `line ${line} (${why}): ${text.replace(/\n/g, '\n    ')}\n`;
  }
  if (log.left.length > 0) {
    yield '\nLeft: nothing here holds it\n\n';
    for (const { line, path, text, under } of byLine(log.left))
      yield `line ${line}: ${path}${text === '' ? '' : ` ${text}`}${under > 0 ? ` (with ${under} ${under === 1 ? 'line' : 'lines'} under it)` : ''}\n`;
  }
  const told = plan.changes.filter(({ fate }) => fate !== 'same' && (done.again || fate !== 'new'));
  if (told.length > 0) {
    yield '\nEntries, and what became of them\n\n';
    for (const { place, fate } of told) yield `${place}: ${fateWords[fate]}\n`;
  }
}

function* section(title: string, notes: LineNotes): Generator<string> {
  if (notes.count === 0) return;
  yield `\n${title}\n\n`;
  for (const { line, text } of byLine(notes.list)) yield `line ${line}: ${text}\n`;
  if (notes.count > notes.list.length) yield `and ${notes.count - notes.list.length} more of the same sort\n`;
}

/** What breaks the grammar of GEDCOM 7.0, by line. */
export function faultsReport({ file, faults, head }: Tree): string {
  const shown = byLine(faults.list).slice(0, 20);
  return [
    `${file} says it is GEDCOM ${head.version}, and breaks its grammar in ${counted(faults.count, 'place')}. Nothing was written.`,
    ...shown.map(({ line, text }) => `  line ${line}: ${text}`),
    ...(faults.count > shown.length ? [`  and ${faults.count - shown.length} more.`] : []),
    'Have it written anew by the program it comes from, or read it as far as it goes with --lenient.',
    '',
  ].join('\n');
}
