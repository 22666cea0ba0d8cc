import type { Basis } from './fact.ts';
import type { Place } from './place.ts';

/** A quantity handed to a calculation: the value in our unit, its error if it has one, and how it is known. */
export interface Given<Q extends number = number> {
  readonly name: string;
  readonly value: Q;
  /** Half the width of the band it lies in, in the value's unit; missing when it is exact. */
  readonly plusMinus?: number;
  /** The error as the page shows it, when nobody wrote one and the program supplied it: `± 1 mm`. */
  readonly errorAssumed?: string;
  readonly written: string;
  readonly basis: Basis;
  readonly place?: Place;
}
