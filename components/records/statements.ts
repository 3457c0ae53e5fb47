/** What a mention says, as labelled lines for reading. */
import type { Mention } from '../../src/model/record.ts';
import { dateInWords } from '../layout/dates.ts';
import { ageInWords, plainWords } from '../layout/words.ts';

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
  const lines: Line[] = [];
  const add = (key: string, label: string, value: string | undefined, reading = false) => {
    if (value) lines.push({ key, label, value, reading, inferred: mention.inferred.includes(key) });
  };
  add('born', 'born', mention.born && dateInWords(mention.born));
  add('birthplace', 'birthplace', mention.birthplace, true);
  add('residence', 'residence', mention.residence, true);
  add('lastResidence', 'last residence', mention.lastResidence, true);
  add('occupation', 'occupation', mention.occupation, true);
  add('immigrated', 'immigrated', mention.immigrated && dateInWords(mention.immigrated));
  if (mention.event) add('event', mention.event.kind, mention.event.date && dateInWords(mention.event.date));
  if (mention.event?.place)
    add('event', mention.event.date ? 'at' : mention.event.kind, mention.event.place, true);
  if (mention.voyage) add('voyage', 'voyage', voyageInWords(mention.voyage));
  if (mention.joining) add('joining', 'joining', partyInWords(mention.joining), true);
  if (mention.nearest) add('nearest', 'left behind', partyInWords(mention.nearest), true);
  for (const [key, value] of Object.entries(mention.says)) add(`says.${key}`, plainWords(key), value, true);
  if (!mention.present) add('present', 'not there', 'named, but absent');
  return lines;
}

/** An age as stated, with a mark for months and days. */
export function ageOf(mention: Mention): string {
  return mention.age === undefined ? '' : ageInWords(mention.age);
}

function voyageInWords(voyage: NonNullable<Mention['voyage']>): string {
  const { ship, from, to, sailed, arrived, bound, ticket } = voyage;
  const known = (date: string | undefined) => date !== undefined && date !== '..';
  const parts = [
    ship && `ship ${ship}`,
    from && `from ${from}${known(sailed) ? `, ${dateInWords(sailed!)}` : ''}`,
    to && `to ${to}${known(arrived) ? `, ${dateInWords(arrived!)}` : ''}`,
    !to && known(arrived) && `arrived ${dateInWords(arrived!)}`,
    bound && `bound for ${bound}`,
    ticket && `ticket ${ticket}`,
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
  return mention.relations.map(({ as, of }) => {
    const other = others.find((m) => m.id === of || of.endsWith(`#${m.id}`));
    return `${plainWords(as)} of ${other?.name ?? other?.role ?? 'somebody named elsewhere'}`;
  });
}
