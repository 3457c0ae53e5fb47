/** The evidence of every case as comma-separated values, with what the computation makes of each item. */
import { csvLine } from '../../dossier/csv.ts';
import type { CaseView, Dossier } from '../../dossier/types.ts';
import { statementOf } from '../../model/facts.ts';

const headings = [
  'case',
  'subject',
  'standing',
  'concluded place',
  'evidence',
  'from',
  'states',
  'reading',
  'place',
  'against',
  'kind',
  'cited',
  'counts',
  'needs a tie',
  'tie',
  'tied by',
  'rests on',
  'conflicts',
  'note',
];

/** Every item of evidence, one line for each, in the order of the case files. */
export function evidenceCsv({ cases, facts }: Pick<Dossier, 'cases' | 'facts'>): string {
  const lines = [csvLine(headings)];
  for (const { id, case: c, result } of cases.values()) {
    const items = new Map(result?.items.map((item) => [item.id, item]));
    const conflicts = new Map(result?.conflicts.map((one) => [one.evidence, one.answered]));
    for (const item of c.evidence) {
      const computed = items.get(item.id);
      const readings = item.from.flatMap((ref) => {
        const [record = '', mention = ''] = ref.split('#');
        const found = facts.records.get(record)?.mentions.find((one) => one.id === mention);
        const said = found && item.states !== undefined ? statementOf(found, item.states) : undefined;
        return said === undefined ? [] : [saidAs(said)];
      });
      lines.push(
        csvLine([
          id,
          c.subject,
          result?.standing ?? '',
          result?.place ?? '',
          item.id,
          item.from.join('; '),
          item.states ?? '',
          readings.join('; '),
          item.place ?? '',
          item.against ?? '',
          item.kind,
          yesNo(computed?.cited),
          yesNo(computed?.counts),
          yesNo(computed?.needsTie),
          computed?.tie ?? '',
          (item.tiedBy ?? []).map((one) => (Array.isArray(one) ? one.join(' + ') : one)).join('; '),
          computed ? computed.roots.map(rootWords).join('; ') : '',
          conflicts.has(item.id) ? (conflicts.get(item.id) ? 'answered' : 'unanswered') : '',
          item.note ?? '',
        ]),
      );
    }
  }
  return lines.join('');
}

const yesNo = (value: boolean | undefined) => (value === undefined ? '' : value ? 'yes' : 'no');

/** A statement with parts, such as an event, as its parts. */
function saidAs(said: unknown): string {
  return typeof said === 'object' && said !== null ? Object.values(said).join(', ') : String(said);
}

type Root = NonNullable<CaseView['result']>['items'][number]['roots'][number];

function rootWords({ kind, of, label, known }: Root): string {
  const who = kind === 'unknown' ? `unknown, ${of}` : kind === 'unseen' ? `unseen: ${of}` : (label ?? of);
  return known ? who : `perhaps ${who}`;
}
