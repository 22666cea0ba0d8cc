import type { Place } from './place.ts';

/** A promise to the owner. error: can't be used as written. warning: two facts can't both be true, or a tape is at
 * risk. note: worth a look, and may be perfectly right. */
const SEVERITIES = ['error', 'warning', 'note'] as const;
export type Severity = (typeof SEVERITIES)[number];

export interface Related {
  readonly message: string;
  readonly place: Place;
}

/** News about an entry. The same shape in the terminal, in JSON and on the page. */
export interface Diagnostic {
  /** `area/kebab-name`; permanent. */
  readonly code: string;
  readonly severity: Severity;
  /** One sentence: what disagrees. */
  readonly message: string;
  /** What to do, beginning with a verb; the likeliest cause first. */
  readonly action: string;
  readonly place: Place;
  /** As written, unshortened. */
  readonly found: string;
  /** A value or a form that would be taken. */
  readonly expected: string;
  readonly related: readonly Related[];
}

/** A problem that its entry accepts, with the owner's reason. */
export interface Accepted {
  readonly problem: Diagnostic;
  readonly why: string;
  readonly on: string | undefined;
}

const RANK: Record<Severity, number> = { error: 0, warning: 1, note: 2 };

/** File, then line, column, severity and code: the order in which an owner mends. */
export function byPlace(a: Diagnostic, b: Diagnostic): number {
  return (
    byText(a.place.file, b.place.file) ||
    a.place.line - b.place.line ||
    a.place.column - b.place.column ||
    RANK[a.severity] - RANK[b.severity] ||
    byText(a.code, b.code) ||
    byText(a.message, b.message)
  );
}

/** Order by code unit, the same on every machine. */
export const byText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
