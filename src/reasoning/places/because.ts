/** Why a place was considered for a reading, and what the outcome means for the author, in plain English. */
import { isWide, pathOf } from './gazetteer.ts';
import { answers } from './outer.ts';
import type { Told, Weighed } from './resolve.ts';
import type { ReadingOutcome } from './types.ts';

/** The reasons for one candidate: its name, its kind, then each further part of the reading. */
export function becauseOf(told: Told, one: Weighed): string[] {
  const { gazetteer, head, outers } = told;
  const place = gazetteer.places[one.at]!;
  const reasons = [nameReason(told, one)];
  if (one.divided !== head.name.divided)
    reasons.push(
      head.name.divided === 0
        ? `the reading does not say which part, and ${place.name} is only one`
        : 'the reading says which part, and this place is not divided so',
    );
  if (head.name.asks !== undefined)
    reasons.push(
      answers(place.kind, head.name.asks)
        ? `${article(place.kind)} ${place.kind}, as the reading asks`
        : `the reading asks for ${article(head.name.asks)} ${head.name.asks}, and this is ${article(place.kind)} ${place.kind}`,
    );
  one.fits.forEach((fit, i) => {
    const said = outers[i]!.part.text;
    const other = 'place' in fit ? gazetteer.places[fit.place]!.name : '';
    if (fit.how === 'inside')
      reasons.push(said ? `lies in ${other}, “${said}” in the reading` : `lies in ${other}, as asked`);
    if (fit.how === 'shares') reasons.push(`shares ground with ${other}, “${said}” in the reading`);
    if (fit.how === 'nearby')
      reasons.push(
        fit.km === null ? `beside ${other}` : `${Math.max(1, Math.round(fit.km))} km from ${other}`,
      );
    if (fit.how === 'unknown')
      reasons.push(`“${said}” tells nothing more: the gazetteer has no such place around it`);
  });
  return reasons;
}

function nameReason({ gazetteer, head }: Told, one: Weighed): string {
  const place = gazetteer.places[one.at]!;
  const { agreement, likeness } = one.near;
  const said = `“${head.text}”`;
  if (agreement === 'same')
    return plainly(place.name) === plainly(head.text)
      ? 'spelled as in the gazetteer'
      : `${said} is a spelling the gazetteer knows`;
  if (agreement === 'elements') return `${said} is the same name with its elements spelled otherwise`;
  if (agreement === 'sound')
    return likeness === 0.98 ? `${said} is a short form of it` : `${said} sounds the same`;
  return `${said} is near it in spelling, ${Math.round(likeness * 100)} of 100`;
}

const article = (kind: string) => (/^[aeio]/i.test(kind) ? 'an' : 'a');

const plainly = (text: string) => text.toLowerCase();

interface Found {
  outcome: ReadingOutcome;
  best: Weighed;
  rivals: readonly Weighed[];
  ground: readonly Weighed[];
  elsewhere: readonly Weighed[];
}

/** What the author should know of the outcome, as one to three sentences. */
export function messageOf(told: Told, { outcome, best, rivals, ground, elsewhere }: Found): string {
  const { gazetteer, head, parts } = told;
  const place = gazetteer.places[best.at]!;
  const sentences: string[] = [];
  if (outcome === 'ambiguous')
    sentences.push(
      `${rivals.length + 1} places fit about equally well. ${whatToAdd(told, [best, ...rivals])}`,
    );
  if (outcome === 'doubtful' && head.name.divided !== 0 && best.divided !== head.name.divided)
    sentences.push(
      `The reading says which part of ${place.name} it means, and the gazetteer does not divide it so.`,
    );
  else if (outcome === 'doubtful')
    sentences.push(
      `Only ${place.name} comes near “${parts[0]!.text}”, and not near enough to be taken for it unseen. Look at the record again.`,
    );
  if (ground.length > 0)
    sentences.push(
      `${[best, ...ground].map((one) => `${gazetteer.places[one.at]!.name} (${gazetteer.places[one.at]!.kind})`).join(' and ')} share ground; the reading does not say which of them it means, and the widest claims least.`,
    );
  if (outcome !== 'clear' && elsewhere.length > 0) {
    const other = elsewhere[0]!;
    sentences.push(`The same name is found elsewhere: ${pathOf(gazetteer, other.at).join(', ')}.`);
  }
  return sentences.join(' ');
}

/** The kind of place whose name would tell the candidates apart. */
function whatToAdd({ gazetteer }: Told, equal: readonly Weighed[]): string {
  const first = equal[0]!;
  const above = gazetteer.above[gazetteer.lineage[first.at]!]!;
  const shared = (at: number) =>
    equal.every((one) => gazetteer.above[gazetteer.lineage[one.at]!]!.includes(at));
  const rank = (kind: string) =>
    isWide(kind) ? 0 : kind === 'civil parish' ? 1 : /barony|parish|district|town/.test(kind) ? 2 : 3;
  const [telling] = above
    .filter((at) => !shared(at))
    .map((at) => gazetteer.places[at]!)
    .filter((place) => rank(place.kind) < 3)
    .sort((a, b) => rank(a.kind) - rank(b.kind));
  return telling
    ? `The ${telling.kind} would tell them apart, such as “, ${telling.name}”.`
    : 'Nothing the gazetteer knows of them tells them apart: look for the holding, the landlord or the neighbours.';
}
