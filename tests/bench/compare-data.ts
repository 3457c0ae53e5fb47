/**
 * Invented tables of people for comparison, with the truth beside them: a register with duplicates, as linkage software
 * is usually tried on, and two lists of Irish-born men some years apart. Seeded: the same everywhere.
 */
import { givenCounts } from '../../src/catalogue/names/given-counts.ts';
import { surnameCounts } from '../../src/catalogue/names/surname-counts.ts';
import { seeded, type Random } from './random.ts';

export interface OneTable {
  csv: string;
  /** Ids of rows that are one person, the smaller first, joined by a space. */
  truth: Set<string>;
}

export interface TwoTables {
  a: string;
  b: string;
  /** `id of a` + space + `id of b`. */
  truth: Set<string>;
}

/** Draws values by weight. */
function drawer<T>(random: Random, rows: readonly (readonly [value: T, weight: number])[]): () => T {
  const sums: number[] = [];
  let total = 0;
  for (const [, weight] of rows) sums.push((total += weight));
  return () => {
    const at = (random.below(1_000_000_000) / 1_000_000_000) * total;
    let low = 0;
    let high = sums.length - 1;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (sums[middle]! > at) high = middle;
      else low = middle + 1;
    }
    return rows[low]![0];
  };
}

const german = {
  given:
    `HANS PETER WERNER KARL HEINZ GERHARD HELMUT KLAUS GUENTER HERBERT KURT ERIKA URSULA INGRID HELGA GERTRUD ILSE
    GISELA HILDEGARD ELFRIEDE MARTHA ANNA MARIA BRIGITTE MONIKA RENATE KARIN SABINE PETRA CLAUDIA SUSANNE ANDREA STEFAN
    THOMAS MICHAEL ANDREAS FRANK UWE BERND JUERGEN WOLFGANG DIETER MANFRED HORST RALF MARTIN CHRISTIAN ALEXANDER TOBIAS
    FLORIAN SEBASTIAN KATHARINA JULIA LAURA SARAH LISA NADINE NICOLE STEFANIE MELANIE JAN TIM LUKAS PAUL MAX FELIX
    CARSTEN OTTO EMIL FRIEDA ELSE ROBERT GEORG JOSEF LUDWIG`.split(/\s+/),
  surname:
    `MUELLER SCHMIDT SCHNEIDER FISCHER WEBER MEYER WAGNER BECKER SCHULZ HOFFMANN SCHAEFER KOCH BAUER RICHTER KLEIN
    WOLF SCHROEDER NEUMANN SCHWARZ ZIMMERMANN BRAUN KRUEGER HOFMANN HARTMANN LANGE SCHMITT WERNER SCHMITZ KRAUSE MEIER
    LEHMANN SCHMID SCHULZE MAIER KOEHLER HERRMANN KOENIG WALTER MAYER HUBER KAISER FUCHS PETERS LANG SCHOLZ MOELLER WEISS
    JUNG HAHN SCHUBERT VOGEL FRIEDRICH KELLER GUENTHER FRANK BERGER WINKLER ROTH BECK LORENZ BAUMANN FRANKE ALBRECHT
    SCHUSTER SIMON LUDWIG BOEHM WINTER KRAUS MARTIN SCHUMACHER KRAEMER VOGT STEIN JAEGER OTTO SOMMER GROSS SEIDEL HEINRICH
    BRANDT HAAS SCHREIBER GRAF SCHULTE DIETRICH ZIEGLER KUHN KUEHN POHL ENGEL HORN BUSCH BERGMANN THOMAS VOIGT SAUER ARNOLD
    WOLFF PFEIFFER`.split(/\s+/),
};

/** A register of `rows` rows, of which `duplicates` stand a second time with one or two slips. */
export function germanRegister(rows: number, duplicates: number, seed: number): OneTable {
  const random = seeded(seed);
  const skewed = (names: readonly string[]) =>
    drawer(
      random,
      names.map((name, at) => [name, 1 / (at + 15)] as const),
    );
  const given = skewed(german.given);
  // Most people bear a name that is in no list of the commonest.
  const surname = skewed([
    ...german.surname,
    ...['OBER', 'NEU', 'NIEDER', 'STEIN', 'WALD', 'BERG'].flatMap((before) =>
      german.surname.map((name) => before + name),
    ),
  ]);
  const people = Array.from({ length: rows - duplicates }, () => [
    given(),
    random.chance(0.05) ? given() : 'NA',
    surname(),
    random.chance(0.02) ? surname() : 'NA',
    String(1920 + random.below(86)),
    String(1 + random.below(12)),
    String(1 + random.below(28)),
  ]);
  const all = people.map((cells, person) => ({ cells, person }));
  for (let n = 0; n < duplicates; n++) {
    const person = random.below(people.length - n);
    // Taken to the end, so that nobody stands three times.
    const of = people[person]!;
    people[person] = people[people.length - 1 - n]!;
    people[people.length - 1 - n] = of;
    const original = all.findIndex(({ cells }) => cells === of);
    const cells = [...of];
    const slips = random.chance(0.75) ? 1 : 2;
    for (let slip = 0; slip < slips; slip++) {
      const at = random.pick([0, 0, 2, 2, 4, 5, 6]);
      cells[at] = at < 4 ? slipOfLetters(random, cells[at]!) : slipOfDigits(random, cells[at]!, at);
    }
    all.push({ cells, person: original });
  }
  shuffle(random, all);
  const first = new Map<number, number>();
  const truth = new Set<string>();
  all.forEach(({ person }, at) => {
    const before = first.get(person);
    if (before === undefined) first.set(person, at);
    else truth.add(`${before + 1} ${at + 1}`);
  });
  return {
    csv: `fname_c1,fname_c2,lname_c1,lname_c2,by,bm,bd\n${all.map(({ cells }) => cells.join(',')).join('\n')}\n`,
    truth,
  };
}

/** Another digit for one of the number, or another number altogether. */
function slipOfDigits(random: Random, text: string, column: number): string {
  const most = column === 5 ? 12 : column === 6 ? 28 : 2006;
  const least = column === 4 ? 1920 : 1;
  for (;;) {
    const at = text.length - 1 - random.below(Math.min(2, text.length));
    const slip = random.chance(0.6)
      ? text.slice(0, at) + random.below(10) + text.slice(at + 1)
      : String(least + random.below(most - least + 1));
    if (slip !== text && Number(slip) >= least && Number(slip) <= most) return String(Number(slip));
  }
}

function slipOfLetters(random: Random, text: string): string {
  const at = 1 + random.below(Math.max(1, text.length - 1));
  const letter = String.fromCharCode(65 + random.below(26));
  switch (random.below(4)) {
    case 0:
      return text.slice(0, at) + letter + text.slice(at + 1);
    case 1:
      return text.slice(0, at) + text.slice(at + 1);
    case 2:
      return text.slice(0, at) + letter + text.slice(at);
    default:
      return text.slice(0, at - 1) + (text[at] ?? '') + text[at - 1] + text.slice(at + 1);
  }
}

function shuffle<T>(random: Random, values: T[]): void {
  for (let at = values.length - 1; at > 0; at--) {
    const other = random.below(at + 1);
    [values[at], values[other]] = [values[other]!, values[at]!];
  }
}

const short: Readonly<Record<string, readonly string[]>> = {
  John: ['Jno', 'Jno.', 'Jack', 'Johnny'],
  Patrick: ['Pat', 'Patk', 'Patk.', 'Paddy'],
  Michael: ['Mich', 'Mick', 'Mike', 'Michl'],
  James: ['Jas', 'Jas.', 'Jim'],
  Thomas: ['Thos', 'Thos.', 'Tom'],
  William: ['Wm', 'Wm.', 'Will'],
  Daniel: ['Danl', 'Dan'],
  Edward: ['Edwd', 'Ed', 'Ned'],
  Timothy: ['Tim', 'Timy'],
  Jeremiah: ['Jerry', 'Jer', 'Darby'],
  Cornelius: ['Con', 'Corns', 'Neil'],
  Bernard: ['Barney', 'Bryan', 'Bernd'],
  Owen: ['Eugene'],
  Denis: ['Dennis', 'Dens'],
  Laurence: ['Larry', 'Lawrence'],
  Peter: ['Petr'],
  Joseph: ['Jos', 'Joe'],
  Richard: ['Richd', 'Dick'],
  Robert: ['Robt', 'Bob'],
  Matthew: ['Matt', 'Mathew'],
  Francis: ['Frank', 'Frances'],
};

const respelled: readonly (readonly [RegExp, string])[] = [
  [/ll/, 'l'],
  [/nn/, 'n'],
  [/y$/, 'ey'],
  [/ey$/, 'y'],
  [/ea/, 'ee'],
  [/gh/, 'h'],
  [/ck/, 'k'],
  [/ie/, 'y'],
  [/an$/, 'en'],
  [/on/, 'en'],
  [/ou/, 'o'],
  [/rr/, 'r'],
  [/e$/, ''],
  [/^Wh/, 'W'],
  [/^K/, 'C'],
  [/^C(?=[aour])/, 'K'],
];

const counties =
  'Cork Galway Mayo Kerry Tipperary Limerick Clare Waterford Tyrone Dublin Donegal Antrim Down Cavan Roscommon Wexford Kilkenny Leitrim'.split(
    ' ',
  );

export interface IrishOptions {
  rowsA: number;
  rowsB: number;
  /** Men who stand in both lists. */
  shared: number;
  /** A column of the county of birth, stated now and then. */
  county: boolean;
  seed: number;
}

/** Two lists of Irish-born men: first_name, last_name, birth_year, and perhaps county. */
export function irishLists({ rowsA, rowsB, shared, county, seed }: IrishOptions): TwoTables {
  const random = seeded(seed);
  const given = drawer(
    random,
    givenCounts
      .filter(({ place, sex }) => place === 'ireland' && sex === 'M')
      .map(({ name, count }) => [name, count] as const),
  );
  const listed = surnameCounts.filter(({ place }) => place === 'ireland');
  const listedTotal = listed.reduce((sum, { count }) => sum + count, 0);
  // The names that no list of the commonest has: half of the people, each name borne by few.
  const further = Array.from({ length: 2500 }, (_, at) => [invented(random), 1 / (at + 30)] as const);
  const furtherTotal = further.reduce((sum, [, weight]) => sum + weight, 0);
  const surname = drawer(random, [
    ...listed.map(({ name, count }) => [name, count / listedTotal] as const),
    ...further.map(([name, weight]) => [name, weight / furtherTotal] as const),
  ]);
  const ofCounty = drawer(
    random,
    counties.map((name, at) => [name, 1 / (at + 3)] as const),
  );
  const man = () => ({
    given: given(),
    surname: surname(),
    born: 1805 + random.below(15) + random.below(30),
    county: ofCounty(),
  });
  const both = Array.from({ length: shared }, man);
  const write = (rows: number, side: string) => {
    const men = [
      ...both.map((one, person) => ({ ...one, person })),
      ...Array.from({ length: rows - shared }, () => ({ ...man(), person: -1 })),
    ];
    shuffle(random, men);
    const lines = men.map((one, at) => [
      `${side}${at + 1}`,
      clerkGiven(random, one.given),
      clerkSurname(random, one.surname),
      // Each list is off by a share of what two lists are apart.
      one.born + (side === 'b' && one.person >= 0 ? wobble(random) : 0),
      ...(county ? [random.chance(0.55) ? (random.chance(0.93) ? one.county : ofCounty()) : ''] : []),
    ]);
    const ids = new Map(
      men.flatMap(({ person }, at) => (person >= 0 ? [[person, `${side}${at + 1}`] as const] : [])),
    );
    const head = ['id', 'first_name', 'last_name', 'birth_year', ...(county ? ['county'] : [])];
    return { csv: `${[head, ...lines].map((cells) => cells.join(',')).join('\n')}\n`, ids };
  };
  const a = write(rowsA, 'a');
  const b = write(rowsB, 'b');
  return {
    a: a.csv,
    b: b.csv,
    truth: new Set(both.map((_, person) => `${a.ids.get(person)} ${b.ids.get(person)}`)),
  };
}

/** As far apart as ages in hand-linked records are: 53 % within 2 years, 67 % within 3, 81 % within 5, 95 % within 10. */
function wobble(random: Random): number {
  const at = random.below(100);
  const years =
    at < 19
      ? 0
      : at < 40
        ? 1
        : at < 53
          ? 2
          : at < 67
            ? 3
            : at < 75
              ? 4
              : at < 81
                ? 5
                : at < 95
                  ? 6 + random.below(5)
                  : 11 + random.below(8);
  return random.chance(0.5) ? years : -years;
}

function clerkGiven(random: Random, name: string): string {
  const forms = short[name];
  if (forms && random.chance(0.12)) return random.pick(forms);
  if (random.chance(0.04)) return name[0]!;
  if (random.chance(0.04)) return `${name} ${random.pick([...'JPMTWDH'])}`;
  return random.chance(0.04) ? lower(slipOfLetters(random, name.toUpperCase())) : name;
}

function clerkSurname(random: Random, name: string): string {
  let written = name;
  if (/^O'/.test(written) && random.chance(0.6)) written = written.slice(2);
  else if (/^Mc/.test(written) && random.chance(0.15))
    written = random.pick([`Mac${written.slice(2)}`, `Mc ${written.slice(2)}`, written.slice(2)]);
  if (random.chance(0.14)) {
    const [pattern, instead] = random.pick(respelled);
    written = written.replace(pattern, instead);
  }
  return random.chance(0.06) ? lower(slipOfLetters(random, written.toUpperCase())) : written;
}

const lower = (text: string) => text.charAt(0) + text.slice(1).toLowerCase();

function invented(random: Random): string {
  const begin = random.pick(['', '', '', '', 'Mc', "O'"]);
  const stem =
    random.pick(
      'Bra Cor Dri Fla Gar Hal Kea Lar Mul Ner Quil Ros Sca Tor Ui Bre Co Dev Fin Gil Hea Kil Lo Mor Nu Ra She Tie Tra Ban Cle Del Fee Gro'.split(
        ' ',
      ),
    ) +
    random.pick(['', 'n', 'l', 'r', 'd', 'll', 'nn', 'rt', 'gh', 'v']) +
    random.pick(
      'an on ey y igan in erty ity ane elly ery oran ally away ock ule eeny ahan ivan ohoe ough uire'.split(
        ' ',
      ),
    );
  return begin + stem;
}
