/** One line that says what is being done, on a terminal; nothing anywhere else. */
export interface ProgressLine {
  say(text: string): void;
  clear(): void;
}

/** A progress line on a stream. */
export function progressOn(stream: NodeJS.WriteStream): ProgressLine {
  if (!stream.isTTY) return { say() {}, clear() {} };
  let shown = false;
  return {
    say(text) {
      stream.write(`\r\x1b[K${text}`);
      shown = true;
    },
    clear() {
      if (shown) stream.write('\r\x1b[K');
      shown = false;
    },
  };
}
