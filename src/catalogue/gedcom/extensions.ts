/**
 * The extension tags of this tool in GEDCOM 7.0, documented in `HEAD.SCHMA` of each file: what the content contract
 * holds and the standard has no place for. A program that doesn't know them passes over them and loses nothing else.
 */

const base = 'https://whence.example/gedcom/';

/** Tag and URI of each. */
export const extensionTags = {
  /** Under a source: the record of the content contract, each of its keys as a structure of this extension. */
  _RECORD: `${base}RECORD`,
  /** A record: a place of the gazetteer. Under `PLAC`: a pointer to it. */
  _PLACE: `${base}PLACE`,
  /** Under a person: what the content contract says of them beyond the standard. */
  _PERSON: `${base}PERSON`,
  /** Under a citation: the mention in the cited record that the structure above tells again. */
  _MENTION: `${base}MENTION`,
  /** Under a family: it holds the parents of its children together, and says nothing of a marriage. */
  _PARENTS: `${base}PARENTS`,
  /**
   * A key of the content contract. Its payload is the name of the key and, after a space, the value where that is text;
   * any other scalar, and text that begins with `#`, stands as JSON after `#`. A mapping has `_KEY`s under it, a list
   * `_ITEM`s. Under `NOTE` and `TEXT` it names the key that the text is the value of.
   */
  _KEY: `${base}KEY`,
  /** An entry of a list of the content contract, its value as under `_KEY`. */
  _ITEM: `${base}ITEM`,
} as const;

export type ExtensionTag = keyof typeof extensionTags;

/** The `TYPE` of the `REFN` that holds the id of a person, a record or a place. */
export const idType = 'Whence id';
