/** What part of a photograph is shown: pixels of the canvas to a pixel of the photograph, and where its corner stands. */
export interface View {
  readonly scale: number;
  readonly x: number;
  readonly y: number;
}

/** Where the pixels come from: the large picture, or tiles of the whole photograph (IIIF Image API 3.0, level 0). */
export interface ZoomSource {
  readonly whole: string;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly tiles?: { readonly root: string; readonly tilePx: number; readonly scales: readonly number[] } | undefined;
}

export interface DrawnTile {
  readonly url: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** No nearer than eight pixels of the screen to one of the photograph: the grain of the paper, and then squares. */
const NEAREST = 8;
const FURTHEST = 0.02;

/** The whole photograph in the middle of a canvas. */
export function fitInside(source: ZoomSource, width: number, height: number): View {
  const scale = Math.min(width / source.widthPx, height / source.heightPx);
  return { scale, x: (width - source.widthPx * scale) / 2, y: (height - source.heightPx * scale) / 2 };
}

/** Nearer or further about a point of the canvas, which stays where it is. */
export function zoomedAt(view: View, x: number, y: number, factor: number): View {
  const scale = Math.min(NEAREST, Math.max(FURTHEST, view.scale * factor));
  const grown = scale / view.scale;
  return { scale, x: x - (x - view.x) * grown, y: y - (y - view.y) * grown };
}

export const panned = (view: View, x: number, y: number): View => ({ ...view, x: view.x + x, y: view.y + y });

/** The tiles that a view needs, coarsest first; without tiles the large picture by itself. */
export function tilesFor(source: ZoomSource, view: View, width: number, height: number): readonly DrawnTile[] {
  const whole = { url: source.whole, ...placed(view, 0, 0, source.widthPx, source.heightPx) };
  const { tiles } = source;
  if (tiles === undefined) return [whole];
  // The coarsest scale that still has a pixel for each of the canvas.
  const scale = Math.max(...tiles.scales.filter((one) => one <= Math.max(1, 1 / view.scale)));
  const step = tiles.tilePx * scale;
  const first = {
    x: Math.max(0, Math.floor(-view.x / view.scale / step)),
    y: Math.max(0, Math.floor(-view.y / view.scale / step)),
  };
  const last = {
    x: Math.min(Math.ceil(source.widthPx / step), Math.ceil((width - view.x) / view.scale / step)),
    y: Math.min(Math.ceil(source.heightPx / step), Math.ceil((height - view.y) / view.scale / step)),
  };
  const found: DrawnTile[] = [whole];
  for (let row = first.y; row < last.y; row += 1) {
    for (let column = first.x; column < last.x; column += 1) {
      const [x, y] = [column * step, row * step];
      const [w, h] = [Math.min(step, source.widthPx - x), Math.min(step, source.heightPx - y)];
      const size = `${Math.ceil(w / scale)},${Math.ceil(h / scale)}`;
      found.push({ url: `${tiles.root}/${x},${y},${w},${h}/${size}/0/default.jpg`, ...placed(view, x, y, w, h) });
    }
  }
  return found;
}

const placed = (view: View, x: number, y: number, width: number, height: number) => ({
  x: view.x + x * view.scale,
  y: view.y + y * view.scale,
  width: width * view.scale,
  height: height * view.scale,
});
