/** A small content with a public address, and the dossier of it. */
import { buildDossier } from '../../src/dossier/build.ts';
import { examine } from '../../src/dossier/examine.ts';
import type { Dossier } from '../../src/dossier/types.ts';
import { loadCorpus } from '../../src/corpus/load.ts';
import { goodContent, withContent } from '../corpus/content.ts';

export const site = 'title: The Phelans\naddress: https://family.example/phelan\n';

/** A case file with further lines in its head. */
export function caseFile(more: string, question = 'Where was Maurice Phelan born?'): string {
  return `---\nquestion: ${JSON.stringify(question)}\nsubject: maurice-phelan\nevidence:\n  - { id: e1, from: deed#m1, states: birthplace, place: knockmahon, kind: direct }\nhypothesis: { place: knockmahon, cites: [e1], because: He said so & signed it. }\n${more}---\nA story.\n`;
}

const made = new Map<string, Dossier>();

/** The dossier of the small content with other files over it. */
export function dossierOf(files: Record<string, string> = {}): Dossier {
  const key = JSON.stringify(files);
  const before = made.get(key);
  if (before) return before;
  const all = { ...goodContent, 'site.yaml': site, 'cases/phelan.md': caseFile(''), ...files };
  const dossier = withContent(all, (dir) => {
    const examination = examine(loadCorpus(dir), '2026-06-01');
    const errors = examination.findings.filter(({ severity }) => severity === 'error');
    if (errors.length > 0) throw new Error(errors.map(({ message }) => message).join('\n'));
    return buildDossier(examination);
  });
  made.set(key, dossier);
  return dossier;
}
