import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { clock } from '#compute/tape/clock.ts';
import { durationSum } from '#compute/tape/duration-sum.ts';
import { noiseAfterCopies } from '#compute/tape/noise-after-copies.ts';
import { lengthPlayed, playingTime } from '#compute/tape/playing-time.ts';
import { doubled, halved, nominalSpeed, STANDARD_SPEEDS, sameSpeed } from '#compute/tape/speeds.ts';
import { asInchesPerSecond, decibels, inchesPerSecond, millimetres, seconds } from '#model/units.ts';
import { parseSpeed } from '#validate/scalars/speed.ts';

const ratios = fc.array(
  fc.integer({ min: 300, max: 900 }).map((tenths) => decibels(tenths / 10)),
  {
    minLength: 1,
    maxLength: 8,
  },
);
const whole = (max: number) => fc.integer({ min: 1, max });

describe('noise after copies', () => {
  test('two equal passes cost 3.01 dB, not 6.02', () => {
    fc.assert(
      fc.property(whole(100).map(decibels), (one) => {
        expect(one - noiseAfterCopies([one, one])).toBeCloseTo(10 * Math.log10(2), 9);
      }),
    );
  });

  test('is never better than the worst pass, whatever the order', () => {
    fc.assert(
      fc.property(ratios, (passes) => {
        const after = noiseAfterCopies(passes);
        expect(after).toBeLessThanOrEqual(Math.min(...passes) + 1e-9);
        expect(noiseAfterCopies(passes.toReversed())).toBeCloseTo(after, 9);
      }),
    );
  });
});

describe('sums of titles', () => {
  test('have one gap fewer than titles, and none for one title or for none', () => {
    fc.assert(
      fc.property(fc.array(whole(600).map(seconds), { maxLength: 20 }), whole(10).map(seconds), (titles, gap) => {
        const bare = durationSum(titles, seconds(0));
        expect(durationSum(titles, gap) - bare).toBe(gap * Math.max(0, titles.length - 1));
      }),
    );
  });

  test.each([
    [0, '0:00'],
    [59.6, '1:00'],
    [466, '7:46'],
    [3600, '1:00:00'],
    [4000, '1:06:40'],
  ])('%s s is %s on the clock', (lasts, shown) => expect(clock(lasts)).toBe(shown));
});

describe('length and time', () => {
  test('are each other’s inverse at any speed', () => {
    fc.assert(
      fc.property(whole(10_000), fc.constantFrom(...STANDARD_SPEEDS), (lasts, { speedMmPerS }) => {
        expect(playingTime(lengthPlayed(seconds(lasts), speedMmPerS), speedMmPerS)).toBeCloseTo(lasts, 6);
      }),
    );
  });

  test('twice the speed is half the time', () => {
    const lengthMm = millimetres(762_000);
    const speed = inchesPerSecond(15);
    expect(playingTime(lengthMm, doubled(speed))).toBeCloseTo(playingTime(lengthMm, speed) / 2, 9);
  });
});

describe('the standard speeds', () => {
  test('go down by halves, exactly', () => {
    for (const [index, { speedMmPerS }] of STANDARD_SPEEDS.slice(1).entries()) {
      const faster = STANDARD_SPEEDS[index]?.speedMmPerS ?? speedMmPerS;
      expect(sameSpeed(halved(faster), speedMmPerS)).toBe(true);
      expect(sameSpeed(doubled(speedMmPerS), faster)).toBe(true);
    }
  });

  test('mean what labels round them to, here and where an entry is read', () => {
    for (const { inPerS, labelCmPerS } of STANDARD_SPEEDS) {
      for (const label of labelCmPerS) {
        const read = parseSpeed(`${label} cm/s`);
        expect(asInchesPerSecond(nominalSpeed(label) ?? inchesPerSecond(0))).toBeCloseTo(inPerS, 9);
        expect(read.ok && asInchesPerSecond(read.value)).toBeCloseTo(inPerS, 9);
      }
    }
    expect(nominalSpeed(40)).toBe(undefined);
  });
});
