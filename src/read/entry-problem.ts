import type { Diagnostic, Severity } from '#model/diagnostic.ts';
import type { Place } from '#model/place.ts';

/** What a problem says, apart from its code and place. */
export interface Words {
  readonly message: string;
  readonly action: string;
  readonly found: string;
  readonly expected: string;
}

/** A problem with an entry's file or front matter; an error unless said otherwise. */
export const entryProblem = (code: string, place: Place, words: Words, severity: Severity = 'error'): Diagnostic => ({
  code,
  severity,
  ...words,
  place,
  related: [],
});

/** The whole of a file. */
export const startOf = (file: string): Place => ({ file, line: 1, column: 1, field: '' });
