import type { Millimetres, Seconds } from '#model/units.ts';
import { lengthPlayed } from './playing-time.ts';
import { STANDARD_SPEEDS, type StandardSpeed } from './speeds.ts';

export interface SpeedAgainstPack {
  readonly speed: StandardSpeed;
  readonly neededMm: Millimetres;
  /** `too-short`: even at its longest the pack can't hold it. `agrees`: within the band, or little is left over.
   * `unexplained`: it fits, and more than a tenth of the pack is something else. */
  readonly answer: 'too-short' | 'agrees' | 'unexplained';
  /** Part of the pack that the programme doesn't need, 0 to 1. Tones, leader, blank tail or an earlier recording. */
  readonly leftOver: number;
}

export interface PackBand {
  readonly lowMm: Millimetres;
  readonly valueMm: Millimetres;
  readonly highMm: Millimetres;
}

/** Leader, tones and tail of an ordinary master; under it nothing needs an explanation. Common practice, no source. */
const ORDINARY_LEFT_OVER = 0.1;

/** What a measured pack says of each standard speed for a stated length, fastest first.
 *
 * Only a pack that is too short contradicts; a longer one is never proof of a wrong speed.
 * Source: L = v·t against the pack's own length.
 */
export function packAgainstSpeeds(pack: PackBand, durationS: Seconds): readonly SpeedAgainstPack[] {
  return STANDARD_SPEEDS.map((speed) => {
    const neededMm = lengthPlayed(durationS, speed.speedMmPerS);
    const leftOver = Math.max(0, 1 - neededMm / pack.valueMm);
    if (neededMm > pack.highMm) return { speed, neededMm, answer: 'too-short', leftOver };
    return { speed, neededMm, answer: leftOver <= ORDINARY_LEFT_OVER ? 'agrees' : 'unexplained', leftOver };
  });
}
