import type { Severity } from '../../model/finding.ts';

/** What the documentation and every message know of one rule. */
export interface Rule {
  /** The rule as a sentence that should be true of the content. */
  title: string;
  severity: Severity;
  /** Why the rule exists. */
  why: string;
  /** How to mend what breaks it. */
  mend: string;
  example?: { wrong: string; right: string };
}

/** The rules of one subject, by id. An id names the truth that should hold, and is permanent. */
export type RuleGroup = Readonly<Record<string, Rule>>;
