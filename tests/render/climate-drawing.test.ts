import { describe, expect, test } from 'vitest';
import { summariseLog } from '#compute/climate/summarise-log.ts';
import { celsius, percent } from '#model/units.ts';
import { drawClimate } from '#render/drawings/climate.ts';

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;
const FIRST = Date.UTC(2025, 10, 1);
type Air = readonly [atMs: number, temperatureC: number, humidityPercent: number];

function drawn(readings: Iterable<Air>) {
  const log = summariseLog();
  let line = 1;
  for (const [at, t, h] of readings) {
    line += 1;
    log.take(line, FIRST + at, celsius(t), percent(h));
  }
  const sums = log.finish();
  if (sums === undefined) throw new Error('no reading');
  return drawClimate({ ...sums, faults: log.faults() }).map((trace) => ({ ...trace, svg: String(trace.drawing) }));
}

const labelOf = (svg: string | undefined) => /aria-label="([^"]*)"/.exec(svg ?? '')?.[1] ?? '';
const hours = (count: number, from = 0) =>
  Array.from(
    { length: count },
    (_, hour): Air => [(from + hour) * HOUR, 18 + 2 * Math.sin(hour / 4), 45 + 3 * Math.cos(hour / 5)],
  );

/** A year at a reading a minute that never rests. */
function* yearOfMinutes(): Generator<Air> {
  for (let minute = 0; minute < 525_600; minute += 1) {
    const day = Math.sin((minute / 1440) * 2 * Math.PI);
    yield [
      minute * MINUTE,
      18 - 9 * Math.cos((minute / 525_600) * 2 * Math.PI) + 5 * day + ((minute * 7919) % 100) / 50,
      50 + 20 * day + ((minute * 104_729) % 100) / 20,
    ];
  }
}

describe('the drawing of a log', () => {
  test('of a year of minutes is at most 40 kB, and reaches what the air reached', () => {
    const traces = drawn(yearOfMinutes());
    expect(Buffer.byteLength(traces.map(({ svg }) => svg).join(''))).toBeLessThanOrEqual(40_000);
    // By hand: 18 − 9 − 5 and 18 + 9 + 5 + 2, within what a day moves the year.
    const [, low, high] = /between ([\d.]+) and ([\d.]+) °C/.exec(labelOf(traces[0]?.svg)) ?? [];
    expect(Number(low)).toBeCloseTo(4, 0);
    expect(Math.abs(Number(high) - 34)).toBeLessThan(0.5);
    expect(traces[0]?.months.length).toBeLessThanOrEqual(12);
  });

  test('is temperature, humidity and dew point, each with its bounds in words', () => {
    const traces = drawn(hours(100));
    expect(traces.map(({ title }) => title)).toEqual(['Temperature, °C', 'Relative humidity, %', 'Dew point, °C']);
    expect(labelOf(traces[0]?.svg)).toContain('shaded: up to 23 °C; lines at 8 and 35 °C');
    expect(labelOf(traces[1]?.svg)).toContain('shaded: 20 to 50 %; lines at 25 and 60 %');
    expect(traces[2]?.svg).not.toContain('class="band"');
  });

  test('has no line where nothing was logged', () => {
    const lines = (svg: string | undefined) =>
      (/class="mean" d="([^"]*)"/.exec(svg ?? '')?.[1] ?? '').split('M').length - 1;
    expect(lines(drawn(hours(200))[0]?.svg)).toBe(1);
    // Three steps are no gap yet, as in the reading of the log.
    expect(lines(drawn([...hours(100), ...hours(100, 102)])[0]?.svg)).toBe(1);
    const [gap] = drawn([...hours(100), ...hours(100, 148)]);
    expect(lines(gap?.svg)).toBe(2);
    expect(labelOf(gap?.svg)).toContain('; 1 gap');
  });

  test('names months by their names, and no figure of the scale stands on another', () => {
    const [trace] = drawn(hours(24 * 100));
    // The log begins on 1 November: the next first days are those of December, January and February.
    expect(trace?.months.map(({ words }) => words)).toEqual(['Dec ’25', 'Jan ’26', 'Feb ’26']);
    const places = (trace?.scale ?? []).map(({ percent: at }) => at).sort((a, b) => a - b);
    expect(places.slice(1).every((at, index) => at - (places[index] ?? 0) >= 9)).toBe(true);
  });

  test('of one reading, of a steady room and of wholly dry air is a drawing too', () => {
    const steady = (humidity: number) => hours(60).map(([at]): Air => [at, 20, humidity]);
    const one: readonly Air[] = [[0, 20, 45]];
    for (const log of [one, steady(45), steady(0)]) {
      for (const { svg } of drawn(log)) expect(svg).not.toMatch(/NaN|Infinity|undefined/);
    }
    expect(labelOf(drawn(steady(0))[2]?.svg)).toBe('Dew point, °C: none, the air was wholly dry');
    // A line that has no length can't be seen.
    expect(drawn(one)[0]?.svg).toMatch(/class="mean" d="M0 \d+l1000 0"/);
  });
});
