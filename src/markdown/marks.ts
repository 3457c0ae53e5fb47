/** Where the marks of notes stand in print, and citations that were left open. */
import type { PhrasingContent, Text } from 'mdast';
import { textOf } from './tree.ts';
import type { BodyProblem } from './types.ts';

/** Citations in a piece of text whose bracket never closes: they would be printed as they stand, unnoticed. */
export function unclosedCitations(source: string, start: number): BodyProblem[] {
  return [...source.matchAll(/(?<!\\)\[@[\p{L}\p{N}][^\][]*(?=\[|$)/gu)].map((match) => ({
    rule: 'citation-resolves',
    severity: 'warning',
    offset: start + match.index,
    message: 'This looks like a citation, and its bracket is not closed.',
    help: 'Close it with ], or begin with \\[ if it is only text.',
  }));
}

/**
 * “in Kill [@a].” is printed with its mark after the full stop and without the space. Where several marks follow
 * one another, the punctuation goes before the first.
 */
export function marksAfterPunctuation(nodes: PhrasingContent[]): PhrasingContent[] {
  for (let i = 0; i < nodes.length; i++) {
    if (!isNoteMark(nodes[i]!)) continue;
    const first = i;
    while (isNoteMark(nodes[i + 1]) || (isBlank(nodes[i + 1]) && isNoteMark(nodes[i + 2]))) i++;
    const run = nodes.slice(first, i + 1).filter(isNoteMark);
    const parted = run.flatMap((mark, at) => (at === 0 ? [mark] : [comma(), mark]));
    nodes.splice(first, i + 1 - first, ...parted);
    i = first + parted.length - 1;

    const before = nodes[first - 1];
    if (before?.type !== 'text') continue;
    const after = nodes[i + 1];
    before.value = before.value.replace(/(?<![ \t\n])[ \t\n]+$/, '');
    const punctuation = after?.type === 'text' ? /^[.,;:!?]+[”’"')]*/.exec(after.value)?.[0] : undefined;
    if (punctuation === undefined) continue;
    before.value += punctuation;
    (after as Text).value = (after as Text).value.slice(punctuation.length);
  }
  return nodes;
}

/** Between two marks, lest 1 and 2 be read as 12. */
function comma(): PhrasingContent {
  return {
    type: 'tag',
    name: 'sup',
    attributes: { className: 'note-mark' },
    children: [{ type: 'text', value: ', ' }],
  };
}

function isNoteMark(node: PhrasingContent | undefined): boolean {
  return node?.type === 'citation' || node?.type === 'footnoteReference';
}

function isBlank(node: PhrasingContent | undefined): boolean {
  return node?.type === 'text' && textOf(node).trim() === '';
}
