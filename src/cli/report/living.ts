/** What `check --living` prints: who is presumed living, until when by what is known, and the fact that decides. */
import type { Examination } from '../../dossier/examine.ts';
import { dayNumber, isoDay } from '../../model/days.ts';
import { mentionAt } from '../../model/facts.ts';
import { kinOf } from '../../reasoning/kin.ts';
import { assumedAges, type Bound } from '../../reasoning/latest-birth.ts';
import { presumptionOf, type Presumption } from '../../reasoning/living.ts';
import { wrap, type Paint } from './paint.ts';

interface Row {
  /** A person’s id, or `record#mention` of a mention of nobody’s. */
  id: string;
  name: string;
  living: boolean;
  withheld: boolean;
  until: string | null;
  bornBy: string | null;
  because: string;
}

/** The report, of one person or mention, or of everybody. `undefined` where there is none of that id. */
export function livingReport(
  examination: Examination,
  of: string | undefined,
  format: 'text' | 'json',
  paint: Paint,
): string | undefined {
  const { corpus, withheld, today } = examination;
  const { owner } = kinOf(corpus);
  const day = dayNumber(...(today.split('-').map(Number) as [number, number, number]));
  const known = of === undefined || corpus.people.has(of) || mentionAt(corpus, of) !== undefined;
  if (!known) return undefined;
  const ids = of === undefined ? [...corpus.people.keys(), ...nobodys(examination)] : [owner(of) ?? of];
  const rows = ids.map((id) => row(examination, id, day));
  if (format === 'json')
    return `${JSON.stringify({ version: 1, today, livingYears: corpus.site.livingYears, audience: corpus.site.audience, people: rows }, null, 2)}\n`;
  const shown = of === undefined ? rows.filter((one) => one.living) : rows;
  const lines = shown.flatMap((one) => [
    `${paint.bold(one.name)} ${paint.dim(`(${one.id})`)}: ${standing(one)}.`,
    wrap(one.because, paint.width, '    '),
  ]);
  if (of === undefined) {
    const dead = rows.filter((one) => !one.living).length;
    lines.push(
      shown.length === 0 ? 'Nobody is presumed living.' : '',
      `${dead} ${dead === 1 ? 'person counts' : 'people count'} as dead; --living PERSON says why.`,
    );
  }
  const left =
    withheld.people.size + withheld.mentions.size === 0
      ? 'Nobody is left out of the site.'
      : of === undefined
        ? 'A public site leaves them out.'
        : rows[0]!.withheld
          ? 'The site leaves them out.'
          : 'The site shows them.';
  lines.push(paint.dim(`Reckoned on ${today}, with ${corpus.site.livingYears} years. ${left}`), '');
  return lines.filter((line, i) => line !== '' || i === lines.length - 1).join('\n');
}

/** Mentions of nobody’s that are withheld. */
function nobodys({ corpus, withheld }: Examination): string[] {
  const { owner } = kinOf(corpus);
  return [...withheld.mentions].filter((ref) => owner(ref) === undefined).sort();
}

function row({ corpus, withheld }: Examination, id: string, today: number): Row {
  const presumption = presumptionOf(corpus, id, today);
  const { living, until, because } = presumption;
  return {
    id,
    name: corpus.people.get(id)?.name ?? mentionAt(corpus, id)?.mention.name ?? id,
    living,
    withheld: withheld.people.has(id) || withheld.mentions.has(id),
    until: until === null ? null : isoDay(until),
    bornBy: because.kind === 'born-by' || because.kind === 'recent' ? isoDay(because.bound.day) : null,
    because: reason(presumption, corpus.site.livingYears, nameOf(corpus)),
  };
}

function standing({ living, until }: Row): string {
  if (!living) return until === null ? 'dead' : `counts as dead since ${until}`;
  return until === null ? 'presumed living, with no end in sight' : `presumed living until ${until}`;
}

type NameOf = (id: string) => string;

function nameOf(corpus: Examination['corpus']): NameOf {
  return (id) => corpus.people.get(id)?.name ?? mentionAt(corpus, id)?.mention.name ?? id;
}

function reason({ living, because }: Presumption, years: number, name: NameOf): string {
  switch (because.kind) {
    case 'said':
      return `The entry says living: ${living}.`;
    case 'died':
      return `The entry tells of the death${because.date === undefined ? '' : `, ${because.date}`}.`;
    case 'end':
      return `${because.ref} says so: ${because.what}${because.date === undefined ? '' : `, ${because.date}`}.`;
    case 'nothing':
      return 'Nothing says when they lived: no death, no date, and no relative with one.';
    case 'recent':
      return `Born by ${isoDay(because.bound.day)} at the latest, as ${facts(because.bound, name)} has it, and ${years} years are reckoned from then.${because.against ? ` Something else would have them older: ${facts(because.against, name)}. One of the two is wrong: mend it, or say living: false in the person’s entry.` : ''}`;
    case 'born-by':
      return `Born by ${isoDay(because.bound.day)} at the latest, and ${years} years are reckoned from then: ${facts(because.bound, name)}.`;
  }
}

/** What a bound follows from, then what that follows from, to the statement it begins with. */
function facts(bound: Bound, name: NameOf): string {
  const { fact, via } = bound;
  const date = fact.date ?? '';
  const by = fact.ref === undefined ? '' : ` (${fact.ref})`;
  const them = via ? name(via.who) : '';
  const then = via?.bound ? `, who was born by ${isoDay(via.bound.day)}: ${facts(via.bound, name)}` : '';
  switch (fact.kind) {
    case 'born':
      return `a birth, ${date}${by}`;
    case 'died':
      return `died, ${date}`;
    case 'named':
      return via ? `copied from ${them}${then}` : `named in a record made by ${date}${by}`;
    case 'age':
      return `an age in a record made by ${date}${by}`;
    case 'event':
      return `an event of theirs, ${date}${by}`;
    case 'arrived':
      return `an arrival or a sailing, ${date}${by}`;
    case 'adult':
      return `grown up in a record made by ${date}, so at least ${assumedAges.adult}${by}`;
    case 'married':
      return `married, ${date}, at ${assumedAges.married} or older${by}`;
    case 'parent-in-record':
      return `a parent by ${date}, at ${assumedAges.parent} or older${by}`;
    case 'spouse-in-record':
      return `a spouse by ${date}, at ${assumedAges.married} or older${by}`;
    case 'parent-of':
      return `at least ${assumedAges.parent} when their child was born, ${them}${then}`;
    case 'child-of':
      return `at most ${assumedAges.oldestMother} years after a mother’s birth, or ${assumedAges.oldestFather} after a father’s: ${them}${then}`;
    case 'spouse-of':
      return `grown up within the life of their spouse, ${them}${then}`;
    case 'parent-died':
      return `at most a year after the death of their parent, ${them}, ${date}`;
    case 'spouse-died':
      return `married before the death of their spouse, ${them}, ${date}`;
  }
}
