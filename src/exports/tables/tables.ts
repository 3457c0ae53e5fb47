/** The tables that can be had of a site’s content. */
import { associatesCsv } from '../../dossier/associates.ts';
import { partiesCsv } from '../../dossier/journeys.ts';
import type { Dossier } from '../../dossier/types.ts';
import { evidenceCsv } from './evidence.ts';
import { peopleCsv } from './people.ts';
import { mentionsCsv, recordsCsv } from './records.ts';
import { coverageCsv, searchesCsv } from './searches.ts';

/** By name, each made of what may be shown: a public dossier holds nobody living. */
export const tables: Readonly<Record<string, (dossier: Dossier) => string>> = {
  associates: ({ facts, wording }) => associatesCsv(facts, wording),
  coverage: coverageCsv,
  evidence: evidenceCsv,
  journeys: ({ journeys }) => partiesCsv(journeys),
  mentions: mentionsCsv,
  people: peopleCsv,
  records: recordsCsv,
  searches: searchesCsv,
};
