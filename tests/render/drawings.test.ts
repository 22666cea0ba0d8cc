import { describe, expect, test } from 'vitest';
import { type Day, day, type PartialDate } from '#model/dates.ts';
import { drawCurves } from '#render/drawings/curves.ts';
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

describe('figures under a strip', () => {
  const drawn = (last: number) =>
    String(
      drawStrip(
        [{ is: 'title', from: 0, to: last }],
        [
          { at: 0, words: '0:00' },
          { at: 1200, words: '20:00' },
          { at: last, words: 'end' },
        ],
        'A side',
      ),
    );

  test('one that has no room before the last isn’t shown on a telephone', () => {
    expect(drawn(1300)).toContain('class="tk mid wide"');
    expect(drawn(1800)).not.toContain('wide');
  });
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

describe('the picture of curves', () => {
  const line = (letter: string, ...levels: readonly number[]) => ({
    letter,
    points: levels.map((levelDb, at) => ({ frequencyHz: 20 * 1000 ** (at / (levels.length - 1)), levelDb })),
  });
  const draw = (...lines: readonly ReturnType<typeof line>[]) =>
    String(drawCurves({ lines, title: 'a < b', description: 'words', id: 'c' }));

  test('runs from 20 Hz to 20 kHz on a logarithmic axis, with 0 dB where it is', () => {
    const svg = draw(line('a', 0, 0, 6));
    // Three decades over 302 units: the middle, 632 Hz, lies half way.
    expect(svg).toMatch(/<path class="a" d="M34 (\d+(?:\.\d)?)L185 \1L336 18"\/>/);
    expect(/<path class="zero" d="M34 (\d+)/.exec(svg)?.[1]).toBe(/class="a" d="M34 (\d+)/.exec(svg)?.[1]);
  });

  test('has a title and a description, and its own words as text', () => {
    const svg = draw(line('a', 0, 1));
    expect(svg).toContain('aria-labelledby="c-t c-d"');
    expect(svg).toContain('<title id="c-t">a &lt; b</title><desc id="c-d">words</desc>');
    expect(svg).not.toContain('style=');
  });

  test('keeps the letters of lines that end together apart', () => {
    const heights = (svg: string) =>
      [...svg.matchAll(/<text class="n" x="352" y="([\d.]+)"/g)].map((match) => Number(match[1])).sort((a, b) => a - b);
    const apart = heights(draw(line('a', 0, -9), line('b', 0, -9), line('c', 0, -9), line('d', 3, -8.9)));
    expect(apart).toHaveLength(4);
    for (const [at, height] of apart.entries()) {
      if (at > 0) expect(height - (apart[at - 1] ?? 0)).toBeGreaterThanOrEqual(11.9);
      expect(height).toBeLessThanOrEqual(190);
    }
  });

  test('never makes a difference of nothing look like something', () => {
    const marks = [...draw(line('a', 0, 0.01)).matchAll(/<text class="y"[^>]*>([+−]?\d+)</g)];
    const levels = marks.map(([, words = '']) => Number(words.replace('−', '-')));
    expect(Math.max(...levels) - Math.min(...levels)).toBeGreaterThanOrEqual(3);
  });
});
