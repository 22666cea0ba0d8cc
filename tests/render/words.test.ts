import { describe, expect, test } from 'vitest';
import type { PartialDate } from '#model/dates.ts';
import { day } from '#model/dates.ts';
import { inches, inchesPerSecond, micrometres, microseconds, millimetres } from '#model/units.ts';
import { dateWords, writtenDateWords } from '#render/words/date.ts';
import { clock, spoken } from '#render/words/duration.ts';
import { equalisationWords } from '#render/words/equalisation.ts';
import { keyWords } from '#render/words/keys.ts';
import { moneyWords } from '#render/words/money.ts';
import { count, decimal, fraction, listed, signed } from '#render/words/number.ts';
import { readingWords } from '#render/words/reading.ts';
import { measured, nominal, thickness } from '#render/words/size.ts';
import { inchesSpeed, metricSpeed } from '#render/words/speed.ts';

const date = (earliest: string | null, latest: string | null, rest: Partial<PartialDate> = {}): PartialDate => ({
  earliest: earliest === null ? null : day(earliest),
  latest: latest === null ? null : day(latest),
  uncertain: false,
  approximate: false,
  openStart: false,
  openEnd: false,
  unknownStart: false,
  unknownEnd: false,
  season: null,
  ...rest,
});

test('a date as it was written is told in words where it is a whole day', () => {
  expect(writtenDateWords('2027-03-31')).toBe('31 Mar 2027');
  expect(writtenDateWords('2027-03')).toBe('2027-03');
  expect(writtenDateWords('2027-03~')).toBe('2027-03~');
});

describe('dateWords', () => {
  test.each([
    [date('1977-02-18', '1977-02-18'), '18 Feb 1977'],
    [date('1977-02-01', '1977-02-28'), 'Feb 1977'],
    [date('1976-02-01', '1976-02-29'), 'Feb 1976'],
    [date('1974-01-01', '1974-12-31'), '1974'],
    [date('1974-01-01', '1974-12-31', { approximate: true }), 'about 1974'],
    [date('1974-01-01', '1974-12-31', { uncertain: true }), '1974, uncertain'],
    [date('1970-01-01', '1979-12-31'), '1970s'],
    [date('1974-01-01', '1976-12-31'), '1974 to 1976'],
    [date('1974-03-01', '1974-05-31'), 'Mar 1974 to May 1974'],
    [date('1974-03-05', '1974-12-31'), '5 Mar 1974 to 1974'],
    [date('1974-03-01', null, { openEnd: true }), 'Mar 1974 till now'],
    [date('1974-01-01', null, { unknownEnd: true }), 'from 1974 on'],
    [date(null, '1974-12-31', { unknownStart: true }), 'until 1974'],
    [date('1974-01-01', '1974-12-31', { season: 21 }), 'spring 1974'],
    [date(null, null), 'at a time not known'],
  ])('%j is told as %s', (given, words) => expect(dateWords(given)).toBe(words));
});

describe('lengths of time', () => {
  test.each([
    [0, '0:00'],
    [6, '0:06'],
    [1166, '19:26'],
    [1166.4, '19:26'],
    [59.6, '1:00'],
    [4000, '1:06:40'],
  ])('%d s stands on a label as %s', (durationS, words) => expect(clock(durationS)).toBe(words));

  test.each([
    [3, '3 s'],
    [2.5, '2.5 s'],
    [1166, '19 min 26 s'],
    [129_600, '36 h'],
  ])('%d s is said as %s', (durationS, words) => expect(spoken(durationS)).toBe(words));
});

describe('sizes and speeds', () => {
  test('speeds are told in marked parts of an inch, and exactly in centimetres', () => {
    expect(inchesSpeed(inchesPerSecond(7.5))).toBe('7½ in/s');
    expect(inchesSpeed(inchesPerSecond(1.875))).toBe('1⅞ in/s');
    expect(metricSpeed(inchesPerSecond(30))).toBe('76.2 cm/s');
    expect(metricSpeed(inchesPerSecond(3.75))).toBe('9.53 cm/s');
  });

  test('a width and a reel keep their name in inches; a size that has none is in millimetres', () => {
    expect(nominal(inches(0.25))).toBe('¼ in');
    expect(nominal(inches(10.5))).toBe('10½ in');
    expect(nominal(millimetres(263))).toBe('263 mm');
  });

  test('a measure carries the error that it was written with', () => {
    expect(measured({ value: millimetres(263), plusMinus: millimetres(1) }, 'metric')).toBe('263 mm ± 1 mm');
    expect(measured({ value: millimetres(254) }, 'imperial')).toBe('10 in');
    expect(thickness(micrometres(52))).toBe('52 µm');
  });

  test('time constants without lifted bass give one figure', () => {
    expect(equalisationWords({ is: 'time-constants', lowUs: microseconds(Infinity), highUs: microseconds(17.5) })).toBe(
      '17.5 µs',
    );
    expect(equalisationWords({ is: 'time-constants', lowUs: microseconds(3180), highUs: microseconds(50) })).toBe(
      '3180/50 µs',
    );
  });
});

describe('numbers in words', () => {
  test.each([
    [33 + 1 / 3, '33⅓'],
    [0.5, '½'],
    [10, '10'],
    [10.28, '10.28'],
    [7.999_999_9, '8'],
  ])('%d is %s', (value, words) => expect(fraction(value)).toBe(words));

  test('a difference always has its sign, nought has none', () => {
    expect(signed(3.94, 1)).toBe('+3.9');
    expect(signed(-1.26, 1)).toBe('−1.3');
    expect(signed(-0.01, 1)).toBe('0.0');
    expect(decimal(-0.001, 2)).toBe('0');
  });

  test('counts and lists read as one would say them', () => {
    expect(count(1, 'reel')).toBe('one reel');
    expect(count(13, 'reel')).toBe('13 reels');
    expect(listed(['a', 'b', 'c'])).toBe('a, b and c');
    expect(moneyWords({ amount: 12_500, currency: 'EUR' })).toBe('12,500 EUR');
    expect(moneyWords({ amount: 12.5, currency: 'EUR' })).toBe('12.50 EUR');
  });
});

test('a key of an entry is told as its caption', () => {
  expect(keyWords('numbers.matrix')).toBe('Matrix');
  expect(keyWords('format.speed')).toBe('Speed');
  expect(keyWords('cuts[1].on')).toBe('Cut 2, on');
});

test('ticked and empty boxes keep their sign as text', () => {
  const words = readingWords('[ ] 15 ☑30 in/s <b>').toString();
  expect(words.replaceAll(/<[^>]+>/g, '')).toBe('☐15 ☑30 in/s &lt;b&gt;');
});
