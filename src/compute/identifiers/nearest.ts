import { LONGEST_PLAIN } from './indexed-forms.ts';
import type { Masks } from './masks.ts';
import type { OpenIndex } from './open-index.ts';

/** Every plain form within so many edits of a question: the plain form and its distance, two figures for each.
 *
 * Levenshtein's distance, one row a character of the plain form, and only the cells within `most` of the diagonal. Rows
 * of a shared beginning are kept; once every cell of a row is past `most`, all plain forms with that beginning are.
 */
export function findNearest(index: OpenIndex, masks: Masks, most: number): readonly number[] {
  const { starts, shared, codes, plains } = index;
  const width = masks.length + 1;
  const deepest = Math.min(LONGEST_PLAIN, masks.length + most);
  const rows = new Uint8Array((deepest + 1) * width).fill(most + 1);
  for (let cell = 0; cell < width; cell += 1) rows[cell] = Math.min(cell, most + 1);
  const found: number[] = [];
  let lostAt = LONGEST_PLAIN + 1;
  for (let at = 0; at < plains.length; at += 1) {
    let depth = shared[at] ?? 0;
    if (depth >= lostAt) continue;
    lostAt = LONGEST_PLAIN + 1;
    const start = starts[at] ?? 0;
    const length = (starts[at + 1] ?? 0) - start;
    while (depth < length) {
      const near = depth < deepest && fillRow(rows, depth, width, most, masks.fits[codes[start + depth] ?? 0] ?? 0);
      depth += 1;
      if (near) continue;
      lostAt = depth;
      break;
    }
    if (lostAt <= length || length > deepest) continue;
    const distance = rows[length * width + width - 1] ?? most + 1;
    if (distance <= most) found.push(at, distance);
  }
  return found;
}

/** Fills the row below `depth`; whether any of its cells is still near. */
function fillRow(rows: Uint8Array, depth: number, width: number, most: number, fits: number): boolean {
  const above = depth * width;
  const row = above + width;
  const from = Math.max(0, depth + 1 - most);
  const to = Math.min(width - 1, depth + 1 + most);
  let least = most + 1;
  if (from > 0) rows[row + from - 1] = most + 1;
  for (let cell = from; cell <= to; cell += 1) {
    const over = (rows[above + cell] ?? 0) + 1;
    const left = cell === 0 ? over : (rows[row + cell - 1] ?? 0) + 1;
    const across = cell === 0 ? over : (rows[above + cell - 1] ?? 0) + ((fits >> (cell - 1)) & 1 ? 0 : 1);
    const value = Math.min(over, left, across, most + 1);
    rows[row + cell] = value;
    if (value < least) least = value;
  }
  if (to + 1 < width) rows[row + to + 1] = most + 1;
  return least <= most;
}
