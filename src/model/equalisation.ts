import type { Microseconds } from './units.ts';

/** The names that a label gives a replay curve; the speed, and at times the year, decide which curve it means. */
export const CURVE_NAMES = ['AES', 'IEC', 'IEC1', 'IEC2', 'NAB', 'CCIR', 'DIN'] as const;
export type CurveName = (typeof CURVE_NAMES)[number];

/** Two time constants. `lowUs` is Infinity where the curve lifts no bass. */
export interface TimeConstants {
  readonly lowUs: Microseconds;
  readonly highUs: Microseconds;
}

/** What an entry says of the equalisation: a name, or the time constants themselves (`3180/50`, `inf/35`). */
export type Equalisation =
  | { readonly is: 'name'; readonly name: CurveName }
  | ({ readonly is: 'time-constants' } & TimeConstants);
