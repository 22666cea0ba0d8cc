import type { Diagnostic } from '#model/diagnostic.ts';
import type { Given } from '#model/given.ts';
import type { Parsed, Parser } from '#validate/scalars/parsed.ts';

/** A key that a calculation takes. */
export interface Key {
  readonly name: string;
  /** A value that would be read, for help and for messages. */
  readonly form: string;
  /** Missing: it must be given. */
  readonly optional?: true;
  /** Several of it are one question (titles to add up) and not several questions (rows). */
  readonly together?: true;
}

export interface Read<T> {
  readonly value: T;
  readonly written: string;
}

/** What a calculation may ask beside what was typed. */
export interface Surroundings {
  /** The folder the user stands in; relative paths start here. */
  readonly cwd: string;
  /** The clock, read once. */
  readonly now: Date;
}

/** One question: what was given for each key, read as it is asked for; what can't be read becomes a problem. */
export interface Asked {
  readonly around: Surroundings;
  readonly one: <T>(key: string, parse: Parser<T>) => Read<T> | undefined;
  readonly all: <T>(key: string, parse: Parser<T>) => readonly Read<T>[] | undefined;
  readonly has: (key: string) => boolean;
  readonly refuse: (key: string, refusal: Omit<Diagnostic, 'severity' | 'place' | 'related'>) => undefined;
  readonly problems: readonly Diagnostic[];
}

/** @param given  each key with all that was written for it. */
export function ask(given: ReadonlyMap<string, readonly string[]>, around: Surroundings): Asked {
  const problems: Diagnostic[] = [];
  const refuse: Asked['refuse'] = (key, refusal) => {
    problems.push(keyProblem(key, refusal));
    return undefined;
  };
  const read = <T>(key: string, written: string, parse: Parser<T>): Read<T> | undefined => {
    const result: Parsed<T> = parse(written);
    if (result.ok) return { value: result.value, written };
    const { code = 'entry/bad-value', message, expected, action } = result;
    return refuse(key, { code, message, expected, action, found: written });
  };
  return {
    around,
    problems,
    refuse,
    has: (key) => given.has(key),
    one: (key, parse) => {
      const written = given.get(key)?.[0];
      return written === undefined ? undefined : read(key, written, parse);
    },
    all: (key, parse) => {
      const reads = (given.get(key) ?? []).map((written) => read(key, written, parse));
      const good = reads.filter((one) => one !== undefined);
      return good.length === reads.length ? good : undefined;
    },
  };
}

/** A problem with the command line: its place is the key. */
export const keyProblem = (key: string, words: Omit<Diagnostic, 'severity' | 'place' | 'related'>): Diagnostic => ({
  code: words.code,
  severity: 'error',
  message: words.message,
  action: words.action,
  place: { file: 'command line', line: 1, column: 1, field: key },
  found: words.found,
  expected: words.expected,
  related: [],
});

/** What a calculation takes from a key: a typed quantity is stated, and exact but for a written ±. */
export function stated<Q extends number>(name: string, { value, written }: Read<Q>): Given<Q> {
  return { name, value, written, basis: 'stated' };
}

/** The same of a quantity that may carry its error. */
export function statedMeasure<Q extends number>(
  name: string,
  { value: { value, plusMinus }, written }: Read<{ readonly value: Q; readonly plusMinus?: Q }>,
): Given<Q> {
  return { name, value, written, basis: 'stated', ...(plusMinus === undefined ? {} : { plusMinus }) };
}
