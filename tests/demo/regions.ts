import type { Shot } from './shot.ts';

/** In pixels of the drawing. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Least side of a region, in parts of the picture's width: 24 px where the photograph is shown 328 px wide. */
const LEAST = 24.5 / 328;
const PAD = 8;

/** Where each piece of writing lies, as `xywh=percent:…`: with a little room round it, large enough to touch where its
 * cell allows, and clear of its neighbours where their writing allows. */
export function regionsOf(seen: readonly { text: Box; around: Box | undefined }[], shot: Shot): string[] {
  const boxes = seen.map(({ text, around }) => ({ text, box: roomy(text, around, shot) }));
  for (const [i, one] of boxes.entries()) {
    for (const other of boxes.slice(i + 1)) part(one, other);
  }
  return boxes.map(({ box }) => percentOf(box, shot));
}

interface Placed {
  readonly text: Box;
  box: Box;
}

function roomy(text: Box, cell: Box | undefined, { width, height }: Shot): Box {
  const least = LEAST * width;
  const grow = (low: number, high: number, from: number, to: number): [number, number] => {
    const want = Math.max(high - low + 2 * PAD, least);
    const start = Math.max(from, Math.min((low + high - want) / 2, to - want));
    // Never less than the writing itself, whatever the cell says.
    return [Math.min(start, low), Math.max(Math.min(start + want, to), high)];
  };
  const [left, right] = grow(text.left, text.right, cell?.left ?? 0, cell?.right ?? width);
  const [top, bottom] = grow(text.top, text.bottom, cell?.top ?? 0, cell?.bottom ?? height);
  return { left, top, right, bottom };
}

/** Two that overlap give way to each other, up to their own writing. */
function part(one: Placed, other: Placed): void {
  const [upper, lower] =
    one.text.top + one.text.bottom <= other.text.top + other.text.bottom ? [one, other] : [other, one];
  const across = Math.min(upper.box.right, lower.box.right) - Math.max(upper.box.left, lower.box.left);
  const down = upper.box.bottom - lower.box.top;
  if (across <= 0 || down <= 0) return;
  const line = Math.max(upper.text.bottom, Math.min((upper.box.bottom + lower.box.top) / 2, lower.text.top));
  upper.box = { ...upper.box, bottom: Math.max(upper.text.bottom, line) };
  lower.box = { ...lower.box, top: Math.min(lower.text.top, line) };
}

function percentOf(box: Box, { width, height }: Shot): string {
  const inTenths = (value: number, whole: number, round: (n: number) => number) =>
    round((Math.min(Math.max(value, 0), whole) / whole) * 1000);
  const x = inTenths(box.left, width, Math.floor);
  const y = inTenths(box.top, height, Math.round);
  const w = inTenths(box.right, width, Math.ceil) - x;
  const h = inTenths(box.bottom, height, Math.round) - y;
  return `xywh=percent:${[x, y, w, h].map((tenths) => tenths / 10).join(',')}`;
}
