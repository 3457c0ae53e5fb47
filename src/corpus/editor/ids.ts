/** The ids of a content folder, as completion in an editor offers them. */
import type { Corpus } from '../types.ts';

export interface EditorId {
  id: string;
  /** What it names, in words. */
  name: string;
}

export const editorKinds = ['person', 'place', 'record', 'series', 'search', 'mention'] as const;
export type EditorIds = Record<(typeof editorKinds)[number], EditorId[]>;

/** Editors grow slow over longer lists; of a kind of which there are more, none is offered but the first. */
const most = 5000;

/** Every id that can be named, those of broken files aside; in the order of the content. */
export function editorIds(corpus: Corpus): EditorIds {
  const of = <T>(entries: Iterable<readonly [string, T]>, name: (entry: T) => string): EditorId[] =>
    [...entries].slice(0, most).map(([id, entry]) => ({ id, name: name(entry).replace(/\s+/g, ' ').trim() }));
  return {
    person: of(corpus.people, ({ name }) => name),
    // The author's own places stand before the built-in ones.
    place: of(
      [...corpus.places].sort(([, a], [, b]) => Number(a.builtIn) - Number(b.builtIn)),
      ({ name, kind }) => `${name}, ${kind}`,
    ),
    record: of(corpus.records, ({ title }) => title),
    series: of(corpus.series, ({ title }) => title),
    search: of(corpus.searches, ({ series, result }) => `${series}, ${result}`),
    mention: of(
      [...corpus.records.values()].flatMap((record) =>
        record.mentions.map((mention) => [`${record.id}#${mention.id}`, { record, mention }] as const),
      ),
      ({ record, mention }) => `${mention.name ?? mention.role ?? 'somebody'} in: ${record.title}`,
    ),
  };
}
