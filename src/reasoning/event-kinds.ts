/**
 * Kinds of event by the words that records and authors use for them. Kinds are the author’s own words; these are the
 * usual ones (*common practice*), however they are capitalised, in the languages of the site.
 */
const births: ReadonlySet<string> = new Set(['birth', 'fødsel']);
const baptisms: ReadonlySet<string> = new Set(['baptism', 'christening', 'dåp']);

/** Whether a kind of event is a birth, a baptism, or neither. */
export function birthOrBaptism(kind: string): 'birth' | 'baptism' | undefined {
  const word = eventWord(kind);
  return births.has(word) ? 'birth' : baptisms.has(word) ? 'baptism' : undefined;
}

const ends: ReadonlySet<string> = new Set(['death', 'burial', 'interment', 'cremation']);

/** Whether a kind of event is one after which somebody is dead. */
export function endsLife(kind: string): boolean {
  return ends.has(eventWord(kind));
}

/** A kind of event as it is compared. */
export function eventWord(kind: string): string {
  return kind.normalize('NFC').trim().toLowerCase();
}
