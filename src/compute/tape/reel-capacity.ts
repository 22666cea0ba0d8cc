import { feet, inches, type Micrometres, type Millimetres, micrometres, millimetres } from '#model/units.ts';
import { packLength } from './pack.ts';

/** What boxes say that a reel holds. Makers round, and their hubs differ. */
export interface PrintedCapacity {
  readonly reelMm: Millimetres;
  readonly hubMm: Millimetres;
  readonly nominalMil: number;
  readonly lengthMm: Millimetres;
  readonly source: string;
}

const BOX = 'capacity commonly printed on the box, from memory';
const TYPES = 'a page on tape types; hub from memory';

/** Largest reel first, then thickest tape. */
export const PRINTED_CAPACITIES: readonly PrintedCapacity[] = [
  { reelMm: inches(14), hubMm: inches(4.5), nominalMil: 1.5, lengthMm: feet(5000), source: BOX },
  { reelMm: inches(12.5), hubMm: inches(4.5), nominalMil: 1.5, lengthMm: feet(3600), source: BOX },
  { reelMm: inches(10.5), hubMm: inches(4.5), nominalMil: 1.5, lengthMm: feet(2500), source: BOX },
  { reelMm: inches(10.5), hubMm: inches(4.5), nominalMil: 1, lengthMm: feet(3600), source: TYPES },
  { reelMm: inches(7), hubMm: millimetres(57), nominalMil: 1.5, lengthMm: feet(1200), source: TYPES },
  { reelMm: inches(7), hubMm: millimetres(57), nominalMil: 1, lengthMm: feet(1800), source: TYPES },
  { reelMm: inches(7), hubMm: millimetres(57), nominalMil: 0.75, lengthMm: feet(2400), source: TYPES },
];

/** The hubs that a reel may have inside: the small one of home reels, and the large one of studio reels. From memory. */
const SMALLEST_HUB_MM = millimetres(57);
const LARGEST_HUB_MM = inches(4.5);
/** Flange left above a pack: what the lengths printed on boxes leave on the largest hub, 7 mm on a 10½ in reel and 12 mm
 * on a 12½ in one. Common practice, no source. */
const USUAL_MARGIN_MM = 12.5;

export interface ReelCapacity {
  /** Surely fits: the largest hub, and the usual margin left under the flange. */
  readonly surelyMm: Millimetres;
  /** Can't be more: the smallest hub, full to the flange's edge, at the thinnest that the tape may be. */
  readonly atMostMm: Millimetres;
  readonly printed: readonly PrintedCapacity[];
}

/** How much tape a reel holds, as a band: hubs differ and nobody winds to the very edge.
 * @param thicknessUm  total, with its error. Source: geometry of a wound strip, between the two hubs. */
export function reelCapacity(reelMm: Millimetres, thicknessUm: Micrometres, errorUm: number): ReelCapacity {
  const filledMm = millimetres(reelMm - 2 * USUAL_MARGIN_MM);
  const largestHubMm = millimetres(Math.min(LARGEST_HUB_MM, reelMm / 2));
  const smallestHubMm = millimetres(Math.min(SMALLEST_HUB_MM, reelMm / 3));
  return {
    surelyMm: packLength(filledMm, largestHubMm, micrometres(thicknessUm + errorUm)),
    atMostMm: packLength(reelMm, smallestHubMm, micrometres(Math.max(1, thicknessUm - errorUm))),
    printed: PRINTED_CAPACITIES.filter((row) => Math.abs(row.reelMm - reelMm) < 1),
  };
}
