/**
 * Dates as old papers write them and EDTF does not: quarters, numbered months, years of a reign, feast days and other
 * calendars. Each is told what to write instead; what cannot be reckoned surely is never guessed.
 *
 * Sources: Library of the Society of Friends, guide to the Quaker calendar, for numbered months; Calendar (New Style)
 * Act 1750 for the turn of the year; the days of the fixed feasts are *common practice*.
 */
import { easter, julianCivil } from './julian.ts';
import { civil } from './days.ts';
import { monthNumbered } from './numbered-months.ts';

/** What follows the quoted text: what it is and what to write. `undefined` for text of no such form. */
export function oldForm(date: string): string | undefined {
  const text = date.toLowerCase().replace(/\s+/g, ' ').trim();
  return otherCalendar(text) ?? quarter(text) ?? numbered(text) ?? regnal(text) ?? feast(text);
}

const calendars =
  /^(?:@#d)?(hebrew|jewish|french|republican|islamic|hijri|muslim|coptic|ethiopian|persian|chinese|japanese|hindu|roman)(?:_r| republican| revolutionary)?\b/;

function otherCalendar(text: string): string | undefined {
  if (/^(?:@#d)?gregorian\b/.test(text))
    return 'names the calendar that every date is in unless it says julian; leave the word out.';
  if (/^(?:@#d)?julian\b/.test(text))
    return 'is not a date; after the word julian, in small letters, write year-month-day, such as julian 1649-01-30.';
  const name = calendars.exec(text)?.[1];
  if (name === undefined) return undefined;
  return 'is in a calendar that is not reckoned with here; write the day by the Gregorian calendar, and keep the record’s own words in a note.';
}

const quarterNames: readonly RegExp[] = [
  /^(?:m(?:ar(?:ch)?)?|jan(?:uary)?(?:[-–/ ,]+feb(?:ruary)?)?[-–/ ,]+mar(?:ch)?)$/,
  /^(?:j(?:une?)?|apr(?:il)?(?:[-–/ ,]+may)?[-–/ ,]+june?)$/,
  /^(?:s(?:ept?(?:ember)?)?|july?(?:[-–/ ,]+aug(?:ust)?)?[-–/ ,]+sept?(?:ember)?)$/,
  /^(?:d(?:ec(?:ember)?)?|oct(?:ober)?(?:[-–/ ,]+nov(?:ember)?)?[-–/ ,]+dec(?:ember)?)$/,
];

/** Quarters of civil registration: “Mar. quarter 1866”, “Q1 1866”, “Jan-Feb-Mar 1866”. */
function quarter(text: string): string | undefined {
  const year = /(?:^|[^\d])(\d{4})$/.exec(text)?.[1] ?? /^(\d{4})(?:[^\d]|$)/.exec(text)?.[1];
  if (year === undefined) return undefined;
  const rest = text
    .replace(year, ' ')
    .replaceAll('.', '')
    .replace(/(?<![ ,])[ ,]+$/, '')
    .trim();
  const numbered =
    /^q ?([1-4])$/.exec(rest) ??
    /^(?:the )?([1-4])(?:st|nd|rd|th)? (?:quarter|qtr|q)(?: of)?$/.exec(rest) ??
    /^[1-4]q$/.exec(rest);
  const word = /^(first|second|third|fourth) quarter(?: of)?$/.exec(rest)?.[1];
  const named = /^(.*?) ?(?:quarter|quarters|qtr|qr)?(?: of)?$/.exec(rest)?.[1] ?? '';
  const spoken = /\b(?:quarter|quarters|qtr|qr)\b/.test(rest) || /[-–/,]/.test(named);
  const index = numbered
    ? Number((numbered[1] ?? numbered[0]).charAt(0)) - 1
    : word
      ? ['first', 'second', 'third', 'fourth'].indexOf(word)
      : spoken
        ? quarterNames.findIndex((name) => name.test(named.trim()))
        : -1;
  if (index < 0) return undefined;
  const months = ['January to March', 'April to June', 'July to September', 'October to December'][index]!;
  return `is a quarter, ${months}; write ${year}-${33 + index}.`;
}

function numbered(text: string): string | undefined {
  const found = monthNumbered(text);
  if (!found) return undefined;
  if (found.impossible) return `numbers its month, and ${found.impossible}`;
  const [one, other] = found.readings;
  return other === undefined
    ? `numbers its month: ${found.because}; write ${one!}, and keep the record’s own words in a note.`
    : `numbers its month and can be read in two ways: ${found.because}; write ${one!} or ${other}, whichever the papers around it bear out, and keep the record’s own words in a note.`;
}

const reigns =
  /\b\d{1,2}(?:st|nd|rd|th)?(?: ?(?:&|and) ?\d{1,2}(?:st|nd|rd|th)?)? (?:geo(?:rge)?|car(?:ol[iu]s?)?|charles|cha|jac(?:obi?)?|james|jas|eliz(?:abeth)?|hen(?:ry)?|edw(?:ard)?|w(?:m|ill(?:iam)?)?|w ?(?:&|and) ?m|vict?(?:oria)?|anne?|ph(?:il)?|phil?(?:ip)? ?(?:&|and) ?m(?:ary)?|mary|ric(?:hard)?)\b\.?(?: ?(?:[ivx]+|\d)\b)?/;

/** Years of a reign: “12 Geo. II”, “in the fifth year of the reign of King George”. */
function regnal(text: string): string | undefined {
  const bare = text.replaceAll('.', ' ').replace(/\s+/g, ' ');
  if (!/\b(?:regnal|reign|regni)\b/.test(bare) && !reigns.test(bare)) return undefined;
  return 'counts by the years of a reign; keep it in a note, and write the day reckoned from it, such as julian 1738-06-24 or 1761-10-25.';
}

const fixed: readonly (readonly [RegExp, month: number, day: number])[] = [
  [/lady day in harvest|assumption/, 8, 15],
  [/lady day|ladyday|annunciation/, 3, 25],
  [/michaelmas|st\.? michael/, 9, 29],
  [/candlemas|purification/, 2, 2],
  [/lammas/, 8, 1],
  [/martinmas|st\.? martin/, 11, 11],
  [/christmas/, 12, 25],
  [/epiphany|twelfth day/, 1, 6],
  [/all saints|all ?hallows?|hallowmas/, 11, 1],
  [/all souls/, 11, 2],
  [/midsummer|st\.? john(?:'s|’s| the baptist)/, 6, 24],
  [/st\.? patrick/, 3, 17],
  [/st\.? stephen/, 12, 26],
  [/circumcision/, 1, 1],
  [/may ?day/, 5, 1],
  [/st\.? brigid|st\.? bride/, 2, 1],
];

/** Feasts that go with Easter, by the days from Easter Sunday. */
const movable: readonly (readonly [RegExp, days: number])[] = [
  [/septuagesima/, -63],
  [/sexagesima/, -56],
  [/quinquagesima/, -49],
  [/shrove ?tuesday|shrovetide/, -47],
  [/ash wednesday/, -46],
  [/quadragesima/, -42],
  [/palm sunday/, -7],
  [/good friday/, -2],
  [/easter monday/, 1],
  [/easter tuesday/, 2],
  [/low sunday/, 7],
  [/rogation/, 35],
  [/ascension|holy thursday/, 39],
  [/whit ?monday/, 50],
  [/whit ?sun|pentecost/, 49],
  [/trinity/, 56],
  [/corpus christi/, 60],
  [/easter/, 0],
];

/** Feast days: “Michaelmas 1720”, “Easter 1847”. */
function feast(text: string): string | undefined {
  const still = fixed.find(([name]) => name.test(text));
  const moving = still ? undefined : movable.find(([name]) => name.test(text));
  if (!still && !moving) return undefined;
  const start = 'is a feast day; keep it in a note, and write the day reckoned from it';
  const year = Number(/(?:^|\D)(\d{4})(?:\D|$)/.exec(text)?.[1]);
  if (!(year >= 1000 && year <= 2100)) return `${start}, such as 1847-04-04.`;
  const days = still ? fixedDays(year, still[1], still[2]) : [movableDay(year, moving![1])];
  return `${start}; in Britain and Ireland the feast itself fell on ${days.join(' or, where the year began on 25 March, ')}.`;
}

function fixedDays(year: number, month: number, day: number): string[] {
  const monthDay = `${pad(month)}-${pad(day)}`;
  if (year > 1752 || (year === 1752 && month > 9)) return [`${year}-${monthDay}`];
  if (year === 1752 && month === 9) return [`${day > 13 ? '' : 'julian '}${year}-${monthDay}`];
  const plain = `julian ${year}-${monthDay}`;
  const doubtful = year < 1752 && (month < 3 || (month === 3 && day < 25));
  return doubtful ? [plain, `julian ${year + 1}-${monthDay}`] : [plain];
}

function movableDay(year: number, days: number): string {
  const day = easter(year, year > 1752 ? 'gregorian' : 'julian') + days;
  const { year: y, month, day: d } = year > 1752 ? civil(day) : julianCivil(day);
  return `${year > 1752 ? '' : 'julian '}${y}-${pad(month)}-${pad(d)}`;
}

function pad(n: number): string {
  return String(n).padStart(2, '0');
}
