/** What a mention says, as labelled lines for reading. */
import type { Mention } from '../../src/model/record.ts';
import { dateInWords } from '../layout/dates.ts';
import { wording } from '../layout/wording.ts';

interface Line {
  /** The key an informant or an inference is given for. */
  key: string;
  label: string;
  value: string;
  /** The value is in the record’s own words. */
  reading: boolean;
  inferred: boolean;
}

/** The statements of a mention in a fixed order, without its name, role and age. */
export function statementLines(mention: Mention): Line[] {
  const { words, records: t } = wording();
  const lines: Line[] = [];
  const add = (key: string, label: string, value: string | undefined, reading = false) => {
    if (value) lines.push({ key, label, value, reading, inferred: mention.inferred.includes(key) });
  };
  add('born', t.born, mention.born && dateInWords(mention.born));
  add('birthplace', words.statement('birthplace'), mention.birthplace, true);
  add('residence', words.statement('residence'), mention.residence, true);
  add('lastResidence', words.statement('lastResidence'), mention.lastResidence, true);
  add('occupation', words.statement('occupation'), mention.occupation, true);
  add('immigrated', words.statement('immigrated'), mention.immigrated && dateInWords(mention.immigrated));
  const kind = mention.event && words.eventKind(mention.event.kind);
  if (mention.event) add('event', kind!, mention.event.date && dateInWords(mention.event.date));
  if (mention.event?.place) add('event', mention.event.date ? t.at : kind!, mention.event.place, true);
  if (mention.voyage) add('voyage', words.statement('voyage'), voyageInWords(mention.voyage));
  if (mention.joining) add('joining', words.statement('joining'), partyInWords(mention.joining), true);
  if (mention.nearest) add('nearest', t.leftBehind, partyInWords(mention.nearest), true);
  for (const [key, value] of Object.entries(mention.says))
    add(`says.${key}`, words.statement(`says.${key}`), value, true);
  if (!mention.present) add('present', t.notThere, t.namedButAbsent);
  return lines;
}

/** An age as stated, with a mark for months and days. */
export function ageOf(mention: Mention): string {
  return mention.age === undefined ? '' : wording().words.age(mention.age);
}

function voyageInWords(voyage: NonNullable<Mention['voyage']>): string {
  const { ship, from, to, sailed, arrived, bound, ticket } = voyage;
  const t = wording().records;
  const known = (date: string | undefined) => date !== undefined && date !== '..';
  const day = (date: string | undefined) => (known(date) ? dateInWords(date!) : undefined);
  const parts = [
    ship && t.ship(ship),
    from && t.from(from, day(sailed)),
    to && t.to(to, day(arrived)),
    !to && known(arrived) && t.arrived(dateInWords(arrived!)),
    bound && t.bound(bound),
    ticket && t.ticket(String(ticket)),
  ];
  return parts.filter(Boolean).join('; ');
}

function partyInWords(party: {
  name?: string | undefined;
  relation?: string | undefined;
  address?: string | undefined;
}): string {
  return [party.name, party.relation && `(${party.relation})`, party.address]
    .filter(Boolean)
    .join(', ')
    .replace(', (', ' (');
}

/** “child of Johannes Olsen”: the relations of a mention to others of its record, by their names as written. */
export function relationLines(mention: Mention, others: readonly Mention[]): string[] {
  const { words, records: t } = wording();
  return mention.relations.map(({ as, of }) => {
    const other = others.find((m) => m.id === of || of.endsWith(`#${m.id}`));
    return words.relationTo(as, other?.name ?? (other?.role ? words.role(other.role) : t.somebodyElsewhere));
  });
}
