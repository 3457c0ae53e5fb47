/**
 * Looks things up as one types. Every answer is worked out here, from the parts of the index that the typed words fall
 * into; nothing is sent anywhere.
 */
import { kinds, partOf, type Card, type Kind } from '../../src/dossier/search/format.ts';
import { everywhere as everywhereEnglish } from '../../src/interface/en/everywhere.ts';
import { search as english } from '../../src/interface/en/search.ts';
import { everywhere as everywhereNorwegian } from '../../src/interface/nb/everywhere.ts';
import { search as norwegian } from '../../src/interface/nb/search.ts';
import { answer, type Answer, type Found } from '../search/answer.ts';
import { useKeys } from '../search/keys.ts';
import { byScript, partsBy } from '../search/load.ts';
import { lookUpIn, type LookUp } from '../search/lookup.ts';
import { newest } from '../search/newest.ts';
import { addressWith, questionIn, type Question } from '../search/question.ts';
import { item } from '../search/show.ts';

/** How many are shown at first, and by each asking for more. */
const step = 12;

const page = document.querySelector<HTMLElement>('[data-find-page]');
if (page) start(page);
document.documentElement.classList.add('scripted');

function start(home: HTMLElement): void {
  const isNorwegian = home.dataset['language'] === 'nb';
  const words = isNorwegian ? norwegian : english;
  const { figures } = isNorwegian ? everywhereNorwegian : everywhereEnglish;
  const lang = home.dataset['contentLang'];
  const field = home.querySelector('input')!;
  const status = home.querySelector<HTMLElement>('[role=status]')!;
  const list = home.querySelector('ol')!;
  const narrow = home.querySelector<HTMLElement>('.find-kinds')!;
  const more = home.querySelector<HTMLButtonElement>('.find-more')!;

  const parts = partsBy(byScript('search/', home.dataset['edition'] ?? ''));
  let lookUp: LookUp | undefined;
  let question: Question = questionIn(location.href);
  let shown = step;

  const ask = async (asked: Question & { count: number }) => {
    if (asked.text.trim() === '') return undefined;
    const contents = await parts.contents();
    lookUp ??= lookUpIn(parts, contents);
    const given = await answer(asked.text, lookUp, contents);
    const best = given.best(asked.count, asked.kind);
    const cards = await Promise.all(
      best.map(async ({ document: number }) => {
        const part = partOf(contents.parts.cards, number);
        return (await parts.rows('cards', part))[number - contents.parts.cards[part]!]!;
      }),
    );
    return { given, best, cards };
  };

  type Given = { given: Answer; best: readonly Found[]; cards: readonly Card[] } | undefined;

  const draw = (given: Given) => {
    if (!given) {
      list.replaceChildren();
      narrow.hidden = true;
      more.hidden = true;
      status.textContent = '';
      return;
    }
    const { given: found, best, cards } = given;
    list.replaceChildren(...best.map((one, i) => item(one, cards[i]!, words, lang)));
    drawKinds(found);
    const all = question.kind ? found.counts[question.kind] : found.total;
    const left = all - best.length;
    more.hidden = left <= 0;
    more.textContent = words.more(figures(Math.min(step, left)));
    status.textContent =
      found.total === 0
        ? words.nothing(question.text.trim())
        : found.whole
          ? words.found(all, figures(all))
          : words.someWords(figures(all));
  };

  const drawKinds = ({ counts, total }: Answer) => {
    narrow.hidden = total === 0;
    for (const button of narrow.querySelectorAll('button')) {
      const kind = button.dataset['kind'] as Kind | undefined;
      const count = kind ? counts[kind] : total;
      button.hidden = count === 0 && question.kind !== kind;
      button.setAttribute('aria-pressed', String(question.kind === kind));
      button.querySelector('span')!.textContent = figures(count);
    }
  };

  const fail = () => {
    list.replaceChildren();
    narrow.hidden = true;
    more.hidden = true;
    status.textContent = words.failed;
  };
  const run = newest(ask, draw, fail);
  const again = (next: Question, count = step) => {
    question = next;
    shown = count;
    remember(next);
    return run({ ...next, count });
  };

  field.addEventListener('input', () => void again({ ...question, text: field.value }));
  for (const button of narrow.querySelectorAll('button'))
    button.addEventListener('click', () => {
      const kind = kinds.find((one) => one === button.dataset['kind']);
      void again({ ...question, kind });
    });
  more.addEventListener('click', async () => {
    const first = list.children.length;
    await again(question, shown + step);
    list.children[first]?.querySelector('a')?.focus();
  });
  useKeys(home, {
    field,
    links: () => [...list.querySelectorAll('a')],
    clear: () => {
      field.value = '';
      field.focus();
      void again({ text: '' });
    },
  });
  window.addEventListener('popstate', () => {
    question = questionIn(location.href);
    field.value = question.text;
    void run({ ...question, count: step });
  });

  home.dataset['ready'] = '';
  if (question.text !== '') {
    field.value = question.text;
    void run({ ...question, count: step });
  } else {
    if (field.value !== '') void again({ text: field.value });
    parts.contents().catch(fail);
  }
  field.focus({ preventScroll: true });
}

/** Keeps the question in the address. A browser that refuses this for a folder on disk keeps it for itself. */
function remember(question: Question): void {
  try {
    history.replaceState(null, '', addressWith(location.href, question));
  } catch {
    // Going back will then find the page without the question.
  }
}
