import type { ClimateStretch } from '#model/climate.ts';
import { celsius, percent } from '#model/units.ts';
import { dewPoint } from './dew-point.ts';
import type { Reading } from './weighted-readings.ts';

const MOST_STRETCHES = 1000;
const SHORTEST_MS = 10 * 60_000;

interface Sums {
  readings: number;
  lowC: number;
  sumC: number;
  highC: number;
  lowPercent: number;
  sumPercent: number;
  highPercent: number;
  sumDewPointC: number;
  dewPoints: number;
}

export interface ReducedSeries {
  readonly take: (reading: Reading) => void;
  readonly stretches: () => readonly ClimateStretch[];
  readonly stretchMs: () => number;
}

/** A log of any length in at most about a thousand stretches for a chart: least, mean and greatest of each. The
 * stretches start at ten minutes and double whenever there are too many, so memory has a ceiling. */
export function reducedSeries(): ReducedSeries {
  let widthMs = SHORTEST_MS;
  let stretches = new Map<number, Sums>();

  function widen() {
    widthMs *= 2;
    const wider = new Map<number, Sums>();
    for (const [key, sums] of stretches) {
      const into = wider.get(Math.floor(key / 2));
      if (into === undefined) wider.set(Math.floor(key / 2), sums);
      else add(into, sums);
    }
    stretches = wider;
  }

  return {
    take: ({ timeMs, temperatureC, humidityPercent }) => {
      const key = Math.floor(timeMs / widthMs);
      const sums = stretches.get(key);
      if (sums !== undefined) return addReading(sums, temperatureC, humidityPercent);
      const fresh = nothing();
      addReading(fresh, temperatureC, humidityPercent);
      stretches.set(key, fresh);
      while (stretches.size > MOST_STRETCHES) widen();
    },
    stretches: () => [...stretches].sort(([a], [b]) => a - b).map(([key, sums]) => stretch(key * widthMs, sums)),
    stretchMs: () => widthMs,
  };
}

const nothing = (): Sums => ({
  readings: 0,
  lowC: Infinity,
  sumC: 0,
  highC: -Infinity,
  lowPercent: Infinity,
  sumPercent: 0,
  highPercent: -Infinity,
  sumDewPointC: 0,
  dewPoints: 0,
});

function addReading(sums: Sums, temperatureC: number, humidityPercent: number) {
  sums.readings += 1;
  if (temperatureC < sums.lowC) sums.lowC = temperatureC;
  if (temperatureC > sums.highC) sums.highC = temperatureC;
  if (humidityPercent < sums.lowPercent) sums.lowPercent = humidityPercent;
  if (humidityPercent > sums.highPercent) sums.highPercent = humidityPercent;
  sums.sumC += temperatureC;
  sums.sumPercent += humidityPercent;
  if (humidityPercent > 0) {
    sums.sumDewPointC += dewPoint(celsius(temperatureC), percent(humidityPercent));
    sums.dewPoints += 1;
  }
}

function add(into: Sums, sums: Sums) {
  into.readings += sums.readings;
  into.lowC = Math.min(into.lowC, sums.lowC);
  into.highC = Math.max(into.highC, sums.highC);
  into.lowPercent = Math.min(into.lowPercent, sums.lowPercent);
  into.highPercent = Math.max(into.highPercent, sums.highPercent);
  into.sumC += sums.sumC;
  into.sumPercent += sums.sumPercent;
  into.sumDewPointC += sums.sumDewPointC;
  into.dewPoints += sums.dewPoints;
}

const stretch = (fromMs: number, sums: Sums): ClimateStretch => ({
  fromMs,
  readings: sums.readings,
  lowC: celsius(sums.lowC),
  meanC: celsius(sums.sumC / sums.readings),
  highC: celsius(sums.highC),
  lowPercent: percent(sums.lowPercent),
  meanPercent: percent(sums.sumPercent / sums.readings),
  highPercent: percent(sums.highPercent),
  meanDewPointC: sums.dewPoints === 0 ? undefined : celsius(sums.sumDewPointC / sums.dewPoints),
});
