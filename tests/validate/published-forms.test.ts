import { describe, expect, test } from 'vitest';
import { asCentimetresPerSecond } from '#model/units.ts';
import { parseDuration } from '#validate/scalars/duration.ts';
import type { Parsed } from '#validate/scalars/parsed.ts';
import { parseSize } from '#validate/scalars/size.ts';
import { parseSpeed } from '#validate/scalars/speed.ts';
import { parseTemperature } from '#validate/scalars/temperature.ts';
import { parseThickness } from '#validate/scalars/thickness.ts';
import { departures, rows, textOf } from '../tables/published.ts';

function read<T>(result: Parsed<T>): T {
  if (!result.ok) throw new Error(result.message);
  return result.value;
}

describe('units as they are written', () => {
  test.each(rows('C-203'))('$id $title ($source)', ({ inputs, expected, tolerance }) => {
    const speed = asCentimetresPerSecond(read(parseSpeed(textOf(inputs, 'label'))));
    const answer = { speed_cm_per_s: speed, errorIfTakenAs38_percent: (speed / 38 - 1) * 100 };
    expect(departures(answer, expected, tolerance)).toEqual([]);
    expect(asCentimetresPerSecond(read(parseSpeed('76 cm/s')))).toBeCloseTo(76.2, 9);
  });
  test.each(rows('C-225'))('$id $title ($source)', ({ inputs, expected, tolerance }) => {
    expect(
      departures(read(parseThickness(`${inputs['value_mil']} mil`)).value, expected['value_um'], tolerance),
    ).toEqual([]);
  });
  test.each(rows('C-226', 'C-227', 'C-228', 'C-229', 'C-230'))(
    '$id $title ($source)',
    ({ inputs, expected, tolerance }) => {
      const speed = asCentimetresPerSecond(read(parseSpeed(textOf(inputs, 'speed'))));
      expect(departures(speed, expected['speed_cm_per_s'], tolerance)).toEqual([]);
    },
  );
  test.each(rows('C-231', 'C-232', 'C-233', 'C-234', 'C-235'))(
    '$id $title ($source)',
    ({ inputs, expected, tolerance }) => {
      expect(departures(read(parseSize(textOf(inputs, 'written'))).value, expected['value_mm'], tolerance)).toEqual([]);
    },
  );
  test('10½, 10 1/2 and 10.5 are one size', () => {
    const sizes = ['10½ in', '10 1/2 in', '10.5 in'].map((text) => read(parseSize(text)).value);
    expect(new Set(sizes).size).toBe(1);
  });
  test.each(rows('C-421', 'C-422', 'C-423', 'C-424', 'C-425', 'C-426'))(
    '$id $title ($source)',
    ({ inputs, expected, tolerance }) => {
      const read1 = read(parseTemperature(`${inputs['temperature_F']} °F`));
      expect(departures(read1, expected['temperature_C'], tolerance)).toEqual([]);
    },
  );
});

describe('durations as they are written', () => {
  test.each(rows('C-492', 'C-493', 'C-494', 'C-495', 'C-498'))('$id $title ($source)', ({ inputs, expected }) => {
    expect(read(parseDuration(textOf(inputs, 'text')))).toBe(expected['value_s']);
  });
  test.each(rows('C-497', 'C-499'))('$id $title is no duration ($source)', ({ inputs, expected }) => {
    expect(parseDuration(textOf(inputs, 'text')).ok).toBe(expected['valid']);
  });
  test.each(rows('C-496', 'C-500'))('$id $title is asked about ($source)', ({ inputs, expected }) => {
    const result = parseDuration(textOf(inputs, 'text'));
    if (result.ok) throw new Error('it was read');
    const said = `${result.message} ${result.expected} ${result.action}`;
    const [clock, minutes] = (expected['ask'] ?? expected['suggest']) as string[];
    expect(said).toContain(clock?.split(' ')[0]);
    for (const seconds of [clock, minutes].flatMap((text) => text?.match(/[\d.]+(?= s\))/) ?? []))
      expect(said).toContain(seconds);
  });
});
