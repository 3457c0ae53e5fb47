/** Draws what was found. Text of the content enters the page as text only, never as markup. */
import { addressOf, type Card } from '../../src/dossier/search/format.ts';
import type { Wording } from '../../src/interface/index.ts';
import type { Found } from './answer.ts';
import { asWritten, excerpt, holds, marked, type Piece } from './excerpt.ts';
import { reasonWords } from './reason.ts';

/** Other names shown of one document. */
const mostNames = 3;

/** One document as an item of the list. `lang` is that of the author’s writing where it is not the page’s. */
export function item(
  found: Found,
  card: Card,
  words: Wording['search'],
  lang: string | undefined,
): HTMLLIElement {
  const [id, title, facts, names, text] = card;
  const sought = new Set(found.hits.flatMap(({ match }) => Object.keys(match)));
  const li = element('li', 'find-item');

  const heading = element('p', 'find-title');
  const link = element('a');
  link.href = addressOf(found.kind, id);
  link.append(...pieces(marked(title, sought)));
  if (lang !== undefined) link.lang = lang;
  heading.append(link);
  const kind = element('span', 'find-kind');
  kind.textContent = words.kind(found.kind);
  heading.append(' ', kind);
  li.append(heading);

  if (facts !== '') li.append(paragraph('find-facts', [{ text: facts, marked: false }]));
  const others = names.filter((name) => holds(name, sought)).slice(0, mostNames);
  if (others.length > 0) {
    const list = others.flatMap((name, i) => [
      ...(i > 0 ? [{ text: '; ', marked: false }] : []),
      ...marked(name, sought),
    ]);
    const line = paragraph('find-names', list, lang);
    const label = element('span', 'find-label');
    const own = found.kind === 'person' || found.kind === 'place';
    label.textContent = `${own ? words.writtenAs : words.naming} `;
    line.prepend(label);
    li.append(line);
  }
  const piece = excerpt(text, sought);
  if (piece.length > 0) li.append(paragraph('find-excerpt', piece, lang));
  for (const { reason, match, typed } of found.hits) {
    if (!reason) continue;
    const written = asWritten([title, ...names, text], Object.keys(match)[0] ?? typed);
    li.append(
      paragraph('find-reason', [
        { text: reasonWords(words, written, capital(typed), reason), marked: false },
      ]),
    );
  }
  return li;
}

function paragraph(name: string, content: readonly Piece[], lang?: string): HTMLParagraphElement {
  const p = element('p', name);
  p.append(...pieces(content));
  if (lang !== undefined) p.lang = lang;
  return p;
}

function pieces(content: readonly Piece[]): (string | HTMLElement)[] {
  return content.map(({ text, marked: isMarked }) => {
    if (!isMarked) return text;
    const mark = element('mark');
    mark.textContent = text;
    return mark;
  });
}

function element<Name extends keyof HTMLElementTagNameMap>(
  name: Name,
  className?: string,
): HTMLElementTagNameMap[Name] {
  const made = document.createElement(name);
  if (className !== undefined) made.className = className;
  return made;
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
