/**
 * What a style somebody else wrote makes the processor print, as HTML that may stand on a page: a few elements without
 * styles of their own, everything else as text. A style’s affixes can hold any tag, and pages hold no inline styles.
 */
import { Parser } from 'htmlparser2';
import { escapeHtml } from './escape.ts';

const kept: ReadonlyMap<string, string> = new Map([
  ['i', 'i'],
  ['em', 'i'],
  ['b', 'b'],
  ['strong', 'b'],
  ['sup', 'sup'],
  ['sub', 'sub'],
]);

const classes: ReadonlyMap<string, string> = new Map([
  ['font-style:normal', 'upright'],
  ['font-variant:small-caps', 'small-caps'],
  ['text-decoration:underline', 'underlined'],
]);

/** Printed markup as harmless, balanced HTML. Never throws. */
export function harmless(html: string): string {
  let out = '';
  const open: string[] = [];
  const parser = new Parser(
    {
      onopentag(name, attributes) {
        const style = (attributes['style'] ?? '').replace(/[\s;]+/g, '');
        const like = name === 'span' ? classes.get(style) : undefined;
        const element = kept.get(name);
        open.push(like ? 'span' : (element ?? (name === 'div' ? ' ' : '')));
        if (like) out += `<span class="${like}">`;
        else if (element) out += `<${element}>`;
      },
      ontext(text) {
        out += escapeHtml(text);
      },
      onclosetag() {
        const element = open.pop() ?? '';
        out += element.trim() === '' ? element : `</${element}>`;
      },
    },
    { decodeEntities: true },
  );
  parser.end(html);
  return out.replace(/\s+/g, ' ').trim();
}
