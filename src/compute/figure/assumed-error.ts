import type { Given } from '#model/given.ts';
import type { Micrometres, Millimetres, Seconds } from '#model/units.ts';

/** The error that a figure is given when nobody wrote one; the page shows it as assumed.
 * A rule across a pack, a maker's thickness, a length stated to the second: common practice, no source. */
export const ASSUMED_DIAMETER_MM = 1;
export const ASSUMED_THICKNESS_UM = 1;
export const ASSUMED_DURATION_S = 0.5;

export const diameterWithError = (given: Given<Millimetres>) => withError(given, ASSUMED_DIAMETER_MM, '± 1 mm');
export const thicknessWithError = (given: Given<Micrometres>) => withError(given, ASSUMED_THICKNESS_UM, '± 1 µm');
export const durationWithError = (given: Given<Seconds>) => withError(given, ASSUMED_DURATION_S, '± 0.5 s');

function withError<Q extends number>(given: Given<Q>, error: number, shown: string): Given<Q> {
  return given.plusMinus === undefined ? { ...given, plusMinus: error, errorAssumed: shown } : given;
}
