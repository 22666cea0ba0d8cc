import { describe, expect, test } from 'vitest';
import { planPlaying } from '#compute/plan/playing.ts';
import { LOOKED, only, planned, reel } from './a-day.ts';

describe('the order of a day', () => {
  test('is the soundest first, then one setting after the other, the baked tape last', async () => {
    const reels = await planned(
      {
        'reels/a-baked': reel(
          'gummy',
          `condition: [{ on: "2026-01-10", found: [sticky] }]
handling: [{ what: bake, on: "2026-03-30", temperature: 50 °C, duration: 36 h, ended: "2026-04-01T06:00" }]`,
        ),
        'reels/b-nab': reel('sound', LOOKED),
        'reels/c-iec': reel('sound', LOOKED, 'IEC'),
        'reels/d-nab': reel('sound', LOOKED),
      },
      '2026-04-01',
    );
    const plan = planPlaying(reels);
    expect(plan.play.map((one) => [one.reel.id, one.sameSettings])).toEqual([
      ['c-iec', false],
      ['b-nab', false],
      ['d-nab', true],
      ['a-baked', true],
    ]);
    expect(plan.leave).toEqual([]);
  });

  test('does not hang on the order in which the reels are named', async () => {
    const reels = await planned({
      'reels/a': reel('sound', LOOKED),
      'reels/b': reel('sound', LOOKED, 'IEC'),
      'reels/c': reel('sound', LOOKED),
    });
    expect(planPlaying(reels.toReversed()).play.map((one) => one.reel.id)).toEqual(
      planPlaying(reels).play.map((one) => one.reel.id),
    );
  });

  test('takes the time of the tapes, a line-up for each setting, and a slow wind where a tape lies tail out', async () => {
    const reels = await planned({ 'reels/a': reel('sound', LOOKED), 'reels/b': reel('sound', LOOKED) });
    const plan = planPlaying(reels);
    expect(plan.programmeS).toBe(2 * 20 * 60);
    // By hand: 40 min of tape, one line-up of 30 min, two runs at 15 min, two slow winds at 10 min.
    expect(plan.withSetUpS).toBe((40 + 30 + 2 * 15 + 2 * 10) * 60);
    expect(plan.timesSource).toContain('common practice, no source');
  });

  test('has no total while a length isn’t recorded', async () => {
    const reels = await planned({ 'reels/a': reel('sound', LOOKED).replace('length: "20:00"\n', '') });
    const plan = planPlaying(reels);
    expect(plan.play).toHaveLength(1);
    expect(plan.programmeS).toBeUndefined();
    expect(plan.withSetUpS).toBeUndefined();
  });
});

describe('what stays in its box', () => {
  test.each([
    ['nobody looked at it', reel('sound'), /Nobody has recorded its condition/],
    ['its stock isn’t known', reel('sound', LOOKED).replace('stock: sound\n', ''), /isn’t recorded/],
    [
      'it was found sticky',
      reel('sound', 'condition: [{ on: "2026-01-10", found: [sticky] }]'),
      /sticky on 2026-01-10/,
    ],
    ['it is mouldy', reel('sound', 'condition: [{ on: "2026-01-10", found: [mould] }]'), /mould on 2026-01-10/],
    ['its stock is of those that shed', reel('gummy', LOOKED), /marks? of the stocks that shed/],
    [
      'it smells of vinegar',
      reel('clear', 'condition: [{ on: "2026-01-10", found: [vinegar smell] }]'),
      /vinegar smell/,
    ],
    ['a splice fails', reel('sound', 'condition: [{ on: "2026-01-10", found: [splice failing] }]'), /splice failing/],
    ['it is lent', `status: lent\n${reel('sound', LOOKED)}`, /isn’t here: lent/],
  ])('a reel, because %s', async (_, entry, because) => {
    const plan = planPlaying(await planned({ 'reels/a': entry }));
    expect(plan.play).toEqual([]);
    const left = only(plan.leave);
    expect(left.because.join(' ')).toMatch(because);
    expect(left.takes.length).toBeGreaterThan(0);
  });

  test('a sound reel that no machine plays, with what each lacks', async () => {
    const plan = planPlaying(
      await planned({ 'reels/a': reel('sound', LOOKED).replace('width: 1/4 in', 'width: 1/2 in') }),
    );
    const left = only(plan.leave);
    expect(left.because).toContain('No machine here plays it.');
    expect(left.takes.join(' ')).toMatch(/guides and heads are for 1\/4 in/);
  });

  test('a reel whose curve can’t be told, rather than played on a guess', async () => {
    const plan = planPlaying(
      await planned({ 'reels/a': reel('sound', LOOKED, 'IEC').replace('speed: 15 in/s', 'speed: 30 in/s') }),
    );
    expect(plan.play).toEqual([]);
    expect(only(plan.leave).equalisation).toMatchObject({ known: false });
  });
});

describe('what may be played all the same', () => {
  test('an acetate tape with no smell, with care and never to be baked', async () => {
    const plan = planPlaying(await planned({ 'reels/a': reel('clear', LOOKED) }));
    const { reel: played } = only(plan.play);
    expect(played.may).toBe('with care');
    expect(played.bake.answer).toBe('never');
    expect(played.cautions.join(' ')).toMatch(/acetate/i);
  });

  const BAKED = reel(
    'gummy',
    `condition: [{ on: "2026-01-10", found: [sticky] }]
handling: [{ what: bake, on: "2026-03-31", temperature: 50 °C, duration: 10 h, ended: "2026-04-01T06:00" }]`,
  );

  test('a baked tape on the day on which its bake ended, with both practices named', async () => {
    const { reel: played } = only(planPlaying(await planned({ 'reels/a': BAKED }, '2026-04-01')).play);
    expect(played.may).toBe('with care');
    // By hand: 06:00 and 7 to 10 h; 06:00 on the first and 7 to 14 days.
    expect(played.because.join(' ')).toContain('by common practice it closes 2026-04-01 13:00 to 16:00');
    expect(played.because.join(' ')).toContain(
      'by a published practice it closes 2026-04-08 06:00 to 2026-04-15 06:00',
    );
  });

  test.each([
    ['2026-03-30', 'before its bake'],
    ['2026-04-03', 'when one of two practices has closed'],
    ['2026-05-03', 'when both have'],
  ])('not on %s, %s', async (today) => {
    expect(planPlaying(await planned({ 'reels/a': BAKED }, today)).play).toEqual([]);
  });
});

describe('the bench', () => {
  test('is told tail out, pancake, tones, noise reduction, splices and both directions', async () => {
    const entry = reel('sound', LOOKED)
      .replace('wound-on: reel, reel-size: 10.5 in', 'wound-on: bare hub, outside-diameter: 240 mm')
      .replace('tones: none', 'tones: [1 kHz, 10 kHz]')
      .replace('splices: none', 'splices: [{ at: "4:10", note: dry }]')
      .replace('direction: one', 'direction: both');
    const { steps, reel: played } = only(planPlaying(await planned({ 'reels/a': entry })).play);
    const told = steps.join('\n');
    expect(told).toMatch(/splices first: 4:10 dry/);
    expect(told).toMatch(/Pancake: flat between rigid plates/);
    expect(told).toMatch(/Tail out: wind it to its head once, slowly/);
    expect(told).toMatch(/own tones \(1 kHz, 10 kHz; 320 nWb\/m\)/);
    expect(told).toMatch(/two runs/);
    expect(played.runs).toBe(2);
  });

  test('is given the published capture format, every source of acclimatising, and what to do at a squeal', async () => {
    const plan = planPlaying(await planned({ 'reels/a': reel('sound', LOOKED) }));
    expect(plan.capture[0]?.says).toMatch(/96 kHz and 24 bit/);
    expect(plan.capture[0]?.source).toMatch(/IASA-TC 03 section 10/);
    expect(plan.acclimatising.length).toBeGreaterThanOrEqual(3);
    expect(plan.squeal[0]).toMatch(/^Stop at once/);
    expect(plan.cautions.join(' ')).toMatch(/played once, by the most experienced hands/);
  });

  test('plays on the longer of the stated length and the measured pack', async () => {
    const entry = reel('sound', LOOKED).replace(
      'reel-size: 10.5 in',
      'reel-size: 10.5 in, outside-diameter: 252 mm, hub-diameter: 100 mm',
    );
    const { reel: played } = only(planPlaying(await planned({ 'reels/a': entry })).play);
    // By hand: π(252² − 100²)/(4·0.050) = 840 437 mm at 381 mm/s.
    expect(played.runsS).toBeCloseTo(840_437 / 381, 0);
    expect(played.runsBy).toBe('by its pack; 20:00 stated');
  });
});
