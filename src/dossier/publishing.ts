/**
 * What travels with a site that has a public address: the news of its feed and what its cards for links say. A
 * family's own site has none of it.
 */
import type { Wording } from '../interface/index.ts';
import type { Site } from '../model/site.ts';
import type { CaseView, PlaceView } from './types.ts';

/** Width and height of a card in pixels: the shape in which links are shown everywhere. */
export const cardSize = { width: 1200, height: 630 } as const;

/** A picture that stands beside a link to a page. */
export interface Card {
  /** The small line over the text: whose question it is. */
  over: string;
  text: string;
  /** More of it, on the card of the home page. */
  below?: string | undefined;
  /** `within` is what the place lies in, and empty where there is none. */
  answer?: { shape: StandingShape; word: string; place: string; within: string };
  sight: Sight;
  /** The name of the site. */
  site: string;
  /** Said on every card of an invented family. */
  notice?: string | undefined;
  /** The card in words, for those who don't see it. */
  alt: string;
}

/** The drawing of a card: lines of sight that reach the mark, those that miss it, and the places around the mark. */
export interface Sight {
  reaching: number;
  missing: number;
  rings: number;
  mark: 'concluded' | 'sought' | 'none';
}

/** How a case stands, as its station mark shows it. */
export type StandingShape = keyof Wording['standing']['words'];

/** A case that was published or changed. */
export interface News {
  case: string;
  kind: 'published' | 'changed';
  /** `YYYY-MM-DD`. */
  date: string;
  /** Counts what the case has of one kind on one day, from 1. */
  nth: number;
  title: string;
  text: string;
}

export interface PublishingView {
  /** Where the site is published, with a slash at its end. */
  address: string;
  home: Card;
  cards: ReadonlyMap<string, Card>;
  /** Newest first. */
  news: readonly News[];
}

/** The cards of a site and its news; `null` where it has no address or is for the family only. */
export function publishingView(
  site: Site,
  cases: ReadonlyMap<string, CaseView>,
  places: ReadonlyMap<string, PlaceView>,
  wording: Wording,
): PublishingView | null {
  if (site.address === undefined || site.audience === 'family') return null;
  const t = wording.publishing;
  const common = { site: site.title, notice: site.invented ? t.invented : undefined };
  const answers = new Map([...cases].map(([id, view]) => [id, answerOf(view, places, wording)]));
  return {
    address: site.address,
    home: {
      ...common,
      over: t.cases(cases.size),
      text: site.title,
      below: site.description,
      sight: { reaching: 3, missing: 0, rings: 3, mark: 'concluded' },
      alt: t.homeAlt(site.title),
    },
    cards: new Map(
      [...cases].map(([id, view]) => [
        id,
        {
          ...common,
          over: view.subject.person.name,
          text: view.case.question,
          answer: answers.get(id)!,
          sight: sightOf(view, places),
          alt: t.cardAlt(view.case.question, answers.get(id)!.inWords),
        },
      ]),
    ),
    news: [...cases.values()]
      .flatMap((view) => newsOf(view, answers.get(view.id)!.inWords, wording))
      .sort(newestFirst),
  };
}

/** The answer of a case, for its card and in a sentence or two. */
function answerOf(
  view: CaseView,
  places: ReadonlyMap<string, PlaceView>,
  wording: Wording,
): NonNullable<Card['answer']> & { inWords: string } {
  const shape = shapeOf(view);
  const word = wording.standing.words[shape];
  const chain = chainOf(view, places).map((id) => places.get(id)?.place.name ?? id);
  const t = wording.publishing;
  const inWords =
    chain.length === 0
      ? t.noPlace(word)
      : shape === 'hypothesis' || shape === 'broken'
        ? t.notConcluded(word, chain.join(', '))
        : t.concluded(word, chain.join(', '), wording.standing.strength(view.result?.independent ?? 0));
  return { shape, word, place: chain[0] ?? t.noPlaceYet, within: chain.slice(1).join(', '), inWords };
}

/** The place a case puts forward and those above it. */
function chainOf(view: CaseView, places: ReadonlyMap<string, PlaceView>): readonly string[] {
  const place = view.result?.place ?? view.case.conclusion?.place ?? view.case.hypothesis?.place;
  return place === undefined ? [] : (places.get(place)?.path ?? [place]);
}

function shapeOf({ result }: CaseView): StandingShape {
  if (!result) return 'broken';
  if (result.standing === 'short' || result.standing === 'contested') return result.standing;
  if (result.claim === 'established' || result.claim === 'probable') return result.claim;
  return result.claim === 'hypothesis' ? 'hypothesis' : 'open';
}

function sightOf(view: CaseView, places: ReadonlyMap<string, PlaceView>): Sight {
  const chain = chainOf(view, places);
  return {
    reaching: view.result?.independent ?? 0,
    missing: view.result?.conflicts.length ?? 0,
    rings: chain.length,
    mark: chain.length === 0 ? 'none' : view.case.conclusion ? 'concluded' : 'sought',
  };
}

function newsOf(view: CaseView, answer: string, wording: Wording): News[] {
  const { question, published, changes, conclusion, hypothesis } = view.case;
  const because = conclusion?.because ?? hypothesis?.because;
  const said = because === undefined ? answer : `${answer} ${because}`;
  const nth = new Map<string, number>();
  return [
    ...(published === undefined
      ? []
      : [
          { case: view.id, kind: 'published' as const, date: published, nth: 1, title: question, text: said },
        ]),
    ...changes.map(({ date, what }) => {
      nth.set(date, (nth.get(date) ?? 0) + 1);
      return {
        case: view.id,
        kind: 'changed' as const,
        date,
        nth: nth.get(date)!,
        title: wording.publishing.changed(question),
        text: `${what} ${answer}`,
      };
    }),
  ];
}

/** What was said later of one case on one day counts as newer. */
function newestFirst(a: News, b: News): number {
  if (a.date !== b.date) return a.date > b.date ? -1 : 1;
  if (a.case !== b.case) return a.case < b.case ? -1 : 1;
  return Number(b.kind === 'changed') - Number(a.kind === 'changed') || b.nth - a.nth;
}
