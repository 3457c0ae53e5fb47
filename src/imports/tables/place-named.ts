/** Which place of a content folder a cell means, where it is plain. */
import type { Place } from '../../model/place.ts';
import { gazetteerOf } from '../../reasoning/places/gazetteer.ts';
import { resolveReading } from '../../reasoning/places/resolve.ts';

/** A look-up: the id of a place by its id, or by a spelling that fits one place and no other. */
export function placeNamed(places: ReadonlyMap<string, Place>): (text: string) => string | undefined {
  const known = new Map<string, string | undefined>();
  let gazetteer: ReturnType<typeof gazetteerOf> | undefined;
  return (text) => {
    if (places.has(text)) return text;
    if (!known.has(text)) {
      gazetteer ??= gazetteerOf(places.values());
      const { outcome, candidates } = resolveReading(gazetteer, text, { limit: 1 });
      known.set(text, outcome === 'clear' ? candidates[0]!.id : undefined);
    }
    return known.get(text);
  };
}
