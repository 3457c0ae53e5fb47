import { writeFile } from 'node:fs';

/** Writes files while the next ones are being made. */
export interface WriteBehind {
  /** Begins to write a file. The promise holds back whoever makes files faster than the disk takes them. */
  write(file: string, bytes: Uint8Array): Promise<void>;
  /** Waits until everything is written. Throws the first thing that went wrong. */
  finish(): Promise<void>;
}

/** At most `most` files are on their way at once. */
export function writeBehind(most = 64): WriteBehind {
  let underWay = 0;
  let failed: Error | undefined;
  let waiting: (() => void)[] = [];
  const change = () => new Promise<void>((resolve) => waiting.push(resolve));
  const ended = (error: Error | null) => {
    underWay--;
    failed ??= error ?? undefined;
    const told = waiting;
    waiting = [];
    for (const resolve of told) resolve();
  };
  const demandNoFailure = () => {
    if (failed) throw failed;
  };
  return {
    async write(file, bytes) {
      demandNoFailure();
      underWay++;
      writeFile(file, bytes, ended);
      while (underWay > most) await change();
      demandNoFailure();
    },
    async finish() {
      while (underWay > 0) await change();
      demandNoFailure();
    },
  };
}
