import type { dates as English } from '../en/dates.ts';

const months = 'januar februar mars april mai juni juli august september oktober november desember'.split(
  ' ',
);
const seasons: Readonly<Record<number, string>> = {
  21: 'våren',
  22: 'sommeren',
  23: 'høsten',
  24: 'vinteren',
  25: 'våren',
  26: 'sommeren',
  27: 'høsten',
  28: 'vinteren',
  29: 'våren på den sørlige halvkule',
  30: 'sommeren på den sørlige halvkule',
  31: 'høsten på den sørlige halvkule',
  32: 'vinteren på den sørlige halvkule',
  33: 'første kvartal',
  34: 'andre kvartal',
  35: 'tredje kvartal',
  36: 'fjerde kvartal',
  37: 'første tredjedel av',
  38: 'andre tredjedel av',
  39: 'siste tredjedel av',
  40: 'første halvdel av',
  41: 'andre halvdel av',
};
const parts = { year: 'år', month: 'måned', day: 'dag' };

export const dates: typeof English = {
  month: (number) => months[number - 1]!,
  dayOfMonth: (day, month) => `${day}. ${month}`,
  ofYear: (monthOrDay, year) => `${monthOrDay} ${/-årene$/.test(year) ? 'i ' : ''}${year}`,
  season: (number, year) => (seasons[number] === undefined ? undefined : `${seasons[number]} ${year}`),
  decade: (year) => `${year}-årene`,
  beforeChrist: (year) => `${year} f.Kr.`,
  significant: (year, digits) =>
    `${year}, med ${digits === 1 ? 'ett gjeldende siffer' : `${digits} gjeldende sifre`}`,
  monthNumber: (number) => `måned ${number}`,
  dayNumber: (number) => `dag ${number}`,
  yearUnknown: 'ukjent år',
  monthUnknown: 'ukjent måned',
  dayUnknown: 'ukjent dag',
  monthAndDayUnknown: 'ukjent måned og dag',
  someYear: 'et ukjent år',
  someDate: 'en ukjent dato',
  unknown: 'ukjent dato',
  sure: {
    '?': (date) => `trolig ${date}`,
    '~': (date) => `omkring ${date}`,
    '%': (date) => `trolig omkring ${date}`,
  },
  doubt: (of, mark) => {
    const uncertain = of[0] === 'year' ? 'usikkert' : 'usikker';
    const how = { '?': uncertain, '~': 'omtrentlig', '%': `${uncertain} og omtrentlig` };
    return `${how[mark]} ${of.map((part) => parts[part]).join(' og ')}`;
  },
  and: ' og ',
  or: ' eller ',
  between: (from, to) => `mellom ${from} og ${to}`,
  fromTo: (from, to) => `${from} til ${to}`,
  by: (date) => `senest ${date}`,
  orEarlier: (date) => `${date} eller tidligere`,
  orLater: (date) => `${date} eller senere`,
  oldStyle: (date, gregorian) =>
    gregorian === undefined
      ? `${date} etter gammel stil`
      : `${date} etter gammel stil (${gregorian} etter ny stil)`,
  newStyle: (span) => `${span} (etter ny stil)`,
  at: (date) =>
    /^\d{1,2}\. /.test(date)
      ? `den ${date}`
      : new RegExp(`^(?:\\d|${months.join('|')}|første|andre|tredje|fjerde|siste)`).test(date)
        ? `i ${date}`
        : date,
  on: (date) => `den ${date}`,
  notKnown: 'ikke kjent',
  allYears: 'alle år',
  upTo: (date) => `til ${date}`,
  onward: (date) => `fra ${date}`,
  aboutYear: (year) => `ca. ${year}`,
  born: (year) => `født ${year}`,
  died: (year) => `død ${year}`,
};
