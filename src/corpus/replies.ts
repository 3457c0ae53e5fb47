/** Answers of reviewers and replies of the author: whether each belongs to something that was said. */
import type { Review, Reply } from '../model/review.ts';
import type { EntryOf, Findings } from './entries.ts';
import { listed, quoted } from './finding.ts';
import { nearest } from './suggestions.ts';

/** Every point is answered once in a review, and every reply is to a review and to a point that it answers. */
export function checkReplies(
  { reviews, replies }: { reviews: readonly Review[]; replies: readonly Reply[] },
  entryOf: EntryOf,
  findings: Findings,
): void {
  for (const review of reviews) {
    const seen = new Set<string>();
    review.points.forEach(({ point }, index) => {
      if (seen.has(point))
        findings.add(
          entryOf('review', review.id)!,
          ['points', index, 'point'],
          'point-is-answered-once',
          `The point ${quoted(point)} is answered twice in this review.`,
          'Keep the answer that is meant.',
        );
      seen.add(point);
    });
  }
  for (const reply of replies) {
    const entry = entryOf('replies', `${reply.case}/replies`)!;
    const path = ['replies', reply.index];
    const ofCase = reviews.filter((review) => review.case === reply.case);
    const review = ofCase.find(({ id }) => id === `${reply.case}/${reply.review}`);
    if (!review) {
      if (entryOf('review', `${reply.case}/${reply.review}`)) continue;
      const names = ofCase.map(({ id }) => id.slice(reply.case.length + 1));
      const meant = nearest(reply.review, names);
      findings.add(
        entry,
        [...path, 'review'],
        'reference-resolves',
        `There is no review ${quoted(reply.review)} in this folder.`,
        meant
          ? `Did you mean ${meant}?`
          : names.length > 0
            ? `There ${names.length === 1 ? 'is' : 'are'} ${listed(names, 'and')}.`
            : 'Put the file of the reviewer beside this one.',
        { breaks: true },
      );
      continue;
    }
    const points = review.points.map(({ point }) => point);
    if (reply.point === undefined || points.includes(reply.point)) continue;
    const meant = nearest(reply.point, points);
    findings.add(
      entry,
      [...path, 'point'],
      'reference-resolves',
      `The review ${quoted(reply.review)} answers no point ${quoted(reply.point)}.`,
      meant
        ? `Did you mean ${meant}?`
        : points.length > 0
          ? `It answers ${listed(points, 'and')}; without a point, a reply is to the review as a whole.`
          : 'Leave the point out: the reply is then to the review as a whole.',
      { breaks: true },
    );
  }
}
