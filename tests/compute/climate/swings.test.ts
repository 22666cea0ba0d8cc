import { describe, expect, test } from 'vitest';
import { swingsOf } from '#compute/climate/swings.ts';
import { celsius, percent } from '#model/units.ts';

const HOUR = 3_600_000;
/** Midnight, UTC. */
const FIRST = Date.UTC(2026, 0, 1);

type Air = readonly [temperatureC: number, humidityPercent: number];

/** Readings an hour apart, each standing for its hour. */
function swings(air: (hour: number) => Air | undefined, hours: number) {
  const sums = swingsOf();
  for (let hour = 0; hour < hours; hour += 1) {
    const at = air(hour);
    if (at === undefined) continue;
    const [t, h] = at;
    sums.take(
      { line: hour + 2, timeMs: FIRST + hour * HOUR, temperatureC: celsius(t), humidityPercent: percent(h) },
      HOUR,
    );
  }
  return sums.swings();
}

describe('how far the air goes up and down', () => {
  test('within a day: the greatest less the least, on average and on the worst day', () => {
    // By hand: 18 to 20 °C and 40 to 44 % on the first day, 18 to 24 °C and 40 to 50 % on the second.
    const sums = swings((hour) => (hour % 24 < 12 ? [18, 40] : hour < 24 ? [20, 44] : [24, 50]), 48);
    expect(sums).toMatchObject({ days: 2, dailyC: 4, worstDailyC: 6, dailyPercent: 7, worstDailyPercent: 10 });
  });

  test('a steady room has none', () => {
    expect(swings(() => [19, 45], 24 * 40)).toMatchObject({
      days: 40,
      dailyC: 0,
      worstDailyC: 0,
      dailyPercent: 0,
      worstDailyPercent: 0,
      seasonalC: 0,
      seasonalPercent: 0,
    });
  });

  test('between months: the warmest month’s mean less the coldest’s, whatever a single day did', () => {
    // By hand: January at 10 °C and 50 % but for one hour, February at 16 °C and 42 %.
    const sums = swings((hour) => (hour === 5 ? [10 + 744, 50] : hour < 31 * 24 ? [10, 50] : [16, 42]), (31 + 28) * 24);
    expect(sums.months).toBe(2);
    // The one hour lifts January's mean by a degree: 744 °C over its 744 hours.
    expect(sums.seasonalC).toBeCloseTo(5, 9);
    expect(sums.seasonalPercent).toBeCloseTo(8, 9);
  });

  test('a mean is by time and not by reading', () => {
    const sums = swingsOf();
    const take = (day: number, hour: number, t: number, standsForMs: number) =>
      sums.take(
        {
          line: 2,
          timeMs: FIRST + (day * 24 + hour) * HOUR,
          temperatureC: celsius(t),
          humidityPercent: percent(45),
        },
        standsForMs,
      );
    for (let day = 0; day < 31; day += 1) {
      // 20 hours at 10 °C in one reading, 4 hours at 40 °C in four.
      take(day, 0, 10, 20 * HOUR);
      for (let hour = 20; hour < 24; hour += 1) take(day, hour, 40, HOUR);
    }
    for (let day = 31; day < 59; day += 1) take(day, 0, 10, 24 * HOUR);
    // By hand: (20·10 + 4·40)/24 = 15 °C in January, 10 °C in February.
    expect(sums.swings().seasonalC).toBeCloseTo(5, 9);
  });

  test('a day of which less than 18 hours were logged says nothing, and a month of less than 20 days', () => {
    const most = swings((hour) => (hour < 18 ? [hour, 40] : undefined), 24);
    expect(most).toMatchObject({ days: 1, dailyC: 17 });
    const half = swings((hour) => (hour < 17 ? [hour, 40] : undefined), 24);
    expect(half).toMatchObject({ days: 0, dailyC: 0, worstDailyC: 0 });
    expect(swings((hour) => [hour < 31 * 24 ? 10 : 20, 45], (31 + 19) * 24).months).toBe(1);
    expect(swings((hour) => [hour < 31 * 24 ? 10 : 20, 45], (31 + 20) * 24).months).toBe(2);
  });

  test('nothing logged is nothing, and no infinity', () => {
    expect(Object.values(swingsOf().swings()).every((figure) => figure === 0)).toBe(true);
  });
});
