import type { Calculation } from '#reckoner/calculation.ts';
import { CALCULATIONS_OF_VALUES } from '#reckoner/calculations.ts';
import { storageYearsOverLog } from './over-log.ts';

/** Every calculation by name, in the order of the help; the one over a log stands behind the one of a single air. */
export const CALCULATIONS: ReadonlyMap<string, Calculation> = new Map(
  CALCULATIONS_OF_VALUES.flatMap((calculation) =>
    calculation.name === 'storage-years' ? [calculation, storageYearsOverLog] : [calculation],
  ).map((calculation) => [calculation.name, calculation]),
);
