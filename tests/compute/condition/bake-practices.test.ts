import { describe, expect, test } from 'vitest';
import {
  BAKE_COSTS,
  BAKE_PRACTICES,
  HOTTEST_C,
  insidePractice,
  USUAL_BAKES,
  USUAL_BAKES_SOURCE,
} from '#compute/condition/bake-practices.ts';
import { bakeWindow } from '#compute/condition/bake-window.ts';
import type { LocalTime } from '#model/dates.ts';
import { celsius, fahrenheit } from '#model/units.ts';
import { reckoned } from '../../given/reckoned.ts';
import { departures, numberOf, rows } from '../../tables/published.ts';

function practice(name: string) {
  const found = BAKE_PRACTICES.find((one) => one.name === name);
  if (found === undefined) throw new Error(`no practice ${name}`);
  return found;
}

/** The practice as a row names it, and as ours does. */
const SAME: Record<string, string> = {
  'C-400': 'IASA-TC 04',
  'C-401': 'a maker’s advice in a UNESCO study',
  'C-402': 'the same, wide tape',
  'C-403': 'a national library, tape before 1975',
  'C-404': 'a national library, tape of 1975 and later',
  'C-405': 'a former maker’s chemist',
  'C-406': 'an engineer’s articles',
  'C-407': 'the trade',
};

describe('the practices', () => {
  test.each(rows('C-400', 'C-401', 'C-402', 'C-403', 'C-404', 'C-405', 'C-406', 'C-407'))(
    '$id $title ($source)',
    ({ id, expected, tolerance }) => {
      const { lowC, highC, lowHours, highHours } = practice(SAME[id] ?? '');
      const { afterwards: _afterwards, ...figures } = expected;
      const ours = { low_C: lowC ?? null, high_C: highC ?? null, low_h: lowHours ?? null, high_h: highHours ?? null };
      expect(departures(ours, figures, tolerance)).toEqual([]);
    },
  );
  test.each(rows('C-121'))('$id as the study prints it ($source)', ({ expected }) => {
    const { lowC, highC, lowHours, highHours, afterwards } = practice('a maker’s advice in a UNESCO study');
    expect({ temperature_C: [lowC, highC], duration_h: [lowHours, highHours] }).toEqual({
      temperature_C: expected['temperature_C'],
      duration_h: expected['duration_h'],
    });
    expect(afterwards).toContain('one to two weeks');
  });
  test.each(rows('C-122'))('$id as reported ($source)', ({ expected }) => {
    const { lowC, lowHours, highHours, afterwards, remark } = practice('a maker’s patented treatment');
    expect([lowC, lowHours, highHours]).toEqual([
      expected['temperature_C'],
      expected['duration_h_at_least'],
      undefined,
    ]);
    expect(remark).toContain(`never above ${expected['never_above_C']} °C`);
    expect(afterwards).toBe(expected['keeps']);
  });
  test.each(rows('C-123'))('$id common practice, and said to be ($source)', ({ expected }) => {
    const { lowC, lowHours, rests } = practice('the trade');
    expect([lowC, lowHours, rests]).toEqual([
      expected['temperature_C'],
      expected['duration_h'],
      'common practice, no source',
    ]);
    expect(USUAL_BAKES).toBe(expected['cycles_about']);
    const ended = '2026-03-11T00:00' as LocalTime;
    const [shortest] = bakeWindow(ended, ended);
    const hours = [shortest?.closesEarliest, shortest?.closesLatest].map((time) => Number(time?.slice(11, 13)));
    expect(hours).toEqual(expected['playback_window_h']);
  });
  test.each(rows('C-416'))('$id $title ($source)', ({ inputs, expected }) => {
    const inside = (name: string) =>
      insidePractice(practice(name), celsius(numberOf(inputs, 'temperature_C')), numberOf(inputs, 'duration_h'));
    expect(inside('the same, wide tape')).toBe(expected['insideUNESCOupTo36h']);
    expect(inside('IASA-TC 04')).toBe(expected['insideIASA8to12h']);
    expect(inside('a maker’s advice in a UNESCO study')).toBe(expected['inside6to8hQuarterInch']);
  });
  test.each(rows('C-417', 'C-418'))('$id $title ($source)', ({ expected }) => {
    if (expected['commonPractice'] !== undefined) expect(USUAL_BAKES).toBe(expected['commonPractice']);
    expect(USUAL_BAKES_SOURCE).toContain(expected['years'] === undefined ? '20 and more' : 'over three years');
  });
  test.each(rows('C-419'))('$id $title is told as reported ($source)', ({ expected }) => {
    const [loss] = BAKE_COSTS;
    expect(loss?.says).toBe(
      `about ${expected['highFrequencyLoss_dB']} dB at high frequencies, at ${expected['at_F']} °F`,
    );
    expect(loss?.source).toContain('reported');
  });
  test.each(rows('C-420'))('$id $title ($source)', ({ expected, tolerance }) => {
    expect(fahrenheit(numberOf(expected, 'temperature_F'))).toBeCloseTo(numberOf(expected, 'temperature_C'), 1);
    expect(BAKE_COSTS.some((row) => row.says.includes('130 °F (54.4 °C)'))).toBe(true);
    expect(tolerance).toEqual({});
  });
  test('no two are merged: each has its own name and source', () => {
    expect(new Set(BAKE_PRACTICES.map((row) => row.name)).size).toBe(BAKE_PRACTICES.length);
    expect(BAKE_PRACTICES.filter((row) => row.source === '')).toEqual([]);
    expect(Math.max(...BAKE_PRACTICES.map((row) => row.highC ?? 0))).toBe(HOTTEST_C);
  });
});

describe('the window after a bake', () => {
  const ended = '2026-03-11T22:00' as LocalTime;
  test.each([
    ['2026-03-11T21:59', 'not yet', 'not yet'],
    ['2026-03-12T05:00', 'open', 'open'],
    ['2026-03-12T05:01', 'may be closed', 'open'],
    ['2026-03-12T08:01', 'closed', 'open'],
    ['2026-03-19T00:00', 'closed', 'may be closed'],
    ['2026-03-26T00:00', 'closed', 'closed'],
  ])('at %s the short one is %s and the long one %s', (now, short, long) => {
    expect(bakeWindow(ended, now as LocalTime).map((window) => window.state)).toEqual([short, long]);
  });

  test('reckon tells the two side by side, with what they rest on and the caution', async () => {
    const { json, text } = await reckoned('bake-window', ['--ended', '2026-03-11T22:00', '--now', '2026-03-12T20:00']);
    expect(json['value']).toMatchObject({
      practices: [
        { practice: 'common-practice', open: false, source: 'common practice, no source' },
        { practice: 'published', open: true },
      ],
    });
    expect(text).toContain('Never heat acetate, paper or PVC');
  });

  test('without --now it is the clock of the place', async () => {
    const { json } = await reckoned('bake-window', ['--ended', '2026-03-11T22:00']);
    expect(json['inputs']).toContainEqual({ name: 'now', written: '2026-03-12T06:30', basis: 'assumed' });
  });
});
