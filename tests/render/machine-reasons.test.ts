import { describe, expect, test } from 'vitest';
import { machinesTold } from '#render/views/machine-reasons.ts';
import { catalogueOf } from '../given/small-collection.ts';

const TAPE = `
  format: { width: 1/4 in, tracks: two-track stereo, speed: 15 in/s, equalisation: IEC, direction: one }
  pack: { wound-on: reel, reel-size: 10.5 in }`;
const MACHINE = `
  speeds: [15 in/s]
  equalisations: [{ speed: 15 in/s, curve: IEC }]
  tracks: [two-track stereo]
  largest-reel: 10.5 in
  takes: [reel]
  width: 1/4 in
  noise-reduction: none
  state: working`;

const toldOf = async (given: Readonly<Record<string, string>>) => {
  const [sheet] = (await catalogueOf(given)).reels;
  return machinesTold(sheet?.playing.verdicts ?? []);
};

describe('what a sheet says of the machines', () => {
  test('a machine that fits but for an unrecorded noise reduction plays it with care, and says why and what to do', async () => {
    const { machines, unknown } = await toldOf({ 'machines/desk': MACHINE, 'reels/a': TAPE });
    expect(unknown).toEqual([]);
    expect(machines[0]?.verdict.verdict).toBe('plays with care');
    const reason = machines[0]?.told.find(({ of }) => of === 'noise reduction');
    expect(reason?.verdict).toBe('not recorded');
    expect(reason?.says).toContain('not whether it plays');
    expect(reason?.says).toContain('capture it undecoded');
  });

  test('beside one that can’t, it is told with the one that plays only', async () => {
    const { machines } = await toldOf({
      'machines/attic': MACHINE.replace('[15 in/s]', '[7.5 in/s]'),
      'machines/desk': MACHINE,
      'reels/a': TAPE,
    });
    expect(
      machines.map(({ verdict, told }) => [verdict.verdict, told.some(({ of }) => of === 'noise reduction')]),
    ).toEqual([
      ['cannot', false],
      ['plays with care', true],
    ]);
  });

  test('what keeps every machine from being judged is told once, before them', async () => {
    const { machines, unknown } = await toldOf({
      'machines/attic': MACHINE,
      'machines/desk': MACHINE,
      'reels/a': TAPE.replace('speed: 15 in/s, ', ''),
    });
    expect(unknown.map(({ of }) => of)).toEqual(['speed', 'equalisation', 'noise reduction']);
    for (const { told } of machines) expect(told.map(({ of }) => of)).not.toContain('speed');
  });
});
