/** What of a life is drawn on its scale: where it turned, children and records. */
import type { CaseView, Dossier, PersonView } from '../../src/dossier/types.ts';
import { civil } from '../../src/model/days.ts';
import { daySpan, edtfProblem } from '../../src/model/edtf.ts';
import { yearOf } from '../layout/dates.ts';
import { dateOf, nameOfPlace } from '../layout/lookup.ts';
import { lifeOf, type LifeStep } from '../people/life.ts';
import type { Life, Turn } from './life-scale.ts';

const isDrawn = (kind: LifeStep['kind']) =>
  kind === 'born' || kind === 'voyage' || kind === 'married' || kind === 'died';

/** The steps of the subject’s life that are drawn, in order: the same in words. */
export function stepsDrawn(dossier: Dossier, subject: PersonView): LifeStep[] {
  return lifeOf(dossier, subject).filter(
    ({ kind, date }) => date !== undefined && (isDrawn(kind) || kind === 'child'),
  );
}

/** The life of the subject of a case, to be laid along a scale of years. */
export function lifeOfSubject(dossier: Dossier, view: CaseView, steps: readonly LifeStep[]): Life {
  const { story, dates } = dossier.wording;
  const { subject } = view;
  const at = (date: string | undefined) => {
    const moment = momentOf(date);
    return moment === undefined ? [] : [moment];
  };
  const wordOf = { born: story.born, voyage: story.arrived, married: story.married, died: story.died };
  const turns = steps.flatMap(({ kind, date, place }): Turn[] => {
    if (!(kind in wordOf)) return [];
    const ages = kind === 'born' ? undefined : agesAt(subject, date!);
    const year = /[~?%]/.test(date!) ? dates.aboutYear(yearOf(date)) : yearOf(date);
    return at(date).map((moment) => ({
      at: moment,
      word: [
        wordOf[kind as keyof typeof wordOf],
        ...(place === undefined ? [] : [nameOfPlace(dossier, place)]),
      ].join(', '),
      said: ages === undefined ? year : `${year}, ${story.aged(...ages)}`,
    }));
  });
  return {
    // A crossing that two records date is one.
    turns: turns.filter(
      (turn, i) => turns.findIndex((one) => one.word === turn.word && one.said === turn.said) === i,
    ),
    children: steps.filter(({ kind }) => kind === 'child').flatMap(({ date }) => at(date)),
    records: subject.mentions.flatMap(({ record, mention }) => {
      const found = dossier.records.get(record);
      return found ? at(mention.event?.date ?? mention.voyage?.arrived ?? dateOf(found)) : [];
    }),
  };
}

/** The middle of a date, counted in years; nothing where it is open at an end. */
function momentOf(date: string | undefined): number | undefined {
  if (date === undefined || edtfProblem(date) !== undefined) return undefined;
  const { first, last } = daySpan(date);
  if (first === null || last === null) return undefined;
  const { year, month, day } = civil(Math.floor((first + last) / 2));
  return year + (month - 1) / 12 + (day - 1) / 372;
}

/** Least and greatest age somebody can have had at a date, where that is one year or two. */
function agesAt(person: PersonView, date: string): [least: number, greatest: number] | undefined {
  const { earliest, latest } = person.born;
  if (earliest === null || latest === null || edtfProblem(date) !== undefined) return undefined;
  const { first, last } = daySpan(date);
  if (first === null || last === null) return undefined;
  const whole = (from: string, to: number) => {
    const [y = 0, m = 1, d = 1] = from.split('-').map(Number);
    const then = civil(to);
    return then.year - y - (then.month < m || (then.month === m && then.day < d) ? 1 : 0);
  };
  const [least, greatest] = [whole(latest, first), whole(earliest, last)];
  return least >= 0 && greatest - least <= 1 ? [least, greatest] : undefined;
}
