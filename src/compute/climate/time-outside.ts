import type { TimeOutside } from '#model/climate.ts';

const HOUR_MS = 3_600_000;
const DAY_MS = 24 * HOUR_MS;
const YEAR_DAYS = 365;

export interface OutsideClock {
  readonly add: (timeMs: number, standsForMs: number) => void;
  readonly outside: () => TimeOutside;
}

/** Adds up the time outside some bounds, day by day: the whole of it, and the worst 365 days in a row. */
export function outsideClock(): OutsideClock {
  const msByDay = new Map<number, number>();
  let firstMs: number | undefined;
  return {
    add: (timeMs, standsForMs) => {
      if (firstMs === undefined || timeMs < firstMs) firstMs = timeMs;
      const day = Math.floor(timeMs / DAY_MS);
      msByDay.set(day, (msByDay.get(day) ?? 0) + standsForMs);
    },
    outside: () => {
      const days = [...msByDay].sort(([a], [b]) => a - b);
      let all = 0;
      for (const [, ms] of days) all += ms;
      return { hours: all / HOUR_MS, hoursInWorstYear: worstYear(days) / HOUR_MS, firstMs };
    },
  };
}

function worstYear(days: readonly (readonly [day: number, ms: number])[]): number {
  let worst = 0;
  let sum = 0;
  let oldest = 0;
  for (const [day, ms] of days) {
    sum += ms;
    for (
      let [first, firstMs] = days[oldest] ?? [day, 0];
      first <= day - YEAR_DAYS;
      [first, firstMs] = days[oldest] ?? [day, 0]
    ) {
      sum -= firstMs;
      oldest += 1;
    }
    worst = Math.max(worst, sum);
  }
  return worst;
}
