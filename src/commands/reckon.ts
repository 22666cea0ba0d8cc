import type { Diagnostic } from '#model/diagnostic.ts';
import { nearestOf } from '#model/nearest.ts';
import { keyProblem } from '#reckoner/asked.ts';
import type { Calculation } from '#reckoner/calculation.ts';
import { questionsOf } from '#reckoner/question.ts';
import { DONE, type Io, USED_WRONGLY } from './io.ts';
import { problemText } from './problem-list.ts';
import { CALCULATIONS } from './reckon/calculations.ts';
import { type AnsweredRow, answerJson, answerText } from './reckon/print.ts';

/** `npm run reckon -- NAME --key value …`: one calculation, with its inputs, formula and source.
 *
 * A key may be given several times: a row each. A terminal gets the answer in words, a file or another program as JSON,
 * unless --format says which. What can't be read is told in full, and the exit code is 2. */
export async function reckon(args: readonly string[], io: Io): Promise<number> {
  const line = readLine(args, io.piped === true);
  if (line.name === undefined && line.problems.length === 0) {
    io.err(help());
    return USED_WRONGLY;
  }
  const calculation = CALCULATIONS.get(line.name ?? '');
  const problems = [...line.problems, ...(calculation === undefined ? unknownName(line.name) : [])];
  if (problems.length > 0 || calculation === undefined) return refuse(problems, line.json, io);
  const questions = questionsOf(calculation, line.given, io);
  if (!('rows' in questions)) return refuse(questions, line.json, io);
  const answered: AnsweredRow[] = [];
  for (const { asked, written } of questions.rows) {
    const answer = await calculation.answer(asked);
    if (answer === undefined || asked.problems.length > 0) problems.push(...asked.problems);
    else answered.push({ written, answer });
  }
  if (problems.length > 0) return refuse(problems, line.json, io);
  io.out(line.json ? answerJson(calculation.name, answered) : answerText(calculation, answered));
  if (!line.json) for (const problem of inData(answered)) io.err(problemText(problem, io.width));
  return DONE;
}

interface Line {
  readonly name: string | undefined;
  readonly given: ReadonlyMap<string, readonly string[]>;
  readonly json: boolean;
  readonly problems: readonly Diagnostic[];
}

/** Options that every command takes and that no calculation reads. */
const IGNORED = ['collection', 'today'];

/** Cuts the words of the command line into the name and its keys. What follows a key is its value even where it begins
 * with a dash: -5 °C is a temperature. */
function readLine(args: readonly string[], piped: boolean): Line {
  const given = new Map<string, string[]>();
  const problems: Diagnostic[] = [];
  let name: string | undefined;
  for (let at = 0; at < args.length; at += 1) {
    const word = args[at] ?? '';
    const key = /^--(?<key>[a-z-]+)(?:=(?<value>.*))?$/su.exec(word)?.groups;
    if (key === undefined) {
      if (name === undefined) name = word;
      else problems.push(strayWord(word));
      continue;
    }
    const { key: own = '', value: joined } = key;
    const next = args[at + 1];
    const value = joined ?? (next?.startsWith('--') ? undefined : next);
    if (value === undefined) {
      problems.push(noValue(own));
      continue;
    }
    if (joined === undefined) at += 1;
    given.set(own, [...(given.get(own) ?? []), value]);
  }
  const format = given.get('format')?.at(-1) ?? (piped ? 'json' : 'text');
  if (format !== 'json' && format !== 'text') problems.push(wrongFormat(format));
  for (const key of ['format', ...IGNORED]) given.delete(key);
  return { name, given, json: format === 'json', problems };
}

const strayWord = (word: string) =>
  keyProblem('', {
    code: 'entry/bad-value',
    message: 'A word stands by itself.',
    found: word,
    expected: '--key "value"',
    action: 'Put a value with a space in it into quotes: --speed "15 in/s".',
  });

const noValue = (key: string) =>
  keyProblem(key, {
    code: 'entry/missing',
    message: `--${key} has no value.`,
    found: 'nothing',
    expected: `--${key} "value"`,
    action: `Write the value behind --${key}.`,
  });

const wrongFormat = (format: string) =>
  keyProblem('format', {
    code: 'entry/bad-value',
    message: 'There is no such format.',
    found: format,
    expected: 'json, or text',
    action: 'Write --format json, or leave it out.',
  });

function unknownName(name: string | undefined): readonly Diagnostic[] {
  const names = [...CALCULATIONS.keys()];
  const nearest = nearestOf(name ?? '', names);
  return [
    keyProblem('', {
      code: 'entry/unknown-key',
      message: 'There is no calculation of that name.',
      found: name ?? 'nothing',
      expected: names.join(', '),
      action: nearest === undefined ? 'Choose one of them.' : `Write ${nearest}.`,
    }),
  ];
}

/** Programs get the problems on stdout whatever the format; a person at a terminal gets them once, in words. */
function refuse(problems: readonly Diagnostic[], json: boolean, io: Io): number {
  if (json || !io.terminal) io.out(`${JSON.stringify({ problems }, undefined, 2)}\n`);
  if (!json) for (const problem of problems) io.err(problemText(problem, io.width));
  return USED_WRONGLY;
}

/** Faults of a file that was used all the same. */
const inData = (answered: readonly AnsweredRow[]): readonly Diagnostic[] =>
  answered.flatMap(({ answer }) => (answer.also?.['problems'] as readonly Diagnostic[] | undefined) ?? []);

const help = () => {
  const line = ({ name, does, keys }: Calculation) =>
    `  ${name.padEnd(24)} ${does}\n${' '.repeat(27)}${keys.map((key) => keyForm(key.name, key.form, key.optional)).join(' ')}\n`;
  return `npm run reckon -- NAME --key value …\n\n${[...CALCULATIONS.values()].map(line).join('')}`;
};

const keyForm = (name: string, form: string, optional?: true) => {
  const written = `--${name} "${form}"`;
  return optional === true ? `[${written}]` : written;
};
