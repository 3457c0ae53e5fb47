/** How far recorded ages of one person lie apart, as linked records show. */

/** The share of recorded ages, of one large hand-linked set of Irish-born men, that agree within so many years. */
export const linkedAges: readonly { within: number; share: number }[] = [
  { within: 2, share: 0.53 },
  { within: 3, share: 0.67 },
  { within: 5, share: 0.81 },
  { within: 10, share: 0.95 },
];

/** Whose ages those are, for sentences. */
export const linkedSet = 'one large hand-linked set of Irish-born men';
