import type { Fact, Known } from '#model/fact.ts';
import type { Reel } from '#model/reel.ts';
import { sumOfContents } from '../tape/contents-sum.ts';
import { leastRun, mayRunBothWays, packOfReel } from '../tape/pack-of-reel.ts';
import { reelHolds } from '../tape/reel-holds.ts';
import type { CheckContext } from './context.ts';

const known = <T>(fact: Fact<T> | undefined): Known<T> | undefined => (fact?.is === 'known' ? fact : undefined);

const stockOf = (reel: Reel, context: CheckContext) =>
  reel.stock?.is === 'known' ? context.stocks.get(reel.stock.value) : undefined;

/** What is recorded of a tape's length, times and wound pack, each with what was written and where. */
export const TAPE_FACTS = {
  duration: (reel: Reel) => known(reel.durationS),
  speed: (reel: Reel) => known(reel.format.speed),
  /** The titles, when any are listed. */
  titles: (reel: Reel) => {
    const titles = known(reel.contents)?.value;
    return titles !== undefined && titles.length > 0 ? titles : undefined;
  },
  /** `none` is an answer too; missing only when nothing is said of gaps. */
  gaps: (reel: Reel) => reel.gaps,
  /** The titles with their gaps, added up; missing where a length or a mixed gap is. */
  contentsSum: (reel: Reel) => {
    const contents = sumOfContents(reel);
    return contents?.is === 'summed' ? contents : undefined;
  },
  /** How much tape the wound pack is, with its band; missing where a diameter or the stock's thickness is. */
  pack: (reel: Reel, context: CheckContext) => packOfReel(reel, stockOf(reel, context)),
  /** The least time that the tape must run for its stated length. */
  leastRun: (reel: Reel) => (reel.durationS?.is === 'known' ? leastRun(reel, reel.durationS) : undefined),
  mayRunBothWays: (reel: Reel) => mayRunBothWays(reel),
  /** The most tape that its reel can hold. */
  reelHolds: (reel: Reel, context: CheckContext) => reelHolds(reel, stockOf(reel, context)),
  outsideDiameter: (reel: Reel) => known(reel.pack.outsideDiameter),
  hubDiameter: (reel: Reel) => known(reel.pack.hubDiameter),
  reelSize: (reel: Reel) => known(reel.pack.reelSize),
  /** False for a pancake; never missing. */
  isOnReel: (reel: Reel) => known(reel.pack.woundOn)?.value !== 'bare hub',
  /** Of the reel's stock: base, coat and back coat. */
  thickness: (reel: Reel, context: CheckContext) => known(stockOf(reel, context)?.thickness),
  recordedOn: (reel: Reel) => known(reel.recorded)?.value.on,
};
