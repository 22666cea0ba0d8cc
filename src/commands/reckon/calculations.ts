import type { Calculation } from './calculation.ts';
import { replayDifferenceOf, transitionFrequency } from './curves.ts';
import { bakeWindowOf, dewPointOf, storageYearsOf } from './keeping.ts';
import { storageYearsOverLog } from './over-log.ts';
import { groovePitch, halfSpeed } from './record-side.ts';
import { durationSum, noiseAfterCopies, packDiameter, playingTime, printThrough, tapeLength } from './tape.ts';
import { dateOf, numberOf } from './written.ts';

/** Every calculation by name, in the order of the help. */
export const CALCULATIONS: ReadonlyMap<string, Calculation> = new Map(
  [
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
    storageYearsOverLog,
    dewPointOf,
    durationSum,
    numberOf,
    dateOf,
    bakeWindowOf,
  ].map((calculation) => [calculation.name, calculation]),
);
