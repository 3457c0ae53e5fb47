/** A review as the file that goes into the content folder. */
import type { Answer, Rests } from '../../src/model/review.ts';

/** What a reviewer has filled in, by point; `''` is the case as a whole. */
export type Answers = Record<string, { answer?: Answer | undefined; comment?: string | undefined }>;

export interface Filled {
  reviewer: string;
  /** `YYYY-MM-DD` */
  date: string;
  answers: Answers;
}

/**
 * The text of a review file. Everything a reviewer wrote stands in double quotes with its signs escaped, as YAML 1.2
 * reads them, so that no word of theirs can become a key. Points without an answer are left out.
 */
export function reviewText(
  { reviewer, date, answers }: Filled,
  about: { case: string; digest: string; rests: Rests; points: readonly string[] },
): string {
  const whole = answers[''];
  const points = about.points.flatMap((point) => {
    const { answer, comment = '' } = answers[point] ?? {};
    if (answer === undefined) return [];
    return [
      `  - point: ${point}`,
      `    answer: ${answer}`,
      ...(comment.trim() === '' ? [] : [`    comment: ${quoted(comment.trim())}`]),
    ];
  });
  const comment = whole?.comment?.trim() ?? '';
  return [
    `# A review, as the review sheet saved it. It goes unchanged into reviews/${about.case}/ of the content folder.`,
    `reviewer: ${quoted(reviewer.trim())}`,
    `date: ${quoted(date)}`,
    `digest: ${about.digest}`,
    `overall: ${whole?.answer ?? ''}`,
    ...(comment === '' ? [] : [`comment: ${quoted(comment)}`]),
    ...(points.length > 0 ? ['points:', ...points] : ['points: []']),
    'rests:',
    ...Object.entries(about.rests).flatMap(([kind, digests]) => {
      const rows = Object.entries(digests).map(([id, digest]) => `    ${quoted(id)}: ${digest}`);
      return rows.length > 0 ? [`  ${kind}:`, ...rows] : [`  ${kind}: {}`];
    }),
    '',
  ].join('\n');
}

/** A text in double quotes. JSON is YAML but for the signs that YAML does not let stand as they are. */
function quoted(text: string): string {
  return JSON.stringify(text.toWellFormed?.() ?? text).replace(
    /[\u007f-\u009f\u2028\u2029\ufeff\ufffe\uffff]/g,
    (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
}

/** The name of the file: `2025-06-01-ellen-roe.yaml`. */
export function fileName({ reviewer, date }: Filled): string {
  const name = reviewer
    .replace(/[Øø]/g, 'o')
    .replace(/[Ææ]/g, 'ae')
    .replace(/ß/g, 'ss')
    .normalize('NFD')
    .replace(/[\u0300-\u036f]/g, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .slice(0, 60)
    .replace(/^-|-$/g, '');
  return `${date}-${name || 'reviewer'}.yaml`;
}
