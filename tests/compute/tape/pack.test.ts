import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lengthPerRadius, packDiameter, packLength } from '#compute/tape/pack.ts';
import { playingTime } from '#compute/tape/playing-time.ts';
import { workedPackLength } from '#compute/tape/worked-tape.ts';
import { inchesPerSecond, micrometres, millimetres } from '#model/units.ts';
import { departures, numberOf, row, rows } from '../../tables/published.ts';

const given = <Q extends number>(name: string, value: Q, plusMinus?: number) => ({
  name,
  value,
  written: String(value),
  basis: 'measured' as const,
  ...(plusMinus === undefined ? {} : { plusMinus }),
});
const pack = fc
  .record({
    hubMm: fc.double({ min: 20, max: 120, noNaN: true }),
    widerMm: fc.double({ min: 0.5, max: 260, noNaN: true }),
    thicknessUm: fc.double({ min: 10, max: 60, noNaN: true }),
  })
  .map(({ hubMm, widerMm, thicknessUm }) => ({
    hubMm: millimetres(hubMm),
    outsideMm: millimetres(hubMm + widerMm),
    thicknessUm: micrometres(thicknessUm),
  }));

describe('packLength', () => {
  test.each(rows('C-034'))('$id a millimetre of diameter is 7.6 m ($source)', ({ inputs, expected, tolerance }) => {
    const worked = workedPackLength(
      given(
        'outside-diameter',
        millimetres(numberOf(inputs, 'outside_diameter_mm')),
        numberOf(inputs, 'diameter_error_mm'),
      ),
      given('hub-diameter', millimetres(numberOf(inputs, 'hub_diameter_mm')), 0),
      given('thickness', micrometres(numberOf(inputs, 'thickness_um')), 0),
    );
    const { value, low = 0, high = 0 } = worked;
    expect(departures(high - value, expected['value'], tolerance)).toEqual([]);
    expect(departures(value - low, expected['value'], tolerance)).toEqual([]);
  });

  test.each(rows('C-215', 'C-216'))(
    '$id the band of a radius, $inputs ($source)',
    ({ inputs, expected, tolerance }) => {
      const [outsideMm, hubMm] = [numberOf(inputs, 'outsideDiameter_mm'), numberOf(inputs, 'hubDiameter_mm')];
      const thicknessUm = micrometres(numberOf(inputs, 'thickness_um'));
      // A millimetre of radius is two of diameter: the trap is to take one for the other.
      const error = 2 * numberOf(inputs, 'radiusError_mm');
      const worked = workedPackLength(
        given('outside-diameter', millimetres(outsideMm), error),
        given('hub-diameter', millimetres(hubMm), 0),
        given('thickness', thicknessUm, 0),
      );
      const { value, low = 0, high = 0 } = worked;
      const at15 = (metres: number) => playingTime(millimetres(metres * 1000), inchesPerSecond(15));
      const answer = {
        low_m: low,
        value_m: value,
        high_m: high,
        perMillimetreOfRadius_m: lengthPerRadius(millimetres(outsideMm), thicknessUm) / 1000,
        lowAt15ips_s: at15(value - low),
        highAt15ips_s: at15(high - value),
      };
      expect(departures(answer, expected, tolerance)).toEqual([]);
    },
  );

  test.each(rows('C-217'))(
    '$id the band of a thickness: thicker tape, less of it ($source)',
    ({ inputs, expected, tolerance }) => {
      const worked = workedPackLength(
        given('outside-diameter', millimetres(numberOf(inputs, 'outsideDiameter_mm')), 0),
        given('hub-diameter', millimetres(numberOf(inputs, 'hubDiameter_mm')), 0),
        given('thickness', micrometres(numberOf(inputs, 'thickness_um')), numberOf(inputs, 'thicknessError_um')),
      );
      const answer = { low_m: worked.low, value_m: worked.value, high_m: worked.high };
      expect(departures(answer, expected, tolerance)).toEqual([]);
    },
  );

  test('taking the base for the whole tape reads 36 % long', () => {
    const [outsideMm, hubMm] = [millimetres(260), millimetres(100)];
    const asBase = packLength(outsideMm, hubMm, micrometres(38.1));
    expect(asBase / packLength(outsideMm, hubMm, micrometres(52))).toBeCloseTo(52 / 38.1, 9);
  });

  test('an error that nobody wrote is supplied, and said to be', () => {
    const worked = workedPackLength(
      given('outside-diameter', millimetres(260)),
      given('hub-diameter', millimetres(100)),
      given('thickness', micrometres(52)),
    );
    expect(worked.inputs.filter((input) => input.basis === 'assumed').map((input) => input.written)).toEqual([
      '± 1 mm',
      '± 1 mm',
      '± 1 µm',
    ]);
    expect(worked.basis).toBe('worked');
    expect(worked.low).toBeLessThan(worked.value);
  });

  test('a pack no wider than its hub holds nothing', () => {
    expect(packLength(millimetres(100), millimetres(100), micrometres(52))).toBe(0);
    expect(packLength(millimetres(90), millimetres(100), micrometres(52))).toBe(0);
  });

  test('its length gives its diameter back', () => {
    fc.assert(
      fc.property(pack, ({ outsideMm, hubMm, thicknessUm }) => {
        const back = packDiameter(packLength(outsideMm, hubMm, thicknessUm), hubMm, thicknessUm);
        expect(Math.abs(back - outsideMm)).toBeLessThan(1e-6 * outsideMm);
      }),
    );
  });

  test('thicker tape is always less tape, and a wider pack always more', () => {
    fc.assert(
      fc.property(pack, fc.double({ min: 0.01, max: 20, noNaN: true }), ({ outsideMm, hubMm, thicknessUm }, more) => {
        const lengthMm = packLength(outsideMm, hubMm, thicknessUm);
        expect(packLength(outsideMm, hubMm, micrometres(thicknessUm + more))).toBeLessThan(lengthMm);
        expect(packLength(millimetres(outsideMm + more), hubMm, thicknessUm)).toBeGreaterThan(lengthMm);
      }),
    );
  });

  test('the band holds the figure, and is wider for a worse rule', () => {
    fc.assert(
      fc.property(pack, fc.double({ min: 0.01, max: 2, noNaN: true }), ({ outsideMm, hubMm, thicknessUm }, error) => {
        const band = (plusMinus: number) =>
          workedPackLength(
            given('outside-diameter', outsideMm, plusMinus),
            given('hub-diameter', hubMm, plusMinus),
            given('thickness', thicknessUm, 0.5),
          );
        const [fine, coarse] = [band(error), band(error * 2)];
        expect(fine.low).toBeLessThanOrEqual(fine.value);
        expect(fine.high).toBeGreaterThanOrEqual(fine.value);
        expect((coarse.high ?? 0) - (coarse.low ?? 0)).toBeGreaterThan((fine.high ?? 0) - (fine.low ?? 0));
      }),
    );
  });

  test('1 mm of radius is twice 1 mm of diameter, from the published row itself', () => {
    const perRadius = numberOf(row('C-215').expected, 'perMillimetreOfRadius_m');
    const half = packLength(millimetres(260.5), millimetres(100), micrometres(52));
    const less = packLength(millimetres(259.5), millimetres(100), micrometres(52));
    expect((half - less) / 1000).toBeCloseTo(perRadius / 2, 2);
  });
});
