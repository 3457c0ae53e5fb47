/** What an item of evidence says, as the record has it: readings verbatim, the rest in words. */
import type { Mention, MentionEvent } from '../../src/model/record.ts';
import { statementOf } from '../../src/model/facts.ts';
import { dateInWords } from '../layout/dates.ts';
import { ageInWords, plainWords } from '../layout/words.ts';
import { joined, type Phrase } from '../../src/interface/phrase.ts';

/** Statements given as dates of the record, put into words rather than quoted. */
const dates = new Set(['born', 'immigrated']);

/** The statement a mention makes under a key, or null when it makes none. Without a key: how it names the person. */
export function saidPhrase(mention: Mention, states: string | undefined): Phrase | null {
  if (states === undefined) return mention.name === undefined ? null : [{ quote: mention.name }];
  const value = statementOf(mention, states);
  if (value === undefined || value === null) return null;
  if (states === 'event') return eventPhrase(value as MentionEvent);
  if (states === 'age') return [ageInWords(value as string | number)];
  if (dates.has(states)) return [dateInWords(String(value))];
  if (states === 'present') return [value === true ? 'present' : 'named, but not there'];
  if (states === 'relations')
    return [mention.relations.map((relation) => plainWords(relation.as)).join(', ')];
  if (Array.isArray(value)) return joined(value.map((one) => [{ quote: String(one) }]));
  if (typeof value === 'object') return partsPhrase(value as Record<string, unknown>);
  return [{ quote: String(value) }];
}

/** What a statement key is called. */
export function stateWords(states: string | undefined): string {
  return states === undefined ? 'the name' : plainWords(states);
}

/** The reading of a statement as a bare line for a drawing, if it quotes one. */
export function readingOf(mention: Mention, states: string | undefined): string | undefined {
  const quotes = (saidPhrase(mention, states) ?? []).flatMap((part) =>
    typeof part === 'object' && 'quote' in part ? [part.quote] : [],
  );
  return quotes.length > 0 ? quotes.join(', ') : undefined;
}

function eventPhrase(event: MentionEvent): Phrase {
  const when = event.date === undefined ? event.kind : `${event.kind}, ${dateInWords(event.date)}`;
  return event.place === undefined ? [when] : [`${when}, `, { quote: event.place }];
}

function partsPhrase(parts: Record<string, unknown>): Phrase {
  return joined(
    Object.entries(parts).map(([key, value]): Phrase =>
      ['sailed', 'arrived'].includes(key)
        ? [`${key} ${dateInWords(String(value))}`]
        : [`${plainWords(key)} `, { quote: String(value) }],
    ),
    ', ',
  );
}
