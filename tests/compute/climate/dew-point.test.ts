import { createRequire } from 'node:module';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { condensesOn, dewPoint } from '#compute/climate/dew-point.ts';
import { celsius, percent } from '#model/units.ts';
import { departures, numberOf, rows } from '../../tables/published.ts';

interface Psychrometrics {
  readonly SI: number;
  SetUnitSystem(system: number): void;
  GetTDewPointFromRelHum(celsius: number, part: number): number;
}
const psychrolib = createRequire(import.meta.url)('psychrolib') as Psychrometrics;
psychrolib.SetUnitSystem(psychrolib.SI);

/** Hundredths: fc.double would look at the ends of the range and little else. */
const hundredths = (from: number, to: number) =>
  fc.integer({ min: from * 100, max: to * 100 }).map((count) => count / 100);
const air = fc.tuple(hundredths(0, 40), hundredths(5, 100));

describe('dewPoint', () => {
  test.each(rows('C-359'))('$id $title ($source)', ({ inputs, expected, tolerance }) => {
    const [roomC, humidity] = [numberOf(inputs, 'room_temperature_C'), numberOf(inputs, 'room_humidity_percent')];
    const point = dewPoint(celsius(roomC), percent(humidity));
    expect(departures(point, expected['dewPoint_C'], tolerance)).toEqual([]);
    expect(condensesOn(celsius(numberOf(inputs, 'tape_C')), celsius(roomC), percent(humidity))).toBe(
      expected['condenses'],
    );
    expect(condensesOn(celsius(14), celsius(roomC), percent(humidity))).toBe(false);
  });

  test('a psychrometrics library agrees within 0.05 K wherever the dew point is above freezing', () => {
    let compared = 0;
    fc.assert(
      fc.property(air, ([temperatureC, humidity]) => {
        const ours = dewPoint(celsius(temperatureC), percent(humidity));
        // Below freezing the library gives the frost point, which is another thing.
        if (ours < 0.01) return;
        compared += 1;
        const theirs = psychrolib.GetTDewPointFromRelHum(temperatureC, humidity / 100);
        expect(Math.abs(ours - theirs)).toBeLessThanOrEqual(0.05);
      }),
      { numRuns: 2000 },
    );
    expect(compared).toBeGreaterThan(500);
  });

  test('below freezing ours is lower, being over water and not over ice', () => {
    const ours = dewPoint(celsius(8), percent(20));
    expect(ours).toBeLessThan(psychrolib.GetTDewPointFromRelHum(8, 0.2));
  });

  test('it is never above the temperature, is the temperature at 100 %, and rises with humidity', () => {
    fc.assert(
      fc.property(air, ([temperatureC, humidity]) => {
        const point = dewPoint(celsius(temperatureC), percent(humidity));
        expect(point).toBeLessThanOrEqual(temperatureC + 1e-9);
        expect(dewPoint(celsius(temperatureC), percent(100))).toBeCloseTo(temperatureC, 9);
        expect(dewPoint(celsius(temperatureC), percent(humidity * 0.9))).toBeLessThan(point);
      }),
    );
  });
});
