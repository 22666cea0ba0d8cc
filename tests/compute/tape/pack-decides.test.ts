import { describe, expect, test } from 'vitest';
import { packLength } from '#compute/tape/pack.ts';
import { packAgainstSpeeds } from '#compute/tape/pack-decides.ts';
import { micrometres, millimetres, seconds } from '#model/units.ts';
import { departures, numberOf, rows } from '../../tables/published.ts';

const stated = (valueS: number) => ({ valueS: seconds(valueS), errorS: 0.5 });

describe('packAgainstSpeeds', () => {
  test.each(rows('C-218'))('$id $title ($source)', ({ inputs, expected, tolerance }) => {
    const length = (outside: number, hub: number, thickness: number) =>
      packLength(millimetres(outside), millimetres(hub), micrometres(thickness));
    const [outside, hub] = [numberOf(inputs, 'outsideDiameter_mm'), numberOf(inputs, 'hubDiameter_mm')];
    const thickness = numberOf(inputs, 'thickness_um');
    const pack = {
      lowMm: length(outside - 1, hub + 1, thickness + 1),
      valueMm: length(outside, hub, thickness),
      highMm: length(outside + 1, hub - 1, thickness - 1),
    };
    const answers = packAgainstSpeeds(pack, stated(18 * 60 + 52));
    const at = (inPerS: number) => answers.find((answer) => answer.speed.inPerS === inPerS);
    const answer = {
      packLength_m: pack.valueMm / 1000,
      neededAt30ips_m: (at(30)?.neededMm ?? 0) / 1000,
      neededAt15ips_m: (at(15)?.neededMm ?? 0) / 1000,
      neededAt7_5ips_m: (at(7.5)?.neededMm ?? 0) / 1000,
    };
    const { verdict: _verdict, ...figures } = expected;
    expect(departures(answer, figures, tolerance)).toEqual([]);
    expect(at(30)?.answer).toBe('agrees');
    expect(at(15)?.answer).toBe('unexplained');
    expect(at(15)?.leftOver).toBeGreaterThan(0.5);
  });

  test('only a pack that is too short contradicts: a long one is never called wrong', () => {
    const pack = { lowMm: millimetres(850_000), valueMm: millimetres(870_000), highMm: millimetres(890_000) };
    const answers = packAgainstSpeeds(pack, stated(25 * 60));
    expect(answers.map((one) => [one.speed.inPerS, one.answer])).toEqual([
      [30, 'too-short'],
      [15, 'unexplained'],
      [7.5, 'unexplained'],
      [3.75, 'unexplained'],
      [1.875, 'unexplained'],
    ]);
  });

  test('a pack is too short only when even its longest is', () => {
    const pack = { lowMm: millimetres(850_000), valueMm: millimetres(860_000), highMm: millimetres(863_000) };
    expect(packAgainstSpeeds(pack, stated(18 * 60 + 52))[0]?.answer).toBe('agrees');
  });
});
