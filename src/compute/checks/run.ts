import type { Day } from '#model/dates.ts';
import { byPlace, type Diagnostic } from '#model/diagnostic.ts';
import type { Entries } from '#model/entries.ts';
import type { Lineage } from '#model/lineage.ts';
import type { Check } from './check.ts';
import { type Assessed, type CheckContext, checkContext } from './context.ts';
import { FACTS, type Scope } from './facts.ts';
import { CHECKS } from './index.ts';

/** All that the cross-checks have to say about a collection, in the order of place. */
export function runChecks(
  entries: Entries,
  lineage: Lineage,
  today: Day,
  assessed: Assessed = {},
  checks: readonly Check[] = CHECKS,
): readonly Diagnostic[] {
  const context = checkContext(entries, lineage, today, assessed);
  const problems: Diagnostic[] = [];
  for (const scope of Object.keys(FACTS) as Scope[]) {
    const inScope = checks.filter((check) => check.scope === scope);
    if (inScope.length === 0) continue;
    for (const subject of subjectsOf(scope, context)) {
      const ask = asker(scope, subject, context);
      for (const check of inScope) problems.push(...check.run(ask));
    }
  }
  return problems.sort(byPlace);
}

/** What one run of a check of this scope looks at, one by one. */
function subjectsOf(scope: Scope, context: CheckContext): readonly unknown[] {
  switch (scope) {
    case 'reel':
      return context.entries.reels;
    case 'set':
      return [...context.sets].map(([name, reels]) => ({ name, reels }));
    case 'edition':
      return context.entries.editions;
    case 'place':
      return context.entries.places;
    case 'person':
      return context.entries.people;
    case 'share':
      return context.entries.shares;
    case 'collection':
      return [context.entries];
  }
}

type FactFunction = (subject: unknown, context: CheckContext) => unknown;

/** Gives a subject's facts by name, each worked out once. */
function asker(scope: Scope, subject: unknown, context: CheckContext): (name: string) => unknown {
  const table = FACTS[scope] as unknown as Readonly<Record<string, FactFunction>>;
  const asked = new Map<string, unknown>();
  return (name) => {
    if (asked.has(name)) return asked.get(name);
    const fact = table[name];
    if (fact === undefined) throw new Error(`fault: ${scope} has no fact called ${name}`);
    const answer = fact(subject, context);
    asked.set(name, answer);
    return answer;
  };
}
