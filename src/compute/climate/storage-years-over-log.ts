import type { Celsius, Percent } from '#model/units.ts';
import { decayRate } from './storage-years.ts';

/** The years of a changing climate: the harmonic mean by time, Σw / Σ(w·k).
 *
 * Decay adds up, so the rates are averaged and not the years; the mean of the years is too kind to a room that is hot
 * for part of the time. Source: time-weighted preservation index, New Tools for Preservation (1995).
 */
export interface YearsOverTime {
  readonly add: (temperatureC: Celsius, humidityPercent: Percent, weight: number) => void;
  /** NaN before anything was added. */
  readonly years: () => number;
}

export const OVER_LOG_SOURCE =
  'time-weighted preservation index, New Tools for Preservation (Commission on Preservation and Access, 1995): Σw / Σ(w/PI), by the formula of the preservation index';
export const OVER_LOG_FORMULA =
  'years = Σw / Σ(w·k), k = RH·5.9·10¹²·exp(−90300 / (8.314·(T + 273.15))), w = time to the next reading';

export function yearsOverTime(): YearsOverTime {
  let weights = 0;
  let decay = 0;
  return {
    add: (temperatureC, humidityPercent, weight) => {
      weights += weight;
      decay += weight * decayRate(temperatureC, humidityPercent);
    },
    years: () => weights / decay,
  };
}
