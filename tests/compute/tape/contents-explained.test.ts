import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { clock } from '#compute/figure/in-words.ts';
import { explainDifference } from '#compute/tape/contents-explained.ts';
import { sumOfContents } from '#compute/tape/contents-sum.ts';
import { digitReadings } from '#compute/tape/digit-readings.ts';
import type { Reel } from '#model/reel.ts';
import { seconds } from '#model/units.ts';
import { known, none, reel } from '../../given/entries.ts';

const listing = (titlesS: readonly number[]): Reel => ({
  ...reel('a'),
  gaps: none,
  contents: known(
    titlesS.map((titleS, index) => ({
      place: known('').place,
      title: known(`Title ${index + 1}`),
      durationS: known(seconds(titleS), clock(titleS)),
    })),
  ),
});

describe('digitReadings', () => {
  test('swaps neighbours across the colon too, and leaves out what is no time', () => {
    const swaps = digitReadings('19:54').filter((reading) => reading.is === 'swap');
    expect(swaps.map((reading) => reading.gives)).toEqual(['91:54', '19:45']);
  });

  test('takes nothing for what isn’t a clock time', () => expect(digitReadings('19 min 54 s')).toEqual([]));

  test('a swap read again the same way gives the time back', () => {
    fc.assert(
      fc.property(fc.integer({ min: 60, max: 5999 }), (timeS) =>
        digitReadings(clock(timeS))
          .filter((reading) => reading.is === 'swap')
          .every((reading) => reading.durationS !== timeS),
      ),
    );
  });
});

describe('explainDifference', () => {
  const titles = fc.array(fc.integer({ min: 61, max: 599 }), { minLength: 1, maxLength: 8 });

  test('has nothing against the sum itself', () => {
    fc.assert(
      fc.property(titles, (titlesS) => {
        const contents = sumOfContents(listing(titlesS));
        if (contents?.is !== 'summed') return false;
        const sumS = titlesS.reduce((total, titleS) => total + titleS, 0);
        return explainDifference({ value: sumS, written: clock(sumS) }, contents).is === 'agrees';
      }),
    );
  });

  test('a reading of the stated length that it proposes always makes the sum agree', () => {
    fc.assert(
      fc.property(titles, fc.integer({ min: 61, max: 5999 }), (titlesS, statedS) => {
        const contents = sumOfContents(listing(titlesS));
        if (contents?.is !== 'summed') return false;
        const found = explainDifference({ value: statedS, written: clock(statedS) }, contents);
        if (found.is !== 'differs' || found.gives === undefined) return true;
        return found.gives === clock(titlesS.reduce((total, titleS) => total + titleS, 0));
      }),
    );
  });

  test('swapped figures of the sum are found out', () => {
    fc.assert(
      fc.property(titles, (titlesS) => {
        const contents = sumOfContents(listing(titlesS));
        if (contents?.is !== 'summed') return false;
        const sumS = titlesS.reduce((total, titleS) => total + titleS, 0);
        return digitReadings(clock(sumS))
          .filter((reading) => reading.is === 'swap' && Math.abs(reading.durationS - sumS) > titlesS.length)
          .every(({ gives, durationS }) => {
            const found = explainDifference({ value: durationS, written: gives }, contents);
            return found.is === 'differs' && (found.gives === clock(sumS) || found.gives === undefined);
          });
      }),
    );
  });
});
