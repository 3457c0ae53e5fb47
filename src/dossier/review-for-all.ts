/**
 * A review as it may go out with a public case.
 *
 * A review lists the digest of everything it rested on. Made on the family’s own site it lists digests over people who
 * are living, and a digest of a name and a day of birth can be guessed back: whoever has the rest only has to try. So
 * what the public doesn’t see is left out of the list, and what the family sees more of has the digest of what the
 * public sees. The review stands to the case as it did: as current, or as of an earlier version with the same changes.
 */
import type { Facts } from '../model/facts.ts';
import type { Rests, Review } from '../model/review.ts';
import { digestOfParts, type CaseDigest } from './digest.ts';
import { isTellable, restKinds, type ReviewStatus } from './reviews.ts';

/** The digest of nothing, in place of one that could be over somebody living. */
const untold = 'sha256-e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855';

export interface Sites {
  /** The content as the public sees it, and the digest of the case there. */
  shown: Facts;
  digest: CaseDigest;
  /** The content as it is written, and the digest of the case on the family’s site. */
  written: Facts;
  family: CaseDigest;
}

/** The review itself where nothing of it could be guessed back, and another with the same answers otherwise. */
export function reviewForAll(review: Review, status: ReviewStatus | undefined, sites: Sites): Review {
  const { digest, family } = sites;
  if (review.digest === digest.whole) return review;
  const hidesNothing = restKinds.every((kind) => sameParts(digest.parts[kind], family.parts[kind]));
  if (status?.current)
    return hidesNothing
      ? review
      : { ...review, digest: digest.whole, ...(review.rests ? { rests: digest.parts } : {}) };
  if (!review.rests) return hidesNothing ? review : { ...review, digest: untold };
  const rests = publicRests(review.rests, sites, hidesNothing);
  const isChanged = restKinds.some((kind) => !sameParts(rests[kind], review.rests![kind]));
  return isChanged ? { ...review, rests, digest: digestOfParts(rests) } : review;
}

function publicRests(rests: Rests, { shown, written, digest, family }: Sites, hidesNothing: boolean): Rests {
  const of = (kind: keyof Rests): Record<string, string> =>
    Object.fromEntries(
      Object.entries(rests[kind]).flatMap(([id, was]): [string, string][] => {
        const here = own(digest.parts[kind], id);
        const there = own(family.parts[kind], id);
        if (!isTellable(written, shown, { kind, id })) return here === undefined ? [] : [[id, here]];
        if (was === here || (here === there && (here !== undefined || hidesNothing))) return [[id, was]];
        if (was === there) return here === undefined ? [] : [[id, here]];
        return [[id, untold]];
      }),
    );
  return Object.fromEntries(restKinds.map((kind) => [kind, of(kind)])) as Rests;
}

function sameParts(a: Readonly<Record<string, string>>, b: Readonly<Record<string, string>>): boolean {
  const keys = Object.keys(a);
  return keys.length === Object.keys(b).length && keys.every((key) => a[key] === own(b, key));
}

function own(map: Readonly<Record<string, string>>, id: string): string | undefined {
  return Object.hasOwn(map, id) ? map[id] : undefined;
}
