import { describe, expect, test } from 'vitest';
import { PRINTED_CAPACITIES, reelCapacity } from '#compute/tape/reel-capacity.ts';
import { asFeet, inches, micrometres } from '#model/units.ts';
import { departures, numberOf, rows } from '../../tables/published.ts';

describe('reelCapacity', () => {
  test.each(rows('C-031', 'C-032', 'C-033'))(
    '$id a $inputs.reel_in in reel ($source)',
    ({ inputs, expected, tolerance }) => {
      const reelMm = inches(numberOf(inputs, 'reel_in'));
      const { printed, surelyMm, atMostMm } = reelCapacity(reelMm, micrometres(52), 1);
      const box = printed.find((one) => one.nominalMil === inputs['nominal_thickness_mil']);
      expect(departures(asFeet(box?.lengthMm ?? inches(0)), expected['value'], tolerance)).toEqual([]);
      expect(box?.hubMm).toBeCloseTo(inches(numberOf(inputs, 'hub_in')), 9);
      // What boxes say lies inside the band that geometry and the hubs leave, within the maker's rounding.
      expect(surelyMm).toBeLessThan((box?.lengthMm ?? 0) * 1.01);
      expect(atMostMm).toBeGreaterThan(box?.lengthMm ?? Infinity);
    },
  );

  test('every printed capacity fits on its reel at the thickness that its name means', () => {
    const totalUm: Record<number, number> = { 1.5: 50, 1: 35, 0.75: 26 };
    for (const { reelMm, nominalMil, lengthMm } of PRINTED_CAPACITIES) {
      expect(reelCapacity(reelMm, micrometres(totalUm[nominalMil] ?? 0), 1).atMostMm).toBeGreaterThan(lengthMm);
    }
  });

  test('each row has a source, and no two speak of the same reel and tape', () => {
    expect(PRINTED_CAPACITIES.every((row) => row.source !== '')).toBe(true);
    expect(new Set(PRINTED_CAPACITIES.map((row) => `${row.reelMm} ${row.nominalMil}`)).size).toBe(
      PRINTED_CAPACITIES.length,
    );
  });
});
