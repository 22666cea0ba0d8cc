import type { Calculation } from './calculation.ts';
import { replayDifferenceOf, transitionFrequency } from './curves.ts';
import { bakeWindowOf, dewPointOf, storageYearsOf } from './keeping.ts';
import { groovePitch, halfSpeed } from './record-side.ts';
import { durationSum, noiseAfterCopies, packDiameter, playingTime, printThrough, tapeLength } from './tape.ts';
import { dateOf, numberOf } from './written.ts';

/** Every calculation that needs nothing but what is typed: a browser can do them as well as a command line. */
export const CALCULATIONS_OF_VALUES: readonly Calculation[] = [
  playingTime,
  tapeLength,
  packDiameter,
  replayDifferenceOf,
  transitionFrequency,
  groovePitch,
  halfSpeed,
  printThrough,
  noiseAfterCopies,
  storageYearsOf,
  dewPointOf,
  durationSum,
  numberOf,
  dateOf,
  bakeWindowOf,
];
