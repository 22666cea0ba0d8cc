import type { ErrorCode, LineCounter, YAMLError } from 'yaml';
import type { Diagnostic } from '#model/diagnostic.ts';
import { entryProblem } from './entry-problem.ts';

interface Advice {
  readonly message: string;
  readonly action: string;
}

/** What a writer most likely did, for the slips that are made with entries. */
const ADVICE: Partial<Record<ErrorCode, Advice>> = {
  BLOCK_AS_IMPLICIT_KEY: {
    message: 'A value has a colon and a space in it, so it looks like another key.',
    action: 'Put the whole value in quotes.',
  },
  TAB_AS_INDENT: { message: 'A tab stands where a line is set in.', action: 'Set the line in with spaces.' },
  BAD_INDENT: {
    message: 'The line is set in by another number of spaces than the lines it belongs to.',
    action: 'Line it up with the lines above.',
  },
  MISSING_CHAR: {
    message: 'A quotation mark, a bracket, a comma or a colon is missing.',
    action: 'Look at where this value begins, and close what is open.',
  },
  BAD_SCALAR_START: {
    message: 'A value begins with a character that means something else here.',
    action: 'Put the value in quotes.',
  },
  MULTILINE_IMPLICIT_KEY: {
    message: 'A line has no key and colon.',
    action: 'Write a key, a colon and a space before the value, or set the line in if it belongs to the one above.',
  },
  UNEXPECTED_TOKEN: {
    message: 'Something stands behind a value that ended.',
    action: 'Put the whole value in quotes; look for a bracket or quotation mark too many.',
  },
  MULTIPLE_DOCS: {
    message: 'A line of three points ends the facts before the front matter does.',
    action: 'Take the line away, or put it in quotes if it belongs to a value.',
  },
  BAD_DQ_ESCAPE: {
    message: 'A backslash in double quotes starts a sign that there isn’t.',
    action: 'Use single quotes, or write the backslash twice.',
  },
};

const REFUSED: ReadonlySet<ErrorCode> = new Set<ErrorCode>([
  'BAD_ALIAS',
  'TAG_RESOLVE_FAILED',
  'MULTIPLE_ANCHORS',
  'MULTIPLE_TAGS',
]);

/** The first thing in front matter that isn't YAML; what follows it is usually its consequence.
 *
 * @param yaml  Its first line is the file's second. */
export function syntaxProblem(error: YAMLError, yaml: string, lines: LineCounter, file: string): Diagnostic {
  const { line, col } = lines.linePos(error.pos[0]);
  const place = { file, line: Math.max(line, 2), column: Math.max(col, 1), field: '' };
  const found = yaml.split('\n')[place.line - 2]?.trim() ?? '';
  if (REFUSED.has(error.code)) {
    return entryProblem('entry/code-refused', place, {
      message: "YAML aliases, anchors and tags aren't read.",
      found,
      expected: 'plain texts, lists and maps',
      action: 'Put the value in quotes if it really begins with *, & or !, else write it out.',
    });
  }
  // The parser reports an open bracket by the indent of the line after it.
  const code = error.code === 'BAD_INDENT' && error.message.startsWith('Flow') ? 'MISSING_CHAR' : error.code;
  const advice = ADVICE[code] ?? {
    message: "The front matter can't be read from here on.",
    action: `Look at this line and the one above it. YAML says: ${error.message.slice(0, 200)}`,
  };
  return entryProblem('entry/not-yaml', place, { ...advice, found, expected: 'a key, a colon, a space and its value' });
}
