/** Content that may leave the house: checked as for a build, and looked over for anyone living. */
import { loadCorpus } from '../../corpus/load.ts';
import { examine, type Examination } from '../../dossier/examine.ts';
import { tellingsToKeepOut } from '../../dossier/living-tellings.ts';
import { livingScan, plainText, wordsOfPicture } from '../../exports/site/living-scan.ts';
import { wordsOfPath } from '../../exports/site/page.ts';
import { demandNobody } from '../../exports/site/passed.ts';
import { MustNotPublish } from '../../exports/site/problems.ts';

export interface Publishable {
  examination: Examination;
  /** Gives a text back, or throws `MustNotPublish` where it names somebody withheld. */
  cleared(text: string, what: string): string;
  /** The same for the path of a file, and for what an image says beside its pixels. */
  clearedPath(path: string, bytes?: Buffer): void;
}

/** Examines a folder. Throws `MustNotPublish` where the check finds errors: they may be names of the living. */
export function publishable(content: string, today: string): Publishable {
  const examination = examine(loadCorpus(content), today);
  const errors = examination.findings.filter(({ severity }) => severity === 'error');
  if (errors.length > 0) {
    const [{ file, line, column, message }] = errors as [(typeof errors)[0]];
    throw new MustNotPublish(
      `The content has ${errors.length === 1 ? 'an error' : `${errors.length} errors`}, and nothing was written: ${file}:${line}:${column}: ${message} Run npm run check for ${errors.length === 1 ? 'how to mend it' : 'all of them'}.`,
    );
  }
  const { corpus, withheld } = examination;
  const scan = livingScan(tellingsToKeepOut(corpus, withheld));
  return {
    examination,
    cleared: (text, what) => {
      demandNobody(scan?.(plainText(text)), what);
      return text;
    },
    clearedPath: (path, bytes) => {
      demandNobody(scan?.(wordsOfPath(path), { ids: true }), path);
      if (bytes) demandNobody(scan?.(wordsOfPicture(bytes)), path);
    },
  };
}
