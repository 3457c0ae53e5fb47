/** Times a command as a whole process, with the peak memory of it and its children together. */
import { spawn } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';

export interface Measured {
  seconds: number;
  /** Peak resident memory of the process tree in MB, or `null` where the system does not tell. */
  peak: number | null;
  code: number;
}

/** Runs a command once. Output is thrown away. */
export function measure(command: string, args: readonly string[], cwd: string): Promise<Measured> {
  return new Promise((resolve, reject) => {
    const start = process.hrtime.bigint();
    const child = spawn(command, args, {
      cwd,
      stdio: 'ignore',
      env: { ...process.env, INIT_CWD: cwd, ASTRO_TELEMETRY_DISABLED: '1' },
    });
    let peak: number | null = null;
    const poll = setInterval(() => {
      const now = treeMemory(child.pid!);
      if (now !== null && now > (peak ?? 0)) peak = now;
    }, 40);
    child.once('error', reject);
    child.once('exit', (code) => {
      clearInterval(poll);
      resolve({ seconds: Number(process.hrtime.bigint() - start) / 1e9, peak, code: code ?? 1 });
    });
  });
}

/** The middle one of several runs, after one that does not count. */
export async function median(run: () => Promise<Measured>, runs: number): Promise<Measured> {
  await run();
  const all: Measured[] = [];
  for (let i = 0; i < runs; i++) all.push(await run());
  return all.sort((a, b) => a.seconds - b.seconds)[Math.floor(runs / 2)]!;
}

/** Resident memory in MB of a process and all below it, from /proc. */
function treeMemory(root: number): number | null {
  try {
    const parents = new Map<number, number>();
    const memory = new Map<number, number>();
    for (const entry of readdirSync('/proc')) {
      if (!/^\d+$/.test(entry)) continue;
      try {
        const status = readFileSync(`/proc/${entry}/status`, 'utf8');
        parents.set(Number(entry), Number(/^PPid:\s*(\d+)/m.exec(status)?.[1] ?? 0));
        memory.set(Number(entry), Number(/^VmRSS:\s*(\d+)/m.exec(status)?.[1] ?? 0));
      } catch {
        // The process ended between the listing and the look.
      }
    }
    let total = 0;
    for (const [pid, kilobytes] of memory) {
      let at: number | undefined = pid;
      while (at !== undefined && at !== root && at > 1) at = parents.get(at);
      if (at === root) total += kilobytes;
    }
    return total / 1024;
  } catch {
    return null;
  }
}
