/** Commands run in the process of the tests. */
import type { Command } from 'commander';
import { vi } from 'vitest';

interface Run {
  code: number;
  out: string;
}

/** Runs a command in this process, as the verb would: what it prints, and its exit code. */
export async function run(command: Command, ...args: string[]): Promise<Run> {
  let out = '';
  const take = (text: string | Uint8Array) => {
    out += String(text);
    return true;
  };
  const spies = [process.stdout, process.stderr].map((stream) =>
    vi.spyOn(stream, 'write').mockImplementation(take),
  );
  const before = process.exitCode;
  try {
    await command.parseAsync(args, { from: 'user' });
    return { code: Number(process.exitCode ?? 0), out };
  } finally {
    for (const spy of spies) spy.mockRestore();
    process.exitCode = before;
  }
}
