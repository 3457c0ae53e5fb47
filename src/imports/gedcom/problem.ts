/** What is said of a file that cannot be read, or not as it stands. */

/** A file that can’t be taken in: a sentence with the line in it. */
export class BrokenFile extends Error {
  override name = 'BrokenFile';
  readonly line: number;

  constructor(line: number, sentence: string) {
    super(sentence);
    this.line = line;
  }
}

/** Something about one line. */
export interface LineNote {
  line: number;
  text: string;
}

/** So many notes of one kind are kept in full; of more, only how many there were. */
const mostNotes = 2000;

/** Notes of one kind, bounded, since a hostile file has a fault in every line. */
export class LineNotes {
  readonly list: LineNote[] = [];
  count = 0;

  add(line: number, text: string): void {
    this.count += 1;
    if (this.list.length < mostNotes) this.list.push({ line, text });
  }
}
