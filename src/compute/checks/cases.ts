import type { Severity } from '#model/diagnostic.ts';
import type { Check } from './check.ts';

/** A small collection, and what one check must make of it. */
export interface CheckCase {
  /** The situation, as the end of "when …". */
  readonly when: string;
  /** `reels/a` → its front matter as YAML, without the `---` lines; a title and a status are supplied where left out.
   * A name with an extension, such as `places/attic/log.csv`, is a file of its own beside the entries. */
  readonly given: Readonly<Record<string, string>>;
  readonly then: 'fires' | 'silent';
  /** What the problem's message, found, expected, action or related must contain, each. */
  readonly says?: string | RegExp | readonly (string | RegExp)[];
  /** The severity it must have, where the check has more than one. */
  readonly severity?: Severity;
  /** The file it must stand in, where that isn't plain: `reels/b.md`. */
  readonly file?: string;
  /** The day on which it is looked at, YYYY-MM-DD; 2026-04-01 where left out. */
  readonly today?: string;
}

export interface CheckCases {
  readonly code: string;
  readonly checks: readonly Check[];
  readonly cases: readonly CheckCase[];
}

/** The cases of a check, or of a small family under one code: data only; tests/compute/cases.test.ts runs them through
 * the whole program. */
export function casesOf(check: Check | readonly [Check, ...Check[]], cases: readonly CheckCase[]): CheckCases {
  const checks: readonly [Check, ...Check[]] = 'code' in check ? [check] : check;
  return { code: checks[0].code, checks, cases };
}
