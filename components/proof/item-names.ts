/** What items are called on the drawings: by id and record title where there is room, by id or number where there is not. */
import { sourcesOf } from '../../src/model/case.ts';
import { mentionAt } from '../../src/model/facts.ts';
import type { CaseView, Dossier } from '../../src/dossier/types.ts';
import type { ItemName } from './sheet.ts';
import { readingOf } from './statements.ts';

/** Ids longer than this do not fit beside a station on a phone and give way to numbers. */
const longestKey = 5;

export interface ItemNames {
  titled: (id: string) => ItemName;
  keyed: (id: string) => ItemName;
  /** The narrow drawing names items by number, so a list must say which is which. */
  numbered: boolean;
}

/** The names of a case’s items. */
export function itemNames(dossier: Dossier, view: CaseView): ItemNames {
  const { evidence } = view.case;
  const { wording } = dossier;
  const t = wording.proof.sightLines;
  const numbered = evidence.some((item) => item.id.length > longestKey);
  const titled = (id: string): ItemName => {
    const item = evidence.find((one) => one.id === id);
    const at = item?.from.map((ref) => mentionAt(dossier.facts, ref)).find((found) => found !== undefined);
    if (item && !at)
      return {
        key: id,
        title: sourcesOf(item).searches.length > 0 ? t.aSearch : t.recordNotShown,
      };
    return {
      key: id,
      title:
        item && item.from.length > 1
          ? t.andMore(at?.record.title ?? '', item.from.length - 1)
          : (at?.record.title ?? ''),
      reading: at && readingOf(at.mention, item?.states, wording),
    };
  };
  const keyed = (id: string): ItemName => ({
    key: numbered ? String(evidence.findIndex((item) => item.id === id) + 1) : id,
    title: '',
  });
  return { titled, keyed, numbered };
}
