/** Records as sources, with the archives that hold them and the pictures of them. */
import { mediumTypes } from '../../catalogue/gedcom/facts.ts';
import type { Mention, SourceRecord } from '../../model/record.ts';
import { keysOf } from './contract.ts';
import type { Identifiers } from './identifiers.ts';
import type { Written } from './lines.ts';
import { reference, text } from './parts.ts';

/** A record, by what the standard says of sources, and whole in our extension. */
export function sourceRecord(record: SourceRecord, ids: Identifiers): Written {
  const { cite } = record;
  const archive = archiveOf(cite);
  const { id: _id, body, mentions, ...rest } = record;
  const publication = [cite?.publisher, cite?.['publisher-place'], cite?.issued].filter(Boolean).join(', ');
  const medium = Object.entries(mediumTypes).find(
    ([, kind]) => kind.type === cite?.type && kind.medium === cite.medium,
  )?.[0];
  return {
    tag: 'SOUR',
    xref: ids.sources.get(record.id)!,
    under: [
      { tag: 'TITL', value: record.title },
      text(
        'AUTH',
        (cite?.author ?? [])
          .map(({ literal, given, family }) => literal ?? [given, family].filter(Boolean).join(' '))
          .join('; '),
      ),
      text('ABBR', cite?.['title-short'] === undefined ? undefined : String(cite['title-short'])),
      text('PUBL', publication),
      archive === undefined
        ? undefined
        : {
            tag: 'REPO',
            pointer: ids.archives.get(archive)!,
            under: [
              cite?.['call-number'] === undefined
                ? undefined
                : { tag: 'CALN', value: String(cite['call-number']), under: [text('MEDI', medium)] },
            ],
          },
      ...record.media.map(({ file }) => ({ tag: 'OBJE', pointer: ids.pictures.get(file)! })),
      body === '' ? undefined : { tag: 'TEXT', value: body, under: [{ tag: '_KEY', value: 'body' }] },
      reference(record.id),
      { tag: '_RECORD', under: keysOf({ ...rest, mentions: mentions.map(keptMention) }) },
    ],
  };
}

function keptMention(mention: Mention): Record<string, unknown> {
  const { present, ...rest } = mention;
  return { ...rest, ...(present ? {} : { present }) };
}

/** The archive that holds a document: its name and its place, in one text. */
export function archiveOf(cite: SourceRecord['cite']): string | undefined {
  return cite?.archive === undefined
    ? undefined
    : `${String(cite.archive)}\n${String(cite['archive-place'] ?? '')}`;
}

/** An archive. */
export function repository(archive: string, xref: string): Written {
  const [name = '', place = ''] = archive.split('\n');
  return { tag: 'REPO', xref, under: [{ tag: 'NAME', value: name }, text('ADDR', place)] };
}

/** A picture, under the name of its file. */
export function pictureRecord(
  { file, alt, credit, rights }: SourceRecord['media'][number],
  ids: Identifiers,
): Written {
  return {
    tag: 'OBJE',
    xref: ids.pictures.get(file)!,
    under: [
      {
        tag: 'FILE',
        // In a URI these two would end the name of the file.
        value: encodeURI(`media/${file}`).replace(/[?#]/g, encodeURIComponent),
        under: [{ tag: 'FORM', value: mediaType(file) }, text('TITL', alt)],
      },
      text('NOTE', [credit, rights].filter(Boolean).join('; ')),
    ],
  };
}

const types: Readonly<Record<string, string>> = {
  jpg: 'image/jpeg',
  jpeg: 'image/jpeg',
  tif: 'image/tiff',
  tiff: 'image/tiff',
};

function mediaType(file: string): string {
  const ending = file.slice(file.lastIndexOf('.') + 1).toLowerCase();
  return types[ending] ?? `image/${ending}`;
}
