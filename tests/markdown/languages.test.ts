import { describe, expect, test } from 'vitest';
import { renderedBefore } from '../../src/markdown/alone.ts';
import { renderBody } from '../../src/markdown/render.ts';
import type { Rendered, SiteVoice } from '../../src/markdown/types.ts';
import { wordingIn } from '../../src/interface/index.ts';
import { context } from './context.ts';

const norwegian: SiteVoice = { tag: 'nb', words: wordingIn('nb').layout.prose, ownLang: 'nb' };
const htmlOf = ({ parts }: Rendered) => parts.map((part) => (part.kind === 'html' ? part.html : '')).join('');

describe('the language of words in a body', () => {
  test('an author marks words of another language, inline and in a quotation', () => {
    const { rendered, problems } = renderBody(
      'He was <i lang="la">legitimus</i>, said the <span lang="nb">sogneprest</span>.\n\n> <span lang="nb">Født på Hove</span>',
      context(),
    );
    expect(problems).toEqual([]);
    expect(htmlOf(rendered)).toBe(
      '<p>He was <i lang="la">legitimus</i>, said the <span lang="nb">sogneprest</span>.</p>\n' +
        '<blockquote>\n<p><span lang="nb">Født på Hove</span></p>\n</blockquote>',
    );
  });

  test('what the site adds is said in its language, and marked so in the author’s text', () => {
    const body = 'A word.[@declaration-1871] And [#e1].\n\n| a |\n|---|\n| b |';
    const { rendered } = renderBody(body, context({ voice: norwegian }));
    const html = htmlOf(rendered);
    expect(html).toContain('aria-label="note 1"');
    expect(html).toContain('aria-label="belegg e1"');
    expect(html).toContain('aria-label="Tabell 1: a"');
    expect(rendered.notes[0]!.html).toContain(
      '<a href="/records/declaration-1871.html" aria-label="kilden: Short declaration-1871" lang="nb">kilden</a>',
    );
  });

  test('a citation is English, and says so in the text of somebody who writes Norwegian', () => {
    const voice = { ...norwegian, ownLang: undefined, citationLang: 'en' };
    const { rendered } = renderBody(
      'Et ord.[@declaration-1871] Og igjen.[@declaration-1871]',
      context({ voice }),
    );
    expect(rendered.notes.map(({ html }) => html)).toEqual([
      '<span lang="en">Full declaration-1871; Office</span> (<a href="/records/declaration-1871.html" aria-label="kilden: Short declaration-1871">kilden</a>).',
      '<span lang="en"><a href="/records/declaration-1871.html">Short declaration-1871</a></span>.',
    ]);
  });

  test('nothing is marked where all is English', () => {
    const { rendered } = renderBody('A word.[@declaration-1871]', context());
    expect(htmlOf(rendered) + rendered.notes[0]!.html).not.toContain('lang=');
  });

  test('a body kept from another build is found in its own language only', () => {
    const before = new Map<string, Rendered>();
    const body = 'Text.[^1]\n\n[^1]: A note.\n\n| a |\n|---|\n| b |';
    const label = (voice?: SiteVoice) =>
      /Tab\w+ 1/.exec(htmlOf(renderedBefore(body, context(voice ? { voice } : {}), before)))?.[0];
    expect([label(), label(norwegian), label()]).toEqual(['Table 1', 'Tabell 1', 'Table 1']);
  });
});
