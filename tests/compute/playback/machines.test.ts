import { describe, expect, test } from 'vitest';
import { headFit } from '#compute/playback/head-fit.ts';
import { playingOf } from '#compute/playback/machines.ts';
import type { CurveName, Equalisation } from '#model/equalisation.ts';
import type { Machine } from '#model/machine.ts';
import type { Reel, ReelFormat } from '#model/reel.ts';
import { inches, inchesPerSecond, micrometres, microseconds, seconds } from '#model/units.ts';
import type { TrackFormat } from '#model/words.ts';
import { date, known, machine, none, reel, stock } from '../../given/entries.ts';

const place = { file: 'given.md', line: 1, column: 1, field: '' };
const speed = (inPerS: number) => known(inchesPerSecond(inPerS), `${inPerS} in/s`);
const size = (count: number) => known({ value: inches(count) }, `${count} in`);
const named = (name: CurveName): Equalisation => ({ is: 'name', name });
const position = (inPerS: number, name: CurveName) => ({
  place,
  speed: speed(inPerS),
  curve: known(named(name), name),
});

const quarterInch = (facts: Partial<Machine> = {}): Machine =>
  machine('desk', {
    speeds: known([speed(7.5), speed(15)]),
    equalisations: known([position(15, 'IEC'), position(15, 'NAB'), position(7.5, 'IEC')]),
    tracks: known([known<TrackFormat>('two-track stereo')]),
    largestReel: size(10.5),
    takes: known([known('reel'), known('bare hub')]),
    widths: known([size(0.25)]),
    noiseReduction: none,
    state: known('working'),
    ...facts,
  });

const FORMAT: ReelFormat = {
  width: size(0.25),
  tracks: known<TrackFormat>('two-track stereo'),
  speed: speed(15),
  equalisation: known(named('NAB'), 'NAB'),
  direction: known('one'),
  noiseReduction: none,
};
const tape = (format: Partial<ReelFormat> = {}, facts: Partial<Reel> = {}): Reel =>
  reel('tape', {
    format: { ...FORMAT, ...format },
    pack: { woundOn: known('reel'), reelSize: size(10.5) },
    durationS: known(seconds(1200), '20:00'),
    ...facts,
  });

const on = (one: Reel, player: Machine = quarterInch(), tapeStock = stock('any')) => {
  const verdict = playingOf(one, [player], tapeStock).verdicts[0];
  if (verdict === undefined) throw new Error('no verdict');
  return verdict;
};
const of = (verdict: ReturnType<typeof on>, respect: string) => verdict.reasons.find((reason) => reason.of === respect);

describe('playingOf', () => {
  test('a tape that fits in every respect plays', () => {
    expect(on(tape()).verdict).toBe('plays');
  });

  test('without any machine there is no verdict, and what one must have is said all the same', () => {
    const { verdicts, needs } = playingOf(tape(), [], undefined);
    expect(verdicts).toEqual([]);
    expect(needs).toContainEqual({ of: 'equalisation', needs: 'NAB, 3180/50 µs', known: true });
  });

  test.each(['width', 'tracks', 'speed', 'equalisation', 'direction'] as const)(
    'a tape whose %s nobody recorded never plays',
    (key) => {
      const halfTrack = { tracks: known<TrackFormat>('half-track mono') };
      const { [key]: _left, ...format } = { ...FORMAT, ...halfTrack };
      const full = quarterInch({ tracks: known([known<TrackFormat>('full-track mono')]) });
      expect(on(tape({}, { format }), full).verdict).toBe('not recorded');
    },
  );

  test('a tape whose noise reduction nobody recorded never plays without care', () => {
    const { noiseReduction: _left, ...format } = FORMAT;
    expect(on(tape({}, { format })).verdict).toBe('plays with care');
  });

  test.each(['speeds', 'equalisations', 'tracks', 'largestReel', 'takes', 'widths', 'state'] as const)(
    'a machine whose %s nobody recorded plays nothing for sure',
    (key) => {
      const { [key]: _left, ...rest } = quarterInch();
      expect(on(tape(), rest).verdict).toBe('not recorded');
    },
  );

  test('one thing that cannot be outweighs what is not known', () => {
    const { tracks: _left, ...rest } = quarterInch({ widths: known([size(0.5)]) });
    expect(on(tape(), rest)).toMatchObject({ verdict: 'cannot' });
  });

  test('a machine that needs work cannot, and one that nobody tried is not known', () => {
    expect(on(tape(), quarterInch({ state: known('needs work') })).verdict).toBe('cannot');
    expect(on(tape(), quarterInch({ state: known('not tried') })).verdict).toBe('not recorded');
  });

  test('a noise reduction that the machine lacks is played with care and decoded later', () => {
    const coded = tape({ noiseReduction: known('Hushbox A') });
    expect(on(coded)).toMatchObject({ verdict: 'plays with care' });
    expect(on(coded, quarterInch({ noiseReduction: known([known('hushbox-a')]) })).verdict).toBe('plays');
  });

  test('early tape of 6.5 mm runs in a quarter-inch machine', () => {
    expect(of(on(tape({ width: known({ value: inches(6.5 / 25.4) }, '6.5 mm') })), 'width')?.verdict).toBe('plays');
  });
});

describe('equalisation', () => {
  const onlyIec = quarterInch({ equalisations: known([position(15, 'IEC')]) });

  test('another curve plays with care, and says by how many dB: 15 in/s NAB on IEC', () => {
    const reason = of(on(tape(), onlyIec), 'equalisation');
    expect(reason).toMatchObject({ verdict: 'plays with care', needs: 'NAB, 3180/50 µs', has: ['IEC'] });
    // Worked by hand from the formula of IEC 60094-1. NAB less IEC at 40 Hz: 10·log(1 + 1/(2π·40·0.00318)²) = 4.092 dB,
    // the treble terms under 0.001 dB. At 1 kHz: 0.011 − 0.409 + 0.205 = −0.193 dB. Relative to 1 kHz: 4.28 dB, more
    // than the 2.79 dB at 20 kHz.
    expect(reason?.says).toContain('4.3 dB');
  });

  test('IEC at 30 in/s without a year is not recorded; with 1990 it is 17.5 µs', () => {
    const fast = quarterInch({ speeds: known([speed(30)]), equalisations: known([position(30, 'AES')]) });
    const iec = { speed: speed(30), equalisation: known(named('IEC'), 'IEC') };
    expect(of(on(tape(iec), fast), 'equalisation')?.verdict).toBe('not recorded');
    const dated = tape(iec, { recorded: known({ on: known(date('1990-01-01', '1990-12-31')) }) });
    expect(of(on(dated, fast), 'equalisation')?.verdict).toBe('plays');
  });
});

describe('another speed', () => {
  const aes = tape({ speed: speed(30), equalisation: known(named('AES'), 'AES') });

  test('30 in/s AES at 15 is exact on IEC, and takes twice the time (published: 17.5 × 2 = 35)', () => {
    const { verdict, otherSpeeds } = on(aes);
    expect(verdict).toBe('cannot');
    expect(otherSpeeds).toMatchObject([
      { ratio: 0.5, curve: 'IEC', exact: true, worstDb: 0, takesS: 2400 },
      { ratio: 0.5, curve: 'NAB', exact: false },
    ]);
    expect(otherSpeeds[0]?.says).toContain('octave low');
    expect(otherSpeeds[1]?.worstDb).toBeGreaterThan(2);
  });

  test('15 in/s NAB at 7½ wants 6360/100 µs, which no position has (published rows 070 to 073, 346)', () => {
    const slow = quarterInch({ speeds: known([speed(7.5)]), equalisations: known([position(7.5, 'NAB')]) });
    const [half] = on(tape(), slow).otherSpeeds;
    expect(half).toMatchObject({ exact: false, curve: 'NAB' });
    expect(half?.says).toContain('6360/100 µs');
  });

  test('7½ in/s NAB at double speed wants 1590/25 µs, and loses its top', () => {
    const fast = quarterInch({ speeds: known([speed(15)]) });
    const [first] = on(tape({ speed: speed(7.5) }), fast).otherSpeeds;
    expect(first?.says).toContain('1590/25 µs');
    expect(first?.says).toContain('octave up');
    expect(first?.takesS).toBe(600);
  });

  test('time constants written out match as well as a name', () => {
    const constants = known<Equalisation>({
      is: 'time-constants',
      lowUs: microseconds(Number.POSITIVE_INFINITY),
      highUs: microseconds(17.5),
    });
    expect(on(tape({ speed: speed(30), equalisation: constants })).otherSpeeds[0]).toMatchObject({
      exact: true,
      curve: 'IEC',
    });
  });

  test('is not offered where the tape’s own speed is there, nor where its curve is not known', () => {
    expect(on(tape()).otherSpeeds).toEqual([]);
    const { equalisation: _left, ...format } = { ...FORMAT, speed: speed(30) };
    expect(on(tape({}, { format })).otherSpeeds).toEqual([]);
  });
});

describe('carriage', () => {
  const pancake = (across: number) => tape({}, { pack: { woundOn: known('bare hub'), outsideDiameter: size(across) } });

  test('a pancake needs a plate and adaptor (common practice, no source)', () => {
    expect(of(on(pancake(10)), 'carrier')).toMatchObject({ verdict: 'plays' });
    expect(of(on(pancake(10)), 'carrier')?.says).toContain('plate and an adaptor');
    expect(on(pancake(10), quarterInch({ takes: known([known('reel')]) })).verdict).toBe('cannot');
  });

  test('a tape larger than the largest reel says the length that fits, and not to cut it', () => {
    const thick = stock('thick', { thickness: known({ value: micrometres(52) }) });
    const reason = of(on(pancake(12.5), quarterInch(), thick), 'size');
    expect(reason?.verdict).toBe('cannot');
    expect(reason?.says).toMatch(/holds \d+ m surely and \d+ m at the most/);
    expect(reason?.says).toContain('Don’t cut the tape');
    expect(of(on(pancake(12.5)), 'size')?.says).toContain('isn’t known without the tape’s total thickness');
  });

  test('no limit of a home machine is assumed: what it takes decides', () => {
    expect(of(on(pancake(12.5), quarterInch({ largestReel: size(14) })), 'size')?.verdict).toBe('plays');
  });
});

describe('heads', () => {
  test.each([
    ['half-track mono', 'both', 'full-track mono', 'cannot'],
    ['half-track mono', 'one', 'full-track mono', 'plays with care'],
    ['quarter-track stereo', 'both', 'two-track stereo', 'cannot'],
    ['full-track mono', 'one', 'two-track stereo', 'plays with care'],
  ] as const)('%s, %s direction, on a %s head: %s (published rows 289 to 292)', (recorded, running, head, verdict) => {
    expect(headFit(recorded, running, head)?.verdict).toBe(verdict);
  });

  test('the better of two heads decides', () => {
    const heads = known([known<TrackFormat>('full-track mono'), known<TrackFormat>('half-track mono')]);
    const both = tape({ tracks: known<TrackFormat>('half-track mono'), direction: known('both') });
    expect(of(on(both, quarterInch({ tracks: heads })), 'tracks')?.verdict).toBe('plays');
  });
});
