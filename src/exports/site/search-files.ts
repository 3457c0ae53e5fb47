/** The index of everything that can be looked up, handed to the writer: by way of pages, its many small files would cost more than they are worth. */
import type { Dossier } from '../../dossier/types.ts';
import { searchIndex } from '../../dossier/search/index.ts';
import type { FileBeside } from './beside.ts';

/** The files of a dossier’s index. */
export function* searchFiles(dossier: Dossier): Generator<FileBeside> {
  for (const [name, content] of searchIndex(dossier).files) yield { path: `search/${name}.js`, content };
}
