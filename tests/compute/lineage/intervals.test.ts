import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { couldBeSameTime, daysBetween, isWhollyBefore, monthsOf, sequence, width } from '#compute/lineage/intervals.ts';
import { day } from '#model/dates.ts';
import { date } from '../../given/entries.ts';

const MARCH_1974 = date('1974-03-01', '1974-03-31');
const IN_1974 = date('1974-01-01', '1974-12-31');
const MAY_1974 = date('1974-05-01', '1974-05-31');

describe('sequence', () => {
  test.each([
    ['a year that holds the month', IN_1974, MARCH_1974, 'possible'],
    ['the same day', date('1974-03-12'), date('1974-03-12'), 'possible'],
    ['the month before', MAY_1974, MARCH_1974, 'contradicted'],
    ['the month before, with “about” on it', MAY_1974, { ...MARCH_1974, approximate: true }, 'doubtful'],
    ['the month before, with a query on the other', { ...MAY_1974, uncertain: true }, MARCH_1974, 'doubtful'],
    ['an open end', MAY_1974, date('1974-03-01', null), 'possible'],
    ['an unknown start', date(null, '1974-05-31'), MARCH_1974, 'possible'],
    ['nothing recorded', MAY_1974, undefined, 'possible'],
  ] as const)('later is %s: %#', (_, earlier, later, is) => {
    expect(sequence(earlier, later)).toBe(is);
  });

  const anyDate = fc
    .tuple(fc.integer({ min: 0, max: 400 }), fc.integer({ min: 0, max: 400 }))
    .map(([a, b]) =>
      [Math.min(a, b), Math.max(a, b)].map((n) => new Date(Date.UTC(1974, 0, 1 + n)).toISOString().slice(0, 10)),
    )
    .map(([from = '', until = '']) => date(from, until));

  test('never contradicts when one day is possible for both', () => {
    fc.assert(
      fc.property(anyDate, anyDate, (a, b) => {
        const overlap = (a.earliest ?? '') <= (b.latest ?? '') && (b.earliest ?? '') <= (a.latest ?? '');
        if (overlap) expect(sequence(a, b)).toBe('possible');
        expect(couldBeSameTime(a, b)).toBe(overlap);
      }),
    );
  });

  test('never contradicts both ways', () => {
    fc.assert(fc.property(anyDate, anyDate, (a, b) => !(isWhollyBefore(a, b) && isWhollyBefore(b, a))));
  });
});

describe('widths and months', () => {
  test('29 February counts in a leap year: 60 days from 1 January to 1 March 1972', () => {
    expect(daysBetween(day('1972-01-01'), day('1972-03-01'))).toBe(60);
  });
  test('a month is as wide as its days, and an open date has no end', () => {
    expect(width(MARCH_1974)).toBe(31);
    expect(width(date('1974-03-01', null))).toBe(Number.POSITIVE_INFINITY);
  });
  test('months run over the turn of the year', () => {
    expect(monthsOf(date('1977-11-20', '1978-02-03'), 12)).toEqual(['1977-11', '1977-12', '1978-01', '1978-02']);
    expect(monthsOf(IN_1974, 11)).toEqual([]);
  });
});
