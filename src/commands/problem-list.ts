import type { Accepted, Diagnostic } from '#model/diagnostic.ts';

/** How a problem is laid out in the terminal. */
export function problemText(problem: Diagnostic): string {
  const { file, line, column } = problem.place;
  const lines = [
    `${file}:${line}:${column}  ${problem.severity}  ${problem.code}`,
    `  ${problem.message}`,
    `  found     ${indent(problem.found)}`,
    `  expected  ${indent(problem.expected)}`,
    `  do        ${indent(problem.action)}`,
    ...problem.related.map(
      (related) =>
        `  see       ${related.place.file}:${related.place.line}:${related.place.column}  ${related.message}`,
    ),
  ];
  return `${lines.map(plain).join('\n')}\n`;
}

const indent = (text: string) => text.split('\n').join('\n            ');

/** Text of an entry goes to the terminal without control and direction characters: an escape sequence could rewrite
 * lines that stand above it. */
export const plain = (text: string) =>
  text.replace(/[\p{Cc}\u202a-\u202e\u2066-\u2069]/gu, (one) => (one === '\n' || one === '\t' ? one : '\ufffd'));

export interface Counts {
  readonly error: number;
  readonly warning: number;
  readonly note: number;
}

export function countsOf(problems: readonly Diagnostic[]): Counts {
  const count = (severity: Diagnostic['severity']) =>
    problems.filter((problem) => problem.severity === severity).length;
  return { error: count('error'), warning: count('warning'), note: count('note') };
}

/** One line at the end of a list: how many of each, and what was accepted. */
export function countsText(counts: Counts, accepted: readonly Accepted[]): string {
  const parts = [many(counts.error, 'error'), many(counts.warning, 'warning'), many(counts.note, 'note')];
  const told = accepted.length === 0 ? '' : `; ${accepted.length} accepted`;
  return `${parts.join(', ')}${told}.\n`;
}

export const many = (count: number, word: string) => `${count} ${word}${count === 1 ? '' : 's'}`;
