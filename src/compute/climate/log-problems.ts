import type { LogFault } from '#model/climate.ts';
import type { Diagnostic } from '#model/diagnostic.ts';

/** The faults of a climate log as problems of its file. Without its columns or without a reading a log can't be used
 * at all; the rest is worth a look, and the log is used for what it is worth.
 * @param file  relative to the collection, with `/`. */
export function logProblems(faults: readonly LogFault[], file: string): readonly Diagnostic[] {
  return faults.map(({ code, line, message, action, found, expected }) => ({
    code,
    severity: code === 'climate/columns' || code === 'climate/empty' ? 'error' : 'note',
    message,
    action,
    place: { file, line, column: 1, field: '' },
    found,
    expected,
    related: [],
  }));
}
