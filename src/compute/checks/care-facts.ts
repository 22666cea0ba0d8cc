import type { PartialDate } from '#model/dates.ts';
import { itemsOf, type Known, valueOf } from '#model/fact.ts';
import type { Custody, Handling, Reel } from '#model/reel.ts';
import { bakePermission } from '../condition/bake-permission.ts';
import { gatherFacts } from '../condition/gather-facts.ts';
import { daysBetween } from '../lineage/intervals.ts';
import type { CheckContext } from './context.ts';

/** Nominal quarter inch, with what early tape differs by. */
const QUARTER_INCH_MM = 6.35;

/** What was done to a reel and who had it. */
export const CARE_FACTS = {
  /** Its bakes, planned or done, as written; missing when there are none. */
  bakes: (reel: Reel) => some(itemsOf(reel.handling).filter((handling) => handling.what.value === 'bake')),
  /** Whether it may be baked; always an answer, since an unknown base is a no. */
  bakePermission: (reel: Reel, context: CheckContext) =>
    bakePermission(gatherFacts(reel, context.stocks.get(valueOf(reel.stock) ?? ''), undefined)),
  /** `quarter inch`, `wider` or `not recorded`, which is an answer: it makes a bake’s limits milder. */
  bakeWidth: (reel: Reel) => {
    const width = valueOf(reel.format.width)?.value;
    if (width === undefined) return 'not recorded' as const;
    return width > QUARTER_INCH_MM + 1 ? ('wider' as const) : ('quarter inch' as const);
  },
  /** Each bake that has an end, with what was played after it and before the next bake. */
  playedAfterBake: (reel: Reel) => some(playedAfterBake(reel)),
  /** When its stock was made. */
  stockMade: (reel: Reel, context: CheckContext) => {
    const made = context.stocks.get(valueOf(reel.stock) ?? '')?.made;
    return made?.is === 'known' ? made : undefined;
  },
  backCoated: (reel: Reel, context: CheckContext) => {
    const backCoated = context.stocks.get(valueOf(reel.stock) ?? '')?.backCoated;
    return backCoated?.is === 'known' ? backCoated : undefined;
  },
  woundOn: (reel: Reel) => (reel.pack.woundOn?.is === 'known' ? reel.pack.woundOn : undefined),
  machinesById: (_reel: Reel, context: CheckContext) => context.machines,
  custody: (reel: Reel) => some(itemsOf(reel.custody)),
  /** It is here to be looked after; missing where it isn't, so that nothing is asked of what others keep. */
  isHere: (reel: Reel) => (reel.status.value === 'held' || reel.status.value === 'lent' ? true : undefined),
};

const some = <T>(items: readonly T[]): readonly T[] | undefined => (items.length === 0 ? undefined : items);

export interface PlayedAfterBake {
  readonly bake: Handling;
  readonly play: Handling;
  readonly on: Known<PartialDate>;
}

function playedAfterBake(reel: Reel): readonly PlayedAfterBake[] {
  const handling = itemsOf(reel.handling).filter((one) => one.planned?.value !== true);
  const bakes = handling.filter((one) => one.what.value === 'bake' && one.ended !== undefined);
  return handling.flatMap((play) => {
    const on = play.on;
    if ((play.what.value !== 'play' && play.what.value !== 'transfer') || on?.value.earliest == null) return [];
    const before = bakes
      .filter((bake) => (bake.ended?.value.slice(0, 10) ?? '') <= (on.value.earliest ?? ''))
      .toSorted((a, b) => (a.ended?.value ?? '').localeCompare(b.ended?.value ?? '', 'en'));
    const bake = before.at(-1);
    return bake === undefined ? [] : [{ bake, play, on }];
  });
}

/** Days that surely lie between the end of one holding and the start of the next, both left out; 0 when they can meet. */
export function daysWithoutHolder(before: Custody, after: Custody): number {
  const until = before.until?.value.latest;
  const from = after.from?.value.earliest;
  return until == null || from == null || from <= until ? 0 : daysBetween(until, from) - 1;
}
