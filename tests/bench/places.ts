/**
 * How well readings of places are resolved, and how fast: names mangled as clerks do, the county given.
 *
 *   node tests/bench/places.ts [--readings 4000] [--townlands FILE.csv] [--show 0]
 *
 * Without a file of townlands a generated gazetteer of 50,000 is measured. A townland counts as right when it comes
 * first, or fits as well as the first and has its name and county.
 */
import { existsSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { gazetteerOf } from '../../src/reasoning/places/gazetteer.ts';
import { resolveReading } from '../../src/reasoning/places/resolve.ts';
import { hands, mangled, withCounty, type Hand } from './clerks.ts';
import { generatedTownlands, townlandsFrom, type Townlands } from './gazetteers.ts';
import { seeded } from './random.ts';

export interface Outcome {
  readings: number;
  /** Proportions of all readings. */
  right: number;
  wrongUnwarned: number;
  clear: number;
  ambiguous: number;
  doubtful: number;
  none: number;
  /** Readings in a second of the clock, and in a second of processor time, which what else runs does not lengthen. */
  perSecond: number;
  perProcessorSecond: number;
  buildSeconds: number;
}

/** Resolves mangled names of townlands drawn by chance. `fault` is told of each that does not come out right. */
export function measurePlaces(
  { places, townlands }: Townlands,
  hand: Hand,
  readings: number,
  seed: number,
  fault: (reading: string, meant: string, outcome: string, first: string) => void = () => undefined,
): Outcome {
  const start = process.hrtime.bigint();
  const gazetteer = gazetteerOf(places);
  const built = process.hrtime.bigint();
  const random = seeded(seed);
  const trials = Array.from({ length: readings }, () => {
    const meant = random.pick(townlands);
    return { meant, reading: withCounty(random, mangled(random, hand, meant.place.name), meant.county) };
  });
  const counts = { right: 0, wrongUnwarned: 0, clear: 0, ambiguous: 0, doubtful: 0, none: 0 };
  const byId = new Map(townlands.map((t) => [t.place.id, t]));
  const before = process.cpuUsage();
  const begin = process.hrtime.bigint();
  const answers = trials.map(({ reading }) => resolveReading(gazetteer, reading));
  const end = process.hrtime.bigint();
  const { user, system } = process.cpuUsage(before);
  answers.forEach((answer, i) => {
    const { meant, reading } = trials[i]!;
    const first = answer.candidates[0];
    const own = first && byId.get(first.id);
    const homonym = own?.place.name === meant.place.name && own.county === meant.county;
    const right = first !== undefined && (first.id === meant.place.id || homonym);
    if (right) counts.right++;
    else if (answer.outcome === 'clear') counts.wrongUnwarned++;
    if (!right)
      fault(reading, meant.place.name, answer.outcome, first ? `${first.name} ${first.score}` : '–');
    counts[answer.outcome === 'partial' || answer.outcome === 'nothing' ? 'none' : answer.outcome]++;
  });
  const share = (n: number) => n / readings;
  return {
    readings,
    right: share(counts.right),
    wrongUnwarned: share(counts.wrongUnwarned),
    clear: share(counts.clear),
    ambiguous: share(counts.ambiguous),
    doubtful: share(counts.doubtful),
    none: share(counts.none),
    perSecond: readings / (Number(end - begin) / 1e9),
    perProcessorSecond: readings / ((user + system) / 1e6),
    buildSeconds: Number(built - start) / 1e9,
  };
}

function line(what: string, o: Outcome): string {
  const percent = (n: number) => `${(100 * n).toFixed(1)} %`;
  return `${what.padEnd(28)} right ${percent(o.right)}  wrong unwarned ${percent(o.wrongUnwarned)}  clear ${percent(o.clear)}  ambiguous ${percent(o.ambiguous)}  doubtful ${percent(o.doubtful)}  none ${percent(o.none)}  ${o.perSecond.toFixed(0)}/s (${o.perProcessorSecond.toFixed(0)} per s of processor)  built in ${o.buildSeconds.toFixed(2)} s`;
}

/** Lines that tell how each gazetteer and hand comes out; `show` faults of the first hand are listed before. */
export function* placesReport(readings: number, file?: string, seed = 7, show = 0): Generator<string> {
  const sets: [string, Townlands][] = [['generated, 50,000', generatedTownlands(50_000)]];
  if (file && existsSync(file)) sets.unshift(['file', townlandsFrom(file)]);
  for (const [name, set] of sets)
    for (const [hand, settings] of Object.entries(hands)) {
      const faults: string[] = [];
      const result = measurePlaces(set, settings, readings, seed, (reading, meant, outcome, first) => {
        if (hand === 'usual' && faults.length < show)
          faults.push(`${reading.padEnd(48)} ${meant.padEnd(26)} ${outcome.padEnd(10)} ${first}`);
      });
      yield* faults;
      yield line(`${name}, ${hand} hand`, result);
    }
}

if (process.argv[1] === import.meta.filename) {
  const { values } = parseArgs({
    options: {
      readings: { type: 'string', default: '4000' },
      townlands: { type: 'string' },
      show: { type: 'string', default: '0' },
      seed: { type: 'string', default: '7' },
    },
  });
  for (const text of placesReport(
    Number(values.readings),
    values.townlands,
    Number(values.seed),
    Number(values.show),
  ))
    console.log(text);
}
