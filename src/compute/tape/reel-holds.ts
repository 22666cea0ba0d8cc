import type { Known } from '#model/fact.ts';
import type { Reel } from '#model/reel.ts';
import type { Stock } from '#model/stock.ts';
import { type Measure, type Micrometres, type Millimetres, micrometres, millimetres } from '#model/units.ts';
import { ASSUMED_DIAMETER_MM, ASSUMED_THICKNESS_UM } from '../figure/assumed-error.ts';
import { packLength } from './pack.ts';
import { type ReelCapacity, reelCapacity } from './reel-capacity.ts';
import { THICKNESS_NAMES } from './thickness-names.ts';

export interface ReelHolds extends ReelCapacity {
  readonly size: Known<Measure<Millimetres>>;
  readonly thicknessUm: Micrometres;
  /** False when the stock's thickness isn't recorded, and the thinnest tape made was taken: the most there can be. */
  readonly thicknessKnown: boolean;
}

/** How much tape a reel's own reel can hold; undefined for a bare hub, or when no size is recorded. */
export function reelHolds(reel: Reel, stock: Stock | undefined): ReelHolds | undefined {
  const { reelSize: size, hubDiameter: hub, woundOn } = reel.pack;
  if (size?.is !== 'known' || (woundOn?.is === 'known' && woundOn.value === 'bare hub')) return undefined;
  const known = stock?.thickness?.is === 'known' ? stock.thickness.value : undefined;
  const thicknessUm = known?.value ?? micrometres(Math.min(...THICKNESS_NAMES.map((row) => row.totalUm[0])));
  const errorUm = known?.plusMinus ?? ASSUMED_THICKNESS_UM;
  const capacity = reelCapacity(size.value.value, thicknessUm, errorUm);
  // A hub as wide as its reel is a mistake of measuring, and says nothing of the reel.
  const measuredHub = hub?.is === 'known' && hub.value.value < size.value.value ? hub.value : undefined;
  const atMostMm =
    measuredHub === undefined ? capacity.atMostMm : fullOnHub(size.value.value, measuredHub, thicknessUm, errorUm);
  return { ...capacity, atMostMm, size, thicknessUm, thicknessKnown: known !== undefined };
}

function fullOnHub(
  reelMm: Millimetres,
  hub: Measure<Millimetres>,
  thicknessUm: Micrometres,
  errorUm: number,
): Millimetres {
  const hubMm = millimetres(hub.value - (hub.plusMinus ?? ASSUMED_DIAMETER_MM));
  return packLength(reelMm, hubMm, micrometres(Math.max(1, thicknessUm - errorUm)));
}
