/** The check’s JSON as it may leave the house. */
import type { Examination } from '../../dossier/examine.ts';
import { findingsForAll } from '../../dossier/findings-for-all.ts';
import { maskResult } from '../../dossier/mask-result.ts';
import { isNobody } from '../../dossier/withhold.ts';
import { interfaceTag, wordingIn } from '../../interface/index.ts';
import { checkDocument } from './json.ts';

/** The document of `check --format json`; in public without people who are living, and without findings about anything that is withheld. */
export function publicCheckDocument(examination: Examination): object {
  const { corpus, withheld, cases } = examination;
  if (isNobody(withheld)) return checkDocument(examination);
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
    findings: findingsForAll(examination),
  });
}
