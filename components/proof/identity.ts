/** The ledgers of who is who, as the proof page shows them. */
import type { Dossier } from '../../src/dossier/types.ts';
import type { LinkView } from '../../src/dossier/identity-links.ts';
import { joined, type Part, type Phrase } from '../../src/interface/phrase.ts';
import type { Namer } from '../../src/dossier/words.ts';
import { mentionAt } from '../../src/model/facts.ts';
import * as href from '../layout/href.ts';
import { plainWords } from '../layout/words.ts';

export interface LedgerView {
  id: string;
  title: string;
  /** How probable it is, in words. */
  verdict: string;
  /** Whom it is taken for and what hangs on it. */
  stake: Phrase;
  rows: { field: string; here: string; there: string; where: Part | null; how: string; bits: number }[];
  /** Fields that one side or the other says nothing of. */
  silent: string[];
  prior: { bits: number; because: string };
  sum: number;
  /** Nothing to compare with, or what was left out. */
  aside: string;
}

/** The ledgers of a case, in the order of the evidence. */
export function ledgerViews(dossier: Dossier, links: readonly LinkView[], names: Namer): LedgerView[] {
  return links.flatMap(({ ref, person, items, link }) => {
    const at = mentionAt(dossier.facts, ref);
    if (!at) return [];
    const { record, mention } = at;
    const name = mention.name ?? 'Somebody not named';
    const title = `${name} in ${record.title}`;
    const stake: Phrase = [
      { text: name, href: href.mention(ref) },
      ' is taken to be ',
      names.person(person),
      items.length === 1 ? '; used by ' : '; used by items ',
      ...joined(items.map((item) => [names.item(item)])),
      '.',
    ];
    const id = `_who-${ref.replace('#', '-')}`;
    if (!link)
      return [
        {
          id,
          title,
          verdict: 'Nothing to compare with',
          stake,
          rows: [],
          silent: [],
          prior: { bits: 0, because: '' },
          sum: 0,
          aside: `No record of another provenance names ${names.personName(person)}, so nothing can be compared.`,
        },
      ];
    return [
      {
        id,
        title,
        verdict: chanceInWords(link.probability),
        stake,
        rows: link.rows
          .filter((row) => row.agreement !== 'missing')
          .map((row) => ({
            field: fieldWords[row.field] ?? plainWords(row.field),
            here: row.a,
            there: row.b,
            where: row.with === undefined ? null : whereSaid(dossier, row.with),
            how: [plainWords(row.agreement), row.because].filter(Boolean).join(': '),
            bits: row.weight,
          })),
        silent: link.rows
          .filter((row) => row.agreement === 'missing')
          .map((row) => fieldWords[row.field] ?? plainWords(row.field)),
        prior: { bits: link.prior, because: link.crowd.because },
        sum: link.weight + link.prior,
        aside:
          link.leftOut.length === 0
            ? ''
            : `${link.leftOut.length === 1 ? 'One mention is' : `${link.leftOut.length} mentions are`} left out, being of the same provenance.`,
      },
    ];
  });
}

const fieldWords: Readonly<Record<string, string>> = { given: 'given name', birth: 'born' };

function whereSaid(dossier: Dossier, ref: string): Part | null {
  const at = mentionAt(dossier.facts, ref);
  return at ? { text: at.record.title, href: href.mention(ref) } : null;
}

/** A probability in the words and figures a reader can weigh; never certainty. */
export function chanceInWords(probability: number): string {
  if (probability >= 0.9995) return 'more than 99.9 % likely the same';
  if (probability >= 0.99) return `${(probability * 100).toFixed(1)} % likely the same`;
  if (probability < 0.01) return 'less than 1 % likely the same by this alone';
  return `${Math.round(probability * 100)} % likely the same${probability < 0.9 ? ' by this alone' : ''}`;
}

/** A weight with its sign, a real minus included. */
export function signed(bits: number): string {
  const size = Math.abs(bits).toFixed(1);
  return size === '0.0' ? '0' : `${bits < 0 ? '−' : '+'}${size}`;
}
