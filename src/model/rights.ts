/**
 * What `rights` of an image say about showing it. Words for a reader otherwise; those that begin in one of these ways
 * say that it may not be published. The wordings are those archives stamp on copies (*common practice*).
 */
const refused = /^(?:none|no permission|not for publication|not to be published|private)(?![\p{L}\p{N}])/iu;

/** Whether an image may be published. Without a word about rights it may: the author has put it there. */
export function mayBePublished(rights: string | undefined): boolean {
  return rights === undefined || !refused.test(rights.trim());
}
