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

/** The entries of the zip, in order; the images of the folder are the files made of them, by their paths. */
export function caseEntries(
  folder: CaseFolder,
  pictures: ReadonlyMap<string, string>,
  card: CaseCard,
): ZipEntry[] {
  return [
    { path: 'case.json', from: Buffer.from(`${JSON.stringify(card, null, 2)}\n`) },
    { path: 'READ ME.txt', from: Buffer.from(readMe(card, folder)) },
    ...[
      ...folder.files.map(({ path, text }) => ({ path: `content/${path}`, from: Buffer.from(text) })),
      ...[...pictures].map(([path, from]) => ({ path: `content/${path}`, from })),
    ].sort((a, b) => (a.path < b.path ? -1 : 1)),
  ];
}

/** Writes the zip; every entry bears the first day a zip can name, so that no day of making is in it. */
export function writeCaseZip(file: string, entries: Iterable<ZipEntry>): Promise<string> {
  return writeZip(file, entries, '1980-01-01', caseZipComment);
}

/** What was left out of the folder or changed in it, in sentences; nothing where it is all there. */
export function leftOut({
  withheld,
  picturesLeft,
  reviewsLeft,
  reviewsChanged,
}: Pick<CaseFolder, 'withheld' | 'picturesLeft' | 'reviewsLeft' | 'reviewsChanged'>): string[] {
  const names = (ids: readonly string[]) => ids.map((id) => id.slice(id.indexOf('/') + 1)).join(', ');
  return [
    ...(withheld > 0
      ? [`${withheld === 1 ? 'One living person was' : `${withheld} living people were`} withheld.`]
      : []),
    ...(picturesLeft > 0
      ? [
          `${picturesLeft === 1 ? 'One image was' : `${picturesLeft} images were`} left out: what a public site doesn’t show stays behind here too.`,
        ]
      : []),
    ...(reviewsChanged.length > 0
      ? [
          `${reviewsChanged.length === 1 ? 'A review' : 'Reviews'} of the family’s version (${names(reviewsChanged)}) ${reviewsChanged.length === 1 ? 'stands' : 'stand'} here as of the public one, since the digests of it could be guessed back to somebody living.`,
        ]
      : []),
    ...(reviewsLeft.length > 0
      ? [
          `${reviewsLeft.length === 1 ? 'A signed review' : 'Signed reviews'} of the family’s version (${names(reviewsLeft)}) ${reviewsLeft.length === 1 ? 'was' : 'were'} left out: what is signed can’t be changed, and the digests in it could be guessed back to somebody living.`,
        ]
      : []),
  ];
}

function readMe({ case: id, question, digest, digestHere }: CaseCard, folder: CaseFolder): string {
  const left = leftOut(folder);
  return [
    question,
    '',
    'This is a case with all it rests on: its records, people, places, searches, reviews and images, as plain text.',
    'Open it with Whence, into a folder of your own:',
    '',
    `  npm run import -- case ${id}.zip --content my-folder --write`,
    '  npm run check -- --content my-folder',
    '',
    ...left,
    digest === digestHere
      ? `Its digest is ${digest ?? 'not known'}, here as at home.`
      : `${left.length > 0 ? 'So the' : 'The'} digest here, ${digestHere ?? 'not known'}, is another than at home, ${digest ?? 'not known'}: a review signed here is of this version.`,
    '',
    ...(folder.pictures.length > 0
      ? [
          'Images are made anew, no larger than a page needs, without what a camera or scanner wrote into them.',
          '',
        ]
      : []),
    'A conclusion is a reasoned opinion on the evidence seen, open to revision. Keep to the terms of the archives whose',
    'images are in it, and ask before you publish it.',
    '',
  ].join('\n');
}
