/** When two entries of gazetteers may be one place: by name, kind and point (*common practice*). */

interface Point {
  lat?: number | undefined;
  lon?: number | undefined;
}

/** Kinds that a whole country knows by name. */
export const isWide = (kind: string) => /^(?:county|state|province|country|region)$/.test(kind);

/** The kind that a name says by a word of its own. */
export function kindInName(name: string): string | undefined {
  const words = /\b(county|barony|civil parish|parish|province|township|district)\b/i.exec(name);
  return /^co\.? /i.test(name) ? 'county' : words?.[1]!.toLowerCase();
}

/** A name as names are compared: letters and figures only; of counties and parishes also without the word. */
export function foldings(name: string): string[] {
  const plain = name
    .normalize('NFD')
    .replace(/[\u0300-\u036f]/g, '')
    .toLowerCase()
    .replaceAll('ø', 'o')
    .replaceAll('æ', 'ae')
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
  const bare = plain
    .replace(/^(?:county|co|parish of|barony of|province of|par) /, '')
    .replace(/ (?:county|parish|civil parish|barony|sogn|fylke|kommune|township)$/, '');
  return plain === bare ? [plain] : [plain, bare];
}

const settlements = new Set(
  'populated place,village,town,city,hamlet,locality,settlement,market town,port,populated places,section of a town,suburb'.split(
    ',',
  ),
);
const lands = new Set('townland,farm,farms,estate,farmstead,gard,sub-denomination'.split(','));
const parishes = new Set('parish,civil parish,catholic parish'.split(','));

/** Whether two kinds can be of one thing. */
export function sameKind(one: string, other: string): boolean {
  const [a, b] = [one.toLowerCase(), other.toLowerCase()];
  if (a === b) return true;
  if (settlements.has(a) && settlements.has(b)) return true;
  if (lands.has(a) && lands.has(b)) return true;
  if (a === 'jurisdiction' || b === 'jurisdiction') return true;
  const generic = a === 'parish' || b === 'parish';
  return (
    (generic && parishes.has(a) && parishes.has(b)) ||
    ([a, b].includes('populated place') && (lands.has(a) || lands.has(b)))
  );
}

/**
 * Kilometres within which two points may be those of one place of a kind: points of a county are drawn anywhere in it.
 * `sameFile` is for two rows of one file.
 */
export function reach(kind: string, sameFile: boolean): number {
  if (!settlements.has(kind) && !lands.has(kind))
    return /parish|barony|township|municipality/.test(kind) ? 20 : 400;
  // Two rows of one file are two places, unless they stand on one spot.
  return sameFile ? 0.3 : 3;
}

/** Kilometres between two points; 0 where one is not known. */
export function apart(one: Point, other: Point): number {
  if (one.lat === undefined || one.lon === undefined || other.lat === undefined || other.lon === undefined)
    return 0;
  const north = (one.lat - other.lat) * 111.2;
  const east = (one.lon - other.lon) * 111.2 * Math.cos((one.lat * Math.PI) / 180);
  return Math.hypot(north, east);
}
