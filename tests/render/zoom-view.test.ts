import { describe, expect, test } from 'vitest';
import { fitInside, panned, tilesFor, zoomedAt } from '#render/client/zoom-view.ts';

const tiles = { root: '/p', tilePx: 1024, scales: [1, 2, 4] };
const source = { whole: '/p.jpg', widthPx: 4000, heightPx: 3000, tiles };

describe('a zoomed photograph', () => {
  test('fits whole and in the middle at first', () => {
    expect(fitInside(source, 1000, 1000)).toEqual({ scale: 0.25, x: 0, y: 125 });
  });

  test('comes nearer about the point pointed at, which stays where it is', () => {
    const before = fitInside(source, 1000, 1000);
    const after = zoomedAt(before, 500, 500, 2);
    const under = (view: typeof before) => [(500 - view.x) / view.scale, (500 - view.y) / view.scale];
    expect(under(after)).toEqual(under(before));
    expect(after.scale).toBe(0.5);
  });

  test('comes no nearer than eight pixels to one', () =>
    expect(zoomedAt({ scale: 8, x: 0, y: 0 }, 0, 0, 2).scale).toBe(8));

  test('asks for the coarsest tiles that still fill the screen', () => {
    const urls = tilesFor(source, fitInside(source, 1000, 1000), 1000, 1000).map((tile) => tile.url);
    expect(urls).toEqual(['/p.jpg', '/p/0,0,4000,3000/1000,750/0/default.jpg']);
  });

  test('asks only for the tiles in sight, cut at the photograph’s edge', () => {
    // At full size, with the photograph's last corner at the bottom right of the window.
    const view = panned({ scale: 1, x: 0, y: 0 }, 1000 - 4000, 1000 - 3000);
    const urls = tilesFor(source, view, 1000, 1000).map((tile) => tile.url);
    expect(urls).toEqual([
      '/p.jpg',
      '/p/2048,1024,1024,1024/1024,1024/0/default.jpg',
      '/p/3072,1024,928,1024/928,1024/0/default.jpg',
      '/p/2048,2048,1024,952/1024,952/0/default.jpg',
      '/p/3072,2048,928,952/928,952/0/default.jpg',
    ]);
  });

  test('without tiles is the large picture alone', () =>
    expect(tilesFor({ ...source, tiles: undefined }, { scale: 1, x: 5, y: 6 }, 100, 100)).toEqual([
      { url: '/p.jpg', x: 5, y: 6, width: 4000, height: 3000 },
    ]));
});
