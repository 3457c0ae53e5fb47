import { z } from 'zod';
import { decimal, edtfDate, id, listOf, text } from './common.ts';

const within = z.union(
  [
    id.transform((place) => ({
      place,
      from: undefined as string | undefined,
      to: undefined as string | undefined,
    })),
    z.strictObject({ place: id, from: edtfDate.optional(), to: edtfDate.optional() }),
  ],
  { error: 'Each entry of within is a place id, or { place: …, from: …, to: … }.' },
);

/** One entry of `places/*.yaml`. Name and kind may be left out when it adds to a built-in place. */
export const placeEntry = z.strictObject({
  id,
  name: text.optional(),
  kind: text.optional(),
  within: listOf(within).default([]),
  variants: listOf(text).default([]),
  overlaps: listOf(id).default([]),
  lat: decimal.pipe(z.number().min(-90).max(90)).optional(),
  lon: decimal.pipe(z.number().min(-180).max(180)).optional(),
  from: edtfDate.optional(),
  to: edtfDate.optional(),
  source: text.optional(),
});
export type PlaceEntry = z.output<typeof placeEntry>;

/** A place after the author's entry has been laid over the built-in one, if there is one. */
export type Place = Omit<PlaceEntry, 'name' | 'kind'> & {
  name: string;
  kind: string;
  builtIn: boolean;
  iso?: string | undefined;
  chapman?: string | undefined;
};
