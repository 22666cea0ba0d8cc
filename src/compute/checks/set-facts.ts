import type { Reel } from '#model/reel.ts';
import type { CheckContext } from './context.ts';
import { missingSides } from './missing-sides.ts';
import { numberedSides } from './set-sides.ts';

/** The reels that name one set, in order of id. */
export interface ReelSet {
  readonly name: string;
  readonly reels: readonly Reel[];
}

/** Facts about a set of reels that belong together. */
export const SET_FACTS = {
  set: (set: ReelSet) => set,
  /** The matrix numbers of its sides; missing when fewer than two sides have one. */
  numberedSides: (set: ReelSet) => numberedSides(set),
  /** Sides that it should have and that are not here, each with the numbers to look for. */
  missingSides: (set: ReelSet, context: CheckContext) => missingSides(set, context),
  today: (_set: ReelSet, context: CheckContext) => context.today,
};
