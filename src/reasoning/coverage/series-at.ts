/**
 * Which series there are for a place: those whose ground holds it, and an author's own of places inside it. A series
 * of the author's has only the fields of the contract; what is missing follows from its kind (`catalogue/series-kinds`).
 */
import { otherKind, seriesKinds } from '../../catalogue/series-kinds.ts';
import { builtInSeries, type BuiltInSeries, type OriginDepth } from '../../catalogue/series/index.ts';
import type { EntryEvent, SeriesPeople } from '../../catalogue/series/types.ts';
import { daySpan } from '../../model/edtf.ts';
import type { Facts } from '../../model/facts.ts';
import { gather } from '../../model/multimap.ts';
import type { Series } from '../../model/series.ts';
import { containmentOf } from '../containment.ts';
import { once } from '../once.ts';

/** First and last day, infinite where open. */
export interface Run {
  first: number;
  last: number;
}

export interface KnownGap extends Run {
  why: string;
  partly: boolean;
  /** Places of which parts survive from some of the years. */
  except: readonly (Run & { of: readonly string[] })[];
}

export interface Telling extends Run {
  fields: readonly string[];
  origin: OriginDepth;
}

/** A series with its dates as days and its habits worked out. */
export interface KnownSeries extends Run {
  id: string;
  title: string;
  kind: string;
  /** The places whose people it names. */
  of: readonly string[];
  gaps: readonly KnownGap[];
  tells: readonly Telling[];
  entries: readonly EntryEvent[];
  chance: number;
  who: SeriesPeople;
  heads: boolean;
  /** Kept place by place, so that without the place there is hardly a search to make. */
  local: boolean;
  builtIn: boolean;
  note: string | undefined;
}

export interface SeriesAt {
  byId: ReadonlyMap<string, KnownSeries>;
  /** Series whose ground holds the place, those of the narrowest ground first. */
  covering(place: string): readonly KnownSeries[];
  /** The author's own series of places inside this one. */
  inside(place: string): readonly KnownSeries[];
}

const catalogue: ReadonlyMap<string, BuiltInSeries> = new Map(builtInSeries.map((row) => [row.id, row]));

/** The series of a corpus by place, indexed once. */
export const seriesAt: (facts: Facts) => SeriesAt = once((facts: Facts): SeriesAt => {
  const containment = containmentOf(facts);
  const byId = new Map<string, KnownSeries>();
  const byPlace = new Map<string, KnownSeries[]>();
  const within = new Map<string, KnownSeries[]>();
  for (const series of facts.series.values()) {
    const known = knownSeries(series);
    byId.set(known.id, known);
    for (const place of known.of) {
      gather(byPlace, place, known);
      if (!known.builtIn) for (const outer of containment.above(place)) gather(within, outer, known);
    }
  }
  const covering = new Map<string, readonly KnownSeries[]>();
  return {
    byId,
    covering(place) {
      let found = covering.get(place);
      if (!found)
        covering.set(
          place,
          (found = [...new Set(containment.outward(place).flatMap((id) => byPlace.get(id) ?? []))]),
        );
      return found;
    },
    inside: (place) => within.get(place) ?? [],
  };
});

function knownSeries(series: Series): KnownSeries {
  const row = catalogue.get(series.id);
  const kind = seriesKinds[series.kind.trim().toLowerCase()] ?? otherKind;
  const tells = series.tells.map((told) => ({ ...run(told), fields: told.fields, origin: told.origin }));
  return {
    id: series.id,
    title: series.title,
    kind: series.kind,
    of: [series.of, ...(row?.alsoOf ?? [])],
    ...run(series),
    gaps: series.gaps.map((gap) => {
      const built = row?.gaps.find(
        (one) => one.from === gap.from && one.to === gap.to && one.why === gap.why,
      );
      return {
        ...run(gap),
        why: gap.why,
        partly: built?.partly ?? false,
        except: (built?.except ?? []).map((one) => ({ ...run(one), of: one.of })),
      };
    }),
    tells,
    entries: row?.entries ?? eventsInTitle(series, kind.entries),
    chance: row?.chance ?? kind.chance,
    who: { ...kind.who, ...row?.who },
    heads: row ? row.names === 'heads' : series.kind === 'census' && onlyNames(series),
    local: kind.local,
    builtIn: series.builtIn,
    note: row?.note,
  };
}

/** A census that tells names and dwellings and nothing of each person lists heads of households. */
function onlyNames(series: Series): boolean {
  return (
    series.tells.length > 0 &&
    series.tells.every(({ fields }) =>
      fields.every((field) => ['name', 'residence', 'household'].includes(field)),
    )
  );
}

const titleWords: readonly (readonly [RegExp, EntryEvent])[] = [
  [/\b(?:births?|baptisms?|christenings?)\b/i, 'birth'],
  [/\b(?:marriages?|weddings?|banns)\b/i, 'marriage'],
  [/\b(?:deaths?|burials?|funerals?)\b/i, 'death'],
];

/** “Baptisms of Kill” holds no burials, though church registers as such do. */
function eventsInTitle(series: Series, usual: readonly EntryEvent[]): readonly EntryEvent[] {
  if (!usual.includes('birth')) return usual;
  const named = titleWords.flatMap(([words, event]) => (words.test(series.title) ? [event] : []));
  return named.length > 0 ? named : usual;
}

function run({ from, to }: { from: string; to: string }): Run {
  return { first: daySpan(from).first ?? -Infinity, last: daySpan(to).last ?? Infinity };
}
