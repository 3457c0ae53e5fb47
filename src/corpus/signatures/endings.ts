/** The endings of signature files, after the whole name of the file they belong to, as the tools give them. */
export const signatureEndings = ['.sig', '.minisig'] as const;
