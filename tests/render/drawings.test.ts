import { describe, expect, test } from 'vitest';
import { type Day, day, type PartialDate } from '#model/dates.ts';
import { custodyStrip } from '#render/drawings/custody.ts';
import { drawPack } from '#render/drawings/pack.ts';
import { drawSideSign } from '#render/drawings/side-sign.ts';
import { drawStrip } from '#render/drawings/strip.ts';

describe('the pack', () => {
  const words = { hub: '100 mm', outside: '260 mm', title: 'the pack' };
  const svg = String(drawPack({ hubMm: 100, measuredMm: 260, workedMm: 262, words }));

  test('is drawn in millimetres: hub, measured and worked diameter at true radius', () => {
    expect(svg).toContain('<circle r="50" class="hub"/>');
    expect(svg).toContain('<circle r="130" class="meas"/>');
    expect(svg).toContain('<circle r="131" class="work"/>');
  });

  test('its wound tape is a ring from the hub to the outside', () => {
    // The middle of the ring is (50 + 130) / 2, and it is 130 − 50 wide.
    expect(svg).toContain('<circle r="90" class="wound" stroke-width="80"/>');
  });

  test('a diameter that nobody measured is a broken line', () => {
    const worked = String(drawPack({ hubMm: 100, workedMm: 262, words }));
    expect(worked).toContain('<circle r="131" class="lost"/>');
    expect(worked).not.toContain('class="meas"');
  });

  test('without an outside diameter there is nothing to draw', () =>
    expect(drawPack({ hubMm: 100, words })).toBeUndefined());
});

describe('the side strip', () => {
  const svg = String(
    drawStrip(
      [
        { is: 'title', from: 0, to: 250, words: '1' },
        { is: 'asked gap', from: 250, to: 250 },
        { is: 'title', from: 250, to: 990, words: '2' },
        { is: 'run-out', from: 990, to: 1000 },
      ],
      [{ at: 0, words: '0:00' }],
      'a side',
    ),
  );

  test('is to scale in percent', () => {
    expect(svg).toContain('<rect class="t" x="0%" y="12" width="25%" height="42"/>');
    expect(svg).toContain('<rect class="t" x="25%" y="12" width="74%" height="42"/>');
    expect(svg).toContain('<rect class="ro" x="99%" y="12" width="1%" height="42" fill="url(#hatch)"/>');
  });

  test('marks a gap that nobody stated', () => expect(svg).toContain('<line class="ask" x1="25%" x2="25%"'));
  test('has no style attribute, which the policy forbids', () => expect(svg).not.toContain('style='));
});

describe('the custody strip', () => {
  const today = day('2026-11-24');
  const year = (from: string, to = from): PartialDate => ({
    earliest: `${from}-01-01` as Day,
    latest: `${to}-12-31` as Day,
    uncertain: false,
    approximate: false,
    openStart: false,
    openEnd: false,
    unknownStart: false,
    unknownEnd: false,
    season: null,
  });

  test('years between two holders are shown as not known', () => {
    const strip = custodyStrip(
      [
        { words: 'A studio', from: year('1977'), until: year('1994') },
        { words: 'the owner', from: year('2011'), until: undefined },
      ],
      today,
    );
    expect(strip?.stretches.map((one) => [one.is, one.words])).toEqual([
      ['title', 'A studio'],
      ['unknown', 'not known'],
      ['title', 'the owner'],
    ]);
    expect(strip?.ticks.map((tick) => tick.words)).toEqual(['1977', '1994', '2011', '2026']);
  });

  test('one holder after another leaves no gap', () => {
    const strip = custodyStrip(
      [
        { words: 'A', from: year('1977'), until: year('1994') },
        { words: 'B', from: year('1994'), until: undefined },
      ],
      today,
    );
    expect(strip?.stretches.map((one) => one.is)).toEqual(['title', 'title']);
  });

  test('the last holder that let it go leaves the years since open', () => {
    const strip = custodyStrip([{ words: 'A', from: year('1977'), until: year('1994') }], today);
    expect(strip?.stretches.map((one) => one.is)).toEqual(['title', 'unknown']);
  });

  test('nothing is drawn where no holder is dated', () =>
    expect(custodyStrip([{ words: 'A', from: undefined, until: undefined }], today)).toBeUndefined());
});

test.each([
  ['held', 'wound'],
  ['missing', 'lost'],
  ['destroyed', 'gone'],
] as const)('the sign of a reel that is %s has its own silhouette', (status, part) =>
  expect(String(drawSideSign(status))).toContain(`class="${part}"`),
);
