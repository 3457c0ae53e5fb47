/** How every case stands, as an author reads it in a terminal. */
import { groupPairs, marginPhrase, pairPhrase, pointTitle, standingSentence } from '../../dossier/words.ts';
import { english } from '../../interface/index.ts';
import { plain } from '../../interface/phrase.ts';
import type { Namer } from '../../dossier/words.ts';
import type { Examination } from '../../dossier/examine.ts';
import type { Case } from '../../model/case.ts';
import type { Facts } from '../../model/facts.ts';
import { containmentOf } from '../../reasoning/containment.ts';
import type { CaseResult, Standing } from '../../reasoning/types.ts';
import { wrap, type Paint } from './paint.ts';

/** Standing in a word or two and a mark that does not need colour. */
const standings: Record<Standing, { mark: string; words: string }> = {
  meets: { mark: '▲', words: 'meets the rule' },
  short: { mark: '△', words: 'falls short' },
  contested: { mark: '◭', words: 'contested' },
  open: { mark: '○', words: 'open' },
};

/** The report of every case. */
export function casesText(examination: Examination, paint: Paint): string {
  const { corpus, cases } = examination;
  return [...cases]
    .map(([id, result]) => {
      const c = corpus.cases.get(id)!;
      return result ? oneCase(corpus, c, result, paint) : blockedCase(examination, c, paint);
    })
    .join('\n');
}

function heading(c: Case, mark: string, paint: Paint): string {
  return `${mark}  ${paint.bold(wrap(c.question, paint.width - 3, '', '   '))}\n   ${paint.dim(`case ${c.id}`)}`;
}

function blockedCase({ corpus, blocked }: Examination, c: Case, paint: Paint): string {
  const files = [...new Set((blocked.get(c.id) ?? []).map((entry) => corpus.fileOf(entry) ?? entry))];
  return [
    heading(c, '?', paint),
    wrap(`Not computed: it rests on ${files.join(', ')}, which must be mended first.`, paint.width, '   '),
    '',
  ].join('\n');
}

function oneCase(facts: Facts, c: Case, result: CaseResult, paint: Paint): string {
  const names = namer(facts, c);
  const { mark, words } = standings[result.standing];
  const colour =
    result.standing === 'meets' ? paint.green : result.standing === 'open' ? paint.cyan : paint.red;
  const lines = [heading(c, colour(mark), paint)];
  const say = (label: string, text: string) =>
    lines.push(wrap(text, paint.width, `   ${label.padEnd(12)}`, ' '.repeat(15)));

  if (result.place !== null)
    say('place', containmentOf(facts).path(result.place).map(names.placeName).join(', '));
  const claim =
    result.claim === null
      ? ''
      : result.claim === 'hypothesis'
        ? ' (hypothesis)'
        : `, claimed ${result.claim}`;
  lines.push(`   ${'standing'.padEnd(12)}${colour(words)}${claim}`);
  say('', standingSentence(result, names));
  if (result.place !== null) {
    say(
      'reach',
      result.support
        .filter((level) => level.evidence.length > 0)
        .map((level) => `${names.placeName(level.place)} (${level.kind}) ${level.independent}`)
        .join(' · '),
    );
    const carry = result.support[0]?.witnesses ?? [];
    for (const [i, id] of carry.entries())
      say(i === 0 ? 'carried by' : '', `${id}  ${recordsOf(result, id).map(names.recordTitle).join('; ')}`);
    const doubtful = groupPairs(
      result.pairs.filter(
        (pair) =>
          pair.relation === 'dependent' || (pair.relation === 'undetermined' && pair.argument === undefined),
      ),
    );
    for (const [i, group] of doubtful.slice(0, 6).entries())
      say(i === 0 ? 'not apart' : '', plain(pairPhrase(group, names)));
    if (doubtful.length > 6) say('', `… and ${doubtful.length - 6} more: see the proof page.`);
    if (result.argued.length > 0)
      say(
        'argued',
        `${result.argued.map(([a, b]) => `${a} and ${b}`).join('; ')} stand apart by the author’s argument.`,
      );
    if (result.untied.length > 0)
      say(
        'untied',
        `${result.untied.join(', ')}: shown, but nothing ties ${result.untied.length === 1 ? 'it' : 'them'} to ${names.personName(c.subject)}.`,
      );
    const open = result.conflicts
      .filter((conflict) => !conflict.answered)
      .map((conflict) => conflict.evidence);
    if (result.conflicts.length > 0)
      say(
        'conflicts',
        open.length > 0
          ? `not answered: ${open.join(', ')}`
          : `answered: ${result.conflicts.map((conflict) => conflict.evidence).join(', ')}`,
      );
    if (result.independent >= 2) say('breaks if', plain(marginPhrase(result, names)));
  }
  if (result.place === null) return `${lines.join('\n')}\n`;
  const missed = result.points.filter((point) => !point.holds);
  for (const [i, point] of missed.entries())
    say(
      i === 0 ? 'reviewer' : '',
      `✗ ${pointTitle(point.point, english)}. ${english.points.because(point.said)}`,
    );
  if (missed.length === 0) say('reviewer', 'every reviewer’s point holds.');
  return `${lines.join('\n')}\n`;
}

function recordsOf(result: CaseResult, item: string): string[] {
  return result.items.find((one) => one.id === item)?.records ?? [];
}

/** Plain names, straight from the facts: an author's own terminal withholds nothing. */
function namer(facts: Facts, c: Case): Namer {
  const placeName = (id: string) => facts.places.get(id)?.name ?? id;
  const personName = (id: string) => facts.people.get(id)?.name ?? id;
  const recordTitle = (id: string) => `${facts.records.get(id)?.title ?? id} (${id})`;
  return {
    wording: english,
    subject: c.subject,
    linked: (text) => [text],
    person: personName,
    personName,
    place: placeName,
    placeName,
    placeAndKind: (id) => [placeName(id), facts.places.get(id)?.kind].filter(Boolean).join(', '),
    record: (id) => facts.records.get(id)?.title ?? id,
    recordTitle,
    item: (id) => id,
    search: (id) => id,
  };
}
