import { rules, type RuleId } from '../catalogue/rules.ts';
import type { Finding, Position } from '../model/finding.ts';

/** A finding of a rule at a position; how grave it is stands with the rule. */
export function finding(rule: RuleId, position: Position, message: string, help: string): Finding {
  return {
    severity: rules[rule].severity,
    rule,
    file: position.file,
    line: position.line,
    column: position.column,
    message,
    help,
  };
}

/** The author's value in quotation marks, cut short where it is long, line ends as spaces. */
export function quoted(value: unknown, longest = 60): string {
  const text = (typeof value === 'string' ? value : (JSON.stringify(value) ?? String(value)))
    .replace(/\s+/g, ' ')
    .trim();
  const characters = Array.from(text.slice(0, longest * 2 + 2));
  return characters.length > longest ? `“${characters.slice(0, longest - 1).join('')}…”` : `“${text}”`;
}

/** Words as a list in a sentence: `a`, `a or b`, `a, b or c`. */
export function listed(words: readonly string[], joined: 'or' | 'and' = 'or'): string {
  if (words.length < 2) return words.join('');
  return `${words.slice(0, -1).join(', ')} ${joined} ${words[words.length - 1]}`;
}

/** Findings in the order in which they are reported: file, line, column, rule, message, by code units. */
export function inOrder(findings: readonly Finding[]): Finding[] {
  return findings.toSorted(
    (a, b) =>
      byCodeUnits(a.file, b.file) ||
      a.line - b.line ||
      a.column - b.column ||
      byCodeUnits(a.rule, b.rule) ||
      byCodeUnits(a.message, b.message),
  );
}

/** Compares two strings by code units, the same on every computer. */
export function byCodeUnits(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
