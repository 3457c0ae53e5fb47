/** Records, and the mentions in them, as comma-separated values. */
import { wordsOfHtml } from './words.ts';
import { csvLine } from '../../dossier/csv.ts';
import type { Dossier } from '../../dossier/types.ts';

const ofRecords = [
  'id',
  'title',
  'form',
  'derived from',
  'seen',
  'made',
  'place',
  'series',
  'volume',
  'part of',
  'mentions',
  'images',
  'used in',
  'reference note',
];

/** Every record, one line for each. */
export function recordsCsv({ records }: Pick<Dossier, 'records'>): string {
  const lines = [csvLine(ofRecords)];
  for (const { id, record, derivesFrom, mentions, media, usedIn, note } of records.values())
    lines.push(
      csvLine([
        id,
        record.title,
        record.form,
        derivesFrom
          .map((one) =>
            one.kind === 'unseen'
              ? `unseen: ${one.text}`
              : one.kind === 'perhaps'
                ? `perhaps: ${one.record}`
                : one.record,
          )
          .join('; '),
        record.seen ?? '',
        record.made ?? '',
        record.place ?? '',
        record.series ?? '',
        record.volume ?? '',
        record.partOf ?? '',
        mentions.length,
        media.length,
        usedIn.map((use) => `${use.case}#${use.evidence}`).join('; '),
        wordsOfHtml(note),
      ]),
    );
  return lines.join('');
}

/** Headings that an import of a table knows again, so that a list may go out and come in. */
const ofMentions = [
  'record',
  'mention',
  'person',
  'name',
  'alternate name',
  'role',
  'sex',
  'age',
  'born',
  'birthplace',
  'residence',
  'last residence',
  'occupation',
  'immigrated',
  'ship',
  'from',
  'sailed',
  'to',
  'arrived',
  'bound',
  'ticket',
  'event',
  'event date',
  'event place',
  'line',
  'household',
  'joining',
  'nearest relative',
  'present',
  'relations',
  'says',
];

/** Every mention of every record, one line for each. */
export function mentionsCsv({ records }: Pick<Dossier, 'records'>): string {
  const lines = [csvLine(ofMentions)];
  for (const { id, mentions } of records.values())
    for (const { mention: m, person } of mentions)
      lines.push(
        csvLine([
          id,
          m.id,
          person ?? '',
          m.name ?? '',
          m.alsoRead.join('; '),
          m.role ?? '',
          m.sex ?? '',
          m.age ?? '',
          m.born ?? '',
          m.birthplace ?? '',
          m.residence ?? '',
          m.lastResidence ?? '',
          m.occupation ?? '',
          m.immigrated ?? '',
          m.voyage?.ship ?? '',
          m.voyage?.from ?? '',
          m.voyage?.sailed ?? '',
          m.voyage?.to ?? '',
          m.voyage?.arrived ?? '',
          m.voyage?.bound ?? '',
          m.voyage?.ticket ?? '',
          m.event?.kind ?? '',
          m.event?.date ?? '',
          m.event?.place ?? '',
          m.line ?? m.voyage?.line ?? '',
          m.household ?? '',
          partyOf(m.joining),
          partyOf(m.nearest),
          m.present ? 'yes' : 'no',
          m.relations.map(({ as, of }) => `${as} of ${of}`).join('; '),
          Object.entries(m.says)
            .map(([key, value]) => `${key}: ${value}`)
            .join('; '),
        ]),
      );
  return lines.join('');
}

function partyOf(
  party:
    { name?: string | undefined; relation?: string | undefined; address?: string | undefined } | undefined,
): string {
  return [party?.name, party?.relation, party?.address].filter((part) => part !== undefined).join(', ');
}
