import { LONGEST_PLAIN } from './indexed-forms.ts';
import type { Masks } from './masks.ts';
import type { OpenIndex } from './open-index.ts';

/** Where a question was found in plain forms: three figures for each, see `FOUND`. */
export type Fitting = readonly number[];

/** A found place takes three figures of a Fitting: the plain form, the character after the found stretch, and whether
 *  one character of it was misread (1) or none (0). */
export const FOUND = 3;

/** Every plain form in which the question stands, or stands with one easily misread character.
 *
 * The bit-parallel walk of Baeza-Yates and Gonnet (1992) with one substitution after Wu and Manber (1992), over all plain
 * forms at once: bit p of `exact` says that the question's first p + 1 characters end here. The bits at each depth are
 * kept, and a plain form starts from those of the beginning that it shares with the one before.
 */
export function findFitting({ starts, shared, codes, plains }: OpenIndex, masks: Masks): Fitting {
  const { fits, misread, thenAny, last } = masks;
  // At each depth of the plain form at hand: both sets of bits, and where each was first complete.
  const exactAt = new Int32Array(LONGEST_PLAIN + 1);
  const nearlyAt = new Int32Array(LONGEST_PLAIN + 1);
  const endsAt = new Int32Array(LONGEST_PLAIN + 1);
  const found: number[] = [];
  const count = plains.length;
  let start = 0;
  for (let at = 0; at < count; at += 1) {
    const end = starts[at + 1] ?? 0;
    const kept = at + 1 < count ? (shared[at + 1] ?? 0) : 0;
    let depth = shared[at] ?? 0;
    let exact = exactAt[depth] ?? 0;
    let nearly = nearlyAt[depth] ?? 0;
    let ends = endsAt[depth] ?? 0;
    for (let place = start + depth; place < end; place += 1) {
      const letter = codes[place] ?? 0;
      const fitting = fits[letter] ?? 0;
      const stepped = (exact << 1) | 1;
      nearly = ((nearly << 1) & fitting) | (stepped & (misread[letter] ?? 0)) | (nearly & thenAny);
      exact = (stepped & fitting) | (exact & thenAny);
      depth += 1;
      if (((exact | nearly) & last) !== 0) ends = noted(ends, depth, (exact & last) !== 0);
      if (depth > kept) continue;
      exactAt[depth] = exact;
      nearlyAt[depth] = nearly;
      endsAt[depth] = ends;
    }
    if (ends !== 0) found.push(at, ends > MISREAD ? ends >> BITS : ends, ends > MISREAD ? 0 : 1);
    start = end;
  }
  return found;
}

/** Two depths in one figure: the lower bits where a misread stretch first ended, the upper ones where an exact did. */
const BITS = 8;
const MISREAD = 2 ** BITS - 1;

function noted(ends: number, depth: number, exact: boolean): number {
  if (exact) return ends > MISREAD ? ends : ends | (depth << BITS);
  return (ends & MISREAD) === 0 ? ends | depth : ends;
}
