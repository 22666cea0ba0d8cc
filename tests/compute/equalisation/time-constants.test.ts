import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  differenceCurve,
  octaveSteps,
  replayDifference,
  worstDifference,
} from '#compute/equalisation/replay-difference.ts';
import { STANDARDS } from '#compute/equalisation/standards.ts';
import { constantsAtSpeed, fluxLevel, timeConstants } from '#compute/equalisation/time-constants.ts';
import { transitionFrequency } from '#compute/equalisation/transition-frequency.ts';
import { hertz, inchesPerSecond, microseconds } from '#model/units.ts';
import { departures, numberOf, rows } from '../../tables/published.ts';

const time = (value: unknown) => (value === 'infinite' ? Infinity : Number(value));
const standard = fc.constantFrom(...STANDARDS);
const frequency = fc.double({ min: 20, max: 20_000, noNaN: true }).map(hertz);

describe('fluxLevel', () => {
  test.each(rows('C-249', 'C-250', 'C-251', 'C-252'))('$id $title ($source)', ({ inputs, expected, tolerance }) => {
    const curve = timeConstants(time(inputs['t1_us']), time(inputs['t2_us']));
    const level = fluxLevel(curve, hertz(numberOf(inputs, 'frequency_Hz')));
    expect(departures(level, expected['value'], tolerance)).toEqual([]);
  });

  test('an infinite time constant drops the bass, even at 20 Hz and below', () => {
    for (const f of [0.001, 1, 20]) {
      const level = fluxLevel(timeConstants(Infinity, 35), hertz(f));
      expect(Number.isFinite(level)).toBe(true);
      expect(Math.abs(level)).toBeLessThan(0.001);
    }
  });

  test('an infinite one is what ever longer ones come near to', () => {
    const endless = fluxLevel(timeConstants(Infinity, 50), hertz(20));
    expect(fluxLevel(timeConstants(1e9, 50), hertz(20))).toBeCloseTo(endless, 6);
  });
});

describe('constantsAtSpeed', () => {
  test.each(rows('C-271', 'C-272', 'C-273', 'C-274', 'C-275', 'C-276'))(
    '$id $title ($source)',
    ({ inputs, expected, tolerance }) => {
      const ratio = numberOf(inputs, 'recordedSpeedOverReplaySpeed');
      const scaled = constantsAtSpeed(
        timeConstants(time(inputs['t1_us']), time(inputs['t2_us'])),
        inchesPerSecond(15 * ratio),
        inchesPerSecond(15),
      );
      const answer = { t1_us: scaled.lowUs === Infinity ? 'infinite' : scaled.lowUs, t2_us: scaled.highUs };
      expect(departures(answer, expected, tolerance)).toEqual([]);
    },
  );

  test('there and back is the curve again', () => {
    fc.assert(
      fc.property(standard, fc.constantFrom(0.5, 2, 4), (curve, ratio) => {
        const other = inchesPerSecond(15 * ratio);
        const back = constantsAtSpeed(constantsAtSpeed(curve, inchesPerSecond(15), other), other, inchesPerSecond(15));
        expect(back).toEqual({ lowUs: curve.lowUs, highUs: curve.highUs });
      }),
    );
  });
});

describe('replayDifference', () => {
  test('a NAB tape at 15 in/s on IEC has its bass raised and its treble lowered', () => {
    const nab = { ...timeConstants(3180, 50), speedMmPerS: inchesPerSecond(15) };
    const iec = { ...timeConstants(Infinity, 35), speedMmPerS: inchesPerSecond(15) };
    expect(replayDifference(nab, iec, hertz(63))).toBeGreaterThan(2);
    expect(replayDifference(nab, iec, hertz(16_000))).toBeLessThan(-2);
  });

  test('at 7½ in/s the treble goes the other way', () => {
    const nab = { ...timeConstants(3180, 50), speedMmPerS: inchesPerSecond(7.5) };
    const iec = { ...timeConstants(Infinity, 70), speedMmPerS: inchesPerSecond(7.5) };
    expect(replayDifference(nab, iec, hertz(16_000))).toBeGreaterThan(2);
  });

  test('the frequency is the one heard: half speed brings the treble an octave down', () => {
    const fast = { ...timeConstants(Infinity, 17.5), speedMmPerS: inchesPerSecond(30) };
    const wrong = { ...timeConstants(Infinity, 70), speedMmPerS: inchesPerSecond(15) };
    const full = { ...timeConstants(Infinity, 35), speedMmPerS: inchesPerSecond(30) };
    const heard =
      replayDifference(fast, wrong, hertz(5000)) + fluxLevel(wrong, hertz(5000)) - fluxLevel(wrong, hertz(1000));
    const onTape = fluxLevel(fast, hertz(10_000)) - fluxLevel(fast, hertz(2000));
    expect(heard).toBeCloseTo(onTape, 9);
    expect(full.highUs).toBe(35);
  });

  test('it is nothing at 1 kHz, nothing against itself, and the other way round the negative', () => {
    fc.assert(
      fc.property(standard, standard, frequency, (a, b, f) => {
        expect(replayDifference(a, b, hertz(1000))).toBeCloseTo(0, 12);
        expect(replayDifference(a, a, f)).toBeCloseTo(0, 12);
        if (a.speedMmPerS === b.speedMmPerS) {
          expect(replayDifference(a, b, f)).toBeCloseTo(-replayDifference(b, a, f), 9);
        }
      }),
    );
  });

  test('it is a number at every frequency, for every two curves', () => {
    fc.assert(fc.property(standard, standard, frequency, (a, b, f) => Number.isFinite(replayDifference(a, b, f))));
  });

  test('the worst difference is at least what is found at any one frequency', () => {
    fc.assert(
      fc.property(standard, standard, fc.double({ min: 40, max: 20_000, noNaN: true }), (a, b, f) => {
        const worst = Math.abs(worstDifference(a, b, hertz(40), hertz(20_000)));
        expect(Math.abs(replayDifference(a, b, hertz(f)))).toBeLessThanOrEqual(worst + 0.01);
      }),
      { numRuns: 50 },
    );
  });

  test('the curve for a picture is the same figures, one a frequency', () => {
    const [nab, iec] = [3180, Infinity].map((lowUs) => ({
      ...timeConstants(lowUs, 50),
      speedMmPerS: inchesPerSecond(15),
    }));
    if (nab === undefined || iec === undefined) throw new Error('two curves');
    const points = differenceCurve(nab, iec, octaveSteps(hertz(40), hertz(16_000), 3));
    for (const { frequencyHz, differenceDb } of points) {
      expect(differenceDb).toBe(replayDifference(nab, iec, frequencyHz));
    }
  });

  test('octave steps begin and end where they are told to', () => {
    const steps = octaveSteps(hertz(40), hertz(20_000), 3);
    expect(steps[0]).toBe(40);
    expect(steps.at(-1)).toBeCloseTo(20_000, 9);
  });
});

test('an infinite time constant turns nowhere', () => expect(transitionFrequency(microseconds(Infinity))).toBe(0));
