/** Reviews beside the case as it is now: of exactly this content or of an earlier one, and what changed since. */
import { idPattern } from '../model/common.ts';
import type { Corpus } from '../corpus/types.ts';
import { quoted } from '../corpus/finding.ts';
import { nearest } from '../corpus/suggestions.ts';
import { rules, type RuleId } from '../catalogue/rules.ts';
import type { Case } from '../model/case.ts';
import { mentionAt, type Facts } from '../model/facts.ts';
import type { Finding, ValuePath } from '../model/finding.ts';
import type { Rests, Review } from '../model/review.ts';
import type { CaseResult } from '../reasoning/types.ts';
import { answerable } from './claims.ts';
import { digestOfParts, type CaseDigest } from './digest.ts';

/** One thing a case rests on, or rested on, that is not as it was when a review was made. */
export interface Change {
  kind: keyof Rests;
  /** The id; of the case itself, the key. */
  id: string;
  how: 'added' | 'removed' | 'changed';
}

/** How a review stands to the case as it is now. */
export interface ReviewStatus {
  /** It answers exactly this content. */
  current: boolean;
  /** What changed since; `null` where the review does not say what it rested on. */
  changes: Change[] | null;
}

/** The kinds of things a case rests on, in the order in which changes are told. */
export const restKinds = [
  'case',
  'evidence',
  'records',
  'mentions',
  'people',
  'places',
  'searches',
] as const satisfies readonly (keyof Rests)[];

/** What was added, removed or changed from one footing to another, by kind and then in the order of the ids. */
export function changesBetween(before: Rests, after: Rests): Change[] {
  return restKinds.flatMap((kind) => {
    const [old, fresh] = [before[kind], after[kind]];
    const ids = [...new Set([...Object.keys(old), ...Object.keys(fresh)])].sort();
    return ids.flatMap((id): Change[] => {
      const [was, is] = [own(old, id), own(fresh, id)];
      if (was === is) return [];
      return [{ kind, id, how: was === undefined ? 'added' : is === undefined ? 'removed' : 'changed' }];
    });
  });
}

function own(map: Readonly<Record<string, string>>, id: string): string | undefined {
  return Object.hasOwn(map, id) ? map[id] : undefined;
}

/**
 * How every review of a case stands to it. `digest` is that of the case as this site shows it; a review may have been
 * made on the site for the other audience, which shows the living or does not, and whose digest is worked out when it is
 * asked for: either is the case as it is. What concerns anything that `shown` leaves out is not told.
 */
export function reviewsOf(
  corpus: Corpus,
  c: Case,
  digest: CaseDigest,
  { shown, elsewhere }: { shown: Facts; elsewhere: () => CaseDigest },
): Map<string, ReviewStatus> {
  const found = new Map<string, ReviewStatus>();
  for (const review of corpus.reviews) {
    if (review.case !== c.id) continue;
    if (review.digest === digest.whole || review.digest === elsewhere().whole) {
      found.set(review.id, { current: true, changes: [] });
      continue;
    }
    const { rests } = review;
    const ways = rests ? [digest, elsewhere()].map(({ parts }) => changesBetween(rests, parts)) : [];
    const [fewest] = ways.sort((a, b) => a.length - b.length);
    found.set(review.id, {
      current: false,
      changes: fewest ? fewest.filter((change) => isTellable(corpus, shown, change)) : null,
    });
  }
  return found;
}

/**
 * What this site leaves out is not named, nor anybody who is in the content no more: that may be why they are not.
 */
export function isTellable(written: Facts, shown: Facts, { kind, id }: Pick<Change, 'kind' | 'id'>): boolean {
  switch (kind) {
    case 'people':
      return shown.people.has(id);
    case 'records':
      return shown.records.has(id) || !written.records.has(id);
    case 'searches':
      return shown.searches.has(id) || !written.searches.has(id);
    case 'mentions':
      return mentionAt(shown, id) !== undefined || mentionAt(written, id) === undefined;
    default:
      return true;
  }
}

/** What is wrong with the reviews of a case, and which of their questions wait for an answer. */
export function reviewFindings(
  corpus: Corpus,
  c: Case,
  result: CaseResult,
  statuses: ReadonlyMap<string, ReviewStatus>,
): Finding[] {
  const points = answerable(c, result);
  return corpus.reviews.flatMap((review) => {
    const status = statuses.get(review.id);
    return status ? ofReview(corpus, review, status, points) : [];
  });
}

function ofReview(
  corpus: Corpus,
  review: Review,
  { current, changes }: ReviewStatus,
  points: readonly string[],
): Finding[] {
  const findings: Finding[] = [];
  const add = (rule: RuleId, path: ValuePath, message: string, help: string) =>
    findings.push({
      severity: rules[rule].severity,
      rule,
      ...corpus.locate(`review:${review.id}`, path),
      message,
      help,
    });
  const file = `reviews/${review.case}`;

  if (review.rests && digestOfParts(review.rests) !== review.digest)
    add(
      'digest-fits-its-parts',
      ['digest'],
      'The digest of this review is not that of the parts listed under rests: the file was changed after it was saved.',
      'Put the file back as the reviewer saved it; neither is ever written by hand.',
    );
  else if (!current && changes === null)
    add(
      'digest-is-known',
      ['digest'],
      'This is not the digest of the case as it is now, and the review does not list what it rested on.',
      'It is shown as a review of an earlier version, without what has changed. Ask the reviewer for the file as the review sheet saved it.',
    );

  review.points.forEach(({ point }, index) => {
    if (points.includes(point) || !idPattern.test(point.toLowerCase())) return;
    const meant = nearest(point, points);
    add(
      'answered-point-exists',
      ['points', index, 'point'],
      `The case has no point or claim ${quoted(point)}${current ? '' : ' any more'}.`,
      current && meant
        ? `Did you mean ${meant}?`
        : 'Leave the review as it is, and ask its reviewer to look at the case as it is now.',
    );
  });

  const replied = (point: string | undefined) =>
    corpus.replies.some((reply) => `${reply.case}/${reply.review}` === review.id && reply.point === point);
  const open = review.points.filter(({ answer }) => answer !== 'agree');
  const verb = { query: 'queries', disagree: 'disagrees on' } as const;
  for (const { point, answer } of open) {
    if (answer === 'agree' || replied(point)) continue;
    add(
      'queries-are-answered',
      ['points', review.points.findIndex((one) => one.point === point), 'answer'],
      `${review.reviewer} ${verb[answer]} ${quoted(point)}, and nothing is replied to that.`,
      `Reply in ${file}/replies.yaml, with review: ${review.id.slice(review.case.length + 1)} and this point; leave the reviewer’s file as it is.`,
    );
  }
  if (review.overall !== 'agree' && open.length === 0 && !replied(undefined))
    add(
      'queries-are-answered',
      ['overall'],
      `${review.reviewer} ${review.overall === 'query' ? 'has questions about this case' : 'disagrees with this case'}, and nothing is replied to that.`,
      `Reply in ${file}/replies.yaml, with review: ${review.id.slice(review.case.length + 1)} and no point; leave the reviewer’s file as it is.`,
    );
  return findings;
}

/** A reviewer who does not agree with the case or with something in it. */
export interface Disagreement {
  reviewer: string;
  /** With the case as a whole, not only with a point. */
  whole: boolean;
  /** With the case as it is now, not with an earlier version. */
  current: boolean;
}

/** Who disagrees, by the latest review of each reviewer. */
export function disagreements(reviews: readonly (Review & { current: boolean })[]): Disagreement[] {
  const latest = new Map<string, Review & { current: boolean }>();
  for (const review of reviews) {
    const name = review.reviewer.normalize('NFC').toLowerCase();
    const before = latest.get(name);
    if (!before || before.date <= review.date) latest.set(name, review);
  }
  return [...latest.values()].flatMap(({ reviewer, overall, points, current }) => {
    const whole = overall === 'disagree';
    return whole || points.some(({ answer }) => answer === 'disagree') ? [{ reviewer, whole, current }] : [];
  });
}
