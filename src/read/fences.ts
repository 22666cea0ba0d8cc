import type { Diagnostic } from '#model/diagnostic.ts';
import { entryProblem, startOf } from './entry-problem.ts';

export interface Fences {
  /** Between the two lines, without them. */
  readonly yaml: string;
  /** Offset of the body's first character. */
  readonly bodyStart: number;
  readonly bodyLine: number;
}

const FENCE = /^---[ \t]*$/u;
/** A language behind the opening line, which asks a parser to run the front matter as code. */
const LANGUAGE = /^---[ \t]*[a-z]/iu;

const FORM = 'a line of just ---, the facts, and another line of just ---';

/** Finds the two `---` lines by hand: a parser that looks for three hyphens at the start of any line would stop early. */
export function findFences(text: string, file: string): Fences | Diagnostic {
  const firstEnd = lineEnd(text, 0);
  const first = text.slice(0, firstEnd);
  if (!FENCE.test(first)) return noOpening(first, file);
  let start = firstEnd + 1;
  for (let line = 2; start <= text.length; line++) {
    const end = lineEnd(text, start);
    if (text.startsWith('---', start)) {
      const found = text.slice(start, end);
      if (!FENCE.test(found)) return notQuiteClosing(found, file, line);
      return { yaml: text.slice(firstEnd + 1, start), bodyStart: Math.min(end + 1, text.length), bodyLine: line + 1 };
    }
    start = end + 1;
  }
  return entryProblem('entry/unclosed', startOf(file), {
    message: 'The front matter is never closed.',
    found: first,
    expected: FORM,
    action: 'Put a line of just --- behind the last fact, before the text.',
  });
}

function lineEnd(text: string, start: number): number {
  const end = text.indexOf('\n', start);
  return end < 0 ? text.length : end;
}

function noOpening(first: string, file: string): Diagnostic {
  if (LANGUAGE.test(first)) {
    return entryProblem('entry/code-refused', startOf(file), {
      message: 'The front matter asks to be run as code or read as another language; it is never run.',
      found: first,
      expected: '---',
      action: 'Write just --- on the first line, and the facts as YAML.',
    });
  }
  return entryProblem('entry/unclosed', startOf(file), {
    message: 'There is no front matter.',
    found: first,
    expected: FORM,
    action: 'Begin the file with a line of just ---, then title: and the other facts.',
  });
}

function notQuiteClosing(found: string, file: string, line: number): Diagnostic {
  return entryProblem(
    'entry/unclosed',
    { file, line, column: 1, field: '' },
    {
      message: 'A line begins with --- but has more on it, so it neither closes the front matter nor belongs to it.',
      found,
      expected: '---',
      action: 'Take away what follows the three hyphens if the line closes the front matter, else put it in quotes.',
    },
  );
}
