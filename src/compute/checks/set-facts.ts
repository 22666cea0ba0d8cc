import type { Reel } from '#model/reel.ts';
import type { CheckContext } from './context.ts';

/** The reels that name one set, in order of id. */
export interface ReelSet {
  readonly name: string;
  readonly reels: readonly Reel[];
}

/** Facts about a set of reels that belong together. */
export const SET_FACTS = {
  set: (set: ReelSet) => set,
  today: (_set: ReelSet, context: CheckContext) => context.today,
};
