/** Changes to the letters of a file: slips of the pen, cut-off files, and text that means something to a parser. */
import type { Random } from '../bench/random.ts';
import { hostileStrings } from '../hostile/strings.ts';

const signs = [
  ' ',
  '  ',
  '\t',
  ':',
  ': ',
  ', ',
  '"',
  "'",
  '[',
  ']',
  '{',
  '}',
  '*',
  '&a ',
  '*a',
  '!',
  '!!js/function ',
  '!!binary ',
  '!!set ',
  '|',
  '>-\n',
  '- ',
  '? ',
  '\n',
  '\n  ',
  '\r',
  '\r\n',
  '#',
  '---\n',
  '...\n',
  '%YAML 1.2\n',
  '<<: *a\n',
  '<<: x',
  '\ufeff',
  '\u0000',
  '\u2028',
  '\u0085',
  '😀',
  '\ud800',
  '..',
  '\\',
  '`',
  '~',
  '@',
  '=',
  ';',
];

const prose = [
  '[@deed]',
  '[@deed, page 4; @packet]',
  '[@nothing]',
  '[@',
  '[#e1]',
  '[#e99]',
  '[#',
  '<Scan record="deed" />',
  '<Scan record={1} />',
  '<Scan record="deed',
  '<Aside>',
  '</Aside>',
  '<Unknown />',
  '<b>',
  '</b>',
  '<b lang="',
  '{1 + 1}',
  '{/* said */}',
  '{',
  '}',
  'import x from "y"\n',
  'export const x = 1\n',
  '[^1]',
  '\n[^1]: a note [^1]\n',
  '\n[^a]: [^b]\n[^b]: [^a]\n',
  '\n| a | b |\n| :-: | - |\n| 1 |\n',
  '\n```js\n{\n```\n',
  '\n    code\n',
  '\n# One\n\n## One\n\n###### Six\n',
  '![x](media/scan.png)',
  '![x](../media/scan.png "y")',
  '![x](media/none.png)',
  '![x](https://example.invalid/x.png)',
  '[x](../records/deed.md)',
  '[x](../people/nobody.md)',
  '[x](javascript:zqran(1))',
  '<!-- said -->',
  '<!--',
  '&lt;&amp;&#x110000;&#0;',
  '~~gone~~',
  '***',
  '\n> > > quoted\n',
  '\n1. one\n1. two\n\n   - three\n',
];

/** Strings that a pattern with nested repetition would chew on for ever. */
const long = [
  '[@' + 'a'.repeat(3000),
  '[@a,'.repeat(600),
  '['.repeat(3000),
  '[['.repeat(300) + ']]'.repeat(300),
  '*a **a '.repeat(500),
  '> '.repeat(300) + 'x',
  '- '.repeat(200) + 'x',
  '<b>'.repeat(400),
  '<Aside>\n\n'.repeat(60),
  '<a '.repeat(1000),
  '<!--'.repeat(1000),
  '{'.repeat(1000),
  '`'.repeat(999) + 'x',
  ' '.repeat(5000) + 'x',
  '\n'.repeat(2000),
  'a='.repeat(2000),
  '&a;'.repeat(1000),
  '|a'.repeat(1000) + '\n' + '|-'.repeat(1000) + '\n',
  '[^a]'.repeat(500),
  'x'.repeat(20_000),
  '1/'.repeat(2000),
  '1840~'.repeat(800),
  'Mc'.repeat(1500),
  "O'".repeat(1500),
  'von der '.repeat(500),
  'Co. '.repeat(800),
  'a,'.repeat(1500),
];

/** Aliases that stand for more and more, the classic bomb. */
const bombs = [
  `a: &a [x,x,x,x,x,x,x,x,x]\n${'bcdefghij'.replaceAll(/./g, (letter) => {
    const before = String.fromCharCode(letter.charCodeAt(0) - 1);
    return `${letter}: &${letter} [${Array(9).fill(`*${before}`).join(',')}]\n`;
  })}`,
  'a: &a\n  b: *a\n',
  `${'['.repeat(2000)}${']'.repeat(2000)}\n`,
  `${'{a: '.repeat(2000)}1${'}'.repeat(2000)}\n`,
  `${Array.from({ length: 500 }, (_, i) => `${' '.repeat(i)}a:`).join('\n')} 1\n`,
  'title: !!js/function "function () { return 1 }"\n',
  '<<: [{a: 1}, {b: 2}]\n',
];

/** One change to a text. */
export function changeText(text: string, random: Random): string {
  const at = random.below(text.length + 1);
  const put = (piece: string, taken = 0) => text.slice(0, at) + piece + text.slice(at + taken);
  switch (random.below(13)) {
    case 0:
      return put('', 1 + random.below(40));
    case 1:
    case 2:
    case 3:
      return put(random.pick(signs), random.below(3));
    case 4:
    case 5:
      return put(random.pick(prose));
    case 6:
    case 7:
      return put(random.pick(hostileStrings).text);
    case 8:
      return text.slice(0, at);
    case 9: {
      const lines = text.split('\n');
      const line = random.below(lines.length);
      const other = random.below(lines.length);
      if (random.chance(0.5)) lines.splice(line, 0, lines[other]!);
      else [lines[line], lines[other]] = [lines[other]!, lines[line]!];
      return lines.join('\n');
    }
    case 10: {
      const lines = text.split('\n');
      const line = random.below(lines.length);
      lines[line] = random.chance(0.5) ? `  ${lines[line]}` : lines[line]!.trimStart();
      return lines.join('\n');
    }
    case 11:
      return random.chance(0.7) ? put(random.pick(long)) : put(random.pick(bombs));
    default:
      return random.chance(0.3) ? text.replaceAll('\n', '\r\n') : `\ufeff${text}`;
  }
}

/** One change to the end of a text: its body, where it is of Markdown. */
export function changeBody(text: string, random: Random): string {
  const start = text.indexOf('\n---\n', 4);
  if (start < 0) return changeText(text, random);
  const body = start + 5;
  const at = body + random.below(text.length - body + 1);
  const piece = random.chance(0.15)
    ? random.pick(long)
    : random.chance(0.4)
      ? random.pick(hostileStrings).text
      : random.pick(prose);
  return text.slice(0, at) + piece + text.slice(at);
}

/** One change to the bytes of a file. */
export function changeBytes(bytes: Uint8Array, random: Random): Uint8Array {
  const changed = Uint8Array.from(bytes);
  switch (random.below(4)) {
    case 0:
      return changed.subarray(0, random.below(changed.length + 1));
    case 1: {
      const at = random.below(changed.length + 1);
      const more = Uint8Array.from({ length: 1 + random.below(8) }, () => random.below(256));
      return Buffer.concat([changed.subarray(0, at), more, changed.subarray(at)]);
    }
    default:
      for (let i = 1 + random.below(5); i > 0 && changed.length > 0; i--)
        changed[random.below(changed.length)] = random.below(256);
      return changed;
  }
}
