/** What to write where an id is wanted and something else stands. */
import { rules } from '../catalogue/rules.ts';
import type { ValuePath } from '../model/finding.ts';
import { references, type Target } from './reference-table.ts';
import type { EntryKind } from './types.ts';

/** The help for a value that is no id: where it should name somebody or some place, how these get an id. */
export function idHelp(kind: EntryKind, path: ValuePath): string {
  switch (targetAt(kind, path)) {
    case 'person':
      return `Write the id of a person. Somebody who has none yet gets a file by npm run new -- person; a placeholder will do (placeholder: true)${path.at(-1) === 'person' && path[0] === 'informants' ? ', or say under described, in words, who spoke' : ''}.`;
    case 'place':
      return 'Write the id of a place, yours or a built-in one such as michigan; npm run place -- "READING" finds it, and npm run new -- place makes one.';
    default:
      return rules['id-is-well-formed'].mend;
  }
}

function targetAt(kind: EntryKind, path: ValuePath): Target | undefined {
  return references.get(kind)?.find(({ steps }) => fits(steps, path))?.target;
}

/** Whether a pattern of steps leads to a path; a list may be written as one bare value. */
function fits(steps: readonly string[], path: ValuePath): boolean {
  const [step, ...others] = steps;
  if (step === undefined) return path.length === 0;
  if (step === '[]')
    return (typeof path[0] === 'number' && fits(others, path.slice(1))) || fits(others, path);
  return (step === '*' ? path.length > 0 : path[0] === step) && fits(others, path.slice(1));
}
