/** Reviews as they are set: what each answered in words, and what has changed since. */
import type { CaseView, Dossier, ReviewView } from '../../src/dossier/types.ts';
import type { Claim } from '../../src/dossier/claims.ts';
import { pointTitle, type Namer } from '../../src/dossier/words.ts';
import { linked as linkedText, type Phrase } from '../../src/interface/phrase.ts';
import { mentionAt } from '../../src/model/facts.ts';
import * as href from '../layout/href.ts';

type Change = NonNullable<ReviewView['changes']>[number];

/** What a point or claim is, in a few words; in the reviewer's own where it is none of the case. */
export function answeredTitle(point: string, claims: readonly Claim[], names: Namer): Phrase {
  const claim = claims.find(({ id }) => id === point);
  return claim ? claimTitle(claim, names) : [pointTitle(point, names.wording)];
}

/** A claim in a few words. */
export function claimTitle(claim: Claim, names: Namer): Phrase {
  const t = names.wording.reviews.claims;
  switch (claim.kind) {
    case 'conclusion':
    case 'hypothesis':
      return [t[claim.kind]];
    case 'item':
      return t.item(names.item(claim.item));
    case 'independence':
      return t.independence(claim.between.map((id) => names.item(id)));
    case 'conflict':
      return [t.conflict];
    case 'rejected':
      return t.rejected(names.place(claim.place));
    case 'candidate':
      return [t.candidate(claim.candidate)];
  }
}

/** What changed, each in a clause. A mention that changed says more than that its record did. */
export function changePhrases(
  dossier: Dossier,
  view: CaseView,
  changes: readonly Change[],
  names: Namer,
): Phrase[] {
  const t = names.wording.reviews.changes;
  return changes.map((change) => t.one(t.how[change.how], changed(dossier, view, change, names)));
}

function changed(dossier: Dossier, view: CaseView, { kind, id }: Change, names: Namer): Phrase {
  const t = names.wording.reviews.changes;
  const record = (recordId: string) => (dossier.records.has(recordId) ? names.record(recordId) : recordId);
  switch (kind) {
    case 'case':
      return [Object.hasOwn(t.case, id) ? t.case[id as keyof typeof t.case] : id];
    case 'evidence':
      return t.evidence(view.case.evidence.some((item) => item.id === id) ? names.item(id) : id);
    case 'records':
      return t.record(record(id));
    case 'mentions': {
      const [recordId = '', mentionId = ''] = id.split('#');
      const name = mentionAt(dossier.facts, id)?.mention.name;
      return t.mention(name === undefined ? undefined : { quote: name }, mentionId, record(recordId));
    }
    case 'people':
      return t.person(names.person(id));
    case 'places':
      return t.place(dossier.facts.places.has(id) ? names.place(id) : id);
    case 'searches':
      return t.search(names.search(id));
  }
}

/** A reviewer's or author's text with the ids of evidence leading to their items. */
export function withItems(view: CaseView, text: string): Phrase {
  const items = new Set(view.case.evidence.map((item) => item.id));
  return linkedText(text, items, (id) => ({ text: id, href: href.evidence(view.id, id) }));
}
