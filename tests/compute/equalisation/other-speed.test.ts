import { describe, expect, test } from 'vitest';
import { positionAtSpeed } from '#compute/equalisation/other-speed.ts';
import { constantsInWords, timeConstants } from '#compute/equalisation/time-constants.ts';
import { halfSpeedCut } from '#compute/record-side/half-speed.ts';
import { inchesPerSecond, revolutionsPerMinute, seconds } from '#model/units.ts';
import { reckoned } from '../../given/reckoned.ts';
import { rows } from '../../tables/published.ts';

const halved = (lowUs: number, highUs: number, inPerS: number) =>
  positionAtSpeed(timeConstants(lowUs, highUs), inchesPerSecond(inPerS), inchesPerSecond(inPerS / 2));

describe('a tape at half its speed', () => {
  test.each(rows('C-345'))(
    '$id $inputs.recorded is just $expected.standardPosition ($source)',
    async ({ expected }) => {
      const { wanted, exact } = halved(Infinity, 17.5, 30);
      expect(wanted).toEqual({ lowUs: Infinity, highUs: 35 });
      expect(exact.map((curve) => curve.name)).toContain('IEC');
      const cut = halfSpeedCut(inchesPerSecond(30), revolutionsPerMinute(100 / 3), seconds(1132));
      expect(cut.recordTimeConstantsUs).toEqual(expected['cutterConstants_us']);
      const args = ['--speed', '30 in/s', '--rpm', '33⅓', '--duration', '18:52', '--equalisation', 'AES'];
      const { json, text } = await reckoned('half-speed', args);
      expect(json['value']).toMatchObject({ 'tape-time-constants': ['inf', 35] });
      expect(json['standard-positions']).toContain(expected['standardPosition']);
      expect(text).toContain('decoder made for full speed is wrong at half speed');
    },
  );

  test.each(rows('C-346'))('$id $inputs.recorded has no position at all ($source)', ({ expected }) => {
    const { wanted, exact } = halved(3180, 50, 15);
    expect([wanted.lowUs, wanted.highUs]).toEqual(expected['replayConstants_us']);
    expect(exact).toEqual([]);
  });

  test.each(rows('C-347'))('$id $inputs.recorded is near one that is no more ($source)', ({ expected }) => {
    const { wanted, exact, sameTreble } = halved(Infinity, 70, 7.5);
    expect(constantsInWords(wanted)).toBe('∞/140 µs');
    expect(exact).toEqual([]);
    expect(sameTreble.map((curve) => `${curve.lowUs}/${curve.highUs} (${curve.called})`)).toEqual([
      '3180/140 (IEC (1962 to 1968))',
    ]);
    expect(expected['nearDeprecated']).toContain('3180/140');
  });

  test('15 in/s IEC at 7½ is just IEC', () => {
    expect(halved(Infinity, 35, 15).exact.map((curve) => curve.name)).toContain('IEC');
  });
});
