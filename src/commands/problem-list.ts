import type { Accepted, Diagnostic } from '#model/diagnostic.ts';
import { foldedText } from './folded-text.ts';

/** How a problem is laid out in the terminal. Its first line is always whole: other programs look for it.
 *
 * @param width  The terminal's, in characters; undefined where it goes to a file or another program: then nothing is folded. */
export function problemText(problem: Diagnostic, width?: number): string {
  const { file, line, column } = problem.place;
  const told = [
    ['', problem.message],
    ['found', problem.found],
    ['expected', problem.expected],
    ['do', problem.action],
    ...problem.related.map(({ place, message }) => ['see', `${place.file}:${place.line}:${place.column}  ${message}`]),
  ] as const;
  const lines = told.map(([name = '', text = '']) => {
    const hanging = name === '' ? 2 : 12;
    return text
      .split('\n')
      .map((part, at) => foldedText(`  ${at === 0 ? name : ''}`.padEnd(hanging) + part, width, hanging))
      .join('\n');
  });
  return `${[`${file}:${line}:${column}  ${problem.severity}  ${problem.code}`, ...lines].map(plain).join('\n')}\n`;
}

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
