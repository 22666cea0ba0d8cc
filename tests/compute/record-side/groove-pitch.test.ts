import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { groovePitch, grooves, linesPerInch } from '#compute/record-side/groove-pitch.ts';
import { asInches, millimetres, revolutionsPerMinute, seconds } from '#model/units.ts';

const side = fc.tuple(
  fc.double({ min: 60, max: 2400, noNaN: true }).map(seconds),
  fc.double({ min: 20, max: 90, noNaN: true }).map(millimetres),
  fc.constantFrom(100 / 3, 45, 78).map(revolutionsPerMinute),
);

describe('grooves', () => {
  test('half speed changes neither grooves nor pitch', () => {
    fc.assert(
      fc.property(side, ([lasts, widthMm, rpm]) => {
        const [slow, half] = [seconds(lasts * 2), revolutionsPerMinute(rpm / 2)];
        expect(grooves(slow, half)).toBeCloseTo(grooves(lasts, rpm), 9);
        expect(groovePitch(slow, widthMm, half)).toBeCloseTo(groovePitch(lasts, widthMm, rpm), 12);
      }),
    );
  });

  test('pitch and lines per inch are each other’s inverse', () => {
    fc.assert(
      fc.property(side, ([lasts, widthMm, rpm]) => {
        expect(linesPerInch(lasts, widthMm, rpm) * asInches(groovePitch(lasts, widthMm, rpm))).toBeCloseTo(1, 9);
      }),
    );
  });
});
