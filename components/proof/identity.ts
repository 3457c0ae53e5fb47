/** The ledgers of who is who, as the proof page shows them. */
import type { Dossier } from '../../src/dossier/types.ts';
import type { LinkView } from '../../src/dossier/identity-links.ts';
import type { Part, Phrase } from '../../src/interface/phrase.ts';
import { sayEventDate } from '../../src/interface/say-date.ts';
import type { Namer } from '../../src/dossier/words.ts';
import { mentionAt } from '../../src/model/facts.ts';
import * as href from '../layout/href.ts';

export interface LedgerView {
  id: string;
  title: string;
  /** How probable it is, in words. */
  verdict: string;
  /** Whom it is taken for and what hangs on it. */
  stake: Phrase;
  rows: { field: string; here: string; there: string; where: Part | null; how: string; bits: number }[];
  /** Which fields one side or the other says nothing of, in a sentence; empty where there are none. */
  silent: string;
  prior: { bits: number; because: string };
  sum: number;
  /** Nothing to compare with, or what was left out. */
  aside: string;
}

/** The ledgers of a case, in the order of the evidence. */
export function ledgerViews(dossier: Dossier, links: readonly LinkView[], names: Namer): LedgerView[] {
  const { identity: t, proof, dates } = names.wording;
  return links.flatMap(({ ref, person, items, link }) => {
    const at = mentionAt(dossier.facts, ref);
    if (!at) return [];
    const { record, mention } = at;
    const name = mention.name ?? t.somebodyNotNamed;
    const head = {
      id: `_who-${ref.replace('#', '-')}`,
      title: t.inRecord(name, record.title),
      stake: proof.stake(
        { text: name, href: href.mention(ref) },
        names.person(person),
        items.map((item) => names.item(item)),
      ),
    };
    if (!link)
      return [
        {
          ...head,
          verdict: t.nothingToCompare,
          rows: [],
          silent: '',
          prior: { bits: 0, because: '' },
          sum: 0,
          aside: t.noOtherProvenance(names.personName(person)),
        },
      ];
    const shown = (field: string, value: string) =>
      field === 'sex'
        ? t.sex(value)
        : field === 'birthday'
          ? dates.dayOfMonth(Number(value.slice(3)), dates.month(Number(value.slice(0, 2))))
          : /^\d{4}-\d\d-\d\d$/.test(value)
            ? sayEventDate(value, dates)
            : value;
    const silent = link.rows.filter((row) => row.agreement === 'missing').map((row) => t.field(row.field));
    return [
      {
        ...head,
        verdict: t.chance(link.probability),
        rows: link.rows
          .filter((row) => row.agreement !== 'missing')
          .map((row) => ({
            field: t.field(row.field),
            here: shown(row.field, row.a),
            there: shown(row.field, row.b),
            where: row.with === undefined ? null : whereSaid(dossier, row.with),
            how: [t.level(row.agreement), t.reasons(row.because)].filter(Boolean).join(': '),
            bits: row.weight,
          })),
        silent: silent.length > 0 ? t.silent(silent) : '',
        prior: { bits: link.prior, because: t.reason(link.crowd.reason) },
        sum: link.weight + link.prior,
        aside: link.leftOut.length === 0 ? '' : t.leftOut(link.leftOut.length),
      },
    ];
  });
}

function whereSaid(dossier: Dossier, ref: string): Part | null {
  const at = mentionAt(dossier.facts, ref);
  return at ? { text: at.record.title, href: href.mention(ref) } : null;
}
