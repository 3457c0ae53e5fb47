/**
 * Days as texts write them: in figures, with a month of any of the languages that records here are in, with a Roman
 * month, or in words. Common practice; the months of other languages from memory.
 */
import { foldWord, tokenAfter as wordAfter, type Token } from './living-fold.ts';

/** January first; each month in English, Norwegian, Swedish, Danish, German, Dutch, French, Italian, Polish. */
const monthNames = [
  'january januar januari jan jänner janvier gennaio stycznia styczeń i',
  'february februar februari feb febr février fevr febbraio lutego luty ii',
  'march mars marts mar märz mrz maart mrt marzo marca marzec iii',
  'april apr avril avr aprile kwietnia kwiecień iv',
  'may mai maj mei maggio maja v',
  'june juni jun juin giugno czerwca czerwiec vi',
  'july juli jul juillet juil luglio lipca lipiec vii',
  'august aug augusti augustus août agosto sierpnia sierpień viii',
  'september sept sep settembre septembre września wrzesień ix',
  'october oktober oct okt octobre ottobre października październik x',
  'november nov novembre listopada listopad xi',
  'december desember dezember dec des dez décembre dicembre grudnia grudzień xii',
];
const months = new Map(
  monthNames.flatMap((names, i) => names.split(' ').map((name): [string, number] => [foldWord(name), i + 1])),
);
const romans = new Set(['i', 'ii', 'iii', 'iv', 'v', 'vi', 'vii', 'viii', 'ix', 'x', 'xi', 'xii']);

const ordinals = new Map(
  [
    'first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth thirteenth fourteenth fifteenth sixteenth seventeenth eighteenth nineteenth twentieth',
    'første andre tredje fjerde femte sjette sjuende åttende niende tiende ellevte tolvte trettende fjortende femtende sekstende syttende attende nittende tjuende',
    'først annen tredje fjerde femte sjette syvende åttende niende tiende ellevte tolvte trettende fjortende femtende sekstende syttende attende nittende tyvende',
  ].flatMap((words) => words.split(' ').map((word, i): [string, number] => [foldWord(word), i + 1])),
);
for (const [word, n] of [...ordinals])
  if (n < 10) ordinals.set(`tjue${word}`, 20 + n).set(`tretti${word}`, 30 + n);
for (const [i, unit] of 'en to tre fire fem seks syv atte ni'.split(' ').entries())
  ordinals.set(`${unit}ogtyvende`, 21 + i).set(`${unit}ogtredevte`, 31 + i);
ordinals.set('thirtieth', 30).set('trettiende', 30).set('tredevte', 30);
const tens = new Map([
  ['twenty', 20],
  ['thirty', 30],
]);

const units =
  'one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(
    ' ',
  );
const decades = 'twenty thirty forty fifty sixty seventy eighty ninety'.split(' ');

/** Small words within a date. */
const within = new Set(['of', 'day', 'the', 'den', 'dag', 'i', 'in', 'de', 'di', 'del']);

/** Whether a date may begin at a folded word. */
export function maySayDay(word: string): boolean {
  return (
    /^\d{1,4}$|^\d{1,2}(?:e|er|de|te|ste)$|^\d{8}$/.test(word) ||
    (months.has(word) && !romans.has(word)) ||
    ordinals.has(word) ||
    tens.has(word)
  );
}

const tokenAfter = (text: string, end: number) => wordAfter(text, end, 6);

const loose = /^[\s.,_\-–/'’]*$/;
const figures = /^\s?[.\-–/]\s?$/;
const isYear = (word: string): boolean => /^[12]\d{3}$/.test(word);
const two = (n: number): string => String(n).padStart(2, '0');

/**
 * The days that the words beginning at `start` may say, as `YYYY-MM-DD`, or as `YY-MM-DD` where the year has two
 * figures; day and month in figures may stand in either order. The first that `known` knows, with where it ends.
 */
export function dayAt<Found>(
  text: string,
  start: number,
  raw: string,
  known: (day: string) => Found | undefined,
): { found: Found; end: number } | undefined {
  const word = foldWord(raw);
  const end = start + raw.length;
  for (const [day, until] of daysFrom(text, start, raw, word, end)) {
    const found = known(day);
    if (found !== undefined) return { found, end: until };
  }
  return undefined;
}

type Said = [day: string, end: number];

function daysFrom(text: string, start: number, raw: string, word: string, end: number): Said[] {
  if (/^\d{8}$/.test(raw)) return [[`${raw.slice(0, 4)}-${raw.slice(4, 6)}-${raw.slice(6)}`, end]];
  if (isYear(word)) return yearFirst(text, word, end);
  if (months.has(word) && !romans.has(word)) return monthFirst(text, months.get(word)!, end);
  const date = dateOf(text, word, end);
  return date ? dateFirst(text, start, date) : [];
}

/** The day of the month that words say, and where they end. */
function dateOf(
  text: string,
  word: string,
  end: number,
): { date: number; end: number; inFigures: boolean } | undefined {
  const digits = /^(\d{1,2})(?:e|er|de|te|ste)?$/.exec(word);
  if (digits) return { date: Number(digits[1]), end, inFigures: true };
  const ordinal = ordinals.get(word);
  if (ordinal !== undefined) return { date: ordinal, end, inFigures: false };
  const base = tens.get(word);
  const one = base === undefined ? undefined : tokenAfter(text, end);
  const unit = one && ordinals.get(one.word);
  return base !== undefined && unit !== undefined && unit < 10
    ? { date: base + unit, end: one!.end, inFigures: false }
    : undefined;
}

function yearFirst(text: string, year: string, end: number): Said[] {
  const second = tokenAfter(text, end);
  const third = second && loose.test(second.gap) ? tokenAfter(text, second.end) : undefined;
  if (!second || !third || !loose.test(third.gap) || !/^\d{1,2}$/.test(third.word)) return [];
  const month = /^\d{1,2}$/.test(second.word)
    ? figures.test(second.gap) && figures.test(third.gap)
      ? Number(second.word)
      : undefined
    : months.get(second.word);
  return month === undefined ? [] : [[`${year}-${two(month)}-${two(Number(third.word))}`, third.end]];
}

function monthFirst(text: string, month: number, end: number): Said[] {
  let at = tokenAfter(text, end);
  if (at && within.has(at.word)) at = tokenAfter(text, at.end);
  if (!at || !loose.test(at.gap)) return [];
  const date = dateOf(text, at.word, at.end);
  return date ? withYear(text, month, date.date, date.end) : [];
}

function dateFirst(
  text: string,
  start: number,
  { date, end, inFigures }: { date: number; end: number; inFigures: boolean },
): Said[] {
  if (date < 1 || date > 31) return [];
  let at = tokenAfter(text, end);
  if (at && inFigures && /^\d{1,2}$/.test(at.word)) return inFiguresOnly(text, start, date, at);
  for (let i = 0; at && within.has(at.word) && !romanMonth(text, at) && i < 3; i++) {
    if (!loose.test(at.gap)) return [];
    at = tokenAfter(text, at.end);
  }
  const month = at && loose.test(at.gap) ? months.get(at.word) : undefined;
  return month === undefined ? [] : withYear(text, month, date, at!.end);
}

/** “14 I 1951” is January; “i mars” is Norwegian. */
function romanMonth(text: string, { word, end }: Token): boolean {
  return romans.has(word) && isYear(tokenAfter(text, end)?.word ?? '');
}

function inFiguresOnly(text: string, start: number, first: number, second: Token): Said[] {
  const third = figures.test(second.gap) ? tokenAfter(text, second.end) : undefined;
  if (!third || !figures.test(third.gap)) return [];
  const other = Number(second.word);
  const both = (year: string): Said[] => [
    [`${year}-${two(other)}-${two(first)}`, third.end],
    [`${year}-${two(first)}-${two(other)}`, third.end],
  ];
  if (isYear(third.word)) return both(third.word);
  // Two figures of the year tell only where day, month and year stand together and by themselves.
  const alone =
    /^\d\d$/.test(third.raw) &&
    /^[.\-–/]$/.test(second.gap) &&
    second.gap === third.gap &&
    !/[\d.\-–/]/.test(text.charAt(start - 1)) &&
    !/^(?:[–/-]|\.\d)/.test(text.slice(third.end, third.end + 2));
  return alone ? both(third.raw) : [];
}

function withYear(text: string, month: number, date: number, end: number): Said[] {
  let at = tokenAfter(text, end);
  if (at && within.has(at.word)) at = tokenAfter(text, at.end);
  if (!at || !loose.test(at.gap)) return [];
  const rest = `-${two(month)}-${two(date)}`;
  if (isYear(at.word)) return [[at.word + rest, at.end]];
  if (/^['’]?\d\d$/.test(at.raw) && /^(?:[\s./-]|, )$/.test(at.gap))
    return [[at.raw.slice(-2) + rest, at.end]];
  const spoken = yearInWords(text, at);
  return spoken ? [[spoken.year + rest, spoken.end]] : [];
}

/** Nineteen fifty-one, nineteen hundred and fifty-one. */
function yearInWords(text: string, first: Token): { year: string; end: number } | undefined {
  const century = units.indexOf(first.word) + 1;
  if (century < 16) return undefined;
  let at = tokenAfter(text, first.end);
  if (at?.word === 'hundred') at = tokenAfter(text, at.end);
  if (at?.word === 'and') at = tokenAfter(text, at.end);
  if (!at) return undefined;
  const unit = units.indexOf(at.word) + 1;
  if (unit >= 1) return { year: `${century}${two(unit)}`, end: at.end };
  const ten = decades.indexOf(at.word);
  if (ten < 0) return undefined;
  const one = tokenAfter(text, at.end);
  const last = one ? units.indexOf(one.word) + 1 : 0;
  return last >= 1 && last < 10
    ? { year: `${century}${ten + 2}${last}`, end: one!.end }
    : { year: `${century}${ten + 2}0`, end: at.end };
}
