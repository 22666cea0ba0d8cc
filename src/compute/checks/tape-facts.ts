import type { Fact, Known } from '#model/fact.ts';
import type { Reel } from '#model/reel.ts';
import type { CheckContext } from './context.ts';

const known = <T>(fact: Fact<T> | undefined): Known<T> | undefined => (fact?.is === 'known' ? fact : undefined);

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
  outsideDiameter: (reel: Reel) => known(reel.pack.outsideDiameter),
  hubDiameter: (reel: Reel) => known(reel.pack.hubDiameter),
  reelSize: (reel: Reel) => known(reel.pack.reelSize),
  /** Of the reel's stock: base, coat and back coat. */
  thickness: (reel: Reel, context: CheckContext) =>
    reel.stock?.is === 'known' ? known(context.stocks.get(reel.stock.value)?.thickness) : undefined,
  recordedOn: (reel: Reel) => known(reel.recorded)?.value.on,
};
