import { describe, expect, test } from 'vitest';
import { printThroughFrequency, worstWavelength } from '#compute/tape/print-through.ts';
import { inchesPerSecond, micrometres } from '#model/units.ts';
import { reckoned } from '../../given/reckoned.ts';
import { departures, row, rows } from '../../tables/published.ts';

const asked = ['--thickness', '52 µm', '--speed', '15 in/s'];

describe('print-through', () => {
  test('a wavelength of 2π layers is printed best, also where the wavelength is published', () => {
    for (const id of ['C-348', 'C-349']) {
      const { inputs, expected, tolerance } = row(id);
      const wavelengthMm = worstWavelength(micrometres(Number(inputs['thickness_um'])));
      expect(departures(wavelengthMm, expected['wavelength_mm'], tolerance)).toEqual([]);
    }
  });

  test.each(rows('C-350'))('$id $title: no figure in dB anywhere in the answer ($source)', async ({ expected }) => {
    expect(expected['level_dB']).toBe(null);
    const { json, text } = await reckoned('print-through-frequency', asked);
    expect(json['unit']).toBe('Hz');
    expect(text).not.toMatch(/-?\d+(\.\d+)? ?dB/);
    expect(text).toContain('No level follows');
  });

  test.each(rows('C-351'))('$id $title ($source)', async ({ expected }) => {
    expect(expected).toEqual({ preEcho: 'weaker', postEcho: 'stronger' });
    const { text } = await reckoned('print-through-frequency', asked);
    expect(text).toContain('tail out puts the stronger echo after the sound');
  });

  test('twice the speed is an octave up', () => {
    const at = (inPerS: number) => printThroughFrequency(micrometres(52), inchesPerSecond(inPerS));
    expect(at(30) / at(15)).toBeCloseTo(2, 12);
  });
});
