/**
 * What a record of a series usually looks like: how it is cited, who usually supplied the information, and who is
 * named in it (`shapes/`). All of it is *common practice*, offered to be corrected; what nobody can know beforehand is
 * left as undetermined, so that a file that is never corrected claims too little and not too much.
 */
import { roleWords } from '../../catalogue/roles.ts';
import type { Series } from '../../model/series.ts';
import { eventShape, hasEvents } from './shapes/events.ts';
import { kinds, ofSeries } from './shapes/kinds.ts';
import { plain } from './shapes/parts.ts';
import type { EventKind, RecordShape } from './shapes/shape.ts';

/** The shape of a record of a series, or of one of no series; `event` where the series holds several kinds. */
export function shapeOf(
  series: Pick<Series, 'id' | 'kind'> | undefined,
  event: EventKind | undefined,
): RecordShape {
  const shape = (series && kinds[series.kind]) ?? plain;
  const own = series && ofSeries[series.id];
  if (event !== undefined && (series === undefined || hasEvents.has(series.kind)))
    return { ...eventShape(event, series?.kind === 'vital'), event };
  return { ...shape, ...own };
}

/** The usual words for the role of somebody in a household, for the question. */
export const householdRoles = ['wife', 'son', 'daughter', ...roleWords.household.slice(0, 3)];
