import { CannotRun } from '../../corpus/types.ts';
import { ImageProblem } from '../../dossier/images.ts';
import { CannotWrite, MustNotPublish } from '../../exports/site/problems.ts';
import { paintFor } from '../report/paint.ts';
import { mindOutput, outputRefused } from './output.ts';

/** 0: fine. 1: findings of severity error. 2: could not run. */
export type ExitCode = 0 | 1 | 2;

/**
 * Runs a verb and ends the process with its exit code, once everything printed has gone out. Refusals are told
 * as the sentences they are; anything else thrown is a fault of ours and says so.
 */
export async function exitWith(work: () => Promise<ExitCode> | ExitCode): Promise<void> {
  mindOutput();
  try {
    const code = await work();
    process.exitCode = outputRefused() ? 2 : code;
  } catch (error) {
    const room = noRoom(error);
    if (room !== undefined) {
      process.exitCode = 2;
      process.stderr.write(`${room}\n`);
      return;
    }
    const refused = [CannotRun, CannotWrite, MustNotPublish, ImageProblem].some(
      (kind) => error instanceof kind,
    );
    process.exitCode = error instanceof MustNotPublish || error instanceof ImageProblem ? 1 : 2;
    process.stderr.write(refused ? `${(error as Error).message}\n` : fault(error));
  }
}

const disks: Readonly<Record<string, string>> = {
  ENOSPC: 'there is no room left on the disk',
  EDQUOT: 'the room allotted to you on the disk is used up',
  EROFS: 'the disk can only be read',
  // What Node’s copying of folders says of a full disk, too.
  EIO: 'the disk takes nothing more, it is full or broken',
};

const inWords = [
  ['No space left on device', 'ENOSPC'],
  ['Disk quota exceeded', 'EDQUOT'],
  ['Read-only file system', 'EROFS'],
] as const;

/** What is said where a disk takes nothing more: no fault of the content, nor of ours. */
export function noRoom(error: unknown): string | undefined {
  if (!(error instanceof Error)) return undefined;
  const { message } = error;
  // Some of Node’s own copying says it in the words of the system alone; a thread hands on nothing but the message.
  const code = [(error as NodeJS.ErrnoException).code ?? '', message]
    .map(
      (text) =>
        /\b(?:ENOSPC|EDQUOT|EROFS|EIO)\b/.exec(text)?.[0] ??
        inWords.find(([words]) => text.includes(words))?.[1],
    )
    .find((found) => found !== undefined);
  return code === undefined
    ? undefined
    : `Writing stopped: ${disks[code]} (${message}). The earlier site, if there is one, is as it was. Make room, or name a folder on another disk with --out.`;
}

/** What is said of an error that no content should be able to cause. */
export function fault(error: unknown): string {
  const text = error instanceof Error ? (error.stack ?? error.message) : String(error);
  return `${paintFor(process.stderr).bold('This is a fault of Whence, not of your content.')} Please report it with these lines:\n${text}\n`;
}
