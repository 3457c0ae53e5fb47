/** What a series tells of a person, as questions and as lines of a mention. */
import type { Series } from '../../model/series.ts';
import { mention } from '../../model/record.ts';
import { withComment, yamlText, yamlValue } from './yaml-text.ts';

/** One column of a record: the key of a mention it goes to, or a statement under `says`. */
export interface Field {
  /** A key of a mention, `says.<name>`, or `joining.name` and the like. */
  key: string;
  ask: string;
  example: string;
  /** Of a household or list, the answer usually holds for the next one as well. */
  carries?: true;
}

const field = (key: string, ask: string, example: string, carries?: true): Field => ({
  key,
  ask,
  example,
  ...(carries ? { carries } : {}),
});

/** The fields of the catalogue that a mention has lines for, in the order in which they are asked. */
const known: Readonly<Record<string, readonly Field[]>> = {
  household: [field('household', 'Number of the household', '172', true)],
  sex: [field('sex', 'Sex, M or F', 'M')],
  age: [field('age', 'Age as written (31, 7m, 3/12)', '31')],
  born: [field('born', 'Born (1840, 1840-03, 1840-03-02)', '1840-03')],
  birthplace: [field('birthplace', 'Birthplace as written', 'Ireland')],
  'parents-birthplace': [
    field('says.father-birthplace', 'Father’s birthplace as written', 'Ireland'),
    field('says.mother-birthplace', 'Mother’s birthplace as written', 'Ireland'),
  ],
  residence: [field('residence', 'Residence as written', 'Hancock', true)],
  lastResidence: [field('lastResidence', 'Last residence as written', 'Bonmahon', true)],
  occupation: [field('occupation', 'Occupation', 'miner')],
  immigrated: [field('immigrated', 'Year of immigration', '1864')],
  nearest: [
    field('nearest.name', 'Nearest relative left behind, name', 'Mary Phelan'),
    field('nearest.relation', 'Who that is to them', 'mother'),
    field('nearest.address', 'Their address as written', 'Knockmahon'),
  ],
  joining: [
    field('joining.name', 'Whom they join, name', 'Maurice Phelan'),
    field('joining.relation', 'Who that is to them', 'brother'),
    field('joining.address', 'Their address as written', 'Hancock, Mich.'),
  ],
  'parents-names': [field('says.parents', 'Parents as written', 'fil. Patritii Phelan et Mariae Power')],
};

/** Fields that are not columns of a person: the name is asked first, the others belong to the whole list or to roles. */
const elsewhere: ReadonlySet<string> = new Set(['name', 'relations', 'voyage', 'event', 'burial']);

/** The columns of a series in the year of a record, or what most records tell where there is no series. */
export function fieldsOf(series: Series | undefined, made: string | undefined): Field[] {
  if (!series) return ['age', 'birthplace', 'residence', 'occupation'].flatMap((name) => known[name]!);
  const told = tellsIn(series, made)?.fields ?? [];
  const order = Object.keys(known);
  const rank = (name: string) => (order.indexOf(name) + order.length + 1) % (order.length + 1);
  return told
    .filter((name) => !elsewhere.has(name))
    .toSorted((a, b) => rank(a) - rank(b))
    .flatMap((name) => known[name] ?? [own(name)]);
}

/** What a series tells in the year of a record; of its latest years where none is given. */
export function tellsIn(series: Series, made: string | undefined): Series['tells'][number] | undefined {
  const year = made?.slice(0, 10);
  const holds = series.tells.filter(
    ({ from, to }) =>
      year === undefined || ((from === '..' || from <= year) && (to === '..' || year <= until(to))),
  );
  return holds[0] ?? series.tells.at(-1);
}

/** A date without its month or day reaches to the end of it, in the order of letters too. */
const until = (date: string) => `${date}\uFFFF`;

function own(name: string): Field {
  const words = name.replaceAll('-', ' ').replace(/([a-z])([A-Z])/g, '$1 $2');
  return field(
    `says.${name}`,
    `${words.charAt(0).toUpperCase()}${words.slice(1).toLowerCase()}`,
    examples[name] ?? 'as written',
  );
}

const examples: Readonly<Record<string, string>> = {
  naturalized: 'Na',
  'years-in-country': '36',
  'mother-tongue': 'English',
  nationality: 'Ireland',
  signature: 'Morris Phelan',
};

/** What is wrong with an answer, by the schema that judges the file. */
export function fieldProblem(key: string, answer: string): string | undefined {
  const schema = (
    mention.shape as Record<
      string,
      | { safeParse(value: unknown): { success: boolean; error?: { issues: { message: string }[] } } }
      | undefined
    >
  )[key];
  if (!schema || key === 'household' || key === 'line') return undefined;
  const value = key === 'age' && /^\d{1,3}$/.test(answer) ? Number(answer) : answer;
  const judged = schema.safeParse(value);
  if (judged.success) return undefined;
  return key === 'sex'
    ? 'Answer M or F, or X or U where it is neither or not known.'
    : judged.error!.issues[0]!.message;
}

/** The lines of a mention for its fields: answered ones as they are, the others as comments to be filled in. */
export function fieldLines(
  fields: readonly Field[],
  answers: ReadonlyMap<string, string>,
  options: { unanswered: boolean },
): string[] {
  const lines: string[] = [];
  for (const { key, example } of fields.filter((one) => !one.key.includes('.'))) {
    const given = answers.get(key);
    if (given !== undefined)
      lines.push(`    ${key}: ${numeric.has(key) ? yamlValue(given) : yamlText(given)}`);
    else if (options.unanswered) lines.push(`    # ${key}: ${example}`);
  }
  for (const whole of ['nearest', 'joining', 'says']) {
    const inner = fields.filter(({ key }) => key.startsWith(`${whole}.`));
    const given = inner.filter(({ key }) => answers.has(key));
    const shown = given.length > 0 ? given : options.unanswered ? inner : [];
    if (shown.length === 0) continue;
    const open = given.length > 0 ? '    ' : '    # ';
    const head = `${open}${whole}:`;
    lines.push(
      given.length === 0 && whole === 'says'
        ? withComment(head, 'what else it states, by names of your own')
        : head,
      ...shown.map(
        ({ key, example }) =>
          `${open}  ${key.slice(whole.length + 1)}: ${yamlText(answers.get(key) ?? example)}`,
      ),
    );
  }
  return lines;
}

const numeric: ReadonlySet<string> = new Set(['age', 'born', 'immigrated', 'household', 'line']);
