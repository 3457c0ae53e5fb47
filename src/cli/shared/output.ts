/** Standard output that somebody else reads. */

/** Whether standard output has refused what was written to it, for another reason than that nobody reads on. */
let refused = false;
let minded = false;

/**
 * From here on nothing that becomes of standard output stops the work. Whoever reads may stop early, as head does: the
 * work goes on and ends as it would have. Where nothing more can be written, as on a full disk, that is told once, and
 * the exit code is 2.
 */
export function mindOutput(): void {
  if (minded) return;
  minded = true;
  process.stderr.on('error', () => {}); // there is nobody left to tell
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code === 'EPIPE' || error.code === 'ERR_STREAM_DESTROYED') return;
    process.exitCode = 2;
    if (!refused) process.stderr.write(`Standard output takes nothing more (${error.message}).\n`);
    refused = true;
  });
}

/** Whether something that was printed did not arrive, though somebody waited for it. */
export function outputRefused(): boolean {
  return refused;
}

/** Of an answer that could go on for long nothing more is worked out once nobody reads it: the program ends. */
export function readersMayStop(): void {
  mindOutput();
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code === 'EPIPE') process.exit(0);
  });
}
