/** The check’s JSON as it may leave the house. */
import type { Examination } from '../../dossier/examine.ts';
import { lookFor } from '../../dossier/living-look.ts';
import { tellingsOf } from '../../dossier/living-tellings.ts';
import { isNobody, maskResult } from '../../dossier/withhold.ts';
import { interfaceTag, wordingIn } from '../../interface/index.ts';
import { checkDocument } from './json.ts';

/** The document of `check --format json`; in public without people who are living, and without findings that name one. */
export function publicCheckDocument(examination: Examination): object {
  const { corpus, withheld, cases, findings } = examination;
  if (isNobody(withheld)) return checkDocument(examination);
  const look = lookFor(tellingsOf(corpus, withheld));
  const names = (text: string) =>
    look(text, { ids: true, first: true }).length > 0 || [...withheld.people].some((id) => text.includes(id));
  const { someone } = wordingIn(interfaceTag(corpus.site)).people.withheld;
  const shown = (id: string) => !withheld.people.has(id);
  const people = new Map([...corpus.people].filter(([id]) => shown(id)));
  return checkDocument({
    ...examination,
    // The functions of a corpus are its own and come along.
    corpus: { ...corpus, people, counts: { ...corpus.counts, people: people.size } },
    cases: new Map(
      [...cases]
        .filter(([id]) => shown(corpus.cases.get(id)!.subject))
        .map(([id, result]) => [id, result && maskResult(corpus, result, withheld, someone)]),
    ),
    findings: findings.filter(({ file, message, help }) => !names(`${file} ${message} ${help}`)),
  });
}
