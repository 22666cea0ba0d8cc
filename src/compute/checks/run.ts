import type { Day } from '#model/dates.ts';
import { byPlace, type Diagnostic } from '#model/diagnostic.ts';
import type { Entries } from '#model/entries.ts';
import type { Lineage } from '#model/lineage.ts';
import type { Check } from './check.ts';
import { type Assessed, type CheckContext, checkContext } from './context.ts';
import { FACTS, type Scope } from './facts.ts';
import { CHECKS } from './index.ts';
import { type Note, Notes } from './notes.ts';

/** All that the cross-checks have to say about a collection, in the order of place. */
export function runChecks(
  entries: Entries,
  lineage: Lineage,
  today: Day,
  assessed: Assessed = {},
  checks: readonly Check[] = CHECKS,
): readonly Diagnostic[] {
  const notes = new Notes();
  const context = checkContext(entries, lineage, today, assessed, notes);
  const problems: Diagnostic[] = [];
  for (const scope of Object.keys(FACTS) as Scope[]) {
    const inScope = checks.filter((check) => check.scope === scope);
    if (inScope.length === 0) continue;
    for (const { key, subject } of subjectsOf(scope, context)) {
      const before = told.get(key);
      if (before?.checks === checks && before.today === today && notes.hold(before.notes)) {
        problems.push(...before.problems);
        continue;
      }
      const { answer, notes: read } = notes.during(() => {
        const ask = asker(scope, subject, context);
        return inScope.flatMap((check) => check.run(ask));
      });
      told.set(key, { checks, today, notes: read, problems: answer });
      problems.push(...answer);
    }
  }
  return problems.sort(byPlace);
}

interface Told {
  readonly checks: readonly Check[];
  readonly today: Day;
  readonly notes: readonly Note[];
  readonly problems: readonly Diagnostic[];
}

/** What was told of each subject, as long as it lives, with all that it went by: of a collection that is looked at again
 * and again, only what an edit can have touched is judged anew. */
const told = new WeakMap<object, Told>();

interface Subject {
  /** What the subject is the same by: the entry, or the list of its entries. */
  readonly key: object;
  readonly subject: unknown;
}

const itself = (entries: readonly object[]): readonly Subject[] =>
  entries.map((entry) => ({ key: entry, subject: entry }));

/** What one run of a check of this scope looks at, one by one. */
function subjectsOf(scope: Scope, context: CheckContext): readonly Subject[] {
  const { entries } = context;
  switch (scope) {
    case 'reel':
      return itself(entries.reels);
    case 'set':
      return [...context.sets].map(([name, reels]) => ({ key: reels, subject: { name, reels } }));
    case 'edition':
      return itself(entries.editions);
    case 'place':
      return itself(entries.places);
    case 'person':
      return itself(entries.people);
    case 'share':
      return itself(entries.shares);
    case 'collection':
      return itself([entries]);
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
