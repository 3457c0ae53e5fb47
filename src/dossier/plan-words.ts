/** Why a search is worth it, what to beware of, and whom it is for, in the words of a language. */
import { tellingOf } from '../catalogue/series-fields.ts';
import { reaches } from '../catalogue/series-kinds.ts';
import type { Wording } from '../interface/index.ts';
import { civil } from '../model/days.ts';
import type { Facts } from '../model/facts.ts';
import type { Caution } from '../reasoning/coverage/cautions.ts';
import type { LookFor, OpenSearch, Plan, PlanPerson } from '../reasoning/coverage/plan.ts';

/** Something to beware of. Where it repeats what somebody wrote, that stands apart, with whose words they are. */
export interface CautionView {
  says: string;
  quoted?: { text: string; by: 'catalogue' | 'author'; after: string };
}

interface Days {
  first: number;
  last: number;
}

/** “1864”, “1864–1903”, “from 1864”. */
export function yearsOf({ first, last }: Days, wording: Wording): string {
  return wording.plan.years(yearOf(first), yearOf(last));
}

const yearOf = (day: number) => (Number.isFinite(day) ? civil(day).year : undefined);

/** What somebody of a plan is to the subject, or how an associate was met. */
export function memberWords({ kind, is }: Pick<PlanPerson, 'kind' | 'is'>, wording: Wording): string {
  if (kind === 'subject') return wording.plan.subject;
  return 'relation' in is
    ? is.relation.words
    : wording.plan.metAs(
        is.roles.map((role) => wording.associates.brief[role]),
        is.records,
      );
}

/** The four factors of the best entry of a search, each with its reason. */
export function whyWords(
  facts: Facts,
  search: OpenSearch,
  known: Pick<Plan, 'reached' | 'settled'>,
  wording: Wording,
): { label: string; value: number; because: string }[] {
  const { factors, because } = wording.plan;
  const { person, entry, worth } = search.people[0]!;
  const place = facts.places.get(entry.place);
  const [from, to] = [yearOf(entry.first), yearOf(entry.last)];
  const levels = reaches
    .filter((level) => worth.reach[level] >= 0.05)
    .toReversed()
    .map((level) => ({ level, share: worth.reach[level] }));
  const fields = tellingOf(worth.fields).slice(0, 4);
  return [
    {
      label: factors.there,
      value: worth.there,
      because: because.there(
        person.life.name,
        entry.event,
        place?.name ?? entry.place,
        {
          ...(from === undefined ? {} : { from }),
          ...(to === undefined ? {} : { to }),
          how: entry.how,
          day: entry.first === entry.last || (from !== undefined && from === to),
          kind: place?.kind ?? '',
        },
        worth.there,
      ),
    },
    {
      label: factors.tells,
      value: worth.tells,
      because: because.tells(
        fields.map((field) => wording.plan.fields[field]),
        entry.series.title,
        levels,
      ),
    },
    {
      label: factors.nearer,
      value: worth.nearer,
      because: because.nearer(known.reached, known.settled),
    },
    { label: factors.close, value: worth.close, because: closeBecause(person, worth.close, wording) },
  ];
}

function closeBecause(person: LookFor['person'], close: number, wording: Wording): string {
  const { because } = wording.plan;
  const { name } = person.life;
  const words = memberWords(person, wording);
  if (person.kind === 'subject') return because.aboutSubject;
  if (person.kind === 'associate') return because.associate(name, words);
  return close < 0.05 ? because.elsewhere(name, words) : because.kin(name, words, close);
}

/** Something to beware of, in words. What the catalogue says is in English, what an author’s series says is theirs. */
export function cautionWords(caution: Caution, builtIn: boolean, wording: Wording): CautionView {
  const { cautions } = wording.plan;
  const by = builtIn ? 'catalogue' : 'author';
  switch (caution.of) {
    case 'residence':
      return { says: cautions.residence };
    case 'note':
      return { says: '', quoted: { text: caution.says, by, after: '' } };
    case 'gap':
      return { says: cautions.gap[0], quoted: { text: caution.why, by, after: cautions.gap[1] } };
    case 'newspaper':
      return { says: cautions.newspaper };
    case 'census':
      return { says: cautions.census };
    case 'name-alone':
      return { says: cautions.nameAlone };
    case 'partly':
      return { says: cautions.partly };
  }
}

/** The same as one text. */
export function plainCaution({ says, quoted }: CautionView): string {
  return says + (quoted ? quoted.text + quoted.after : '');
}
