/** Standard output that somebody else reads. */

/** Whoever reads the answers may stop early, as head does: then there is nobody left to tell, and the program ends. */
export function readersMayStop(): void {
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') throw error;
    process.exit(0);
  });
}
