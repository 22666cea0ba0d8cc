import { describe, expect, test } from 'vitest';
import { SIDE_LIMITS, type SideLimit, sideAgainstLimit } from '#compute/record-side/side-limits.ts';
import { seconds } from '#model/units.ts';
import { reckoned } from '../../given/reckoned.ts';
import { numberOf, row, rows } from '../../tables/published.ts';

function chart(sizeIn: number, rpm: string): SideLimit {
  const found = SIDE_LIMITS.find((limit) => limit.sizeIn === sizeIn && limit.rpm === rpm);
  if (found === undefined) throw new Error(`no chart for ${sizeIn} in at ${rpm}`);
  return found;
}
const minutes = (count: number) => seconds(count * 60);

describe('how long a side can be', () => {
  test.each(rows('C-312', 'C-313', 'C-314', 'C-315', 'C-316'))('$id $title ($source)', ({ inputs, expected }) => {
    const { atLevel } = chart(Number.parseInt(String(inputs['size']), 10), String(inputs['rpm']));
    const shown = Object.fromEntries(atLevel.map((one) => [String(one.levelDb), one.lastsS / 60]));
    expect(shown).toEqual(expected['minutesAtLevel_dB']);
  });

  test.each(rows('C-081'))('$id a side of $inputs.side_min min is the limit at full level ($source)', ({ inputs }) => {
    const limit = chart(12, '33⅓');
    const atLimit = minutes(numberOf(inputs, 'side_min'));
    expect(sideAgainstLimit(atLimit, limit).fitsAtDb).toBe(0);
    expect(sideAgainstLimit(seconds(atLimit + 1), limit).fitsAtDb).toBe(-3);
  });

  test.each(rows('C-317'))('$id $title ($source)', async ({ expected }) => {
    expect(sideAgainstLimit(seconds(27 * 60 + 30), chart(12, '33⅓'))).toEqual({ fitsAtDb: -6, tooLongAtDb: -3 });
    expect(expected['code']).toBe(null);
    const { text } = await reckoned('groove-pitch', ['--duration', '27:30', '--cut-width', '76 mm', '--rpm', '33⅓']);
    expect(text).toContain('possible at −6 dB');
    expect(text).not.toContain('impossible');
  });

  test('past the last row a side is unusual, never impossible', async () => {
    expect(sideAgainstLimit(minutes(31), chart(12, '33⅓')).fitsAtDb).toBe(undefined);
    const { text } = await reckoned('groove-pitch', ['--duration', '31:00', '--cut-width', '76 mm', '--rpm', '33⅓']);
    expect(text).toContain('unusual, not impossible');
  });

  test('the rows are used, not the chart’s own 1 dB a minute, which they contradict', () => {
    const [full, next] = chart(12, '33⅓').atLevel;
    expect(((next?.lastsS ?? 0) - (full?.lastsS ?? 0)) / 60).toBe(4);
    expect((full?.levelDb ?? 0) - (next?.levelDb ?? 0)).toBe(3);
    expect(row('C-312').note).toContain('Use the table, not the slope');
  });
});
