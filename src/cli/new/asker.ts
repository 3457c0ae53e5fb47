/** Questions on a terminal. Where nobody sits at one, or everything was said by options, the fallbacks are the answers. */
import { createInterface } from 'node:readline';
import { CannotRun } from '../../corpus/types.ts';

export interface Question {
  /** The question, without its mark at the end where it is no sentence. */
  ask: string;
  /** What Enter alone answers; shown in brackets. */
  fallback?: string | undefined;
  /** What is wrong with an answer, as a sentence; the question is then asked again. Never called with an empty one. */
  problem?: (answer: string) => string | undefined;
  /** Whether Enter alone will do where there is no fallback. */
  required?: boolean;
}

export interface Asker {
  /** Whether anybody is there to answer. */
  readonly asks: boolean;
  /** The answer, trimmed; the fallback for an empty one, and `undefined` where there is neither. */
  ask(question: Question): Promise<string | undefined>;
  /** Says something between questions. */
  say(text: string): void;
  /** No more questions: the terminal is given back. */
  end(): void;
}

/** Asks nobody. */
export const silent: Asker = {
  asks: false,
  ask: async ({ fallback }) => fallback,
  say() {},
  end() {},
};

/** Asks through a pair of streams, one line to an answer. Throws `CannotRun` when the input ends before the answers do. */
export function askerOn(input: NodeJS.ReadableStream, output: NodeJS.WritableStream): Asker {
  let lines: ReturnType<typeof createInterface> | undefined;
  let waiting: ((line: string | undefined) => void) | undefined;
  const early: string[] = [];
  let ended = false;
  const open = () => {
    if (lines) return;
    lines = createInterface({ input, output });
    lines.on('line', (line) => {
      const take = waiting;
      waiting = undefined;
      if (take) take(line);
      else early.push(line);
    });
    lines.on('SIGINT', () => lines?.close());
    lines.once('close', () => {
      ended = true;
      waiting?.(undefined);
    });
  };
  const nextLine = (prompt: string) => {
    open();
    lines!.setPrompt(prompt);
    lines!.prompt();
    if (early.length > 0) return Promise.resolve(early.shift());
    if (ended) return Promise.resolve(undefined);
    return new Promise<string | undefined>((take) => (waiting = take));
  };
  return {
    asks: true,
    async ask({ ask, fallback, problem, required }) {
      const shown = fallback === undefined ? '' : ` [${fallback}]`;
      const mark = /[?:]$/.test(ask) ? '' : ':';
      for (;;) {
        const line = await nextLine(`${ask}${shown}${mark} `);
        if (line === undefined) throw new CannotRun('\nStopped. Nothing was written.');
        const answer = line.trim();
        if (answer === '') {
          if (fallback !== undefined || !required) return fallback;
          output.write('  This one is needed.\n');
          continue;
        }
        const wrong = problem?.(answer);
        if (wrong === undefined) return answer;
        output.write(`  ${wrong}\n`);
      }
    },
    say(text) {
      output.write(`${text}\n`);
    },
    end() {
      lines?.close();
    },
  };
}
