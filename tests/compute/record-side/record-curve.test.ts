import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { AMENDMENT_1976_US, RECORD_TIME_CONSTANTS, recordReplayLevel } from '#compute/record-side/record-curve.ts';
import { hertz, type Microseconds, microseconds } from '#model/units.ts';
import { departures, numberOf, rows } from '../../tables/published.ts';

const three = (values: unknown) =>
  (values as number[]).map(microseconds) as unknown as [Microseconds, Microseconds, Microseconds];

describe('recordReplayLevel', () => {
  test.each(
    rows(
      'C-083',
      'C-084',
      'C-085',
      'C-086',
      'C-087',
      'C-088',
      'C-089',
      'C-090',
      'C-091',
      'C-318',
      'C-319',
      'C-320',
      'C-321',
      'C-322',
      'C-323',
      'C-324',
      'C-325',
      'C-326',
      'C-327',
      'C-328',
      'C-329',
      'C-330',
      'C-331',
      'C-332',
      'C-333',
      'C-334',
    ),
  )('$id at $inputs.frequency_Hz Hz ($source)', ({ inputs, expected, tolerance }) => {
    const level = recordReplayLevel(hertz(numberOf(inputs, 'frequency_Hz')));
    expect(departures(level, expected['value'], tolerance)).toEqual([]);
  });

  test.each(rows('C-335', 'C-336', 'C-337'))(
    '$id $title, only when it is asked for ($source)',
    ({ inputs, expected, tolerance }) => {
      const frequencyHz = hertz(numberOf(inputs, 'frequency_Hz'));
      expect(AMENDMENT_1976_US).toBe(inputs['extra_us']);
      const level = recordReplayLevel(frequencyHz, RECORD_TIME_CONSTANTS, { rumbleUs: AMENDMENT_1976_US });
      expect(departures(level, expected['value'], tolerance)).toEqual([]);
      expect(departures(recordReplayLevel(frequencyHz), expected['value'], tolerance)).not.toEqual([]);
    },
  );

  test.each(rows('C-338'))('$id $title ($source)', ({ inputs, expected, tolerance }) => {
    const at = (key: string) => recordReplayLevel(hertz(numberOf(inputs, key)));
    expect(departures(at('low_Hz') - at('high_Hz'), expected['range_dB'], tolerance)).toEqual([]);
  });

  test.each(rows('C-341', 'C-342', 'C-343', 'C-344'))('$id $title ($source)', ({ inputs, expected, tolerance }) => {
    const level = recordReplayLevel(
      hertz(numberOf(inputs, 'frequencyAtCutter_Hz')),
      three(inputs['timeConstants_us']),
      {
        referenceHz: hertz(numberOf(inputs, 'reference_Hz')),
      },
    );
    expect(departures(level, expected['value'], tolerance)).toEqual([]);
  });

  test('the doubled constants are the ordinary curve an octave down, at any frequency', () => {
    const doubled = three([6360, 636, 150]);
    fc.assert(
      fc.property(fc.double({ min: 10, max: 10_000, noNaN: true }), (f) => {
        const atCutter = recordReplayLevel(hertz(f), doubled, { referenceHz: hertz(500) });
        expect(atCutter).toBeCloseTo(recordReplayLevel(hertz(2 * f)), 9);
      }),
    );
  });
});
