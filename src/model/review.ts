import { z } from 'zod';
import { edtfDate, edtfDay, id, listOf, text } from './common.ts';

const answer = z.enum(['agree', 'query', 'disagree']);

/** What a reviewer says of a point, or of the whole. */
export type Answer = z.output<typeof answer>;

const digest = z.string().regex(/^sha256-[0-9a-f]{64}$/, {
  error: 'The digest is sha256- and 64 hexadecimal digits, as the proof page shows it.',
});

const digests = z.record(text, digest).default({});

const rests = z
  .strictObject({
    case: digests,
    evidence: digests,
    records: digests,
    mentions: digests,
    people: digests,
    places: digests,
    searches: digests,
  })
  .meta({
    description: 'The digest of each thing the case rested on, from which that of the whole is worked out.',
  });

/** The digests of what a case rests on: one for each thing, by kind and id. */
export type Rests = z.output<typeof rests>;

/** One file `reviews/<case>/*.yaml`: a reviewer's answer to one exact content of a case. */
export const reviewFile = z.strictObject({
  reviewer: text,
  date: edtfDate,
  digest,
  points: z.array(z.strictObject({ point: text, answer, comment: text.optional() })).default([]),
  overall: answer,
  comment: text.optional().meta({ description: 'What the reviewer says of the case as a whole.' }),
  rests: rests.optional(),
});

/** A review with the case it answers and its file. */
export type Review = z.output<typeof reviewFile> & { id: string; case: string };

/** The name of the author's own file among the reviews of a case. */
export const repliesName = 'replies';

/** The file `reviews/<case>/replies.yaml`: what the author answers to reviewers, whose own files stay as they are. */
export const repliesFile = z.strictObject({
  replies: z.array(
    z.strictObject({
      review: id.meta({ description: 'The file of the review, without .yaml: 2025-06-01-ellen-roe.' }),
      point: text.optional().meta({
        description:
          'The point that is answered, as the review names it; left out for the review as a whole.',
      }),
      date: edtfDay.optional(),
      reply: text,
    }),
  ),
});

export type RepliesFile = z.output<typeof repliesFile>;

/** A reply with the case and the id of the review it answers. */
export type Reply = RepliesFile['replies'][number] & {
  case: string;
  /** Its place in the file. */
  index: number;
};

const key = z.strictObject({ key: text, from: edtfDay.optional(), to: edtfDay.optional() });

/** One entry of `reviewers.yaml`: somebody whose signature the author knows. */
export const reviewerEntry = z.strictObject({
  name: text,
  keys: listOf(
    z.union([text.transform((line): z.output<typeof key> => ({ key: line })), key], {
      error: 'A key is its public line, or { key: …, from: …, to: … } with the days it was in use.',
    }),
  ).meta({ description: 'Public lines of SSH keys, or public keys of minisign.' }),
});

/** A known reviewer with their public keys. */
export type Reviewer = z.output<typeof reviewerEntry>;

/** What the signature beside a review shows. Absent signatures have no outcome. */
export type Signature = {
  /** Which tools make it. */
  form: 'SSH' | 'minisign';
  /** How those tools name the key. */
  key: string;
} & (
  | { kind: 'known'; signer: string }
  /** By a key of somebody known, outside the days it was in use. */
  | { kind: 'out-of-date'; signer: string }
  | { kind: 'unknown' }
);
