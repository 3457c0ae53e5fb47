/** A case as a note on its subject: the question, what is concluded, how it stands and on which records. */
import type { CaseView } from '../../dossier/types.ts';
import { sourcesOf } from '../../model/case.ts';
import type { Written } from './lines.ts';

const standings = {
  meets: 'The conclusion cites at least two independent sources, and every conflict is answered.',
  short: 'Fewer than two independent sources reach this place.',
  contested: 'A conflict is not answered.',
  open: 'The case is open.',
} as const;

/** The note; `source` gives the identifier of a record’s source. */
export function caseNote(view: CaseView, source: (record: string) => string | undefined): Written {
  const { question, conclusion, hypothesis, evidence, independence, conflicts, rejected } = view.case;
  const said = conclusion ?? hypothesis;
  const place = (id: string | undefined) => id?.replaceAll('-', ' ') ?? 'no place';
  const lines = [
    `Question: ${question}`,
    conclusion
      ? `Conclusion (${conclusion.claim}): ${place(conclusion.place)}. ${conclusion.because}`
      : hypothesis
        ? `Working idea, not proved: ${place(hypothesis.place)}. ${hypothesis.because ?? ''}`
        : 'Nothing is concluded yet.',
    view.result
      ? `Standing: ${view.result.standing}. ${standings[view.result.standing]} Independent sources at this place: ${view.result.independent}.`
      : 'Standing: not computed.',
    ...evidence.map(({ id, kind, states, place: at, against, from, note }) =>
      [
        `Evidence ${id} (${kind}${said?.cites.includes(id) ? ', cited' : ''}): ${states ?? 'it'} in ${from.join(', ')}`,
        at === undefined ? '' : `, read as ${place(at)}`,
        against === undefined ? '' : `, against ${place(against)}`,
        `.${note === undefined ? '' : ` ${note}`}`,
      ].join(''),
    ),
    ...independence.map(({ between, because }) => `Independence of ${between.join(' and ')}: ${because}`),
    ...conflicts.map(
      ({ evidence: item, about, resolution }) => `Conflict (${item ?? about ?? ''}): ${resolution}`,
    ),
    ...rejected.map(({ place: other, because }) => `Rejected, ${place(other)}: ${because}`),
  ];
  const records = [...new Set(evidence.flatMap((item) => sourcesOf(item).records))];
  return {
    tag: 'NOTE',
    value: lines.map((line) => line.trim()).join('\n'),
    under: [
      ...records.flatMap((record) => {
        const pointer = source(record);
        return pointer === undefined ? [] : [{ tag: 'SOUR', pointer }];
      }),
      { tag: '_KEY', value: 'case' },
    ],
  };
}
