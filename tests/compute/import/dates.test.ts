import { describe, expect, test } from 'vitest';
import { datesMeant, orderShown } from '#compute/import/dates.ts';

describe('a date in a sheet', () => {
  test.each([
    ['12/4/1974', 'day-month', '1974-04-12'],
    ['12/4/1974', 'month-day', '1974-12-04'],
    ['12.4.74', 'day-month', '1974-04-12'],
    ['25/4/74', undefined, '1974-04-25'],
    ['4/25/74', undefined, '1974-04-25'],
    ['5/5/74', undefined, '1974-05-05'],
    ['c. 1974', undefined, '1974~'],
    ['ca. 1974', undefined, '1974~'],
    ['circa 1974', undefined, '1974~'],
    ['1974 (?)', undefined, '1974?'],
    ['1970s', undefined, '197X'],
    ['1974-1976', undefined, '1974/1976'],
    ['4/1974', undefined, '1974-04'],
    ['12 April 1974', undefined, '1974-04-12'],
    ['April 12, 1974', undefined, '1974-04-12'],
    ['Apr 74', undefined, '1974-04'],
    ['3rd of March 1974', undefined, '1974-03-03'],
    ['1974.04.12', undefined, '1974-04-12'],
    ['1974-04-12 00:00:00', undefined, '1974-04-12'],
  ] as const)('%s, %s, may mean %s', (text, order, meant) => {
    expect(datesMeant(text, order)).toContain(meant);
  });

  test.each(['12/4/1974', '4-5-74'])('%s says nothing while nobody knows the order', (text) => {
    expect(datesMeant(text, undefined)).toEqual([]);
  });

  test('a year of two figures that could be of this century is not guessed', () => {
    expect(datesMeant('25/4/12', 'day-month')).toEqual([]);
  });

  test('a column shows its order by one day over 12, and shows none when they disagree', () => {
    expect(orderShown(['1/2/74', '25/2/74'])).toBe('day-month');
    expect(orderShown(['1/2/74', '2/25/74'])).toBe('month-day');
    expect(orderShown(['1/2/74', '3/4/74'])).toBeUndefined();
    expect(orderShown(['25/2/74', '2/25/74'])).toBeUndefined();
  });
});
