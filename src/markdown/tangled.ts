/**
 * Whether a body can be parsed in reasonable time. Parsers of Markdown look back from every closing bracket and every
 * mark of emphasis for one that opens, so that a paragraph of thousands of them takes minutes; nobody writes that, but
 * a file that was damaged, or made to harm, may hold it.
 */

/** Brackets, tags and marks of emphasis in one stretch of text without a blank line. */
const most = 3000;
/** Signs of quotations and lists at the head of one line. */
const deepest = 50;

const opener = /[ \t]{0,8}(?:[>+*-]|\d{1,9}[.)])/y;

/** The offset of the first stretch of a body that is too tangled to be read, or `undefined`. */
export function tangledAt(body: string): number | undefined {
  let marks = 0;
  let stretch = 0;
  for (let start = 0; start < body.length;) {
    let end = body.indexOf('\n', start);
    if (end < 0) end = body.length;
    let blank = true;
    for (let at = start; at < end; at++) {
      const sign = body.charCodeAt(at);
      if (sign > 32) blank = false;
      // < [ ] * _ ~
      if (sign === 60 || sign === 91 || sign === 93 || sign === 42 || sign === 95 || sign === 126) marks++;
    }
    if (blank) {
      marks = 0;
      stretch = end + 1;
    } else if (marks > most) return stretch;
    else if (openersAt(body, start) > deepest) return start;
    start = end + 1;
  }
  return undefined;
}

function openersAt(body: string, start: number): number {
  let count = 0;
  opener.lastIndex = start;
  while (count <= deepest && opener.test(body)) count++;
  return count;
}
