import type { ClimateSwings } from '#model/climate.ts';
import type { Reading } from './weighted-readings.ts';

const DAY_MS = 24 * 3_600_000;
/** A day or a month of which less was logged says nothing of its swing. */
const LEAST_OF_DAY_MS = 18 * 3_600_000;
const LEAST_OF_MONTH_MS = 20 * DAY_MS;

interface DayOf {
  loggedMs: number;
  lowC: number;
  highC: number;
  lowPercent: number;
  highPercent: number;
}

interface MonthOf {
  loggedMs: number;
  sumC: number;
  sumPercent: number;
}

export interface SwingsOf {
  readonly take: (reading: Reading, standsForMs: number) => void;
  readonly swings: () => ClimateSwings;
}

/** How far the air goes up and down within a day (from midnight to midnight, UTC), and between the means of months.
 * Memory grows with the days of a log and not with its rows. */
export function swingsOf(): SwingsOf {
  const days = new Map<number, DayOf>();
  const months = new Map<string, MonthOf>();
  let [dayKey, day, month]: [number, DayOf | undefined, MonthOf | undefined] = [Number.NaN, undefined, undefined];

  function turnTo(key: number): void {
    dayKey = key;
    day = days.get(key) ?? {
      loggedMs: 0,
      lowC: Infinity,
      highC: -Infinity,
      lowPercent: Infinity,
      highPercent: -Infinity,
    };
    days.set(key, day);
    const name = new Date(key * DAY_MS).toISOString().slice(0, 7);
    month = months.get(name) ?? { loggedMs: 0, sumC: 0, sumPercent: 0 };
    months.set(name, month);
  }

  return {
    take: ({ timeMs, temperatureC, humidityPercent }, standsForMs) => {
      const key = Math.floor(timeMs / DAY_MS);
      if (key !== dayKey) turnTo(key);
      if (day === undefined || month === undefined) return;
      day.loggedMs += standsForMs;
      if (temperatureC < day.lowC) day.lowC = temperatureC;
      if (temperatureC > day.highC) day.highC = temperatureC;
      if (humidityPercent < day.lowPercent) day.lowPercent = humidityPercent;
      if (humidityPercent > day.highPercent) day.highPercent = humidityPercent;
      month.loggedMs += standsForMs;
      month.sumC += temperatureC * standsForMs;
      month.sumPercent += humidityPercent * standsForMs;
    },
    swings: () => {
      const whole = [...days.values()].filter((one) => one.loggedMs >= LEAST_OF_DAY_MS);
      const means = [...months.values()].filter((one) => one.loggedMs >= LEAST_OF_MONTH_MS);
      const ofDays = (swing: (one: DayOf) => number) => whole.map(swing);
      const c = ofDays((one) => one.highC - one.lowC);
      const percent = ofDays((one) => one.highPercent - one.lowPercent);
      return {
        days: whole.length,
        dailyC: mean(c),
        worstDailyC: Math.max(0, ...c),
        dailyPercent: mean(percent),
        worstDailyPercent: Math.max(0, ...percent),
        months: means.length,
        seasonalC: spread(means.map((one) => one.sumC / one.loggedMs)),
        seasonalPercent: spread(means.map((one) => one.sumPercent / one.loggedMs)),
      };
    },
  };
}

const mean = (counts: readonly number[]) =>
  counts.length === 0 ? 0 : counts.reduce((sum, count) => sum + count, 0) / counts.length;
const spread = (counts: readonly number[]) => (counts.length === 0 ? 0 : Math.max(...counts) - Math.min(...counts));
