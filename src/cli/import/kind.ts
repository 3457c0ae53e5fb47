/** What kind of file is meant, where only a file is named. */
import { closeSync, openSync, readSync, statSync } from 'node:fs';
import type { Command } from 'commander';
import { kindOfFile } from '../../imports/kind-of-file.ts';
import { fromCaller } from '../shared/paths.ts';

/** The arguments of `import` with the kind of the file put before it, where the first is no kind. */
export function withKind(args: readonly string[], program: Command): string[] {
  const [first] = args;
  if (first === undefined) return ['--help'];
  const kinds = program.commands.map((command) => command.name());
  if (kinds.includes(first) || ['help', '-h', '--help'].includes(first)) return [...args];
  const file = first.startsWith('-') ? fileAmong(args) : first;
  if (file === undefined) return [...args];
  const kind = kindOfFile(file, () => headOf(fromCaller(file)));
  return kinds.includes(kind) ? [kind, ...args] : [...args];
}

/** The file that is meant, where options stand before it: the first that is there and is no option’s own. */
function fileAmong(args: readonly string[]): string | undefined {
  return args.find(
    (arg, i) =>
      !arg.startsWith('-') &&
      !['--mapping', '--save-mapping', '--content'].includes(args[i - 1] ?? '') &&
      statSync(fromCaller(arg), { throwIfNoEntry: false })?.isFile(),
  );
}

/** The first bytes of a file; nothing where it can’t be read, which the import itself says better. */
function headOf(path: string): Buffer {
  const head = Buffer.alloc(16_384);
  try {
    if (!statSync(path).isFile()) return Buffer.alloc(0);
    const file = openSync(path, 'r');
    try {
      return head.subarray(0, readSync(file, head, 0, head.length, 0));
    } finally {
      closeSync(file);
    }
  } catch {
    return Buffer.alloc(0);
  }
}
