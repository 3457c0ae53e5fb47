/**
 * Names in scripts that put no space between words: 王小明 is looked for inside running text, whatever stands around it.
 * A space or a dot between surname and given name makes no difference, nor does the width of the letters.
 */

/** The scripts, and Korean, whose particles stand at the name. */
const letter =
  '[\\p{sc=Han}\\p{sc=Hiragana}\\p{sc=Katakana}ー\\p{sc=Hangul}\\p{sc=Thai}\\p{sc=Lao}\\p{sc=Khmer}\\p{sc=Myanmar}\\uff66-\\uff9f]';
const anyLetter = new RegExp(letter, 'u');
const anyGap = /[\s・·\p{Cf}]/u;

/** The names in such scripts that stand in a written name, and what stands there beside them. */
export function unspacedParts(written: string): { native: string[]; rest: string } {
  if (!anyLetter.test(written)) return { native: [], rest: written };
  const native: string[] = [];
  let rest = '';
  for (const { text } of runsOf(written)) native.push(text);
  for (const character of written) rest += anyLetter.test(character) || character === '・' ? ' ' : character;
  return { native: native.filter((name) => [...name].length > 1), rest };
}

/** A run of such letters, folded, with where each of its units stood in the text. */
interface Run {
  text: string;
  at: number[];
  end: number;
}

function* runsOf(text: string): Generator<Run> {
  let run: Run | undefined;
  let at = 0;
  for (const character of text) {
    if (anyLetter.test(character)) {
      run ??= { text: '', at: [], end: at };
      const folded = character.normalize('NFKC');
      run.text += folded;
      for (let i = 0; i < folded.length; i++) run.at.push(at);
      run.end = at + character.length;
    } else if (run && !anyGap.test(character) && !/\p{M}/u.test(character)) {
      yield run;
      run = undefined;
    }
    at += character.length;
  }
  if (run) yield run;
}

/** Finds names, the longest first, in the runs of a text. `found` says whether to go on. */
export function eachUnspaced<Named extends { words: readonly string[] }>(
  text: string,
  byFirst: ReadonlyMap<string, readonly Named[]>,
  found: (named: Named, start: number, end: number) => void,
): void {
  if (byFirst.size === 0 || !anyLetter.test(text)) return;
  for (const run of runsOf(text))
    for (let i = 0; i < run.text.length; i++) {
      const named = byFirst.get(run.text[i]!)?.find(({ words: [name] }) => run.text.startsWith(name!, i));
      if (!named) continue;
      const last = i + named.words[0]!.length;
      found(named, run.at[i]!, run.at[last] ?? run.end);
      i = last - 1;
    }
}
