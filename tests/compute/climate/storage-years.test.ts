import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { PRINTED_YEARS, storageYears } from '#compute/climate/storage-years.ts';
import { celsius, percent } from '#model/units.ts';
import { reckoned } from '../../given/reckoned.ts';
import { departures, numberOf, rows } from '../../tables/published.ts';

const years = (inputs: Readonly<Record<string, unknown>>) =>
  storageYears(celsius(numberOf(inputs, 'temperature_C')), percent(numberOf(inputs, 'humidity_percent')));
const printed = (inputs: Readonly<Record<string, unknown>>) =>
  PRINTED_YEARS.find(
    (row) => row.temperatureC === inputs['temperature_C'] && row.humidityPercent === inputs['humidity_percent'],
  );

describe('storageYears', () => {
  test.each(rows('C-107', 'C-108', 'C-109', 'C-110', 'C-111'))(
    '$id the printed wheel at $inputs is within its tolerance ($source)',
    ({ inputs, expected, tolerance }) => {
      expect(departures(years(inputs), expected['value'], tolerance)).toEqual([]);
      expect(printed(inputs)?.years).toBe(expected['value']);
    },
  );

  test.each(rows('C-362', 'C-363', 'C-364', 'C-365', 'C-366'))(
    '$id $title: both stand, neither is moved to the other ($source)',
    ({ inputs, expected, tolerance }) => {
      expect(years(inputs)).toBeCloseTo(numberOf(expected, 'formula_years'), 1);
      expect(printed(inputs)?.years).toBe(expected['table_years']);
      expect(departures(years(inputs), expected['table_years'], tolerance)).toEqual([]);
    },
  );

  test.each(rows('C-371'))('$id $title ($source)', async () => {
    const { json } = await reckoned('storage-years', ['--temperature', '20 °C', '--humidity', '50 %']);
    expect(String(json['mind'])).toContain('A measure of the room');
    expect(String(json['mind'])).toContain('fitted to acetate film. It is not how long a tape has');
  });

  test('its published name stands under its source and nowhere else', async () => {
    const { json } = await reckoned('storage-years', ['--temperature', '20 °C', '--humidity', '50 %']);
    const { source, ...rest } = json;
    expect(source).toContain('preservation index');
    expect(JSON.stringify(rest).toLowerCase()).not.toContain('preservation');
  });

  test('wholly dry air is refused: it has no measure', async () => {
    expect((await reckoned('storage-years', ['--temperature', '20 °C', '--humidity', '0 %'])).exit).toBe(2);
  });

  test('warmer is always less, and damper is always less', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -10, max: 40, noNaN: true }),
        fc.double({ min: 5, max: 90, noNaN: true }),
        (t, h) => {
          const here = storageYears(celsius(t), percent(h));
          expect(storageYears(celsius(t + 1), percent(h))).toBeLessThan(here);
          expect(storageYears(celsius(t), percent(h + 1))).toBeLessThan(here);
        },
      ),
    );
  });
});
