/** The guides for authors and reviewers; their text stands in the MDX files beside this one. */
export const guides = {
  title: 'Guides',
  description: 'How to make a case, and how to test one.',
  lede: 'For whoever makes a case, and for whoever is asked to test one.',
  forReader: { author: 'For authors', reviewer: 'For reviewers' },
  others: 'Other guides',
  example: (title: string): string => `Worked example: ${title}`,
  byHand: 'Worked by hand, with all its files',
};
