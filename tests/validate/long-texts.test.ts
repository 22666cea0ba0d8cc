import { describe, expect, test } from 'vitest';
import { nearestOf } from '#model/nearest.ts';
import { parsePartialDate } from '#validate/date.ts';
import { parseDuration } from '#validate/scalars/duration.ts';
import { parseEqualisation } from '#validate/scalars/equalisation.ts';
import { parseFileName } from '#validate/scalars/file-name.ts';
import { parseFrequency } from '#validate/scalars/frequency.ts';
import { parseId } from '#validate/scalars/id.ts';
import { parseLocalTime } from '#validate/scalars/local-time.ts';
import { parseMoney } from '#validate/scalars/money.ts';
import { parsePersonRef } from '#validate/scalars/person-ref.ts';
import { parseRegion } from '#validate/scalars/region.ts';
import { parseRpm } from '#validate/scalars/rpm.ts';
import { parseSize } from '#validate/scalars/size.ts';
import { parseSpeed } from '#validate/scalars/speed.ts';
import { parseTemperature } from '#validate/scalars/temperature.ts';
import { parseThickness } from '#validate/scalars/thickness.ts';
import { parseTimeConstant } from '#validate/scalars/time-constant.ts';
import { parseZone } from '#validate/scalars/zone.ts';

const LONG = 300_000;
const PARSERS = {
  parseDuration,
  parseEqualisation,
  parseFileName,
  parseFrequency,
  parseId,
  parseLocalTime,
  parseMoney,
  parsePartialDate,
  parsePersonRef,
  parseRegion,
  parseRpm,
  parseSize,
  parseSpeed,
  parseTemperature,
  parseThickness,
  parseTimeConstant,
  parseZone,
};

/** Good beginnings that never end: what a pattern with two ways through a text goes over again and again. */
const BEGINNINGS = [
  '1',
  ' ',
  '1 ',
  '1.',
  '1:',
  '1,',
  '1/',
  '1974-',
  '1974/',
  '[1974,',
  'X',
  '?',
  '½',
  '±',
  '1 mm ± ',
  'T.',
  'a-',
  '-',
  '+',
  '%2e',
  'xywh=percent:1,',
  '£1,',
  'é',
];

describe('a text of 300,000 characters', () => {
  test.each(Object.entries(PARSERS))('%s takes no longer than its length allows', (_, parse) => {
    for (const beginning of BEGINNINGS) {
      const text = beginning.repeat(LONG / beginning.length);
      const started = performance.now();
      parse(text);
      parse(`${text}!`);
      // Linear takes milliseconds; the square of it would take minutes.
      expect(performance.now() - started, beginning).toBeLessThan(2000);
    }
  });
});

describe('the nearest of ten thousand names', () => {
  const names = Array.from({ length: 10_000 }, (_, i) => `set-${String(i).padStart(5, '0')}-side-1`);
  test.each([
    ['set-04711-sied-1', 'set-04711-side-1'],
    ['set-04711-side-', 'set-04711-side-1'],
    ['SET 04711 side 1', 'set-04711-side-1'],
    ['something else by far', undefined],
    ['x'.repeat(100_000), undefined],
  ])('%.20s is %s', (text, near) => expect(nearestOf(text, names)).toBe(near));
  test('of two as near the first by code unit is named', () => expect(nearestOf('b', ['c', 'a'])).toBe('a'));
  test.each([
    ['statsu', 'status'],
    ['sped', 'speed'],
    ['copy_log', 'copy-log'],
    ['titel', 'title'],
  ])('%s is %s', (slip, key) =>
    expect(nearestOf(slip, ['side', 'level', 'status', 'speed', 'copy-log', 'title', 'set'])).toBe(key),
  );
});
