import type { Diagnostic } from '#model/diagnostic.ts';
import { nearestOf } from '#model/nearest.ts';
import { type Asked, ask, type Key, keyProblem, type Surroundings } from './asked.ts';
import type { Calculation } from './calculation.ts';

/** The keys of the command line, sorted out: one question, or one a row. */
export interface Questions {
  /** The keys that were given several times, and so differ from row to row. */
  readonly repeated: readonly string[];
  readonly rows: readonly { readonly asked: Asked; readonly written: ReadonlyMap<string, string> }[];
}

/** Sorts what was given into questions. Several of a key make a row each; several of two keys go together in order. */
export function questionsOf(
  calculation: Calculation,
  given: ReadonlyMap<string, readonly string[]>,
  around: Surroundings,
): Questions | readonly Diagnostic[] {
  const problems = [...unknownKeys(calculation, given), ...missingKeys(calculation, given)];
  const repeated = calculation.keys.filter((key) => key.together !== true && (given.get(key.name)?.length ?? 0) > 1);
  const count = Math.max(1, ...repeated.map((key) => given.get(key.name)?.length ?? 0));
  for (const key of repeated) {
    if (given.get(key.name)?.length !== count) problems.push(unevenRows(key, given, count));
  }
  if (problems.length > 0) return problems;
  const rows = Array.from({ length: count }, (_, row) => {
    const ofRow = new Map(
      [...given].map(([name, values]) => [
        name,
        repeated.some((key) => key.name === name) ? values.slice(row, row + 1) : values,
      ]),
    );
    const written = new Map(repeated.map((key) => [key.name, ofRow.get(key.name)?.[0] ?? '']));
    return { asked: ask(ofRow, around), written };
  });
  return { repeated: repeated.map((key) => key.name), rows };
}

function unknownKeys(calculation: Calculation, given: ReadonlyMap<string, readonly string[]>): Diagnostic[] {
  const names = calculation.keys.map((key) => key.name);
  return [...given.keys()]
    .filter((name) => !names.includes(name))
    .map((name) => {
      const nearest = nearestOf(name, names);
      return keyProblem(name, {
        code: 'entry/unknown-key',
        message: `${calculation.name} has no key --${name}.`,
        found: `--${name}`,
        expected: names.map((known) => `--${known}`).join(', '),
        action: nearest === undefined ? 'Leave it out.' : `Write --${nearest}.`,
      });
    });
}

function missingKeys(calculation: Calculation, given: ReadonlyMap<string, readonly string[]>): Diagnostic[] {
  return calculation.keys
    .filter((key) => key.optional !== true && !given.has(key.name))
    .map((key) =>
      keyProblem(key.name, {
        code: 'entry/missing',
        message: `${calculation.name} needs --${key.name}.`,
        found: 'nothing',
        expected: `--${key.name} "${key.form}"`,
        action: `Add --${key.name}.`,
      }),
    );
}

const unevenRows = (key: Key, given: ReadonlyMap<string, readonly string[]>, count: number): Diagnostic =>
  keyProblem(key.name, {
    code: 'entry/bad-value',
    message: 'Several keys are repeated, and not equally often.',
    found: `${given.get(key.name)?.length ?? 0} of --${key.name}`,
    expected: `${count} of each, taken together in their order, or one for all`,
    action: `Give --${key.name} once or ${count} times.`,
  });
