import type { Diagnostic } from '#model/diagnostic.ts';

/** Two files that are one entry by name: a file, and a folder with an index.md. */
export function repeatedId(id: string, path: string, before: string): Diagnostic {
  return {
    code: 'entry/repeated-id',
    severity: 'error',
    message: 'Two files are the entry of this name; only the other one is read.',
    action: 'Join the two into one file, or give one of them another name.',
    found: id,
    expected: 'one file for each name',
    place: { file: path, line: 1, column: 1, field: '' },
    related: [{ message: 'The one that is read.', place: { file: before, line: 1, column: 1, field: '' } }],
  };
}
