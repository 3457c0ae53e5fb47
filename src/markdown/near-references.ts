/** What looks like a citation or an evidence reference and is none, so that it would be printed as it stands. */
import type { CitationNode } from './syntax.ts';
import { endOf } from './tree.ts';
import type { BodyContext, BodyProblem } from './types.ts';

/** Brackets in a piece of text that were hardly meant as text: `[@ a]`, `[# e1]`, `[#e1 of 3]`. */
export function nearReferences(source: string, start: number, ctx: BodyContext): BodyProblem[] {
  return [...spacedCitations(source, ctx), ...nearEvidence(source, ctx)].map((problem) => ({
    ...problem,
    offset: start + problem.offset,
  }));
}

function spacedCitations(source: string, ctx: BodyContext): BodyProblem[] {
  // A record itself may say “[@ 2s each]”; there only the name of a record is taken for one.
  const meant = (id: string) => ctx.kind !== 'record' || ctx.hasRecord(id);
  return [...source.matchAll(/(?<!\\)\[@\s+([A-Za-z][\w-]*)(?=[\],;])[^\][]*\]/g)]
    .filter(([, id]) => meant(id!))
    .map(({ 0: whole, 1: id, index }) => ({
      rule: 'citation-resolves',
      severity: 'hint',
      offset: index,
      message: `“${oneLine(whole)}” looks like a citation and is none: a space stands after the @.`,
      help: `Write [@${id!}], or begin with \\[ if it is only text.`,
    }));
}

function nearEvidence(source: string, ctx: BodyContext): BodyProblem[] {
  if (ctx.kind !== 'case') return [];
  return [...source.matchAll(/(?<!\\)\[#(\s*)([A-Za-z0-9][\w-]*)(?:[^\w\][-][^\][]*)?\]/g)]
    .filter(({ 2: id }) => ctx.evidenceIds.includes(id!) || /^e\d+$/.test(id!))
    .map(({ 0: whole, 1: space, 2: id, index }) => ({
      rule: 'evidence-reference-resolves',
      severity: 'hint',
      offset: index,
      message: `“${oneLine(whole)}” looks like an evidence reference and is none: ${
        space === ''
          ? 'only ids may stand in its brackets, with a comma between two'
          : 'a space stands after the #'
      }.`,
      help: `Write [#${id!}], or begin with \\[ if it is only text.`,
    }));
}

/** Of a citation of several, those without their @: `[@a; nope]` is printed as “a; nope”. */
export function citedWithoutSign(node: CitationNode, body: string, ctx: BodyContext): BodyProblem[] {
  return node.items.flatMap(({ id, at }, index): BodyProblem[] => {
    const next = node.items[index + 1];
    const end = next ? next.at - 1 : endOf(node) - 1;
    const segments = body.slice(at + id.length, end).split(';');
    let offset = at + id.length;
    const problems: BodyProblem[] = [];
    for (const [place, segment] of segments.entries()) {
      // Before the next citation stand words such as “see also”.
      const ofNext = next !== undefined && place === segments.length - 1;
      const [lead = '', word = ''] = /^[\s>]*([\p{L}\p{N}][^\s,]*)/u.exec(segment) ?? [];
      if (place > 0 && !ofNext && isNamed(word, segment.trim(), segments[0]!.trim() === '', ctx))
        problems.push({
          rule: 'citation-resolves',
          severity: 'hint',
          offset: offset + lead.length - word.length,
          message: `“${word}” stands after a semicolon without an @, so it is not cited but printed as it stands.`,
          help: `Write @${word} if it is a record; if it says where in ${id} to look, put a comma in place of the semicolon.`,
        });
      offset += segment.length + 1;
    }
    return problems;
  });
}

/** Whether a record is meant: its name, or a single word where no locator has been begun. */
function isNamed(word: string, segment: string, noLocator: boolean, ctx: BodyContext): boolean {
  if (word === '') return false;
  return ctx.hasRecord(word) || (noLocator && word === segment && /^(?=.*[a-z])[\w-]+$/i.test(word));
}

function oneLine(text: string): string {
  return text.replace(/\s+/g, ' ');
}
