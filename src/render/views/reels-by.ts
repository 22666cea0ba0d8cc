import type { Catalogue, ReelSheet } from '#model/catalogue.ts';
import { valueOf } from '#model/fact.ts';
import { madeOnce } from '../made-once.ts';

/** Reels by the stock that they are on; those of no recorded stock under `undefined`. */
export const reelsByStock = madeOnce(
  'reels by stock',
  ({ reels }: Catalogue): ReadonlyMap<string | undefined, readonly ReelSheet[]> =>
    Map.groupBy(reels, ({ reel }) => valueOf(reel.stock)),
);

/** Reels by the place in which they are kept; those of no recorded place under `undefined`. */
export const reelsByPlace = madeOnce(
  'reels by place',
  ({ reels }: Catalogue): ReadonlyMap<string | undefined, readonly ReelSheet[]> =>
    Map.groupBy(reels, ({ reel }) => valueOf(reel.placeKept)?.at?.value),
);
