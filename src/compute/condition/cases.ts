import type { ConditionFacts } from '#model/condition-facts.ts';
import type { Outcome } from '#model/finding.ts';
import type { ConditionRule } from './rule.ts';

/** Facts, and what one rule must find in them. */
export interface RuleCase {
  /** The situation, as the end of "when …". */
  readonly when: string;
  readonly given: Partial<ConditionFacts>;
  readonly then: Outcome;
  /** What the finding's because must contain. */
  readonly says?: string | RegExp;
  readonly observed?: boolean;
}

export interface RuleCases {
  readonly rule: ConditionRule;
  readonly cases: readonly RuleCase[];
}

/** The cases of a rule: data only; tests/compute/condition/rules.test.ts runs them. */
export const casesOf = (rule: ConditionRule, cases: readonly RuleCase[]): RuleCases => ({ rule, cases });
