import type { MillimetresPerSecond } from './units.ts';
import type { Worked } from './worked.ts';

/** What a measured pack says of one standard speed for the stated length. Only `too-short` contradicts. */
export interface PackAnswer {
  readonly speed: MillimetresPerSecond;
  /** True for the speed that the entry states. */
  readonly stated: boolean;
  readonly needs: Worked;
  readonly answer: 'too-short' | 'agrees' | 'unexplained';
  /** Part of the pack that the stated length doesn't need, 0 to 1. */
  readonly leftOver: number;
  /** One sentence for the page. */
  readonly says: string;
}

/** Which standard speeds are possible, given the pack, the stated length and their errors. */
export interface PackVerdict {
  readonly pack: Worked;
  /** Fastest first. */
  readonly answers: readonly PackAnswer[];
  /** How sure that is, and why, in one sentence. */
  readonly sure: string;
}
