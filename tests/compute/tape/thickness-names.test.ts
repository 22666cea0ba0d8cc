import { describe, expect, test } from 'vitest';
import { readingsOfMil, THICKNESS_NAMES } from '#compute/tape/thickness-names.ts';
import { asFeet, millimetres } from '#model/units.ts';
import { parseThickness } from '#validate/scalars/thickness.ts';
import { departures, numberOf, rows } from '../../tables/published.ts';

/** `50–52` or 35, as the least and the most. */
const band = (written: unknown) => {
  const [least, most] = String(written).split('–').map(Number);
  return [least, most ?? least];
};

describe('the names of tapes', () => {
  test.each(rows('C-219', 'C-220', 'C-221', 'C-222'))('$id $title ($source)', ({ inputs, expected, tolerance }) => {
    const name = THICKNESS_NAMES.find((one) => String(inputs['name']).startsWith(one.name));
    expect(departures(name?.baseUm, expected['base_um'], tolerance)).toEqual([]);
    expect(name?.totalUm).toEqual(band(expected['total_um']));
    expect(Math.round(asFeet(name?.onSevenInchReelMm ?? millimetres(0)))).toBe(numberOf(expected, 'feetOn7inReel'));
  });

  test.each(rows('C-223'))('$id $title ($source)', ({ expected, tolerance }) => {
    const [reading, ...others] = readingsOfMil(1.5);
    expect(others).toEqual([]);
    expect(departures(reading?.baseUm, expected['base_um'], tolerance)).toEqual([]);
    expect(reading?.totalUm).toEqual(band(expected['total_um']));
  });

  test.each(rows('C-224'))('$id $title, and the question names the totals ($source)', ({ inputs }) => {
    const readings = readingsOfMil(0.5);
    expect(readings.map((reading) => [reading.baseUm, ...reading.totalUm])).toEqual([
      [12.7, 18, 18],
      [undefined, 12.7, 12.7],
      [undefined, 25, 26],
    ]);
    const asked = parseThickness(String(inputs['written']));
    expect(asked.ok).toBe(false);
    const said = asked.ok ? '' : `${asked.message} ${asked.expected} ${asked.action}`;
    for (const total of ['18 µm', '12.7 µm', '25 to 26 µm']) expect(said).toContain(total);
  });

  test('a mil that names no tape has no readings', () => expect(readingsOfMil(2.3)).toEqual([]));
});
