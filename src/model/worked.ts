import type { Basis } from './fact.ts';
import type { Place } from './place.ts';

export interface WorkedInput {
  readonly name: string;
  readonly written: string;
  readonly basis: Basis;
  readonly place?: Place;
}

/** A worked figure with all that it rests on. `value` is in `unit`; low and high come from the inputs' own errors. */
export interface Worked {
  readonly name: string;
  readonly value: number;
  readonly low?: number;
  readonly high?: number;
  readonly unit: string;
  readonly basis: Basis;
  readonly inputs: readonly WorkedInput[];
  readonly formula: string;
  readonly source: string;
}

/** The weakest basis among the inputs; a result is never better than `worked`. */
export function worstBasis(inputs: readonly WorkedInput[]): Basis {
  return inputs.some((input) => input.basis === 'assumed') ? 'assumed' : 'worked';
}
