import type { Edition, EditionSide } from '#model/edition.ts';
import type { Known } from '#model/fact.ts';
import type { Reel } from '#model/reel.ts';
import { orderOf } from '../identifiers/sides.ts';

/** A side of an edition beside the reels that may have been cut for it. */
export interface SideWithReels {
  readonly side: EditionSide;
  /** The reel that the edition names for it, or else every reel of the edition with that one side; not session tapes,
   * which hold what a side was made from. */
  readonly reels: readonly Reel[];
  /** True when the edition names the reel itself. */
  readonly named: boolean;
}

/** An edition's sides with their reels. A and 1, B and 2 are one side. */
export function sidesWithReels(
  edition: Edition,
  reels: readonly Reel[],
  all: ReadonlyMap<string, Reel>,
): readonly SideWithReels[] {
  const sides = edition.sides?.is === 'known' ? edition.sides.value : [];
  return sides.map((side) => {
    const named = side.reel === undefined ? undefined : all.get(side.reel.value);
    if (named !== undefined) return { side, reels: [named], named: true };
    return { side, reels: reels.filter((reel) => isOfSide(reel, side.side)), named: false };
  });
}

/** The one side of a reel; undefined for a tape with two, or with none recorded. */
export function onlySide(reel: Reel): Known<string> | undefined {
  return reel.sides?.is === 'known' && reel.sides.value.length === 1 ? reel.sides.value[0] : undefined;
}

const isSameSide = (one: string, other: string): boolean => {
  const order = orderOf(one);
  return order === undefined ? one.trim().toUpperCase() === other.trim().toUpperCase() : order === orderOf(other);
};

function isOfSide(reel: Reel, side: Known<string>): boolean {
  if (reel.kind?.is === 'known' && reel.kind.value === 'session tape') return false;
  const own = onlySide(reel);
  return own !== undefined && isSameSide(own.value, side.value);
}
