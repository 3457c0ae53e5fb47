/**
 * Ages as clerks write them: `31`, `31y 4m`, `1y6m`, `7m`, `3w`, `12d`, and the fractions of American censuses:
 * `5/12` is five months, `9/30` nine days (*common practice*). Whole units already lived, none of them rounded up.
 */

/** An age taken apart; units that are not given are 0. */
export interface Age {
  years: number;
  months: number;
  weeks: number;
  days: number;
  /** The smallest unit the record counts in: the age may be up to one of it more. */
  unit: 'y' | 'm' | 'w' | 'd';
}

/** Nobody is known to have lived longer, and a higher number is a slip of the pen. */
const oldest = 130;

const form = 'An age is a number of years, such as 31, or 31y 4m, 7m, 12d or 5/12 for months of an infant.';

/** An age taken apart, or a sentence about what is wrong with it. */
export function readAge(age: number | string): Age | string {
  if (typeof age === 'number') return Number.isFinite(age) ? inYears(age) : form;
  const text = age.trim().toLowerCase();
  if (text.length > 40) return form;
  if (/^\d+(?:\.\d+)?y?$/.test(text)) return inYears(Number(text.replace('y', '')));
  return fraction(text) ?? counted(text);
}

/** What is wrong with an age, or `undefined`. */
export function ageProblem(age: number | string): string | undefined {
  const read = readAge(age);
  return typeof read === 'string' ? read : undefined;
}

/** The shape of an age as text, for editors. */
export const agePattern =
  '^(?:\\d{1,3}y?|(?:\\d{1,3}y)?[ ,]*(?:\\d{1,4}m)?[ ,]*(?:\\d{1,4}w)?[ ,]*(?:\\d{1,5}d)?|(?:\\d{1,3}y? )?\\d{1,2}/(?:12|30))$';

function inYears(n: number): Age | string {
  if (n < 0) return 'An age cannot be less than nothing.';
  if (n > oldest) return tooOld(`${n} years`);
  return { years: Math.floor(n), months: 0, weeks: 0, days: 0, unit: 'y' };
}

function tooOld(age: string): string {
  return `Nobody has lived ${age}; read the figure again, and keep what the record says under says.`;
}

/** `5/12`, `1 3/12`, `9/30`: months and days of an infant, or of a child after whole years. */
function fraction(text: string): Age | string | undefined {
  const parts = /^(?:(\d{1,3})y? +)?(\d{1,2})\/(\d{1,2})(?:y|m)?$/.exec(text);
  if (!parts) return undefined;
  const years = Number(parts[1] ?? 0);
  const [over, under] = [Number(parts[2]), Number(parts[3])];
  if (under !== 12 && under !== 30)
    return `“${text}” is no age; a fraction of twelve counts months, such as 5/12, and one of thirty days, such as 9/30.`;
  if (over >= under) return `“${text}” is no age; the upper number of the fraction is less than ${under}.`;
  if (years > oldest) return tooOld(`${years} years`);
  return under === 12
    ? { years, months: over, weeks: 0, days: 0, unit: 'm' }
    : { years, months: 0, weeks: 0, days: over, unit: 'd' };
}

const units = ['y', 'm', 'w', 'd'] as const;

/** `31y 4m`, `2y 3m 10d`, `8w 3d`: each unit once, the larger first. */
function counted(text: string): Age | string {
  const parts = /^(?:(\d{1,5})y)?[ ,]*(?:(\d{1,5})m)?[ ,]*(?:(\d{1,5})w)?[ ,]*(?:(\d{1,5})d)?$/.exec(text);
  const given = parts ? units.filter((_, i) => parts[i + 1] !== undefined) : [];
  if (!parts || given.length === 0) return form;
  const [years, months, weeks, days] = parts.slice(1).map((part) => Number(part ?? 0)) as [
    number,
    number,
    number,
    number,
  ];
  if (years + months / 12 + weeks / 52.18 + days / 365.25 > oldest + 1) return tooOld(text);
  return { years, months, weeks, days, unit: given.at(-1)! };
}
