/**
 * The zip of one case: its content folder in `content/`, what it came to at home in `case.json`, and a page of text that
 * says how it is opened. The same content gives the same bytes.
 */
import type { CaseFolder } from '../../dossier/case-folder.ts';
import { writeZip, type ZipEntry } from '../zip/zip.ts';

/** What `case.json` says. */
export interface CaseCard {
  version: 1;
  kind: 'whence-case';
  case: string;
  question: string;
  /** The digest at home. */
  digest: string | null;
  /** The digest of what is in the zip: another one where living people were withheld. */
  digestHere: string | null;
  standing: string | null;
  independent: number;
  withheld: number;
}

/** Every zip of a case ends in these words. */
export const caseZipComment = 'A case with all it rests on, made by Whence';

/** The entries of the zip, in order. */
export function caseEntries(folder: CaseFolder, card: CaseCard): ZipEntry[] {
  return [
    { path: 'case.json', from: Buffer.from(`${JSON.stringify(card, null, 2)}\n`) },
    { path: 'READ ME.txt', from: Buffer.from(readMe(card)) },
    ...folder.files
      .map(({ path, from }) => ({ path: `content/${path}`, from }))
      .sort((a, b) => (a.path < b.path ? -1 : 1)),
  ];
}

/** Writes the zip; every entry bears the first day a zip can name, so that no day of making is in it. */
export function writeCaseZip(file: string, entries: Iterable<ZipEntry>): Promise<string> {
  return writeZip(file, entries, '1980-01-01', caseZipComment);
}

function readMe({ case: id, question, digest, digestHere, withheld }: CaseCard): string {
  return [
    question,
    '',
    'This is a case with all it rests on: its records, people, places, searches, reviews and images, as plain text.',
    'Open it with Whence, into a folder of your own:',
    '',
    `  npm run import -- case ${id}.zip --content my-folder --write`,
    '  npm run check -- --content my-folder',
    '',
    ...(withheld === 0
      ? [`Its digest is ${digest ?? 'not known'}, here as at home.`]
      : [
          `${withheld === 1 ? 'One living person was' : `${withheld} living people were`} withheld. So the digest here, ${digestHere ?? 'not known'}, is another than at home, ${digest ?? 'not known'}: a review signed here is of this version.`,
        ]),
    '',
    'A conclusion is a reasoned opinion on the evidence seen, open to revision. Keep to the terms of the archives whose',
    'images are in it, and ask before you publish it.',
    '',
  ].join('\n');
}
