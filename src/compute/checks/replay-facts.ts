import type { Fact, Known } from '#model/fact.ts';
import type { Reel } from '#model/reel.ts';
import type { CheckContext } from './context.ts';

const known = <T>(fact: Fact<T> | undefined): Known<T> | undefined => (fact?.is === 'known' ? fact : undefined);

/** What is recorded of how a tape was recorded and what could replay it. */
export const REPLAY_FACTS = {
  equalisation: (reel: Reel) => known(reel.format.equalisation),
  tracks: (reel: Reel) => known(reel.format.tracks),
  direction: (reel: Reel) => known(reel.format.direction),
  noiseReduction: (reel: Reel) => known(reel.format.noiseReduction),
  copyLog: (reel: Reel) => known(reel.copyLog)?.value,
  cuts: (reel: Reel) => known(reel.cuts)?.value,
  /** Every machine of the collection; missing when none is recorded. */
  machines: (_reel: Reel, context: CheckContext) =>
    context.entries.machines.length > 0 ? context.entries.machines : undefined,
};
