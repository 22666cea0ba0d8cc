import type { ClimateSummary, TakeReading } from '#model/climate.ts';
import { celsius, percent } from '#model/units.ts';
import { faultCounter } from './log-faults.ts';
import { reducedSeries } from './reduced-series.ts';
import { yearsOverTime } from './storage-years-over-log.ts';
import { stuckSensor } from './stuck-sensor.ts';
import { swingsOf } from './swings.ts';
import { outsideClock } from './time-outside.ts';
import { weighReadings } from './weighted-readings.ts';

/** Readings past these are no air: the sensor or its column's unit is wrong. */
const COLDEST_C = -40;
const HOTTEST_C = 80;

export interface LogSummary {
  readonly take: TakeReading;
  /** What the log came to; undefined when it held no usable reading. Call it once, at the end. */
  readonly finish: () => Omit<ClimateSummary, 'faults'> | undefined;
  /** The damage found in the readings; whole after `finish`. */
  readonly faults: () => ClimateSummary['faults'];
}

/** Sums a climate log up as its readings go by: nothing of a reading is kept but what it adds to the sums. */
export function summariseLog(): LogSummary {
  const faults = faultCounter();
  const series = reducedSeries();
  const years = yearsOverTime();
  const swings = swingsOf();
  const outer = outsideClock();
  const disputed = outsideClock();
  const medium = outsideClock();
  const stuckTemperature = stuckSensor((line, hours, at) =>
    faults.note('climate/stuck', line, `${at} °C for ${hours} h`),
  );
  const stuckHumidity = stuckSensor((line, hours, at) => faults.note('climate/stuck', line, `${at} % for ${hours} h`));
  let readings = 0;
  let coveredMs = 0;
  let [fromMs, untilMs] = [Infinity, -Infinity];
  let [lowC, highC, sumC] = [Infinity, -Infinity, 0];
  let [lowPercent, highPercent, sumPercent] = [Infinity, -Infinity, 0];

  const weighing = weighReadings({
    weighed: (reading, standsForMs) => {
      const { line, timeMs, temperatureC, humidityPercent } = reading;
      readings += 1;
      coveredMs += standsForMs;
      if (timeMs < fromMs) fromMs = timeMs;
      if (timeMs > untilMs) untilMs = timeMs;
      if (temperatureC < lowC) lowC = temperatureC;
      if (temperatureC > highC) highC = temperatureC;
      if (humidityPercent < lowPercent) lowPercent = humidityPercent;
      if (humidityPercent > highPercent) highPercent = humidityPercent;
      sumC += temperatureC * standsForMs;
      sumPercent += humidityPercent * standsForMs;
      years.add(temperatureC, humidityPercent, standsForMs);
      series.take(reading);
      swings.take(reading, standsForMs);
      stuckTemperature.take(line, temperatureC, standsForMs);
      stuckHumidity.take(line, humidityPercent, standsForMs);
      // IASA-TC 05 section 3.3 and ISO 18923 medium term; between 20 and 25 % the two disagree.
      if (temperatureC < 8 || temperatureC > 35 || humidityPercent < 20 || humidityPercent > 60) {
        outer.add(timeMs, standsForMs);
      } else if (humidityPercent < 25) {
        disputed.add(timeMs, standsForMs);
      }
      if (temperatureC > 23 || humidityPercent < 20 || humidityPercent > 50) medium.add(timeMs, standsForMs);
    },
    repeated: ({ line, timeMs }) => faults.note('climate/time-repeated', line, () => clock(timeMs)),
    backwards: (reading, earlier) =>
      faults.note(
        'climate/time-backwards',
        reading.line,
        () => `${clock(reading.timeMs)} after ${clock(earlier.timeMs)}`,
      ),
    gap: (before, after) =>
      faults.note('climate/gap', after.line, () => `${inHours(after.timeMs - before.timeMs)} without a reading`),
  });

  return {
    take: (line, timeMs, temperatureC, humidityPercent) => {
      if (temperatureC < COLDEST_C || temperatureC > HOTTEST_C || humidityPercent < 0 || humidityPercent > 100) {
        return faults.note('climate/impossible', line, () => `${temperatureC} °C, ${humidityPercent} %`);
      }
      weighing.take({ line, timeMs, temperatureC, humidityPercent });
    },
    finish: () => {
      weighing.finish();
      stuckTemperature.finish();
      stuckHumidity.finish();
      if (readings === 0) return undefined;
      return {
        readings,
        fromMs,
        untilMs,
        usualStepMs: weighing.usualMs(),
        coveredHours: coveredMs / 3_600_000,
        storageYears: years.years(),
        lowC: celsius(lowC),
        meanC: celsius(sumC / coveredMs),
        highC: celsius(highC),
        lowPercent: percent(lowPercent),
        meanPercent: percent(sumPercent / coveredMs),
        highPercent: percent(highPercent),
        outsideOuter: outer.outside(),
        disputed: disputed.outside(),
        outsideMedium: medium.outside(),
        swings: swings.swings(),
        series: series.stretches(),
        stretchMs: series.stretchMs(),
      };
    },
    faults: faults.faults,
  };
}

const clock = (timeMs: number) => new Date(timeMs).toISOString().slice(0, 16).replace('T', ' ');
const inHours = (ms: number) => `${Number((ms / 3_600_000).toPrecision(3))} h`;
