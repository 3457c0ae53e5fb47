/** What an author should hear of the living that is no error: who is left out, and whom nobody can look for. */
import type { Corpus } from '../corpus/types.ts';
import type { Finding } from '../model/finding.ts';
import { kinOf } from '../reasoning/kin.ts';
import { namesakes } from './living-others.ts';
import { isWithheldMention, type Withheld } from './withhold.ts';

/**
 * A hint for each record that names somebody who may be living and belongs to nobody: the author should hear of what is
 * left out, and can say more of them.
 */
export function nobodysLiving(corpus: Corpus, withheld: Withheld): Finding[] {
  const { owner } = kinOf(corpus);
  const findings: Finding[] = [];
  for (const record of corpus.records.values()) {
    const theirs = record.mentions.flatMap((mention, i) => {
      const ref = `${record.id}#${mention.id}`;
      return isWithheldMention(withheld, ref) && owner(ref) === undefined ? [{ i, mention }] : [];
    });
    const first = theirs[0];
    if (!first) continue;
    const named = first.mention.name === undefined ? first.mention.id : `“${first.mention.name}”`;
    const more = theirs.length - 1;
    const undated = record.made === undefined && record.cite?.issued === undefined;
    findings.push({
      severity: 'hint',
      rule: 'nobodys-mention-may-be-living',
      ...corpus.locate(`record:${record.id}`, ['mentions', first.i], { key: false }),
      message: `${named}${more > 0 ? ` and ${more} more` : ''} of this record ${more > 0 ? 'belong' : 'belongs'} to nobody yet and may be living${undated ? ', since nothing says when the record was made' : ''}, so the public site leaves ${more > 0 ? 'them' : 'this mention'} out, with the images of the record.`,
      help: `${undated ? 'Say when the record was made. ' : ''}If they have died, write role: deceased, or give the mention to a person with a died date; an age or a birth date tells too. npm run check -- --living shows why.`,
    });
  }
  return findings;
}

/**
 * A hint at the entry of each person withheld whose name somebody dead bears too: no text can be told to mean the one
 * or the other.
 */
export function sharedNames(corpus: Corpus, withheld: Withheld): Finding[] {
  return namesakes(corpus, withheld).map(({ id, other }) => {
    const name = corpus.people.get(id)?.name ?? id;
    return {
      severity: 'hint',
      rule: 'living-name-is-shared',
      ...corpus.locate(`person:${id}`, ['name']),
      message: `${name}, who is living or presumed to be, has the name of somebody who is shown (${other}), so nothing tells which of them a text means, and the name is not looked for.`,
      help: `Read what you write about ${name} yourself before you publish: mark words about the living one with [living]…[/living]. A fuller name in the entry, with a middle name say, is looked for as far as it differs.`,
    };
  });
}
