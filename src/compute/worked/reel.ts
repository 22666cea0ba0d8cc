import type { Edition } from '#model/edition.ts';
import type { Entries } from '#model/entries.ts';
import { itemsOf } from '#model/fact.ts';
import type { Reel } from '#model/reel.ts';
import type { Stock } from '#model/stock.ts';
import type { Worked } from '#model/worked.ts';
import { byId } from './by-id.ts';
import { workOutContents } from './contents.ts';
import { workOutCurve } from './curve.ts';
import { workOutRecordSide } from './record-side.ts';
import { workOutTape } from './tape.ts';

/** Every figure that a reel's page shows, each with what it rests on, in the order in which the page tells them. A figure
 * whose inputs aren't recorded is left out; missingFacts says what would have to be. */
export function workOutReel(reel: Reel, entries: Pick<Entries, 'stocks' | 'editions'>): readonly Worked[] {
  const stock = stockOf(reel, entries.stocks);
  const editions = itemsOf(reel.editions).flatMap(({ value }): readonly Edition[] => {
    const edition = byId(entries.editions, value);
    return edition === undefined ? [] : [edition];
  });
  return [
    ...workOutContents(reel),
    ...workOutTape(reel, stock),
    ...workOutCurve(reel, stock),
    ...workOutRecordSide(reel, editions),
  ];
}

export const stockOf = (reel: Reel, stocks: readonly Stock[]): Stock | undefined =>
  reel.stock?.is === 'known' ? byId(stocks, reel.stock.value) : undefined;
