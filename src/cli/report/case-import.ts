/** What an import of a case has to say. */
import type { CaseImport } from '../import/case.ts';
import { wrap, type Paint } from './paint.ts';

/** The import as one JSON document. */
export function caseJson({ unpacked, arrival, digest, standing, written }: CaseImport): string {
  return `${JSON.stringify(
    {
      version: 1,
      case: unpacked.case,
      question: unpacked.question,
      standing,
      digest,
      digestAtHome: unpacked.digest,
      withheld: unpacked.withheld,
      new: arrival.write.map(({ file }) => file),
      same: arrival.same,
      differs: arrival.differs,
      keepsSite: arrival.keepsSite,
      written: written ?? [],
    },
    null,
    2,
  )}\n`;
}

/** The import as text. */
export function caseText(
  { name, unpacked, arrival, digest, standing, written, content }: CaseImport,
  paint: Paint,
): string {
  const lines: string[] = [];
  const say = (text: string, indent = '') => lines.push(wrap(text, paint.width, indent, indent));
  say(paint.bold(unpacked.question || unpacked.case));
  say(
    `${name}: the case ${unpacked.case} with ${plural(unpacked.files.length, 'file')}. Checked here, its standing is ${standing ?? 'not known'}${unpacked.standing === standing ? ', as at home' : `; at home it was ${unpacked.standing ?? 'not known'}`}.`,
  );
  say(
    digest === unpacked.digest
      ? `Its digest is the one it has at home: ${digest ?? 'not known'}.`
      : digest === unpacked.digestHere
        ? `${unpacked.withheld === 0 ? 'Images were left out' : unpacked.withheld === 1 ? 'One living person was withheld' : `${unpacked.withheld} living people were withheld`}, so its digest is another than at home: ${digest ?? 'not known'} here.`
        : `Its digest is not the one the zip says: it has been changed since it was given out, or another version of Whence reckons otherwise.`,
  );
  lines.push('');
  if (arrival.differs.length > 0) {
    say(`What you have already and the zip has otherwise (${arrival.differs.length}):`);
    for (const { what, where } of arrival.differs.slice(0, 20)) lines.push(`  ${where}  ${what}`);
    if (arrival.differs.length > 20) lines.push(`  … and ${arrival.differs.length - 20} more`);
    lines.push('');
    say(
      'Yours was left as it is, and nothing was written. Open the zip into a new folder with --content, and compare the two.',
    );
    return `${lines.join('\n')}\n`;
  }
  if (arrival.same.length > 0)
    say(
      `${plural(arrival.same.length, 'file')} say${arrival.same.length === 1 ? 's' : ''} what you have already.`,
    );
  if (arrival.keepsSite)
    say('Your folder keeps its own site.yaml; ages and the living are reckoned by yours.');
  if (written)
    say(
      `${plural(written.length, 'file')} written into ${content}. Next: npm run check -- --content ${content}`,
    );
  else if (arrival.write.length === 0) say('There is nothing to write.');
  else
    say(
      `Nothing was written. To write ${plural(arrival.write.length, 'file')} into ${content}, add --write.`,
    );
  return `${lines.join('\n')}\n`;
}

const plural = (n: number, what: string) => `${n.toLocaleString('en')} ${what}${n === 1 ? '' : 's'}`;
