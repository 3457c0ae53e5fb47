/**
 * Everything `check` has to say of a corpus: its findings, the standing of every case, and who is presumed living.
 * The pages' dossier is made from the same examination, so no page can say otherwise than the check.
 */
import { rules, type RuleId } from '../catalogue/rules.ts';
import { noteStyleProblem } from '../citations/with-style.ts';
import type { Corpus, EntryKey } from '../corpus/types.ts';
import { interfaceTag, wordingIn } from '../interface/index.ts';
import { checkBody } from '../markdown/scan.ts';
import type { BodyContext } from '../markdown/types.ts';
import type { Case } from '../model/case.ts';
import { dayNumber, isoDay } from '../model/days.ts';
import type { Facts } from '../model/facts.ts';
import type { Finding, Position } from '../model/finding.ts';
import { birthSpan, type BirthSpan } from '../reasoning/ages.ts';
import { candidateProblems } from '../reasoning/candidates/problems.ts';
import { computeCase } from '../reasoning/case.ts';
import { livingPeople } from '../reasoning/living.ts';
import { readingProblems } from '../reasoning/places/readings.ts';
import { timelineProblems, type TimelineProblem } from '../reasoning/timeline.ts';
import type { CaseProblem, CaseResult } from '../reasoning/types.ts';
import { associateFindings } from './associate-findings.ts';
import { digestOf, type CaseDigest } from './digest.ts';
import { entryFindings } from './entry-findings.ts';
import { identityFindings } from './identity-findings.ts';
import { nobodysLiving, sharedNames } from './living-hints.ts';
import { hasSpans, livingNamed, spanFindings } from './living-named.ts';
import { tellingsOf } from './living-tellings.ts';
import { mediaIsThere } from './pictures.ts';
import { brokenUnder } from './rests-on.ts';
import { reviewFindings, reviewsOf, type ReviewStatus } from './reviews.ts';
import { timelineWords } from './timeline-words.ts';
import { withheldOn, withoutLiving, withSpansResolved, type StandIns, type Withheld } from './withhold.ts';

export interface Examination {
  /** The content, with spans about the living resolved in its texts. */
  corpus: Corpus;
  /** The day that decides who is presumed living, `YYYY-MM-DD`. */
  today: string;
  /** `null` where something the case rests on is broken. */
  cases: ReadonlyMap<string, CaseResult | null>;
  /** For cases that could not be computed: the entries to mend first. */
  blocked: ReadonlyMap<string, EntryKey[]>;
  digests: ReadonlyMap<string, CaseDigest>;
  /** The digest of a case on the site for the other audience, worked out when it is asked for. */
  digestElsewhere(id: string): CaseDigest;
  /** How each review stands to its case as it is now, by the id of the review; absent where that is not computed. */
  reviews: ReadonlyMap<string, ReviewStatus>;
  births: ReadonlyMap<string, BirthSpan>;
  /** Everyone living or presumed so. */
  living: ReadonlySet<string>;
  /** Whom the site leaves out: nobody where it is for the family. */
  withheld: Withheld;
  /** The content as the site shows it. */
  shown: Corpus;
  /** All findings, sorted by file, line, column and rule. */
  findings: Finding[];
  /** No finding is an error. */
  ok: boolean;
}

/** Examines a corpus. `today` is a day as `YYYY-MM-DD`. */
export function examine(written: Corpus, today: string): Examination {
  const day = dayNumber(...(today.split('-').map(Number) as [number, number, number]));
  const { someone, oneOfSeveral } = wordingIn(interfaceTag(written.site)).people.withheld;
  const words = { someone, oneOfSeveral };
  const corpus = hasSpans(written) ? withSpansResolved(written, words) : written;
  const living = livingPeople(corpus, day);
  const withheld = withheldOn(corpus, living, day);
  const shown = withoutLiving(corpus, withheld, words);
  let other: Facts | undefined;
  const elsewhere = (c: Case): CaseDigest => {
    other ??= onTheOtherSite(written, words, living, day);
    return digestOf(other, other.cases.get(c.id) ?? c);
  };
  const cases = new Map<string, CaseResult | null>();
  const blocked = new Map<string, EntryKey[]>();
  const digests = new Map<string, CaseDigest>();
  const reviews = new Map<string, ReviewStatus>();
  const findings = [...corpus.findings];

  for (const c of corpus.cases.values()) {
    const inTheWay = brokenUnder(corpus, c, corpus.broken);
    if (inTheWay.length > 0) {
      cases.set(c.id, null);
      blocked.set(c.id, inTheWay);
      continue;
    }
    const result = computeCase(corpus, c.id);
    cases.set(c.id, result);
    const digest = digestOf(shown, shown.cases.get(c.id) ?? c);
    digests.set(c.id, digest);
    const statuses = reviewsOf(corpus, c, digest, { shown, elsewhere: () => elsewhere(c) });
    for (const [id, status] of statuses) reviews.set(id, status);
    findings.push(...reviewFindings(corpus, c, result, statuses));
    for (const problem of [
      ...result.problems,
      ...readingProblems(corpus, c),
      ...candidateProblems(corpus, c),
    ])
      findings.push(fromCase(corpus, c.id, problem));
  }
  const births = new Map([...corpus.people.keys()].map((id) => [id, birthSpan(corpus, id)]));
  const beside = associateFindings(corpus);
  findings.push(
    ...timelineProblems(corpus, births).map((problem) => ofLives(corpus, problem)),
    ...beside.findings,
    ...identityFindings(corpus, beside.told),
    ...entryFindings(corpus),
    ...bodyFindings(written),
    ...styleFindings(corpus),
    ...spanFindings(written),
    ...nobodysLiving(corpus, withheld),
    ...sharedNames(corpus, withheld),
    ...livingNamed(written, shown, withheld, tellingsOf(corpus, withheld)),
  );
  findings.sort(byPlace);
  return {
    corpus,
    today: isoDay(day),
    cases,
    blocked,
    digests,
    digestElsewhere: (id) => elsewhere(corpus.cases.get(id)!),
    reviews,
    births,
    living,
    withheld,
    shown,
    findings: findings.filter((finding, i) => i === 0 || !sameFinding(finding, findings[i - 1]!)),
    ok: !findings.some((finding) => finding.severity === 'error'),
  };
}

/** The content as the site for the other audience shows it: a review may have been made there. */
function onTheOtherSite(written: Corpus, words: StandIns, living: ReadonlySet<string>, day: number): Facts {
  const audience = written.site.audience === 'family' ? 'public' : 'family';
  const facts = withSpansResolved({ ...written, site: { ...written.site, audience } }, words);
  return withoutLiving(facts, withheldOn(facts, living, day), words);
}

/** Sorts findings by file, line, column, rule and message. */
export function byPlace(a: Finding, b: Finding): number {
  return byFile(a, b) || order(a.rule, b.rule) || order(a.message, b.message);
}

function order(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

function sameFinding(a: Finding, b: Finding): boolean {
  return byPlace(a, b) === 0;
}

/** Findings stand at a key where the path leads to a list or mapping the author began there. */
function fromCase(corpus: Corpus, caseId: string, problem: CaseProblem): Finding {
  const key = problem.path.at(-1);
  const at = corpus.locate(problem.entry ?? `case:${caseId}`, problem.path, {
    key: typeof key === 'string' && key !== 'place',
  });
  return finding(problem.rule, problem.severity, at, problem.message, problem.help);
}

/** A contradiction of dates stands at the mention that comes later in the files; what a person's entry says gives way. */
function ofLives(corpus: Corpus, problem: TimelineProblem): Finding {
  const [at] = problem.facts
    .map(({ ref, entry, path }) => ({ own: ref === undefined, ...corpus.locate(entry, path) }))
    .sort((a, b) => Number(a.own) - Number(b.own) || -byFile(a, b));
  const { file, line, column } = at!;
  const { message, help } = timelineWords(corpus, problem);
  return finding(problem.rule, problem.hint ? 'hint' : undefined, { file, line, column }, message, help);
}

function byFile(a: Position, b: Position): number {
  return order(a.file, b.file) || a.line - b.line || a.column - b.column;
}

function finding(
  rule: string,
  severity: Finding['severity'] | undefined,
  at: Position,
  message: string,
  help: string,
): Finding {
  return { severity: severity ?? rules[rule as RuleId].severity, rule, ...at, message, help };
}

function styleFindings({ citationStyle }: Corpus): Finding[] {
  const problem = citationStyle && noteStyleProblem(citationStyle.text);
  if (!problem) return [];
  const { line, column, message, help } = problem;
  return [
    finding('citation-style-is-csl', undefined, { file: citationStyle.file, line, column }, message, help),
  ];
}

function bodyFindings(corpus: Corpus): Finding[] {
  const findings: Finding[] = [];
  const look = (entry: EntryKey, body: string, ctx: BodyContext) => {
    // What is named stands in a file that has to be mended: that is said there, and not that there is none.
    const known = {
      ...ctx,
      hasRecord: (id: string) => ctx.hasRecord(id) || corpus.fileOf(`record:${id}`) !== undefined,
      hasPerson: (id: string) => ctx.hasPerson(id) || corpus.fileOf(`person:${id}`) !== undefined,
    };
    for (const { rule, severity, offset, message, help } of checkBody(body, known))
      findings.push(finding(rule, severity, corpus.locateInBody(entry, offset), message, help));
  };
  for (const c of corpus.cases.values()) look(`case:${c.id}`, c.body, bodyContext(corpus, 'case', c.id));
  for (const r of corpus.records.values())
    look(`record:${r.id}`, r.body, bodyContext(corpus, 'record', r.id));
  for (const p of corpus.people.values())
    if (p.body) look(`person:${p.id}`, p.body, bodyContext(corpus, 'person', p.id));
  return findings;
}

/** What a body may refer to. `note` is given where bodies are rendered, not where they are only checked. */
export function bodyContext(
  corpus: Corpus,
  kind: BodyContext['kind'],
  id: string,
  note: BodyContext['note'] = () => ({ full: '', short: '' }),
): BodyContext {
  const c = kind === 'case' ? corpus.cases.get(id) : undefined;
  const file = corpus.fileOf(`${kind}:${id}` as EntryKey) ?? '';
  return {
    kind,
    mdx: file.endsWith('.mdx'),
    hasRecord: (record) => corpus.records.has(record),
    recordIds: () => [...corpus.records.keys()],
    evidenceIds: c?.evidence.map((e) => e.id) ?? [],
    hasPerson: (person) => corpus.people.has(person),
    hasMedia: (media) => mediaIsThere(corpus.root, media),
    evidenceHref: (evidence) => `/cases/${id}/proof.html#${evidence}`,
    note,
  };
}
