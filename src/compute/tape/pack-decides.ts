import { inMillimetres, type Micrometres, type Millimetres, micrometres, type Seconds } from '#model/units.ts';
import { lengthPlayed } from './playing-time.ts';
import { STANDARD_SPEEDS, type StandardSpeed } from './speeds.ts';
import { THICKNESS_NAMES } from './thickness-names.ts';

export interface SpeedAgainstPack {
  readonly speed: StandardSpeed;
  /** What the stated length takes at this speed. */
  readonly neededMm: Millimetres;
  /** `too-short`: even at its longest the pack can't hold it. `agrees`: within the band, or little is left over.
   * `unexplained`: it fits, and more than a tenth of the pack is something else. */
  readonly answer: 'too-short' | 'agrees' | 'unexplained';
  /** True when what is needed lies between the pack's shortest and longest: the band alone accounts for it. */
  readonly withinBand: boolean;
  /** Part of the pack that the programme doesn't need, 0 to 1. Tones, leader, blank tail or an earlier recording. */
  readonly leftOver: number;
}

export interface PackBand {
  readonly lowMm: Millimetres;
  readonly valueMm: Millimetres;
  readonly highMm: Millimetres;
}

/** A stated length with its error, half the width of its band. */
export interface StatedLength {
  readonly valueS: Seconds;
  readonly errorS: number;
}

/** Leader, tones and tail of an ordinary master; under it nothing needs an explanation. Common practice, no source. */
const ORDINARY_LEFT_OVER = 0.1;

/** What a measured pack says of each standard speed for a stated length, fastest first.
 *
 * Only a pack that is too short contradicts; a longer one is never proof of a wrong speed. A stated length's own error
 * is given to the pack: it is too short only when the shortest time that the label may mean doesn't fit.
 * Source: L = v·t against the pack's own length.
 */
export function packAgainstSpeeds(pack: PackBand, stated: StatedLength): readonly SpeedAgainstPack[] {
  return STANDARD_SPEEDS.map((speed) => againstSpeed(pack, stated, speed));
}

function againstSpeed(pack: PackBand, { valueS, errorS }: StatedLength, speed: StandardSpeed): SpeedAgainstPack {
  const neededMm = lengthPlayed(valueS, speed.speedMmPerS);
  const leastMm = neededMm - errorS * speed.speedMmPerS;
  const mostMm = neededMm + errorS * speed.speedMmPerS;
  const leftOver = Math.max(0, 1 - neededMm / pack.valueMm);
  const withinBand = leastMm <= pack.highMm && mostMm >= pack.lowMm;
  const row = { speed, neededMm, leftOver, withinBand };
  if (leastMm > pack.highMm) return { ...row, answer: 'too-short' };
  return { ...row, answer: withinBand || leftOver <= ORDINARY_LEFT_OVER ? 'agrees' : 'unexplained' };
}

/** The total thickness at which a pack would hold just the length that is needed: t = π(D² − d²) / 4L. */
export function thicknessThatHolds(outsideMm: Millimetres, hubMm: Millimetres, neededMm: Millimetres): Micrometres {
  return micrometres(((Math.PI * (outsideMm ** 2 - hubMm ** 2)) / (4 * neededMm)) * 1000);
}

/** The name under which tape of that thickness was sold, when one fits within its own band and 1 µm either way. */
export function nameOfThickness(thicknessUm: Micrometres): string | undefined {
  return THICKNESS_NAMES.find(({ totalUm: [least, most] }) => thicknessUm >= least - 1 && thicknessUm <= most + 1)
    ?.name;
}

/** True when tape so thin was never made: under the thinnest in the table less 1 µm. */
export const isThinnerThanMade = (thicknessUm: Micrometres): boolean =>
  inMillimetres(thicknessUm) <
  inMillimetres(micrometres(Math.min(...THICKNESS_NAMES.map((row) => row.totalUm[0])) - 1));
