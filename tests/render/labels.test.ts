import jsQR from 'jsqr';
import { describe, expect, test } from 'vitest';
import { idSquare } from '#render/drawings/id-square.ts';
import { labelsOf } from '#render/views/labels.ts';
import { catalogueOf } from '../given/small-collection.ts';

/** The drawing as pixels, `scale` to a module, as a camera would hand it over. */
function pixelsOf(svg: string, scale = 4) {
  const side = Number(/viewBox="0 0 (\d+)/.exec(svg)?.[1]) * scale;
  const pixels = new Uint8ClampedArray(side * side * 4).fill(255);
  for (const [, x = '', y = '', width = ''] of svg.matchAll(/M(\d+) (\d+)h(\d+)v1/g)) {
    for (let row = Number(y) * scale; row < (Number(y) + 1) * scale; row++)
      for (let at = Number(x) * scale; at < (Number(x) + Number(width)) * scale; at++)
        pixels.fill(0, (row * side + at) * 4, (row * side + at) * 4 + 3);
  }
  return { pixels, side };
}

describe('the square of a label', () => {
  test.each(['low-water-side-1', 'a', 'x'.repeat(200)])('another reader reads %s from it', (id) => {
    const { pixels, side } = pixelsOf(String(idSquare(id, id)));
    const read = (jsQR as unknown as typeof jsQR.default)(pixels, side, side);
    expect(read?.data).toBe(id);
  });
});

describe('the labels', () => {
  test('are for what is held or lent, and say nothing of places, people and prices', async () => {
    const catalogue = await catalogueOf({
      'reels/a':
        'title: Low Water\nside: "1"\nnumbers: { catalogue: [HLX 1] }\nplace: { shelf: SECRET }\nclient: SECRET client',
      'reels/b': 'status: gone',
      'reels/c': 'status: lent',
    });
    const labels = labelsOf(catalogue);
    expect(labels.map(({ id }) => id)).toEqual(['a', 'c']);
    expect(JSON.stringify(labels)).not.toContain('SECRET');
    expect(labels[0]).toEqual({ id: 'a', title: 'Low Water', side: '1', kind: '', numbers: ['HLX 1'] });
  });
});
