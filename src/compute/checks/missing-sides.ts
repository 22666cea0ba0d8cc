import type { Edition } from '#model/edition.ts';
import { itemsOf, type Known } from '#model/fact.ts';
import type { Reel } from '#model/reel.ts';
import type { Status } from '#model/words.ts';
import { numbersToLookFor } from '../identifiers/numbers-to-look-for.ts';
import { orderOf, sideWrittenLike } from '../identifiers/sides.ts';
import type { CheckContext } from './context.ts';
import type { ReelSet } from './set-facts.ts';

export interface MissingSide {
  /** 1 to 8. */
  readonly order: number;
  /** As the lost reel or an edition writes it, else in the way of the side that is here. */
  readonly written: string;
  /** A reel that is known to be this side, and is lost. */
  readonly known: Reel | undefined;
  readonly numbers: readonly string[];
}

export interface SidesMissing {
  /** The held reel in whose entry it is told: the one whose file sorts last. */
  readonly held: Reel;
  readonly side: Known<string>;
  readonly missing: readonly MissingSide[];
}

/** `elsewhere` isn't missing: somebody has it. */
const LOST: readonly Status[] = ['missing', 'gone', 'destroyed'];
const HERE: readonly Status[] = ['held', 'lent'];

/** Sides of a set that no reel holds any more, while another side is here. What sides there should be is what its
 * editions list; where none lists any, sides come in pairs. Missing when nothing is, or when no side is recorded. */
export function missingSides(set: ReelSet, context: CheckContext): SidesMissing | undefined {
  const here = set.reels.filter((reel) => HERE.includes(reel.status.value) && itemsOf(reel.sides).length > 0);
  const held = here.toSorted((a, b) => (a.file < b.file ? -1 : 1)).at(-1);
  const side = itemsOf(held?.sides)[0];
  if (held === undefined || side === undefined) return undefined;
  const editions = editionsOf(set, context);
  const found = new Set(set.reels.filter((reel) => !LOST.includes(reel.status.value)).flatMap(ordersOf));
  const known = set.reels.flatMap(ordersOf);
  if (set.reels.some((reel) => itemsOf(reel.sides).length === 0 && !LOST.includes(reel.status.value))) return undefined;
  const missing = expectedSides(editions, known, side.value).filter(({ order }) => !found.has(order));
  if (missing.length === 0) return undefined;
  return { held, side, missing: missing.map(({ order, written }) => describe(order, written, set, editions, side)) };
}

function describe(
  order: number,
  written: string,
  set: ReelSet,
  editions: readonly Edition[],
  heldSide: Known<string>,
): MissingSide {
  const known = set.reels.find((reel) => LOST.includes(reel.status.value) && ordersOf(reel).includes(order));
  return {
    order,
    written: itemsOf(known?.sides).find((side) => orderOf(side.value) === order)?.value ?? written,
    known,
    numbers: numbersToLookFor({ order, heldSide: heldSide.value, known, reels: set.reels, editions }),
  };
}

const ordersOf = (reel: Reel): readonly number[] => itemsOf(reel.sides).flatMap((side) => orderOf(side.value) ?? []);

function editionsOf(set: ReelSet, context: CheckContext): readonly Edition[] {
  const ids = new Set(set.reels.flatMap((reel) => itemsOf(reel.editions).map((edition) => edition.value)));
  return [...ids].flatMap((id) => context.editions.get(id) ?? []);
}

function expectedSides(
  editions: readonly Edition[],
  known: readonly number[],
  heldSide: string,
): readonly { order: number; written: string }[] {
  const listed = editions.flatMap((edition) => itemsOf(edition.sides).map((side) => side.side.value));
  const orders = new Map(
    listed.flatMap((written) => (orderOf(written) === undefined ? [] : [[orderOf(written) ?? 0, written] as const])),
  );
  if (orders.size > 0)
    return [...orders].map(([order, written]) => ({ order, written })).sort((a, b) => a.order - b.order);
  const last = Math.max(...known);
  return Array.from({ length: last + (last % 2) }, (_, at) => ({
    order: at + 1,
    written: sideWrittenLike(at + 1, heldSide),
  }));
}
