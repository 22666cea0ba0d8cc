import { byText, type Diagnostic, type Related, type Severity } from '#model/diagnostic.ts';
import type { Place } from '#model/place.ts';
import type { FactName, Facts, Scope } from './facts.ts';

/** What a check has against the facts it was given. The wrapper makes a Diagnostic of it. */
export interface Doubt {
  readonly place: Place;
  /** One sentence, present tense: what disagrees. */
  readonly message: string;
  /** As written, unshortened. */
  readonly found: string;
  /** A value or a form that would be taken; the reading that would agree, where there is one. */
  readonly expected: string;
  /** Begins with a verb; the likeliest cause first; says when to leave the entry alone. */
  readonly action: string;
  readonly related?: readonly Related[];
  /** Where it differs from the check's own. */
  readonly severity?: Severity;
}

/** A cross-check, ready to be run over one subject of its scope. */
export interface Check {
  readonly code: string;
  readonly title: string;
  readonly severity: Severity;
  readonly scope: Scope;
  readonly reads: readonly string[];
  /** `ask` gives a fact of the subject by name; undefined where it isn't recorded. */
  run(ask: (name: string) => unknown): readonly Diagnostic[];
}

export type KnownFacts<S extends Scope, K extends FactName<S>> = Required<Pick<Facts<S>, K>>;

/** Makes a check. `judge` is given the facts that `reads` names and no others, and isn't asked while one of them is
 * missing: a fact that nobody recorded is never held against the entry. */
export function crossCheck<S extends Scope, K extends FactName<S>>(check: {
  /** `area/name`: the module's own path under checks/. */
  readonly code: string;
  /** What the check looks for, in a few words, for lists of checks. */
  readonly title: string;
  readonly severity: Severity;
  /** What one run looks at. */
  readonly scope: S;
  readonly reads: readonly K[];
  readonly judge: (facts: KnownFacts<S, K>) => readonly Doubt[];
}): Check {
  const { code, title, severity, scope, reads, judge } = check;
  return {
    code,
    title,
    severity,
    scope,
    reads,
    run(ask) {
      const facts: Partial<Record<K, unknown>> = {};
      for (const name of reads) {
        const fact = ask(name);
        if (fact === undefined) return [];
        facts[name] = fact;
      }
      return judge(facts as KnownFacts<S, K>).map((doubt) => ({ code, severity, related: [], ...doubt }));
    },
  };
}

/** One entry's view of a disagreement between entries. */
export interface View extends Related {
  /** What this entry has, as written. */
  readonly found: string;
  /** What this entry would have to say to agree with the others. */
  readonly expected: string;
}

/** Where a disagreement between entries stands: in the entry whose file name sorts last, and there in the line furthest
 * down; the other views become `related`. Spread into a Doubt beside its message and action. */
export function between(...views: readonly View[]): Pick<Doubt, 'place' | 'found' | 'expected' | 'related'> {
  const inOrder = views.toSorted((a, b) => byText(a.place.file, b.place.file) || a.place.line - b.place.line);
  const last = inOrder.at(-1);
  if (last === undefined) throw new Error('fault: a disagreement between no entries');
  const related = inOrder.slice(0, -1).map(({ message, place }) => ({ message, place }));
  return { place: last.place, found: last.found, expected: last.expected, related };
}
