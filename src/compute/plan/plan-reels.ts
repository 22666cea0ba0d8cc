import type { Catalogue } from '#model/catalogue.ts';
import { valueOf } from '#model/fact.ts';
import type { PlanReel } from '#model/plan.ts';
import { planReel } from './plan-reel.ts';

/** What the reels of these ids come to for a plan, in the order of the ids; an id that no entry has is left out. A
 * catalogue that was reduced to a share gives a plan with no more in it than the share.
 * @param ids  all reels when missing. */
export function planReels(
  catalogue: Pick<Catalogue, 'entries' | 'reels' | 'today'>,
  ids?: readonly string[],
): readonly PlanReel[] {
  const { entries, reels, today } = catalogue;
  const stocks = new Map(entries.stocks.map((stock) => [stock.id, stock]));
  const sheets = new Map(reels.map((sheet) => [sheet.reel.id, sheet]));
  return (ids ?? [...sheets.keys()]).flatMap((id) => {
    const sheet = sheets.get(id);
    if (sheet === undefined) return [];
    return [planReel(sheet, { machines: entries.machines, stock: stocks.get(valueOf(sheet.reel.stock) ?? ''), today })];
  });
}
