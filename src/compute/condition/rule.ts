import { CAUTIONS, type Caution } from '#model/cautions.ts';
import { type ConditionFactName, type ConditionFacts, type SeenSign, WHAT_TO_RECORD } from '#model/condition-facts.ts';
import type { Finding } from '#model/finding.ts';
import type { Sign } from '#model/words.ts';

/** What a rule decides on facts that are all there. */
export interface Judgement {
  readonly outcome: 'clear' | 'at-risk';
  readonly because: string;
}

type Declared<K extends ConditionFactName> = Required<Pick<ConditionFacts, K>>;

interface RuleText<K extends ConditionFactName> {
  /** The module's own name under condition/rules/. */
  readonly id: string;
  /** The risk, in a few words. */
  readonly title: string;
  /** The facts it reads, and no others. */
  readonly reads: readonly K[];
  /** Signs that show the trouble itself: one of them seen is at-risk, whatever else is known. */
  readonly shownBy: readonly Sign[];
  readonly sources: readonly string[];
  readonly cautions: readonly Caution[];
  /** What to do when at risk. Begins with a verb. */
  readonly action: string;
}

export interface ConditionRule {
  readonly id: string;
  readonly title: string;
  readonly reads: readonly ConditionFactName[];
  readonly shownBy: readonly Sign[];
  readonly sources: readonly string[];
  assess(facts: ConditionFacts): Finding;
}

/** A limit with who set it. */
export interface Threshold<T> {
  readonly value: T;
  readonly unit: string;
  readonly source: string;
}

/** A rule with a published limit. The judge sees the facts that `reads` names, and the limit. */
export function conditionRule<K extends ConditionFactName, T>(
  rule: RuleText<K> & { readonly threshold: Threshold<T>; readonly judge: (facts: Declared<K>, limit: T) => Judgement },
): ConditionRule {
  const { threshold, judge } = rule;
  return wrap({ ...rule, sources: [`${threshold.source} (${inWords(threshold)})`, ...rule.sources] }, (facts) =>
    judge(facts, threshold.value),
  );
}

/** A rule that goes by kind rather than by amount: an acetate base, a pack on a bare hub. */
export function kindRule<K extends ConditionFactName>(
  rule: RuleText<K> & { readonly judge: (facts: Declared<K>) => Judgement },
): ConditionRule {
  return wrap(rule, rule.judge);
}

const inWords = <T>({ value, unit }: Threshold<T>) =>
  `${Array.isArray(value) ? value.join(' to ') : String(value)} ${unit}`.trim();

/** A sign that was seen is at-risk. A fact that is missing is not-recorded, with what to record: never clear. */
function wrap<K extends ConditionFactName>(rule: RuleText<K>, judge: (facts: Declared<K>) => Judgement): ConditionRule {
  const { id, title, reads, shownBy, sources, action } = rule;
  const cautions = rule.cautions.map((caution) => CAUTIONS[caution]);
  const finding = (
    said: Judgement | { outcome: 'not-recorded'; because: string },
    doing: string,
    observed: boolean,
  ) => ({
    rule: id,
    title,
    ...said,
    action: doing,
    cautions: said.outcome === 'clear' ? [] : cautions,
    sources,
    observed,
  });
  return {
    id,
    title,
    reads,
    shownBy,
    sources,
    assess(facts) {
      const seen = facts.signs.filter((one) => shownBy.includes(one.sign));
      if (seen.length > 0) return finding({ outcome: 'at-risk', because: seenInWords(seen) }, action, true);
      const missing = reads.filter((name) => facts[name] === undefined);
      if (missing.length > 0) {
        const record = missing.map((name) => WHAT_TO_RECORD[name]);
        const because = 'What this depends on isn’t recorded. Not recorded is not clear.';
        return finding({ outcome: 'not-recorded', because }, `Record ${record.join('; and ')}.`, false);
      }
      const said = judge(facts as ConditionFacts & Declared<K>);
      return finding(said, said.outcome === 'clear' ? 'Nothing to do.' : action, false);
    },
  };
}

function seenInWords(seen: readonly SeenSign[]): string {
  const first = seen.map(({ sign, on }) => (on === undefined ? sign : `${sign} on ${on}`)).join('; ');
  const later = seen.flatMap(({ notFoundOn }) => notFoundOn ?? []).at(-1);
  const contradiction =
    later === undefined ? '' : ` The inspection of ${later} did not find it again; both stand here.`;
  return `Found: ${first}.${contradiction}`;
}
