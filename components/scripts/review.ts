/**
 * The review sheet, filled in on the page. The blank stays in place under the fields and takes over what is filled in,
 * so that printing gives the same sheet. Nothing is sent anywhere.
 */
import type { Answer, Rests } from '../../src/model/review.ts';
import { keeperOf, type Draft } from '../review/draft.ts';
import { fileName, reviewText } from '../review/file.ts';
import { element, fillIn, noted, type Words } from '../review/fields.ts';

const page = document.querySelector<HTMLElement>('[data-review]');
if (page) start(page);

function start(home: HTMLElement): void {
  const words = JSON.parse(home.dataset['words']!) as Words;
  const about = {
    case: home.dataset['case']!,
    digest: home.dataset['digest']!,
    rests: JSON.parse(home.dataset['rests']!) as Rests,
    points: [...home.querySelectorAll<HTMLElement>('[data-point]')]
      .map((item) => item.dataset['point']!)
      .filter(Boolean),
  };
  const keeper = keeperOf(`whence-review ${location.pathname}`, () => localStorage);
  const status = home.querySelector<HTMLElement>('[role=status]')!;
  const progress = home.querySelector<HTMLElement>('[data-progress]')!;
  const file = home.querySelector<HTMLDetailsElement>('[data-file]')!;
  const shown = file.querySelector('textarea')!;

  const before = keeper.read();
  let draft: Draft = before ?? fresh(about.digest);
  let unsaved = false;
  const fields = fillIn(home, words, draft, changed);
  if (before && before.digest !== about.digest) warn();
  actions();
  refresh(keeper.write(draft) || false);
  document.documentElement.classList.add('scripted');
  addEventListener('beforeunload', (event) => {
    if (unsaved) event.preventDefault();
  });

  function changed(): void {
    const kept = keeper.write(draft);
    unsaved = !kept;
    status.textContent = '';
    refresh(kept);
  }

  function refresh(kept: boolean): void {
    const answered = about.points.filter((point) => draft.answers[point]?.answer).length;
    const counted = noted(noted(words.progress, answered), about.points.length);
    progress.textContent = `${counted}. ${kept ? words.kept : words.notKept}`;
    shown.value = ready() ? reviewText(draft, about) : '';
    file.hidden = !ready();
  }

  function ready(): boolean {
    return missing() === undefined;
  }

  /** What is still wanted before the file can be made, and where. */
  function missing(): { said: string; field: HTMLElement } | undefined {
    if (draft.digest !== about.digest)
      return { said: words.needLook, field: warning().querySelector('button')! };
    if (draft.reviewer.trim() === '') return { said: words.needName, field: fields.reviewer };
    if (!/^\d{4}-\d{2}-\d{2}$/.test(draft.date)) return { said: words.needDate, field: fields.date };
    if (!draft.answers['']?.answer) return { said: words.needOverall, field: fields.overall };
    return undefined;
  }

  function warning(): HTMLElement {
    return home.querySelector<HTMLElement>('[data-warning]')!;
  }

  /** Answers begun on another version are shown, and have to be said to hold before they can be saved. */
  function warn(): void {
    const box = warning();
    const known = new Set(['', ...about.points]);
    const lost = Object.entries(draft.answers).filter(
      ([point, { answer, comment }]) => !known.has(point) && (answer || comment),
    );
    const holds = element('button', { type: 'button' }, words.stillHold);
    holds.addEventListener('click', () => {
      draft.digest = about.digest;
      box.hidden = true;
      changed();
      fields.reviewer.focus();
    });
    box.replaceChildren(
      element('p', {}, words.otherVersion),
      ...(lost.length > 0
        ? [
            element('p', {}, words.lost),
            element(
              'ul',
              {},
              ...lost.map(([point, { answer, comment }]) =>
                element(
                  'li',
                  {},
                  [point, answer && words.answers[answer], comment].filter(Boolean).join(' · '),
                ),
              ),
            ),
          ]
        : []),
      element('p', {}, holds),
    );
    box.hidden = false;
  }

  function actions(): void {
    const button = (said: string, act: () => void) => {
      const one = element('button', { type: 'button' }, said);
      one.addEventListener('click', act);
      return one;
    };
    let sure = false;
    home.querySelector('[data-actions]')!.append(
      button(words.save, () => finished(save)),
      button(words.copy, () => finished(copy)),
      button(words.clear, () => {
        if (!sure) {
          sure = true;
          status.textContent = words.clearSure;
          return;
        }
        keeper.clear();
        unsaved = false;
        draft = fresh(about.digest);
        location.reload();
      }),
    );
  }

  function finished(then: () => void): void {
    const wanted = missing();
    if (!wanted) return then();
    status.textContent = wanted.said;
    wanted.field.focus();
  }

  /** Where the file goes, in a sentence with its name. */
  function told(sentence: string): void {
    status.replaceChildren(
      `${noted(sentence, fileName(draft))} `,
      element('code', {}, `reviews/${about.case}/`),
      '.',
    );
  }

  function save(): void {
    const address = URL.createObjectURL(new Blob([reviewText(draft, about)], { type: 'application/yaml' }));
    const link = element('a', { href: address, download: fileName(draft) });
    document.body.append(link);
    link.click();
    link.remove();
    setTimeout(() => URL.revokeObjectURL(address), 60_000);
    keeper.clear();
    unsaved = false;
    told(words.saved);
  }

  function copy(): void {
    const text = reviewText(draft, about);
    const byHand = () => {
      file.open = true;
      shown.focus();
      shown.select();
      status.textContent = words.notCopied;
    };
    // A page opened from a folder may have no clipboard, or not be allowed to use it.
    if (!navigator.clipboard) return byHand();
    navigator.clipboard.writeText(text).then(() => told(words.copied), byHand);
  }
}

function fresh(digest: string): Draft {
  const now = new Date();
  const two = (n: number) => String(n).padStart(2, '0');
  return {
    reviewer: '',
    date: `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`,
    digest,
    answers: {} as Record<string, { answer?: Answer; comment?: string }>,
  };
}
