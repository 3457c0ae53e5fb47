/** What a record says of a person, as events of theirs with the record as the source of each. */
import { tagOfKind } from '../../catalogue/gedcom/facts.ts';
import { readAge } from '../../model/age.ts';
import type { Mention, SourceRecord } from '../../model/record.ts';
import type { Identifiers } from './identifiers.ts';
import type { Written } from './lines.ts';
import { date, text } from './parts.ts';

/** What a mention says, as events of the person with the record as their source; `known` is their name otherwise. */
export function eventsOf(record: SourceRecord, mention: Mention, known: string, ids: Identifiers): Written[] {
  const source = (kind?: string): Written => ({
    tag: 'SOUR',
    pointer: ids.sources.get(record.id)!,
    under: [
      text('PAGE', pageOf(record)),
      ...(record.made === undefined ? [] : [{ tag: 'DATA', under: [date(record.made)] }]),
      kind !== undefined && tagOfKind.has(kind) ? { tag: 'EVEN', value: tagOfKind.get(kind)! } : undefined,
      ['0', '1', '2', '3'].includes(String(mention.says.quay))
        ? { tag: 'QUAY', value: String(mention.says.quay) }
        : undefined,
      { tag: '_MENTION', value: mention.id },
    ],
  });
  const events: Written[] = [];
  const { name, born, birthplace, residence, occupation, event, age, immigrated } = mention;
  if (name !== undefined && name !== known)
    events.push({ tag: 'NAME', value: name, under: [{ tag: 'TYPE', value: 'AKA' }, source()] });
  if (born !== undefined || birthplace !== undefined)
    events.push({
      tag: 'BIRT',
      under: [born === undefined ? undefined : date(born), text('PLAC', birthplace), source('birth')],
    });
  if (residence !== undefined) events.push({ tag: 'RESI', under: [text('PLAC', residence), source()] });
  if (occupation !== undefined) events.push({ tag: 'OCCU', value: occupation, under: [source()] });
  if (immigrated !== undefined && event?.kind !== 'immigration')
    events.push({ tag: 'IMMI', under: [date(immigrated), source('immigration')] });
  if (event !== undefined) {
    // Authors write kinds as they like; a capital is no other kind.
    const kind = event.kind.trim().toLowerCase();
    const tag = tagOfKind.get(kind);
    const ofPerson =
      tag !== undefined &&
      !['MARR', 'ANUL', 'DIV', 'DIVF', 'ENGA', 'MARB', 'MARC', 'MARL', 'MARS', 'EVEN'].includes(tag);
    events.push({
      tag: ofPerson ? tag : 'EVEN',
      under: [
        ofPerson && kind === event.kind ? undefined : { tag: 'TYPE', value: event.kind },
        event.date === undefined ? undefined : date(event.date),
        text('PLAC', event.place),
        age === undefined ? undefined : text('AGE', writtenAge(age)),
        source(kind),
      ],
    });
  }
  // A mention with nothing that has a tag is cited all the same.
  return events.length > 0 ? events : [source()];
}

/** Where in the source it stands. */
function pageOf({ cite }: SourceRecord): string | undefined {
  const parts = [
    cite?.volume === undefined ? undefined : `vol. ${cite.volume}`,
    cite?.page === undefined ? undefined : `p. ${cite.page}`,
    cite?.number === undefined ? undefined : `no. ${cite.number}`,
    cite?.section,
  ];
  return parts.filter(Boolean).join(', ') || undefined;
}

/** `31y 4m`: an age as GEDCOM has it. */
function writtenAge(age: number | string): string | undefined {
  const read = readAge(age);
  if (typeof read === 'string') return undefined;
  const parts = [
    [read.years, 'y'],
    [read.months, 'm'],
    [read.weeks, 'w'],
    [read.days, 'd'],
  ] as const;
  return parts
    .filter(([n, unit]) => n > 0 || unit === read.unit)
    .map(([n, unit]) => `${n}${unit}`)
    .join(' ');
}
