/** What an item of evidence says, as the record has it: readings verbatim, the rest in words. */
import type { Wording } from '../../src/interface/index.ts';
import { joined, type Part, type Phrase } from '../../src/interface/phrase.ts';
import { sayEventDate } from '../../src/interface/say-date.ts';
import type { Mention, MentionEvent } from '../../src/model/record.ts';
import { statementOf } from '../../src/model/facts.ts';

/** Statements given as dates of the record, put into words rather than quoted. */
const dates = new Set(['born', 'immigrated']);

/**
 * The statement a mention makes under a key, or null when it makes none. Without a key: how it names the person. `lang`
 * is the language of the record, where it is not that of the page.
 */
export function saidPhrase(
  mention: Mention,
  states: string | undefined,
  wording: Wording,
  lang?: string,
): Phrase | null {
  const quoted = (text: unknown): Part => ({ quote: String(text), ...(lang === undefined ? {} : { lang }) });
  if (states === undefined) return mention.name === undefined ? null : [quoted(mention.name)];
  const value = statementOf(mention, states);
  if (value === undefined || value === null) return null;
  const { words, proof, everywhere } = wording;
  if (states === 'event') return eventPhrase(value as MentionEvent, wording, quoted);
  if (states === 'age') return [words.age(value as string | number)];
  if (dates.has(states)) return [sayEventDate(String(value), wording.dates)];
  if (states === 'present') return [value === true ? proof.evidence.present : proof.evidence.notPresent];
  if (states === 'relations')
    return [mention.relations.map((relation) => words.relation(relation.as)).join(', ')];
  if (Array.isArray(value))
    return joined(
      value.map((one) => [quoted(one)]),
      everywhere.and,
    );
  if (typeof value === 'object') return partsPhrase(value as Record<string, unknown>, wording, quoted);
  return [quoted(value)];
}

type Quoted = (text: unknown) => Part;

/** What a statement key is called. */
export function stateWords(states: string | undefined, { words, proof }: Wording): string {
  return states === undefined ? proof.evidence.theName : words.statement(states);
}

/** The reading of a statement as a bare line for a drawing, if it quotes one. */
export function readingOf(
  mention: Mention,
  states: string | undefined,
  wording: Wording,
): string | undefined {
  const quotes = (saidPhrase(mention, states, wording) ?? []).flatMap((part) =>
    typeof part === 'object' && 'quote' in part ? [part.quote] : [],
  );
  return quotes.length > 0 ? quotes.join(', ') : undefined;
}

function eventPhrase(event: MentionEvent, { words, dates: said }: Wording, quoted: Quoted): Phrase {
  const kind = words.eventKind(event.kind);
  const when = event.date === undefined ? kind : `${kind}, ${sayEventDate(event.date, said)}`;
  return event.place === undefined ? [when] : [`${when}, `, quoted(event.place)];
}

function partsPhrase(
  parts: Record<string, unknown>,
  { words, proof, dates: said }: Wording,
  quoted: Quoted,
): Phrase {
  return joined(
    Object.entries(parts).map(([key, value]): Phrase =>
      key === 'sailed' || key === 'arrived'
        ? [proof.evidence.dated(key, sayEventDate(String(value), said))]
        : [`${words.statement(key)} `, quoted(value)],
    ),
    ', ',
  );
}
