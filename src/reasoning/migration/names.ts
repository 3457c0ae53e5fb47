/**
 * Names and ages of families.
 *
 * Rule (common practice): a surname says the more the fewer bear it; a wife may be listed under her husband’s given
 * name, with her own and her maiden name in brackets; a patronymic names the father; children seldom travel alone.
 */
import { agreeGiven, agreeSurname } from '../names/agree.ts';
import type { Row } from './list.ts';
import { surnameKey } from './tables.ts';
import { against, agreeing, tie, type ListContext } from './ties.ts';
import type { Tie } from './types.ts';

/** What the names of two entries say. */
export function names(a: Row, b: Row, context: ListContext): Tie[] {
  const found: Tie[] = [];
  const { surname: mine } = a;
  const { surname: its } = b;
  const m = context.patronymics ? agreeing.patronymic : agreeing.surname;
  if (mine && its) {
    const same =
      surnameKey(mine) === surnameKey(its) ||
      mine.text === its.text ||
      mine.keys.some((k) => its.keys.includes(k));
    const level = same ? 'same' : agreeSurname(mine, its).level;
    if (same || level === 'close' || level === 'same') {
      const u = Math.max(context.tables.surnameShare(mine, a, b), context.tables.surnameShare(its, a, b));
      const loose = same || level === 'same' ? 1 : 0.25;
      found.push(
        tie(
          'surname',
          mine.written,
          m * loose,
          u,
          mine.text === its.text
            ? { key: 'surname', name: mine.written }
            : { key: 'surnames-alike', a: mine.written, b: its.written },
        ),
      );
    } else found.push(against('surname', m, 1));
  }
  for (const [wife, kin] of [
    [a, b],
    [b, a],
  ] as const) {
    if (
      wife.maiden &&
      kin.surname &&
      surnameKey(wife.maiden) === surnameKey(kin.surname) &&
      kin.surname.text !== wife.surname?.text
    )
      found.push(
        tie('maiden name', wife.maiden.written, 0.15, context.tables.surnameShare(kin.surname, a, b), {
          key: 'maiden-name',
          name: wife.maiden.written,
        }),
      );
    if (wife.husband && kin.given && kin.sex !== 'F' && !kin.husband && sameSurname(wife, kin)) {
      const { level } = agreeGiven(wife.husband, kin.given);
      if (level === 'exact' || level === 'same')
        found.push(tie('husband’s name', kin.given.written, 0.6, 0.02, { key: 'husband-name' }));
    }
    const fathers = wife.patronymic ? (wife.surname?.patronymic?.fathers ?? []) : [];
    if (fathers.length > 0 && kin.given && kin.sex !== 'F' && older(kin, wife) >= 16) {
      const groups = new Set(kin.given.given[0]?.map(({ group }) => group));
      if (fathers.some(({ group }) => groups.has(group)))
        found.push(
          tie('father’s name', kin.given.written, 0.3, 0.05, {
            key: 'father-name',
            patronymic: wife.surname!.written,
            name: kin.given.written,
          }),
        );
    }
  }
  return found;
}

const sameSurname = (a: Row, b: Row): boolean =>
  a.surname !== undefined && b.surname !== undefined && surnameKey(a.surname) === surnameKey(b.surname);

/** By how many years `a` is older; not a number where either age is missing. */
const older = (a: Row, b: Row): number => (a.age === undefined || b.age === undefined ? NaN : a.age - b.age);

/** Ages and words that fit a couple, or a parent and a child; and a child, who hardly travels alone. */
export function families(a: Row, b: Row, context: ListContext): Tie[] {
  if (a.age === undefined || b.age === undefined) return [];
  const [elder, younger] = a.age >= b.age ? [a, b] : [b, a];
  const gap = elder.age! - younger.age!;
  const named = sameSurname(a, b);
  const close = !context.alphabetical && Math.abs(a.line - b.line) <= 3;
  if (!named && !(close && context.patronymics)) return [];
  if (younger.age! < 14 && gap >= 16 && gap <= 55)
    return [tie('family', '', 0.8, 0.2, { key: 'parent-and-child' })];
  if (younger.age! < 14 && elder.age! < 14 && gap <= 12)
    return [tie('family', '', 0.8, 0.3, { key: 'both-children' })];
  if (a.sex && b.sex && a.sex !== b.sex && younger.age! >= 18 && gap <= 15)
    return [tie('family', '', 0.6, 0.35, { key: 'couple' })];
  return [];
}
