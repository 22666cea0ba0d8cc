import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Region } from '#model/region.ts';
import { placeTags } from '#render/drawings/region-tags.ts';

const region = (xPercent: number, yPercent: number, widthPercent: number, heightPercent: number): Region => ({
  xPercent,
  yPercent,
  widthPercent,
  heightPercent,
});

const WIDE = 3.9;
const HIGH = 3.5;
const overlap = (tag: { xPercent: number; yPercent: number }, over: Region) =>
  tag.xPercent + WIDE > over.xPercent + 0.01 &&
  over.xPercent + over.widthPercent > tag.xPercent + 0.01 &&
  tag.yPercent + HIGH > over.yPercent + 0.01 &&
  over.yPercent + over.heightPercent > tag.yPercent + 0.01;

describe('the number of a region', () => {
  test('stands left of the first letter where nothing is', () => {
    expect(placeTags([region(20, 30, 40, 8)], 1)).toEqual([{ xPercent: 16.1, yPercent: 30 }]);
  });

  test('stands above where the photograph ends at the left', () => {
    expect(placeTags([region(1, 30, 40, 8)], 1)).toEqual([{ xPercent: 1, yPercent: 26.5 }]);
  });

  test('stands elsewhere where a neighbour ends just before it', () => {
    const [, second] = placeTags([region(10, 30, 20, 8), region(31, 30, 20, 8)], 1);
    expect(second).toEqual({ xPercent: 31, yPercent: 26.5 });
  });

  test('takes more of a low photograph’s height', () => {
    expect(placeTags([region(1, 50, 40, 30)], 5)).toEqual([{ xPercent: 1, yPercent: 32.5 }]);
  });

  test('never covers what was read, while the regions leave room round them', () => {
    // A form of cells, each with a region somewhere inside it and a margin round that.
    const cells = fc
      .record({
        left: fc.double({ min: 4.5, max: 8, noNaN: true }),
        top: fc.double({ min: 4, max: 7, noNaN: true }),
        wide: fc.double({ min: 6, max: 16, noNaN: true }),
        high: fc.double({ min: 4, max: 8, noNaN: true }),
      })
      .map(
        ({ left, top, wide, high }) =>
          (column: number, row: number) =>
            region(column * 25 + left, row * 20 + top, wide, high),
      );
    fc.assert(
      fc.property(fc.array(cells, { minLength: 1, maxLength: 16 }), (made) => {
        const regions = made.map((at, index) => at(index % 4, Math.floor(index / 4)));
        const tags = placeTags(regions, 1);
        for (const tag of tags) {
          expect(tag.xPercent).toBeGreaterThanOrEqual(0);
          expect(regions.filter((one) => overlap(tag, one))).toEqual([]);
        }
      }),
    );
  });

  test('stays in the photograph on the densest label', () => {
    const packed = Array.from({ length: 25 }, (_, at) => region((at % 5) * 20, Math.floor(at / 5) * 20, 20, 20));
    for (const { xPercent, yPercent } of placeTags(packed, 1)) {
      expect(xPercent).toBeGreaterThanOrEqual(0);
      expect(yPercent).toBeGreaterThanOrEqual(0);
    }
  });
});
