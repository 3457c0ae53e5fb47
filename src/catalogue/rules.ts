import { fileRules } from './rules/files.ts';
import { formRules } from './rules/form.ts';
import { lifeRules } from './rules/lives.ts';
import { peopleRules } from './rules/people.ts';
import { proofRules } from './rules/proof.ts';
import { proseRules } from './rules/prose.ts';
import { readingRules } from './rules/readings.ts';
import { referenceRules } from './rules/references.ts';
import { reviewRules } from './rules/reviews.ts';
import type { Rule } from './rules/types.ts';

export type { Rule, RuleGroup } from './rules/types.ts';

const table = {
  ...fileRules,
  ...formRules,
  ...referenceRules,
  ...proofRules,
  ...readingRules,
  ...lifeRules,
  ...peopleRules,
  ...proseRules,
  ...reviewRules,
};

/** The id of a rule: the truth that should hold. Permanent once published. */
export type RuleId = keyof typeof table;

/** Every rule that a finding may name, with its reason and its remedy; the documentation has a page of each. */
export const rules: Record<RuleId, Rule> = table;

/** Rule ids in the order in which the documentation lists them: files, form, references, proof, lives, people, prose, reviews. */
export const ruleIds = Object.keys(table) as readonly RuleId[];
