/** What `plan` prints: what to search next and why, who is missing where, what is lost, and the coverage. */
import { plainCaution } from '../../dossier/plan-words.ts';
import type { CoverageView, PlanView, SearchView } from '../../dossier/plan.ts';
import { english } from '../../interface/index.ts';
import type { Case } from '../../model/case.ts';
import { wrap, type Paint } from './paint.ts';

/** The plan as text, the searches up to a number, then its mirror. */
export function planReport(c: Case, view: PlanView, limit: number, paint: Paint): string {
  const open = view.open.slice(0, limit);
  const lines = [paint.bold(c.question), wrap(view.stands, paint.width), ''];
  if (open.length === 0)
    lines.push(
      wrap(
        `${english.plan.nothingOpen} Adding what you know of their lives, or a series of your own, may bring more.`,
        paint.width,
      ),
      '',
    );
  open.forEach((search, i) => lines.push(...entry(search, i + 1, paint), ''));
  const left = view.open.length - open.length;
  if (left > 0)
    lines.push(
      left === 1 ? 'One more is open; --all lists it.' : `${left} more are open; --all lists them.`,
      '',
    );
  lines.push(...missing(view, Number.isFinite(limit) ? 12 : Infinity, paint));
  lines.push(...lost(view, paint));
  lines.push(...coverage(view.people.slice(0, Number.isFinite(limit) ? 1 : undefined), paint));
  if (view.people.length > 1 && Number.isFinite(limit))
    lines.push(
      wrap(
        `The coverage of ${view.people.length - 1} more around the case is drawn with --all, and on the plan page of the site.`,
        paint.width,
      ),
    );
  if (view.leftOut && !Number.isFinite(limit)) lines.push(wrap(view.leftOut, paint.width));
  lines.push(wrap('A search that finds nothing is worth logging: it is evidence too.', paint.width));
  return `${lines.join('\n')}\n`;
}

function entry(search: SearchView, number: number, paint: Paint): string[] {
  const indent = '    ';
  const say = (label: string, text: string) => wrap(`${label}: ${text}`, paint.width, indent, `${indent}  `);
  const people = search.people.slice(0, 4).map(({ name, words, what }) => `${name} (${words}): ${what}`);
  const more = search.people.length - people.length;
  return [
    `${String(number).padStart(2)}. ${paint.bold(search.title)}, ${search.placeName}, ${search.years}  ${paint.dim(`${search.worth}  ${search.gain.toFixed(3)}`)}`,
    say('For', `${people.join('; ')}${more > 0 ? `; and ${more} more` : ''}.`),
    ...(search.fields.length > 0 ? [say('Look for', `${search.fields.slice(0, 6).join(', ')}.`)] : []),
    ...(search.spellings.length > 0 ? [say('Spelt so far', `${search.spellings.join('; ')}.`)] : []),
    ...(search.watch.length > 0 ? [say('Watch for', `${search.watch.join('; ')}.`)] : []),
    ...search.why.map(({ because }) => paint.dim(wrap(because, paint.width, `${indent}- `, `${indent}  `))),
    ...(search.cautions.length > 0 ? [say('Beware', search.cautions.map(plainCaution).join(' '))] : []),
  ];
}

function missing(view: PlanView, most: number, paint: Paint): string[] {
  if (view.missing.length === 0) return [];
  const shown = view.missing.slice(0, most);
  const left = view.missing.length - shown.length;
  return [
    paint.bold('Not found in a census they should be in'),
    ...shown.map(({ name, title, placeName, searched }) =>
      wrap(
        `${name}: ${title}, ${placeName}; ${searched ? english.plan.searchedNotFound : english.plan.neverSearched}.`,
        paint.width,
        '  ',
        '    ',
      ),
    ),
    ...(left > 0 ? [`  and ${left} more.`] : []),
    '',
  ];
}

function lost(view: PlanView, paint: Paint): string[] {
  if (view.lost.length === 0) return [];
  return [
    paint.bold('Lost, so that nobody need look'),
    ...view.lost.flatMap(({ title, why, substitutes, because }) => [
      wrap(`${title}. ${why}`, paint.width, '  ', '    '),
      ...(substitutes.length > 0
        ? [
            paint.dim(
              wrap(
                `Instead: ${substitutes.map((one) => one.title).join('; ')}. ${because ?? ''}`,
                paint.width,
                '    ',
              ),
            ),
          ]
        : []),
    ]),
    '',
  ];
}

function coverage(people: readonly CoverageView[], paint: Paint): string[] {
  return people.flatMap(({ name, words, rows }) => [
    `${paint.bold(name)}, ${words}: what should name them`,
    ...rows.map(
      ({ status, years, title, what }) =>
        `  ${english.plan.status[status].padEnd(21)} ${years.padEnd(10)} ${title} (${what})`,
    ),
    '',
  ]);
}

/** The plan as one JSON document. */
export function planDocument(c: Case, view: PlanView, limit: number): object {
  return {
    version: 1,
    case: c.id,
    subject: c.subject,
    stands: view.stands,
    open: view.open.slice(0, limit).map(({ worth, ...search }) => ({
      ...search,
      strength: worth,
      cautions: search.cautions.map(plainCaution),
    })),
    openInAll: view.open.length,
    missing: view.missing,
    searched: view.searched,
    lost: view.lost.map(({ builtIn: _, ...lost }) => lost),
    coverage: Number.isFinite(limit) ? view.people.slice(0, 1) : view.people,
    leftOut: view.leftOut,
  };
}
