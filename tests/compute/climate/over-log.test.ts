import { describe, expect, test } from 'vitest';
import { storageYears } from '#compute/climate/storage-years.ts';
import { yearsOverTime } from '#compute/climate/storage-years-over-log.ts';
import { summariseLog } from '#compute/climate/summarise-log.ts';
import { celsius, percent } from '#model/units.ts';
import { departures, numberOf, row, rows } from '../../tables/published.ts';

const HOUR = 3_600_000;
interface Part {
  readonly weight: number;
  readonly temperature_C: number;
  readonly humidity_percent: number;
}
type Air = readonly [atHours: number, temperatureC: number, humidityPercent: number];

function summed(readings: readonly Air[]) {
  const log = summariseLog();
  for (const [index, [at, t, h]] of readings.entries()) log.take(index + 2, at * HOUR, celsius(t), percent(h));
  const sums = log.finish();
  if (sums === undefined) throw new Error('no readings');
  return { ...sums, faults: log.faults() };
}

const hourly = (parts: readonly Part[]): Air[] => {
  const airs = parts.flatMap((part) => Array.from({ length: part.weight }, () => part));
  return airs.map((part, hour) => [hour, part.temperature_C, part.humidity_percent]);
};

describe('the years of a log', () => {
  test.each(rows('C-112', 'C-113', 'C-367', 'C-368'))(
    '$id $inputs.parts, as weights and as a log ($source)',
    ({ inputs, expected, tolerance }) => {
      const parts = inputs['parts'] as Part[];
      const weighed = yearsOverTime();
      for (const part of parts) weighed.add(celsius(part.temperature_C), percent(part.humidity_percent), part.weight);
      expect(departures(weighed.years(), expected['value'], tolerance)).toEqual([]);
      expect(departures(summed(hourly(parts)).storageYears, expected['value'], tolerance)).toEqual([]);
    },
  );

  test.each(rows('C-369'))('$id $title ($source)', ({ expected, tolerance }) => {
    const [good, hot] = [storageYears(celsius(20), percent(50)), storageYears(celsius(25), percent(60))];
    const { storageYears: ours } = summed([
      [0, 20, 50],
      [1, 25, 60],
    ]);
    expect(departures(ours, expected['twpi_years'], tolerance)).toEqual([]);
    expect(departures((good + hot) / 2, expected['wrongMeanOfPI_years'], tolerance)).toEqual([]);
    const ofMeans = storageYears(celsius(22.5), percent(55));
    expect(departures(ofMeans, expected['wrongPIofMeans_years'], tolerance)).toEqual([]);
    expect(ours).toBeLessThan(Math.min((good + hot) / 2, ofMeans));
  });

  test.each(rows('C-370'))('$id $title: a gap counts for nothing ($source)', () => {
    const steady: Air[] = Array.from({ length: 24 }, (_, hour) => [hour, 20, 50]);
    const { storageYears: years, coveredHours, faults } = summed([...steady, [23 + 240, 30, 70]]);
    const byTime = yearsOverTime();
    byTime.add(celsius(20), percent(50), 24);
    byTime.add(celsius(30), percent(70), 1);
    expect(years).toBeCloseTo(byTime.years(), 9);
    expect(coveredHours).toBe(25);
    expect(faults.map((fault) => [fault.code, fault.line, fault.count])).toEqual([['climate/gap', 26, 1]]);
  });

  test('a logger that wakes more often in the heat doesn’t count the heat twice', () => {
    const cool: Air[] = Array.from({ length: 48 }, (_, hour) => [hour, 18, 40]);
    const hot: Air[] = Array.from({ length: 24 * 6 }, (_, step) => [48 + step / 6, 28, 65]);
    const back: Air[] = [[72, 18, 40]];
    const byTime = yearsOverTime();
    byTime.add(celsius(18), percent(40), 49);
    byTime.add(celsius(28), percent(65), 24);
    // The last reading stands for the usual step, which by then is ten minutes.
    expect(Math.abs(summed([...cool, ...hot, ...back]).storageYears / byTime.years() - 1)).toBeLessThan(0.02);
  });

  test('a logger set from ten minutes to an hour makes no gaps, and each of its hours counts', () => {
    const fast: Air[] = Array.from({ length: 6 * 48 }, (_, step) => [step / 6, 20, 50]);
    const slow: Air[] = Array.from({ length: 48 }, (_, hour) => [48 + hour, 25, 60]);
    const { storageYears: years, faults, coveredHours } = summed([...fast, ...slow]);
    expect(faults.filter((fault) => fault.code === 'climate/gap')).toEqual([]);
    expect(coveredHours).toBeCloseTo(96, 0);
    expect(departures(years, numberOf(row('C-369').expected, 'twpi_years'), { rel: 0.005 })).toEqual([]);
  });

  test('a log written newest first gives the same figures', () => {
    const log: Air[] = [
      ...Array.from({ length: 30 }, (_, hour): Air => [hour, 20 + hour / 10, 45]),
      [40, 30, 60],
      [41, 21, 45],
    ];
    const { faults: _faults, ...forwards } = summed(log);
    const { faults: _others, ...backwards } = summed([...log].reverse());
    expect(backwards.storageYears).toBeCloseTo(forwards.storageYears, 9);
    expect(backwards.coveredHours).toBeCloseTo(forwards.coveredHours, 9);
  });

  test('one reading is a log', () => {
    expect(summed([[0, 20, 45]]).storageYears).toBeCloseTo(storageYears(celsius(20), percent(45)), 9);
  });

  test('no reading is none', () => expect(summariseLog().finish()).toBe(undefined));
});
