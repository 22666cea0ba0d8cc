import { describe, expect, test } from 'vitest';
import { HEAD_FITS, headFit } from '#compute/playback/head-fit.ts';
import { DIRECTIONS, TRACK_FORMATS } from '#model/words.ts';

describe('the table of heads', () => {
  test('has one row for each pair and direction, and a source on each', () => {
    const keys = HEAD_FITS.map(({ recorded, direction, head }) => `${recorded} ${direction ?? 'any'} ${head}`);
    expect(new Set(keys).size).toBe(keys.length);
    expect(HEAD_FITS.filter((row) => row.source === '')).toEqual([]);
  });

  test('answers for every format, direction and head but “other”', () => {
    const formats = TRACK_FORMATS.filter((format) => format !== 'other');
    for (const recorded of formats) {
      for (const head of formats) {
        for (const direction of DIRECTIONS)
          expect(headFit(recorded, direction, head), `${recorded}, ${head}`).toBeDefined();
      }
    }
    expect(headFit('other', 'one', 'two-track stereo')).toBeUndefined();
  });
});
