import matter from 'gray-matter';
import { type Document, isMap, LineCounter, parseDocument } from 'yaml';
import type { Diagnostic } from '#model/diagnostic.ts';
import { entryProblem } from './entry-problem.ts';
import type { Branch } from './tree.ts';
import { walk } from './walk.ts';
import { syntaxProblem } from './yaml-problem.ts';

/** Refuses a language at the engine too, should one ever get past the first line. */
const refuse = {
  parse: (): never => {
    throw new Error('fault: front matter in another language reached its engine');
  },
};

const LONGEST_BLANK = 100;

export interface FrontMatter {
  /** undefined when the entry can't be used. */
  readonly root: Branch | undefined;
  readonly problems: readonly Diagnostic[];
}

/** Reads front matter as YAML whose scalars are all texts, and walks it once into places and values.
 *
 * @param yaml  Between the two `---` lines; its first line is the file's second. */
export function parseFrontMatter(yaml: string, file: string): FrontMatter {
  if (yaml.trim() === '') return { root: undefined, problems: [notFacts('', file)] };
  const lines = new LineCounter();
  const document = parseYaml(yaml, lines);
  if (document === 'too deep') return { root: undefined, problems: [tooDeep(file)] };
  // Comments alone aren't handed to the engine.
  if (document === undefined) return { root: undefined, problems: [notFacts(yaml.trim().slice(0, 100), file)] };
  const [error] = document.errors;
  if (error !== undefined) return { root: undefined, problems: [syntaxProblem(error, yaml, lines, file)] };
  if (!isMap(document.contents)) return { root: undefined, problems: [notFacts(yaml.trim().slice(0, 100), file)] };
  const walked = walk(document.contents, `\n${yaml}`, lines.lineStarts, file);
  return walked.refused ? { root: undefined, problems: walked.problems } : walked;
}

function parseYaml(yaml: string, lines: LineCounter): Document.Parsed | 'too deep' | undefined {
  let document: Document.Parsed | undefined;
  const parse = (text: string): object => {
    // Repeated keys are looked for in the walk: the parser compares each key with each other.
    document = parseDocument(text, {
      schema: 'failsafe',
      version: '1.2',
      uniqueKeys: false,
      lineCounter: lines,
      prettyErrors: false,
      // 'silent' would also hide that a second document follows.
      logLevel: 'error',
    });
    return {};
  };
  try {
    if (hasLongBlank(yaml)) {
      parse(`\n${yaml}`);
      return document;
    }
    const engines = { yaml: { parse }, js: refuse, javascript: refuse, json: refuse, coffee: refuse };
    // Without options it would keep and share what it read.
    matter(`---\n${yaml}---\n`, { language: 'yaml', engines });
  } catch (error) {
    // The parser calls itself for each level, so only the stack ends a bomb of brackets.
    if (error instanceof RangeError) return 'too deep';
    throw error;
  }
  return document;
}

/** gray-matter looks for comments with a pattern that takes the square of the time on a long run of blanks. */
function hasLongBlank(yaml: string): boolean {
  let run = 0;
  for (let i = 0; i < yaml.length; i++) {
    run = yaml.charCodeAt(i) <= 32 ? run + 1 : 0;
    if (run > LONGEST_BLANK) return true;
  }
  return false;
}

function tooDeep(file: string): Diagnostic {
  return entryProblem(
    'entry/code-refused',
    { file, line: 2, column: 1, field: '' },
    {
      message: 'The front matter is nested too deeply to be read.',
      found: 'thousands of brackets or dashes within each other',
      expected: 'facts, and lists of facts',
      action: 'Look at the file: no entry needs more than five levels.',
    },
  );
}

function notFacts(found: string, file: string): Diagnostic {
  return entryProblem(
    'entry/missing',
    { file, line: 2, column: 1, field: '' },
    {
      message: 'The front matter holds no facts.',
      found,
      expected: 'title: Saltwater Almanac, side 1',
      action: 'Write each fact as a key, a colon, a space and its value.',
    },
  );
}
