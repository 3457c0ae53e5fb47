/** The file of a record: valid as it stands, with comments that teach. */
import { tellsIn, fieldLines, fieldsOf } from './record-fields.ts';
import type { RecordShape, ShapeMention } from './shapes/shape.ts';
import { commentLines, withComment, yamlInline, yamlText, yamlValue } from './yaml-text.ts';
import type { Series } from '../../model/series.ts';

export interface Voyage {
  ship?: string | undefined;
  /** The shipping line, for the citation: the line of a voyage in a mention is the line on the page. */
  line?: string | undefined;
  from?: string | undefined;
  to?: string | undefined;
}

export interface MentionFill extends Omit<ShapeMention, 'role'> {
  role: string | undefined;
  name: string | undefined;
  answers: Map<string, string>;
  /** Where it stands in the cast. */
  at: number;
  /** Not named by the record, or not yet: not written. */
  leftOut?: true;
}

export interface RecordFill {
  title: string;
  shape: RecordShape;
  series: Series | undefined;
  /** What the catalogue knows of the series beside. */
  note: string | undefined;
  place: string | undefined;
  made: string | undefined;
  voyage: Voyage | undefined;
  mentions: readonly MentionFill[];
}

/** The text of a record's file. */
export function recordText(fill: RecordFill): string {
  const { shape, series, place, made } = fill;
  return [
    '---',
    `title: ${yamlText(fill.title)}`,
    ...citeLines(fill),
    withComment(
      `form: ${shape.form}`,
      'original, derivative (a copy, index or transcript) or authored (a narrative)',
    ),
    '# derivedFrom: [RECORD-ID]   # of a derivative: what it copies, or { unseen: words for what you have not seen }',
    '# seen: image                # how you saw it: original, image, film, transcript or report',
    made
      ? withComment(
          `made: ${yamlValue(made)}`,
          series?.kind === 'census'
            ? 'the day the census speaks of; the day on the page, where it has one'
            : undefined,
        )
      : '# made: 1871-04-11           # when this document was made',
    place
      ? `place: ${place}`
      : '# place: houghton-county     # where it was made: one of your places or a built-in one',
    series ? withComment(`series: ${series.id}`, series.title) : '# series: us-declaration-of-intention',
    ...aboutSeries(fill),
    ...informantLines(shape),
    'mentions:                    # everyone it names, each as it names them',
    ...mentionBlocks(fill),
    '---',
    '',
    'Write the transcription here, word by word, with what you cannot read as [illegible].',
    '',
  ].join('\n');
}

function citeLines({ title, shape, made, voyage }: RecordFill): string[] {
  const { type, genre, medium, examples } = shape.cite;
  const line = voyage?.line;
  return [
    '# How somebody else finds it again, in the variables of CSL. Dates are EDTF: 1871-04-11, 1871-04, 1840~.',
    'cite:',
    `  type: ${type}`,
    `  title: ${yamlText(title)}`,
    ...(genre ? [`  genre: ${genre}`] : []),
    ...(medium ? [`  medium: ${medium}`] : []),
    ...(line ? [`  publisher: ${yamlText(line)}`] : []),
    made ? `  issued: ${yamlValue(made)}` : '  # issued: 1871-04-11',
    ...examples.map(([key, example]) => `  # ${key}: ${example}`),
  ];
}

function aboutSeries({ series, made, note }: RecordFill): string[] {
  if (!series) return [];
  const tells = tellsIn(series, made);
  const near: Record<string, string> = {
    none: 'It says nothing of where people came from.',
    country: 'Of an origin it gives the country, seldom more.',
    county: 'Of an origin it gives the county, seldom more.',
    parish: 'It may name the parish or town of origin.',
    townland: 'It may name the very place of origin.',
    varies: 'What it says of an origin runs from nothing to the very place.',
  };
  return commentLines([tells && near[tells.origin], note].filter(Boolean).join(' '));
}

function informantLines({ informants, usual }: RecordShape): string[] {
  return [
    '# Who said what stands here, and how they knew: primary is first hand. This decides what counts as independent.',
    'informants:',
    ...informants.flatMap(({ key, described, knowledge, teaches }) => [
      ...commentLines(teaches, '  '),
      `  ${key}: { described: ${yamlInline(described)}, knowledge: ${knowledge} }`,
    ]),
    ...(usual && informants.length > 1
      ? [withComment(`informant: ${usual}`, 'whose word the statements below are, unless one says otherwise')]
      : []),
  ];
}

function mentionBlocks(fill: RecordFill): string[] {
  const written = fill.mentions.filter(({ leftOut }) => !leftOut);
  const idAt = new Map(written.map(({ at }, i) => [at, `m${i + 1}`]));
  const missing = fill.mentions.filter(({ leftOut }) => leftOut);
  const more = fill.shape.list ? [] : [...new Set(missing.map(({ role }) => role!))];
  return [
    ...written.flatMap((mention, i) => mentionLines(fill, mention, idAt, i === 0)),
    ...(more.length > 0
      ? commentLines(`Others such a record may name, each a mention like these: ${more.join(', ')}.`, '  ')
      : []),
    ...(fill.shape.list && written.length === 1
      ? commentLines(
          'Go on with everybody else on the page, the neighbours too: m2, m3 … They are who the trail leads to.',
          '  ',
        )
      : []),
  ];
}

function mentionLines(
  fill: RecordFill,
  mention: MentionFill,
  idAt: ReadonlyMap<number, string>,
  first: boolean,
): string[] {
  const { shape, series, made, voyage } = fill;
  const { role, name, sex, present } = mention;
  const related = (mention.relations ?? []).filter(({ of }) => idAt.has(of));
  // Whoever it is about shows what may be filled in, where nothing was answered.
  const own = shape.event !== undefined && isOf(shape.event, role);
  const unanswered = (first || own) && mention.answers.size === 0;
  const fields = fieldsOf(series, made).filter(
    ({ key }) => !(key === 'sex' && sex) && !mention.skips?.includes(key),
  );
  const event = own ? shape.event : undefined;
  return [
    `  - id: ${idAt.get(mention.at)}`,
    name === undefined ? '    # name: Morris Whelan    # as written' : `    name: ${yamlText(name)}`,
    ...(role ? [`    role: ${yamlText(role)}`] : []),
    ...(sex ? [`    sex: ${sex}`] : []),
    ...fieldLines(fields, mention.answers, { unanswered }),
    ...(voyage ? [voyageLine(voyage, made)] : []),
    ...(event ? [`    event: { kind: ${event}${made ? `, date: ${yamlValue(made)}` : ''} }`] : []),
    ...(shape.ofEvent && event ? [`    informants: { event: ${shape.ofEvent} }`] : []),
    ...(shape.ofEvent && voyage ? [`    informants: { voyage: ${shape.ofEvent} }`] : []),
    ...(shape.list && unanswered ? ['    # line: 61               # where on the page'] : []),
    ...(related.length > 0
      ? [`    relations: [${related.map(({ as, of }) => `{ as: ${as}, of: ${idAt.get(of)} }`).join(', ')}]`]
      : []),
    ...(present === false ? ['    present: false           # named, but not there'] : []),
  ];
}

/** Whether an event is that of somebody in this role: a baptism is the child’s, not the father’s. */
function isOf(event: NonNullable<RecordShape['event']>, role: string | undefined): boolean {
  const whose: Record<typeof event, readonly string[]> = {
    birth: ['child'],
    baptism: ['child'],
    marriage: ['groom', 'bride'],
    death: ['deceased'],
    burial: ['deceased'],
  };
  return role !== undefined && whose[event].includes(role);
}

function voyageLine({ ship, from, to }: Voyage, arrived: string | undefined): string {
  const parts = [
    ship && `ship: ${yamlInline(ship)}`,
    from && `from: ${yamlInline(from)}`,
    to && `to: ${yamlInline(to)}`,
    arrived && `arrived: ${yamlValue(arrived)}`,
  ].filter(Boolean);
  return parts.length > 0
    ? `    voyage: { ${parts.join(', ')} }`
    : '    # voyage: { ship: Harvest Home, from: Queenstown, to: New York, arrived: 1864-05-02, bound: Hancock }';
}
