import { describe, expect, test } from 'vitest';
import { planBake } from '#compute/plan/bake.ts';
import type { LocalTime } from '#model/dates.ts';
import { LOOKED, only, planned, reel } from './a-day.ts';

const START = '2026-04-01T08:00' as LocalTime;
const STICKY = 'condition: [{ on: "2026-01-10", found: [sticky] }]';

describe('may it be baked', () => {
  test.each([
    ['an acetate tape, however sticky', reel('clear', STICKY), /acetate: heat destroys it/],
    ['a tape whose base isn’t known', reel('gummy', STICKY).replace('stock: gummy\n', ''), /base isn’t known/],
    ['a sound tape', reel('sound', LOOKED), /no mark of the stocks that shed/],
  ])('not %s', async (_, entry, because) => {
    const plan = planBake(await planned({ 'reels/a': entry }), START);
    expect(plan.considered).toEqual([]);
    expect(plan.rows).toEqual([]);
    expect(only(plan.refused).bake.because).toMatch(because);
  });

  test('a polyester tape that sheds may be considered, and the heat caution stands first', async () => {
    const plan = planBake(await planned({ 'reels/a': reel('gummy', STICKY) }), START);
    expect(only(plan.considered).bake.action).toMatch(/experienced transfer engineer/);
    expect(plan.cautions[0]).toMatch(/^Heat: never heat acetate/);
  });
});

describe('the practices', () => {
  test('stand side by side, each laid out from the same start', async () => {
    const { rows } = planBake(await planned({ 'reels/a': reel('gummy', STICKY) }), START);
    const row = (name: string) => rows.find((one) => one.practice.startsWith(name));
    // Each by hand from 1 April, 08:00, and the hours of its source.
    expect(row('IASA-TC 04')).toMatchObject({
      warmth: '50 °C',
      hours: '8 to 12 h',
      heatEnds: ['2026-04-01T16:00', '2026-04-01T20:00'],
    });
    expect(row('IASA-TC 04')?.closes).toBeUndefined();
    expect(row('a maker’s advice')).toMatchObject({
      warmth: '45 to 55 °C',
      hours: '6 to 8 h',
      closes: ['2026-04-08T14:00', '2026-04-15T16:00'],
    });
    expect(row('a former maker’s chemist')).toMatchObject({ cooledAt: ['2026-04-02T08:00', '2026-04-02T08:00'] });
    expect(row('the trade')).toMatchObject({
      rests: 'common practice, no source',
      heatEnds: ['2026-04-02T20:00', '2026-04-02T20:00'],
      closes: ['2026-04-03T03:00', '2026-04-03T06:00'],
    });
    expect(new Set(rows.map((one) => one.practice)).size).toBe(rows.length);
    expect(rows.every((one) => one.source !== '')).toBe(true);
  });

  test('hold as many passes as fit between the heat and the closing, set-up included', async () => {
    const plan = planBake(await planned({ 'reels/a': reel('gummy', STICKY) }), START);
    // By hand: 20 min of tape, 15 min of set-up, 10 min of slow wind; 7 h and 10 h hold 9 and 13 of them.
    expect(plan.passS).toBe(45 * 60);
    expect(plan.rows.find((one) => one.practice.startsWith('the trade'))?.passes).toEqual([9, 13]);
    expect(plan.rows.find((one) => one.practice.startsWith('IASA'))?.passes).toBeUndefined();
  });

  test('say nothing of passes while a length isn’t recorded', async () => {
    const entry = reel('gummy', STICKY).replace('length: "20:00"\n', '');
    const plan = planBake(await planned({ 'reels/a': entry }), START);
    expect(plan.passS).toBeUndefined();
    expect(plan.rows.every((one) => one.passes === undefined)).toBe(true);
  });
});

test('earlier bakes are counted, a planned one isn’t, and a transfer within the month belongs to its bake', async () => {
  const reels = await planned({
    'reels/a': reel(
      'gummy',
      `${STICKY}
handling:
  - { what: bake, on: "2012-05", temperature: 50 °C, duration: 8 h }
  - { what: bake, on: "2026-02-01", temperature: 50 °C, duration: 12 h, ended: "2026-02-02T08:00" }
  - { what: transfer, on: "2026-02-02" }
  - { what: bake, on: "2026-06-01", planned: yes }`,
    ),
  });
  expect(only(reels).bake.earlier).toEqual([
    { on: '2012-05', how: '50 °C, 8 h', ended: undefined, transferredOn: undefined },
    { on: '2026-02-01', how: '50 °C, 12 h', ended: '2026-02-02T08:00', transferredOn: '2026-02-02' },
  ]);
});
