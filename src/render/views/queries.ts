import type { Diagnostic } from '#model/diagnostic.ts';

/** Problems that say the same of several things, told once with all that would agree. */
export function folded(problems: readonly Diagnostic[]): readonly Diagnostic[] {
  const groups = Map.groupBy(problems, (problem) => `${problem.code} ${problem.message} ${problem.action}`);
  return [...groups.values()].map((same) => {
    const [first, ...others] = same;
    if (first === undefined) throw new Error('fault: a group of problems is empty');
    return others.length === 0 ? first : { ...first, expected: same.map((problem) => problem.expected).join('; ') };
  });
}
