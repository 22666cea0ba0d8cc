import { describe, expect, test } from 'vitest';
import { dossierOf, textsIn } from '../../given/share-of.ts';
import { catalogueOf } from '../../given/small-collection.ts';

const REEL = `
  length: "8:00"
  client: Hollin Overseas
  recorded: { on: "1978-02-09", by: T.K. }
  place: { shelf: C2 }
  contents: [{ title: Low Water, note: a cough at the start }]
  cuts: [{ number: "1", by: A.V. }]`;

const told = async (share: string, more: Record<string, string> = {}, reel = REEL) =>
  dossierOf(await catalogueOf({ 'reels/a': reel, ...more, 'shares/one': `title: One\nreels: [a]\n${share}` }), 'one');

describe('what a share names', () => {
  test('is shown beside what its audience sees', async () => {
    const { dossier, plan } = await told('for: friend\nshows: [cuts, recorded.on]');
    expect(textsIn(dossier)).toContain('A.V.');
    expect(textsIn(dossier)).toContain('1978-02-09');
    expect(textsIn(dossier)).not.toContain('T.K.');
    expect(plan.shown.join()).toContain('recorded.on');
  });

  test('shows a note only when the share names it', async () => {
    expect(textsIn((await told('for: friend')).dossier)).not.toContain('cough');
    expect(textsIn((await told('for: friend\nshows: [contents.note]')).dossier)).toContain('cough');
  });

  test('is not shown when it is private, and the plan says so', async () => {
    const { dossier, plan } = await told('for: friend\nshows: [place]');
    expect(textsIn(dossier)).not.toContain('C2');
    expect(plan.refused).toEqual(['place']);
  });

  test('is shown when the share means to', async () => {
    const { dossier, plan } = await told('for: friend\nshows-private: [place]');
    expect(textsIn(dossier)).toContain('C2');
    expect(plan.privateShown).toEqual(['place']);
  });

  test('must be a key that there is', async () => {
    expect((await told('for: friend\nshows: [custard, cuts]')).plan.unknown).toEqual(['custard']);
  });
});

describe('what the owner made private', () => {
  test('stays out of a share that would show it, from the reel or from the collection', async () => {
    expect(textsIn((await told('for: valuer', {}, `${REEL}\nprivate: [client]`)).dossier)).not.toContain('Hollin');
    expect(textsIn((await told('for: valuer', { collection: 'private: [client]' })).dossier)).not.toContain('Hollin');
    expect(textsIn((await told('for: valuer')).dossier)).toContain('Hollin');
  });

  test('keeps a photograph back that shows it', async () => {
    const reel = `
      client: Hollin Overseas
      private: [client]
      photos: [{ file: front.jpg, shows: box front }, { file: spine.jpg, shows: spine }]
      readings: [{ of: client, photo: front.jpg, region: "xywh=percent:1,1,9,9", written: Hollin }]`;
    const { plan, originals } = await told('for: valuer', { 'reels/a/front.jpg': '', 'reels/a/spine.jpg': '' }, reel);
    expect(plan).toMatchObject({ photographs: 1, photographsHeldBack: 1 });
    expect([...originals.values()]).toEqual(['reels/a/spine.jpg']);
  });

  test('hides a title too', async () => {
    const { dossier } = await told('for: valuer', {}, 'title: Low Water\nprivate: [title]');
    expect(textsIn(dossier)).not.toContain('Low Water');
  });
});

describe('what the program says in a dossier', () => {
  const PAIR = {
    'reels/b': 'set: low\nside: "2"\nkind: copy master\nnumbers: { matrix: [HLX 9999-B] }',
    'shares/both': 'title: Both\nfor: valuer\nreels: [a, b]',
    'shares/engineer': 'title: Bench\nfor: engineer\nreels: [a, b]',
    'shares/friend': 'title: Friend\nfor: friend\nreels: [a, b]',
  };
  const SIDE_1 = 'set: low\nside: "1"\nkind: copy master\nnumbers: { matrix: [HLX 2207-A] }';

  test('a disagreement between two reels shown is told', async () => {
    const whole = await catalogueOf({ 'reels/a': SIDE_1, ...PAIR });
    expect(whole.problems.map((problem) => problem.code)).toContain('number/sides-differ');
    const told = dossierOf(whole, 'both').dossier.reduced.reels.flatMap((sheet) =>
      sheet.problems.map((problem) => problem.code),
    );
    expect(told).toContain('number/sides-differ');
    const friend = dossierOf(whole, 'friend').dossier.reduced.reels.flatMap((sheet) => sheet.problems);
    expect(friend).toEqual([]);
  });

  test('nothing is told to be missing that is only left out', async () => {
    const { dossier } = await told('for: engineer');
    const [sheet] = dossier.reduced.reels;
    expect(sheet?.missing).not.toContain('recorded.on');
    expect(sheet?.missing).toContain('format.speed');
    expect(sheet?.problems.map((problem) => problem.code)).not.toContain('set/side-missing');
  });

  test('a reel whose other side is not part of the share is not said to lack it', async () => {
    const whole = await catalogueOf({
      'reels/a': SIDE_1,
      ...PAIR,
      'shares/one': 'title: One\nfor: valuer\nreels: [a]',
    });
    const { dossier } = dossierOf(whole, 'one');
    expect(dossier.reduced.reels[0]?.problems.map((problem) => problem.code)).toEqual([]);
    expect(textsIn(dossier)).not.toContain('9999');
  });

  test('a risk that rests on a fact left out is told with its cautions, without the fact', async () => {
    const reel = 'condition: [{ on: "2026-03", by: owner, found: [mould] }]';
    const { dossier } = await told('for: researcher', {}, reel);
    const mould = dossier.reduced.reels[0]?.findings.find((finding) => finding.rule === 'mould');
    expect(mould).toMatchObject({
      outcome: 'at-risk',
      because: 'It rests on facts that are not part of this dossier.',
    });
    expect(mould?.cautions.length).toBeGreaterThan(0);
  });

  test('a share that has ended is known to have', async () => {
    expect((await told('for: friend\nuntil: "2026-03-31"')).plan.ended).toBe(true);
    expect((await told('for: friend\nuntil: "2026-04-01"')).plan.ended).toBe(false);
    expect((await told('for: friend')).plan.ended).toBe(false);
  });
});

describe('the playing plan in an engineer’s dossier', () => {
  const SOUND = `
    format: { width: 1/4 in, tracks: two-track stereo, speed: 15 in/s, equalisation: NAB, noise-reduction: none, tones: [1 kHz, 10 kHz] }
    pack: { wound-on: reel, reel-size: 10.5 in, wind: tail out }
    length: "18:00"
    stock: plain
    splices: none
    condition: [{ on: "2026-03-02", by: owner, found: [none] }]`;
  const MORE = {
    'stocks/plain': 'base: polyester\nbinder: other\nback-coated: no\nknown-to-shed: no',
    'machines/m': `
      title: The desk machine
      speeds: [15 in/s]
      equalisations: [{ speed: 15 in/s, curve: NAB }]
      tracks: [two-track stereo]
      width: 1/4 in
      takes: [reel]
      largest-reel: 10.5 in
      state: working
      belongs-to: A neighbour`,
    'machines/other': 'title: The attic machine\nspeeds: [3.75 in/s]',
  };
  const planned = async (share: string, reel = SOUND) => (await told(share, MORE, reel)).dossier;

  test('is the owner’s own, with the machine by its title and not by whose it is', async () => {
    const dossier = await planned('for: engineer');
    expect(dossier.plan?.playing.play.map(({ reel, machine }) => [reel.id, machine?.title])).toEqual([
      ['reel-1', 'The desk machine'],
    ]);
    expect(dossier.plan?.playing.play[0]?.steps.join()).toContain('its own tones (1 kHz, 10 kHz; ');
    expect(textsIn(dossier)).not.toMatch(/neighbour|attic/);
  });

  test('leaves a reel off whose condition is no part of the share, instead of taking it for sound', async () => {
    expect((await planned('for: engineer', `${SOUND}\n    private: [condition]`)).plan).toBeUndefined();
    expect((await planned('for: friend\nshows: [playing]')).plan).toBeUndefined();
  });

  test('leaves a reel off that isn’t here, which the reader isn’t told', async () => {
    const whole = await catalogueOf({
      ...MORE,
      'reels/a': SOUND,
      'reels/b': `${SOUND}\n    status: missing`,
      'shares/one': 'for: engineer\nreels: [a, b]',
    });
    const { plan } = dossierOf(whole, 'one').dossier;
    expect(plan?.playing.play.map(({ reel }) => reel.id)).toEqual(['reel-1']);
    expect(plan?.notOnIt).toEqual(['reel-2']);
  });
});

describe('what the owner accepted', () => {
  const REELS = {
    'reels/a': `
      contents: [{ title: Low Water, length: "4:00" }, { title: Marram, length: "3:00" }]
      length: "9:30"
      gaps: none
      accepted: [{ code: time/contents-sum, why: the label counts the leader, on: "2026-03" }]`,
  };
  const accepted = async (share: string) => (await told(share, {}, REELS['reels/a'])).dossier;

  test('stays out, and so does what was said of it', async () => {
    const dossier = await accepted('for: valuer');
    expect(textsIn(dossier)).not.toContain('the label counts the leader');
    expect(dossier.reduced.reels.flatMap((sheet) => sheet.problems.map((problem) => problem.code))).not.toContain(
      'time/contents-sum',
    );
  });

  test('is shown with its reason where the share means to, and with the sentence where that may be told', async () => {
    const dossier = await accepted('for: valuer\nshows-private: [accepted]');
    expect(dossier.reduced.accepted.map(({ problem, why }) => [problem.code, why])).toEqual([
      ['time/contents-sum', 'the label counts the leader'],
    ]);
    const friend = await accepted('for: friend\nshows-private: [accepted]');
    expect(friend.reduced.accepted).toEqual([]);
    expect(friend.reduced.reels[0]?.reel.accepted.map(({ code, why }) => [code.value, why?.value])).toEqual([
      ['time/contents-sum', 'the label counts the leader'],
    ]);
  });
});
