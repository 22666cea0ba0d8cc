import type { Worked, WorkedInput } from '#model/worked.ts';
import type { Asked, Key } from './asked.ts';

/** What a calculation answers, ready to be printed either way. */
export interface Answer {
  /** A number, or an object where the answer has several parts. */
  readonly value: unknown;
  /** One unit, or one for each part; null for texts and dates. */
  readonly unit: string | Readonly<Record<string, string>> | null;
  readonly low?: unknown;
  readonly high?: unknown;
  readonly inputs: readonly WorkedInput[];
  readonly formula: string;
  readonly source: string;
  /** Further figures that follow from the same inputs, under names of their own. */
  readonly also?: Readonly<Record<string, unknown>>;
  /** The value in words, where its keys don’t read well. */
  readonly told?: readonly string[];
  /** What to mind when using it; printed where the figure stands. */
  readonly mind: readonly string[];
}

export interface Calculation {
  readonly name: string;
  /** One line for the list of calculations. */
  readonly does: string;
  readonly keys: readonly Key[];
  /** undefined when something couldn't be read; `asked.problems` says what. */
  readonly answer: (asked: Asked) => Answer | undefined | Promise<Answer | undefined>;
}

/** A worked figure as an answer. */
export function answerOf(worked: Worked, mind: readonly string[] = [], also?: Answer['also']): Answer {
  const { value, unit, low, high, inputs, formula, source } = worked;
  return {
    value,
    unit,
    ...(low === undefined ? {} : { low, high }),
    inputs,
    formula,
    source,
    ...(also === undefined ? {} : { also }),
    mind,
  };
}
