/** The check’s JSON as it may leave the house. */
import type { Examination } from '../../dossier/examine.ts';
import { maskResult } from '../../dossier/withhold.ts';
import { checkDocument } from './json.ts';

/** The document of `check --format json`; in public without people who are living, and without findings that name one. */
export function publicCheckDocument(examination: Examination): object {
  const { corpus, living, cases, findings } = examination;
  if (corpus.site.audience === 'family' || living.size === 0) return checkDocument(examination);
  const words = [...living].flatMap((id) => [id, corpus.people.get(id)!.name.toLowerCase()]);
  const names = (text: string) => {
    const small = text.toLowerCase();
    return words.some((word) => small.includes(word));
  };
  const shown = (id: string) => !living.has(id);
  const people = new Map([...corpus.people].filter(([id]) => shown(id)));
  return checkDocument({
    ...examination,
    // The functions of a corpus are its own and come along.
    corpus: { ...corpus, people, counts: { ...corpus.counts, people: people.size } },
    cases: new Map(
      [...cases]
        .filter(([id]) => shown(corpus.cases.get(id)!.subject))
        .map(([id, result]) => [id, result && maskResult(corpus, result, living)]),
    ),
    findings: findings.filter(({ file, message, help }) => !names(`${file} ${message} ${help}`)),
  });
}
