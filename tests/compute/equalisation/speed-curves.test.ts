import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { allSpeedCurves, differenceOf, meaningsAt } from '#compute/equalisation/speed-curves.ts';
import { constantsInWords } from '#compute/equalisation/time-constants.ts';
import type { CurveMeaning } from '#model/curve-sheet.ts';
import { hertz, inchesPerSecond, microseconds } from '#model/units.ts';
import { catalogueOf } from '../../given/small-collection.ts';
import { PUBLISHED } from '../../tables/published.ts';

const speeds = allSpeedCurves();
const at = (inPerS: number) => {
  const found = speeds.find(({ speed }) => speed === inchesPerSecond(inPerS));
  if (found === undefined) throw new Error(`no curves at ${inPerS} in/s`);
  return found;
};

describe('the curves of a speed', () => {
  // C-037 to C-043: IASA-TC 04 (2nd ed. 2009) section 5.4.10.2, table 1.
  test.for([
    { inPerS: 30, curves: ['∞/17.5 µs', '∞/35 µs'] },
    { inPerS: 15, curves: ['∞/35 µs', '3180/50 µs'] },
    { inPerS: 7.5, curves: ['∞/50 µs', '∞/70 µs', '∞/100 µs', '3180/50 µs'] },
  ])('at $inPerS in/s are each there once, with the names that mean it', ({ inPerS, curves }) => {
    expect(at(inPerS).curves.map((curve) => curve.inWords)).toEqual(curves);
    for (const { names } of at(inPerS).curves) expect(names.length).toBeGreaterThan(0);
  });

  test('no standard defines AES below 30 in/s, nor NAB at it', () => {
    expect(at(30).undefinedNames).toEqual(['NAB']);
    expect(at(15).undefinedNames).toEqual(['AES']);
    expect(at(7.5).undefinedNames).toEqual(['AES']);
  });

  test('every curve is 0 dB at 1 kHz, and falls towards the treble', () => {
    for (const { curves } of speeds) {
      for (const { points } of curves) {
        const last = points.at(-1)?.levelDb ?? 0;
        expect(points[0]?.frequencyHz).toBeCloseTo(20, 9);
        expect(points.at(-1)?.frequencyHz).toBeCloseTo(20_000, 6);
        const near = points.toSorted((a, b) => Math.abs(a.frequencyHz - 1000) - Math.abs(b.frequencyHz - 1000))[0];
        expect(Math.abs(near?.levelDb ?? 1)).toBeLessThan(0.2);
        expect(last).toBeLessThan(-5);
      }
    }
  });
});

describe('the difference between two curves of a speed', () => {
  test('meets the published rows', () => {
    const [iec, nab] = at(15).curves;
    if (iec === undefined || nab === undefined) throw new Error('15 in/s has two curves');
    const { told } = differenceOf(nab, iec, inchesPerSecond(15));
    const rows = PUBLISHED.filter(
      ({ area, inputs }) =>
        area === 'replay difference' && inputs['recorded'] === '15 in/s NAB' && inputs['replayed'] === '15 in/s IEC',
    );
    const met = rows.filter(({ inputs, expected, tolerance }) => {
      const point = told.find(({ frequencyHz }) => frequencyHz === inputs['frequency_Hz']);
      if (point === undefined) return false;
      expect(Math.abs(point.levelDb - Number(expected['value']))).toBeLessThanOrEqual(Number(tolerance['abs']));
      return true;
    });
    // At 63 Hz, 4, 8 and 16 kHz; the others are asked of reckon.
    expect(met.length).toBe(4);
  });

  const times = fc.record({
    lowUs: fc.oneof(fc.constant(Number.POSITIVE_INFINITY), fc.double({ min: 1000, max: 10_000, noNaN: true })),
    highUs: fc.double({ min: 5, max: 250, noNaN: true }),
  });
  const meaning = ({ lowUs, highUs }: { lowUs: number; highUs: number }): CurveMeaning => {
    const constants = { lowUs: microseconds(lowUs), highUs: microseconds(highUs) };
    return { ...constants, inWords: constantsInWords(constants), names: [] };
  };

  test('is nothing against itself, and the same with the other sign the other way round', () => {
    fc.assert(
      fc.property(times, times, (a, b) => {
        const there = differenceOf(meaning(a), meaning(b), inchesPerSecond(15));
        const back = differenceOf(meaning(b), meaning(a), inchesPerSecond(15));
        for (const [index, { levelDb }] of there.points.entries())
          expect(levelDb).toBeCloseTo(-(back.points[index]?.levelDb ?? 0), 9);
        for (const { levelDb } of differenceOf(meaning(a), meaning(a), inchesPerSecond(15)).points)
          expect(levelDb).toBeCloseTo(0, 9);
        expect(there.told.find(({ frequencyHz }) => frequencyHz === hertz(1000))?.levelDb).toBeCloseTo(0, 9);
      }),
    );
  });
});

describe('what a tape sounds like on the wrong curve', () => {
  const reel = (speed: string, curve: string, on?: string) => ({
    'reels/a': `format: { speed: ${speed}, equalisation: ${curve} }${on === undefined ? '' : `\nrecorded: { on: "${on}" }`}`,
  });
  const wrongOf = async (entries: Readonly<Record<string, string>>) => {
    const { reels } = await catalogueOf(entries);
    const first = reels[0];
    return first?.wrongCurves;
  };

  test('is told of each other curve at its speed', async () => {
    const wrong = await wrongOf(reel('7.5 in/s', 'NAB'));
    expect(wrong?.isOpen).toBe(false);
    expect(wrong?.differences.map(({ replayed }) => replayed.inWords)).toEqual(['∞/50 µs', '∞/70 µs', '∞/100 µs']);
    expect(wrong?.place).toMatchObject({ file: 'reels/a.md' });
  });

  test('holds the meanings against each other where nobody recorded which it is', async () => {
    const wrong = await wrongOf(reel('30 in/s', 'IEC'));
    expect(wrong?.isOpen).toBe(true);
    expect(wrong?.differences.map(({ recorded, replayed }) => [recorded.inWords, replayed.inWords])).toEqual([
      ['∞/35 µs', '∞/17.5 µs'],
      ['∞/17.5 µs', '∞/35 µs'],
    ]);
  });

  test('goes by the year where that decides', async () => {
    const wrong = await wrongOf(reel('30 in/s', 'IEC', '1972'));
    expect(wrong?.differences.map(({ recorded, replayed }) => [recorded.inWords, replayed.inWords])).toEqual([
      ['∞/35 µs', '∞/17.5 µs'],
    ]);
  });

  test('is told of time constants written out, too', async () => {
    const wrong = await wrongOf(reel('15 in/s', '6360/100'));
    expect(wrong?.differences.map(({ recorded }) => recorded.inWords)).toEqual(['6360/100 µs', '6360/100 µs']);
  });

  test('says nothing of a name that no standard has at that speed, nor of a curve that isn’t recorded', async () => {
    expect(await wrongOf(reel('15 in/s', 'AES'))).toBeUndefined();
    expect(await wrongOf({ 'reels/a': 'format: { speed: 15 in/s }' })).toBeUndefined();
  });
});

test('a speed that no standard knows has no curves', () => expect(meaningsAt(inchesPerSecond(10))).toEqual([]));
