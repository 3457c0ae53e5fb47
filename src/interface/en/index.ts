/** English: the pattern of every other language. A room of the house is a file here. */
import { about } from './about.ts';
import { associates } from './associates.ts';
import { candidates } from './candidates.ts';
import { clues } from './clues.ts';
import { dates } from './dates.ts';
import { everywhere } from './everywhere.ts';
import { guides } from './guides.ts';
import { home } from './home.ts';
import { identity } from './identity.ts';
import { journeys } from './journeys.ts';
import { kin } from './kin.ts';
import { layout } from './layout.ts';
import { maps } from './maps.ts';
import { method } from './method.ts';
import { people } from './people.ts';
import { places } from './places.ts';
import { plan } from './plan.ts';
import { points } from './points.ts';
import { proof } from './proof.ts';
import { publishing } from './publishing.ts';
import { records } from './records.ts';
import { reviews } from './reviews.ts';
import { search } from './search.ts';
import { searches } from './searches.ts';
import { standing } from './standing.ts';
import { story } from './story.ts';
import { words } from './words.ts';

export const english = {
  everywhere,
  layout,
  dates,
  home,
  story,
  about,
  people,
  kin,
  clues,
  records,
  words,
  searches,
  search,
  maps,
  places,
  associates,
  journeys,
  plan,
  method,
  proof,
  points,
  reviews,
  standing,
  identity,
  candidates,
  publishing,
  guides,
};
