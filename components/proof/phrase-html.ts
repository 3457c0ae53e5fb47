/** A phrase as HTML: words, links, quotations as the record has them, and the marks of notes. */
import type { Phrase } from '../../src/interface/phrase.ts';
import { html, noteMark, raw } from '../../src/markdown/notes.ts';
import { attributeHtml, linkHtml, textHtml } from '../layout/markup.ts';
import { langOf } from '../layout/wording.ts';

/** The phrase, as `Phrase.astro` sets it. */
export function phraseHtml(phrase: Phrase): string {
  const english = langOf('en');
  let out = '';
  for (const part of phrase)
    if (typeof part === 'string') out += textHtml(part);
    else if ('text' in part) out += linkHtml(part.text, part.href);
    else if ('quote' in part)
      out += `<q class="reading"${attributeHtml('lang', part.lang)}>${textHtml(part.quote)}</q>`;
    else {
      // A citation is worded in English, whatever the language of the page.
      const cited = english ? `<span lang="${english}">${part.html}</span>` : part.html;
      out += html(noteMark(part.note, true, [raw(cited)]));
    }
  return out;
}
