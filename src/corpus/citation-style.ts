/** The style of citation that `site.yaml` names, as text. What it says is judged where citations are made. */
import type { Site } from '../model/site.ts';
import type { Entry, Findings } from './entries.ts';
import type { ContentFolder } from './files.ts';
import { quoted } from './finding.ts';
import { nearest } from './suggestions.ts';
import type { Corpus } from './types.ts';

/** Reads the style. One that is missing, or lies outside of the content, is a finding at the key that names it. */
export function readCitationStyle(
  folder: ContentFolder,
  site: Site,
  entry: Entry | undefined,
  findings: Findings,
): Corpus['citationStyle'] {
  const file = site.citationStyle;
  if (file === undefined || entry === undefined) return undefined;
  const where = folder.whereabouts(file, '');
  if (where === 'inside') {
    const source = folder.read(file);
    return source && { file, text: source.text };
  }
  if (where === 'outside')
    findings.add(
      entry,
      ['citationStyle'],
      'file-lies-inside-the-content',
      `${quoted(file)} is a link that leads out of the content folder.`,
      'Copy the style into the folder styles in place of the link.',
    );
  else {
    const folderOfFile = file.slice(0, file.lastIndexOf('/'));
    const there = folder.listTop('styles').length === 0 ? [] : folder.list(folderOfFile);
    const meant = nearest(
      file,
      there.filter(({ isFolder }) => !isFolder).map((found) => found.file),
    );
    findings.add(
      entry,
      ['citationStyle'],
      'citation-style-is-csl',
      `There is no file ${file} in the content folder.`,
      meant
        ? `Did you mean ${meant}?`
        : 'Put the .csl file there, or take the key out to have the style that is built in.',
    );
  }
  return undefined;
}
