/** What the overlay of the development server is told of an examination: plain data, and only what an author needs. */
import type { Finding } from '../../model/finding.ts';

/** The event of the development server that brings it, and the address it can be asked for at. */
export const toldEvent = 'whence:told';
export const toldAddress = '/@whence/told.json';

export interface Told {
  errors: Pick<Finding, 'file' | 'line' | 'column' | 'rule' | 'message' | 'help'>[];
  warnings: number;
  hints: number;
  /** The content could not be looked at at all: why, as a sentence. */
  failure: string | null;
  /** Pages still show what they showed before. */
  kept: boolean;
}

/**
 * The part of an examination that the overlay shows. Of errors that `mayBeTold` says no to, as where others read along,
 * only how many there are is told.
 */
export function toldOf(
  outcome: { examination: { findings: readonly Finding[] }; kept: boolean } | { failure: unknown },
  mayBeTold: (finding: Finding) => boolean = () => true,
): Told {
  if ('failure' in outcome) {
    const failure = outcome.failure instanceof Error ? outcome.failure.message : String(outcome.failure);
    return { errors: [], warnings: 0, hints: 0, failure, kept: true };
  }
  const { findings } = outcome.examination;
  const count = (severity: Finding['severity']) =>
    findings.filter((finding) => finding.severity === severity).length;
  const errors = findings.filter(({ severity }) => severity === 'error');
  const told = errors.filter(mayBeTold);
  return {
    errors: [
      ...told.map(({ file, line, column, rule, message, help }) => ({
        file,
        line,
        column,
        rule,
        message,
        help,
      })),
      ...(told.length < errors.length ? [untold(errors.length - told.length)] : []),
    ],
    warnings: count('warning'),
    hints: count('hint'),
    failure: null,
    kept: outcome.kept,
  };
}

function untold(many: number): Told['errors'][number] {
  return {
    file: 'site.yaml',
    line: 1,
    column: 1,
    rule: 'living-are-not-named',
    message: `${many === 1 ? 'One error may be' : `${many} errors may be`} about somebody living, and others on the network can read this page.`,
    help: 'The terminal in which npm start runs says what and where.',
  };
}

/** Whether a page of the site shows what stands in a file, by their names: `/records/deed.html` and `records/deed.md`. */
export function isPageOf(path: string, file: string): boolean {
  const page = path
    .replace(/\.html$/, '')
    .replace(/^\//, '')
    .split('/');
  const [folder = '', name = ''] = file.split('/');
  return page[0] === folder && page[1] !== undefined && page[1] === name.replace(/\.[a-z]+$/, '');
}

/** The errors in the order in which the overlay lists them: those of the page looked at first, then as they are. */
export function inOrderFor(path: string, errors: Told['errors']): Told['errors'] {
  const here = errors.filter(({ file }) => isPageOf(path, file));
  return [...here, ...errors.filter((error) => !here.includes(error))];
}
