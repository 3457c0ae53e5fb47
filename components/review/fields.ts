/** The fields of the review sheet, laid over its blank. */
import type { Wording } from '../../src/interface/index.ts';
import type { Answer } from '../../src/model/review.ts';
import type { Draft } from './draft.ts';

export type Words = Pick<Wording['reviews'], 'answers'> & Wording['reviews']['sheet'];

/** An element with attributes and what it holds. */
export function element<K extends keyof HTMLElementTagNameMap>(
  name: K,
  attributes: Readonly<Record<string, string>>,
  ...content: (Node | string)[]
): HTMLElementTagNameMap[K] {
  const made = document.createElement(name);
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, value);
  made.append(...content);
  return made;
}

/** A sentence with its next # filled in. */
export function noted(sentence: string, value: string | number): string {
  return sentence.replace('#', () => String(value));
}

/**
 * Puts a field over every line of the blank and buttons over its boxes, and keeps `draft` and the blank as they are
 * filled in. Gives the fields that must not stay empty.
 */
export function fillIn(
  home: HTMLElement,
  words: Words,
  draft: Draft,
  changed: () => void,
): { reviewer: HTMLElement; date: HTMLElement; overall: HTMLElement } {
  const line = (name: 'reviewer' | 'date', type: string): HTMLInputElement => {
    const blank = home.querySelector<HTMLElement>(`[data-field=${name}]`)!;
    const written = blank.querySelector<HTMLElement>('.written')!;
    const input = element('input', { id: `_${name}`, type, autocomplete: name === 'date' ? 'off' : 'name' });
    input.value = draft[name];
    written.textContent = draft[name];
    input.addEventListener('input', () => {
      draft[name] = written.textContent = input.value;
      changed();
    });
    const label = element('label', { for: input.id }, blank.querySelector('.label')!.textContent);
    blank.after(element('p', { class: 'sheet-field' }, label, input));
    return input;
  };
  const reviewer = line('reviewer', 'text');
  const date = line('date', 'date');
  let overall: HTMLElement = date;
  home.querySelectorAll<HTMLElement>('[data-point]').forEach((item, index) => {
    const first = answerFields(item, index, words, draft, changed);
    if (item.dataset['point'] === '') overall = first;
  });
  return { reviewer, date, overall };
}

/** The choices and the comment of one item; gives the first choice. */
function answerFields(
  item: HTMLElement,
  index: number,
  words: Words,
  draft: Draft,
  changed: () => void,
): HTMLElement {
  const point = item.dataset['point']!;
  const heading = item.querySelector('h3')!;
  const blank = item.querySelector<HTMLElement>('.sheet-answer')!;
  const written = blank.querySelector<HTMLElement>('.written')!;
  const given = (): Draft['answers'][string] => (draft.answers[point] ??= {});

  const show = () => {
    const { answer, comment = '' } = draft.answers[point] ?? {};
    for (const box of blank.querySelectorAll<HTMLElement>('[data-answer]'))
      box.classList.toggle('ticked', box.dataset['answer'] === answer);
    written.textContent = comment;
    item.classList.toggle('answered', answer !== undefined);
  };
  const choice = (answer: Answer | undefined): HTMLLabelElement => {
    const input = element('input', { type: 'radio', name: `_answer-${index}` });
    input.checked = draft.answers[point]?.answer === answer;
    input.addEventListener('change', () => {
      given().answer = answer;
      show();
      changed();
    });
    return element('label', {}, input, ' ', answer === undefined ? words.noAnswer : words.answers[answer]);
  };
  const choices = (['agree', 'query', 'disagree', undefined] as const).map(choice);
  const comment = element('textarea', { id: `_comment-${index}`, rows: '2' });
  comment.value = draft.answers[point]?.comment ?? '';
  comment.addEventListener('input', () => {
    given().comment = comment.value;
    show();
    changed();
  });
  const group = element('div', { role: 'radiogroup', 'aria-labelledby': heading.id, class: 'sheet-choices' });
  group.append(...choices);
  const label = element('label', { for: comment.id, class: 'label' }, words.comment);
  blank.after(element('div', { class: 'sheet-fields' }, group, label, comment));
  show();
  return choices[0]!.querySelector('input')!;
}
