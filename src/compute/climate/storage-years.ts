import type { Given } from '#model/given.ts';
import type { Celsius, Percent } from '#model/units.ts';
import type { Worked } from '#model/worked.ts';
import { workOut } from '../figure/work-out.ts';

/** Decay a year in this air, 1 being the whole of it: k = RH · 5.9·10¹² · exp(−90300 / (8.314·(T + 273.15))).
 *
 * Fitted to acetate film, not to tape: it compares rooms, and says nothing of how long a tape
 * has. Source: preservation index of the Image Permanence Institute, New Tools for Preservation (1995).
 */
export const decayRate = (temperatureC: Celsius, humidityPercent: Percent): number =>
  humidityPercent * 5.9e12 * Math.exp(-90300 / (8.314 * (temperatureC + 273.15)));

/** The reciprocal of the decay rate, in years; humidityPercent over 0. */
export const storageYears = (temperatureC: Celsius, humidityPercent: Percent): number =>
  1 / decayRate(temperatureC, humidityPercent);

/** The printed table of the same model, which the formula misses by up to 14 %: ratios of two rooms agree better than
 * years do. Both are shown, never a mean. */
export const PRINTED_YEARS: readonly {
  temperatureC: number;
  humidityPercent: number;
  years: number;
  source: string;
}[] = [
  {
    temperatureC: 15,
    humidityPercent: 30,
    years: 145,
    source: 'New Tools for Preservation (1995), table; from memory',
  },
  { temperatureC: 20, humidityPercent: 30, years: 76, source: 'New Tools for Preservation (1995), table; from memory' },
  { temperatureC: 20, humidityPercent: 45, years: 50, source: 'the definition of 50: 20 °C and 45 %' },
  { temperatureC: 20, humidityPercent: 50, years: 44, source: 'New Tools for Preservation (1995), table; from memory' },
  { temperatureC: 25, humidityPercent: 60, years: 19, source: 'New Tools for Preservation (1995), table; from memory' },
];

export const STORAGE_YEARS_MIND =
  'A measure of the room, for comparing rooms; fitted to acetate film. It is not how long a tape has.';

export function workedStorageYears(temperature: Given<Celsius>, humidity: Given<Percent>): Worked {
  return workOut(
    {
      name: 'storage-years',
      unit: 'years',
      formula: 'k = RH·5.9·10¹²·exp(−90300 / (8.314·(T + 273.15))); years = 1/k',
      source:
        'preservation index, New Tools for Preservation (Commission on Preservation and Access, 1995), by its formula; its printed table differs by up to 14 %',
    },
    [temperature, humidity],
    storageYears,
  );
}
