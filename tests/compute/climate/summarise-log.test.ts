import { describe, expect, test } from 'vitest';
import { summariseLog } from '#compute/climate/summarise-log.ts';
import { celsius, percent } from '#model/units.ts';

const HOUR = 3_600_000;
type Air = readonly [atHours: number, temperatureC: number, humidityPercent: number];
const wavering = (hour: number): Air => [hour, 18 + (hour % 7) / 10, 40 + (hour % 5) / 10];

function faultsOf(readings: readonly Air[]) {
  const log = summariseLog();
  for (const [index, [at, t, h]] of readings.entries()) log.take(index + 2, at * HOUR, celsius(t), percent(h));
  const sums = log.finish();
  return { faults: log.faults().map(({ code, line, count }) => [code, line, count]), sums };
}
const hours = (count: number) => Array.from({ length: count }, (_, hour) => wavering(hour));

describe('damage in a log', () => {
  test('a sound log has none', () => expect(faultsOf(hours(400)).faults).toEqual([]));

  test('a time that comes twice is left out, and told once with its count', () => {
    const log = hours(100);
    const twice = [...log.slice(0, 50), [49, 30, 90] as Air, [49, 30, 90] as Air, ...log.slice(50)];
    const { faults, sums } = faultsOf(twice);
    expect(faults).toEqual([['climate/time-repeated', 52, 2]]);
    expect(sums?.highC).toBeLessThan(20);
  });

  test('the hour that comes twice when summer time ends goes backwards once, and its readings are kept', () => {
    const steps = (from: number, count: number) =>
      Array.from({ length: count }, (_, step): Air => [from + step / 6, 18 + (step % 7) / 10, 40 + (step % 5) / 10]);
    const { faults, sums } = faultsOf([...steps(0, 18), ...steps(2, 100)]);
    expect(faults).toEqual([['climate/time-backwards', 20, 1]]);
    expect(sums?.readings).toBe(118);
    expect(sums?.coveredHours).toBeCloseTo(118 / 6, 9);
  });

  test.each([
    [3, []],
    [4, [['climate/gap', 52, 1]]],
  ])('a step of %s hours in an hourly log', (step, expected) => {
    const log = [...hours(50), ...Array.from({ length: 50 }, (_, hour) => wavering(49 + step + hour))];
    expect(faultsOf(log).faults).toEqual(expected);
  });

  test.each([
    [47, 0],
    [48, 1],
  ])('%s hours of one and the same humidity', (lasts, count) => {
    const stuck = Array.from({ length: lasts }, (_, hour): Air => [100 + hour, 18 + (hour % 7) / 10, 39]);
    const after = Array.from({ length: 50 }, (_, hour) => wavering(100 + lasts + hour));
    const { faults } = faultsOf([...hours(100), ...stuck, ...after]);
    expect(faults).toEqual(count === 0 ? [] : [['climate/stuck', 102, 1]]);
  });

  test.each([
    [-40.1, 40],
    [80.1, 40],
    [20, -0.1],
    [20, 100.1],
  ])('%s °C and %s %% are no air, and are left out', (t, h) => {
    const { faults, sums } = faultsOf([...hours(20), [20, t, h], ...hours(60).slice(21)]);
    expect(faults).toEqual([['climate/impossible', 22, 1]]);
    expect(sums?.readings).toBe(59);
  });

  test.each([
    [-40, 40],
    [80, 40],
    [20, 0],
    [20, 100],
  ])('%s °C and %s %% are just possible', (t, h) => {
    expect(faultsOf([...hours(20), [20, t, h], ...hours(60).slice(21)]).faults).toEqual([]);
  });
});

describe('time outside the bounds', () => {
  test('is counted by time, by source, and where the two sources disagree by itself', () => {
    const log: Air[] = hours(100).map(([at, t, h]) => [at, at < 10 ? 36 : at < 30 ? 24 : t, at >= 90 ? 22 : h]);
    const { sums } = faultsOf(log);
    expect(sums?.outsideOuter.hours).toBe(10);
    expect(sums?.outsideMedium.hours).toBe(30);
    expect(sums?.disputed.hours).toBe(10);
    expect(sums?.outsideOuter.firstMs).toBe(0);
  });

  test('in the worst 365 days leaves out what is longer ago', () => {
    const day = 24;
    const hot = (from: number): Air[] =>
      Array.from({ length: 20 }, (_, hour) => [from + hour, 40, 40 + (hour % 5) / 10]);
    const first = [...hot(0), ...Array.from({ length: 364 * day - 20 }, (_, hour) => wavering(20 + hour))];
    const near = faultsOf([...first, ...hot(364 * day)]).sums;
    expect(near?.outsideOuter.hoursInWorstYear).toBe(40);
    const gap = [...first, ...Array.from({ length: day }, (_, hour) => wavering(364 * day + hour)), ...hot(365 * day)];
    const far = faultsOf(gap).sums;
    expect(far?.outsideOuter.hours).toBe(40);
    expect(far?.outsideOuter.hoursInWorstYear).toBe(20);
  });
});

describe('the series for a chart', () => {
  test('never holds more than a thousand stretches, and each reading once', () => {
    const log = summariseLog();
    for (let minute = 0; minute < 100_000; minute += 1) {
      log.take(minute + 2, minute * 60_000, celsius(18 + (minute % 7) / 10), percent(40 + (minute % 5) / 10));
    }
    const sums = log.finish();
    expect(sums?.series.length).toBeLessThanOrEqual(1000);
    expect(sums?.series.length).toBeGreaterThan(400);
    expect(sums?.series.reduce((total, stretch) => total + stretch.readings, 0)).toBe(100_000);
  });

  test('has least, mean and greatest of each stretch, in time order, with the dew point', () => {
    const { sums } = faultsOf(hours(48));
    const [first, second] = sums?.series ?? [];
    expect(first?.fromMs).toBe(0);
    expect(second?.fromMs).toBeGreaterThan(0);
    for (const stretch of sums?.series ?? []) {
      expect(stretch.lowC).toBeLessThanOrEqual(stretch.meanC);
      expect(stretch.meanC).toBeLessThanOrEqual(stretch.highC);
      expect(stretch.meanDewPointC).toBeLessThan(stretch.meanC);
    }
  });
});
