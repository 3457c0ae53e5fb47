/**
 * Sentences as reasoning leaves them: the key of the words, and the values that go into them. The interface has the
 * words, in each of its languages; nothing else turns one into text.
 */
export type Said<Values> = { [Key in keyof Values]: { key: Key } & Values[Key] }[keyof Values];

/** The words of a language for such sentences: a function for every key, of one sentence or of several. */
export type WordsFor<Values, Words = string> = { [Key in keyof Values]: (values: Values[Key]) => Words };

/** The sentence in the words of a language. */
export function worded<Values, Words = string>(said: Said<Values>, words: WordsFor<Values, Words>): Words {
  return words[said.key](said);
}
