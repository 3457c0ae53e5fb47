/**
 * The dossier: everything that check, the pages and the exports need, computed once from a corpus.
 * Pages pick from it and hand the parts to components; they never compute.
 *
 * Links in every HTML text are site-absolute canonical paths (`/records/x.html`); the writer of the site makes
 * them relative.
 */
import type { Case } from '../model/case.ts';
import type { Facts } from '../model/facts.ts';
import type { Finding } from '../model/finding.ts';
import type { Person } from '../model/person.ts';
import type { Place } from '../model/place.ts';
import type { Mention, SourceRecord } from '../model/record.ts';
import type { Reply, Rests, Review, Signature } from '../model/review.ts';
import type { Search } from '../model/search.ts';
import type { Series } from '../model/series.ts';
import type { Site } from '../model/site.ts';
import type { CaseResult } from '../reasoning/types.ts';
import type { Wording } from '../interface/index.ts';
import type { Counts } from '../corpus/types.ts';
import type { Rendered } from '../markdown/types.ts';
import type { AssociatesView } from './associates.ts';
import type { CandidatesView } from './candidates.ts';
import type { Claim } from './claims.ts';
import type { ClueView } from './clues.ts';
import type { LinkView } from './identity-links.ts';
import type { JourneysView } from './journeys.ts';
import type { KinshipView } from './kinship.ts';
import type { LibraryView } from './library.ts';
import type { PlanView } from './plan.ts';
import type { VoyageLegs } from './voyage-legs.ts';
import type { Disagreement, ReviewStatus } from './reviews.ts';
import type { SurnamesView } from './surnames.ts';
import type { PublishingView } from './publishing.ts';

export interface Dossier {
  site: Site;
  /** The words the site speaks to its readers in. */
  wording: Wording;
  /** The content as it may be shown: in a public dossier without anyone living. */
  facts: Facts;
  counts: Counts;
  /** The day that decides who is presumed living, `YYYY-MM-DD`. */
  today: string;
  cases: ReadonlyMap<string, CaseView>;
  records: ReadonlyMap<string, RecordView>;
  people: ReadonlyMap<string, PersonView>;
  /** Surnames with all their spellings. */
  surnames: SurnamesView;
  /** The places something of the content refers to, and everything above them. */
  places: ReadonlyMap<string, PlaceView>;
  /** Those who keep turning up beside the families of the cases. */
  associates: AssociatesView;
  /** Who travelled together, and who came after whom. */
  journeys: JourneysView;
  /** The crossings the lists tell of, from port to port. */
  crossings: VoyageLegs;
  searches: ReadonlyMap<string, Search>;
  series: ReadonlyMap<string, Series>;
  /** The source list, in bibliography order. */
  sources: SourceEntry[];
  /** The citations of all records, to copy. */
  library: LibraryView;
  /** Every image of records and prose that is published. */
  pictures: readonly Picture[];
  /** Its news and its cards for links; `null` where it has no address or is for the family only. */
  publishing: PublishingView | null;
  findings: Finding[];
}

export interface CaseView {
  id: string;
  case: Case;
  /** Absent when something the case rests on is broken. */
  result: CaseResult | null;
  /** Where the result is absent: the files to mend first. */
  blockedBy: string[];
  subject: PersonView;
  narrative: Rendered;
  /** The narrative as a section of the proof page, its headings one level lower. */
  argument: Rendered;
  /** The links between mentions and people that the conclusion or working idea depends on. */
  links: LinkView[];
  /** The subject’s family, with the lines still untraced. */
  kinship: KinshipView;
  clues: ClueView[];
  /** Candidate families beside the subject’s own. */
  families: CandidatesView;
  /** What should exist, what was searched, and what to search next. */
  plan: PlanView;
  /** Searches logged for the subject or anyone joined to them, with those for rivals. */
  searches: Search[];
  reviews: ReviewView[];
  /** Who disagrees, by the latest review of each reviewer. */
  disagreements: Disagreement[];
  /** Empty where the case is not computed. */
  digest: string;
  /** The digests of what it rests on, from which that of the case is worked out. */
  rests: Rests | null;
  /** What the author claims, for a reviewer to answer beside the computed points. */
  claims: Claim[];
  /** References of the case in prose: every record cited or used, in order of first use. */
  records: string[];
}

export interface ReviewView extends Omit<Review, 'rests'>, ReviewStatus {
  /** What its signature shows; `null` where it has none that fits. */
  signature: Signature | null;
  /** What the author replied, to a point or to the whole. */
  replies: Reply[];
}

export interface RecordView {
  id: string;
  record: SourceRecord;
  /** Full reference note, as HTML. */
  note: string;
  /** Short form of the note, as HTML. */
  shortNote: string;
  transcription: Rendered;
  mentions: MentionView[];
  media: MediaView[];
  /** Images that there are and that may not be published. */
  withheldMedia: number;
  derivesFrom: ({ kind: 'record' | 'perhaps'; record: string } | { kind: 'unseen'; text: string })[];
  /** Records that derive from this one. */
  copies: { record: string; perhaps: boolean }[];
  parts: string[];
  /** Evidence that uses it. */
  usedIn: { case: string; evidence: string }[];
}

export interface MentionView {
  ref: string;
  mention: Mention;
  person: string | null;
  /** The places it names, each with what it was read as. */
  readings: ReadingView[];
}

/** A place as a record spells it, and what it was taken for. */
export interface ReadingView {
  /** The statement that holds it: `birthplace`, `event`, `says.origin`. */
  states: string;
  reading: string;
  /** How the author reads it, with the evidence that does. */
  readAs: { place: string; case: string; evidence: string }[];
  /**
   * Where no evidence reads it, at its first place in the record: what the tool makes of it. `clear` and `doubtful` name the first place, `partial` the smallest
   * one known around it; `null` where there is nothing to say, or the reading is the plain name of a country or state.
   */
  suggestion: {
    outcome: 'clear' | 'ambiguous' | 'doubtful' | 'partial';
    place: string;
    /** Places of the same name that share its ground: the reading does not say which it means. */
    sameGround: string[];
    /** How many places fit about equally well. */
    equals: number;
  } | null;
}

/** An image that is published. */
export interface Picture {
  src: string;
  /** Absolute path of the author's file. */
  file: string;
}

export interface MediaView {
  /** Site path of the image as published, `/media/declaration.jpg`. */
  src: string;
  /** Absolute path of the author's file. */
  file: string;
  alt: string;
  credit?: string | undefined;
  rights?: string | undefined;
  width: number;
  height: number;
}

export interface PersonView {
  id: string;
  person: Person;
  /** Worked out or stated by the author. */
  living: boolean;
  /** Birth span the records agree on, and the mentions that fall outside. `YYYY-MM-DD`. */
  born: { earliest: string | null; latest: string | null };
  outliers: string[];
  /** What each mention says of the birth, in the order of the mentions. */
  births: BirthView[];
  biography: Rendered;
  mentions: { ref: string; record: string; mention: Mention }[];
  parents: string[];
  spouses: { person: string; married?: string | undefined; place?: string | undefined }[];
  children: string[];
  siblings: string[];
  /** Names as written in records, each once, commonest first. */
  readings: string[];
  cases: string[];
}

/** The days of birth that one mention allows, `YYYY-MM-DD`. */
export interface BirthView {
  ref: string;
  earliest: string;
  latest: string;
  /** What it is reckoned from: a record of the birth or baptism, a stated birth, or an age. */
  from: 'event' | 'born' | 'age';
  /** From a record made within two years of the birth. */
  fixes: boolean;
  /** For a mention outside the agreed span: how far off, in a clause. */
  outside: string | null;
}

export interface PlaceView {
  id: string;
  place: Place;
  /** From the smallest to the country, following the first parent at each step. */
  path: string[];
  /** Everything above, each before those that contain it. */
  above: string[];
  inside: string[];
  /** The places whose chain to the country runs through this one next, by name. */
  under: string[];
  /** Places around it, nearest first: how far in kilometres, and in which of eight winds, north first. */
  near: { place: string; km: number; wind: number }[];
  /** Others inside the place it lies in first: by name while they are few, else only how many. */
  beside: { within: string; count: number; places: string[] } | undefined;
  overlaps: string[];
  records: string[];
  people: string[];
  cases: string[];
  /** Readings of evidence that the author read as this place. */
  readings: { reading: string; ref: string; case: string }[];
}

export interface SourceEntry {
  record: string;
  html: string;
}
