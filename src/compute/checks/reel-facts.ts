import type { Reel } from '#model/reel.ts';
import { CARE_FACTS } from './care-facts.ts';
import type { CheckContext } from './context.ts';
import { LINEAGE_FACTS } from './lineage-facts.ts';
import { NUMBER_FACTS } from './number-facts.ts';
import { PEOPLE_FACTS } from './people-facts.ts';
import { REPLAY_FACTS } from './replay-facts.ts';
import { TAPE_FACTS } from './tape-facts.ts';

/** Facts about one reel. Those of a subject stand in a file of their own, spread in here. */
export const REEL_FACTS = {
  reel: (reel: Reel) => reel,
  today: (_reel: Reel, context: CheckContext) => context.today,
  /** The reels it is stated to be copied from, as far as they have entries; missing when nothing is stated. */
  parents: (reel: Reel, context: CheckContext) =>
    reel.copiedFrom?.is === 'known'
      ? reel.copiedFrom.value.flatMap((parent) => context.reels.get(parent.value) ?? [])
      : undefined,
  /** The editions it belongs to, as far as they have entries. */
  editions: (reel: Reel, context: CheckContext) =>
    reel.editions?.is === 'known'
      ? reel.editions.value.flatMap((edition) => context.editions.get(edition.value) ?? [])
      : undefined,
  stock: (reel: Reel, context: CheckContext) =>
    reel.stock?.is === 'known' ? context.stocks.get(reel.stock.value) : undefined,
  lineage: (reel: Reel, context: CheckContext) => context.lineage.byReel.get(reel.id),
  findings: (reel: Reel, context: CheckContext) => context.assessed.findings?.get(reel.id),
  playing: (reel: Reel, context: CheckContext) => context.assessed.playing?.get(reel.id),
  ...TAPE_FACTS,
  ...REPLAY_FACTS,
  ...NUMBER_FACTS,
  ...LINEAGE_FACTS,
  ...PEOPLE_FACTS,
  ...CARE_FACTS,
};
