import {
  type Microseconds,
  type MillimetresPerSecond,
  microseconds,
  type RevolutionsPerMinute,
  revolutionsPerMinute,
  type Seconds,
  seconds,
} from '#model/units.ts';
import { halved } from '../tape/speeds.ts';
import { RECORD_TIME_CONSTANTS } from './record-curve.ts';

export interface HalfSpeedCut {
  readonly tapeSpeedMmPerS: MillimetresPerSecond;
  readonly latheRpm: RevolutionsPerMinute;
  readonly cuttingTimeS: Seconds;
  readonly recordTimeConstantsUs: readonly [Microseconds, Microseconds, Microseconds];
}

export const HALF_SPEED_SOURCE =
  'tape and lathe both at half: common practice, no source; record time constants 3180, 318, 75 µs of IEC 60098 doubled by time scaling';

/** What changes when a side is cut with tape and lathe both at half speed: everything but the grooves.
 * The record's time constants double at the cutter, so that the disc at full speed has the ordinary ones; the tape's
 * own double too (see positionAtSpeed). A noise-reduction decoder made for full speed is wrong at half. */
export function halfSpeedCut(
  tapeSpeedMmPerS: MillimetresPerSecond,
  rpm: RevolutionsPerMinute,
  sideS: Seconds,
): HalfSpeedCut {
  const [bassUs, middleUs, trebleUs] = RECORD_TIME_CONSTANTS;
  return {
    tapeSpeedMmPerS: halved(tapeSpeedMmPerS),
    latheRpm: revolutionsPerMinute(rpm / 2),
    cuttingTimeS: seconds(sideS * 2),
    recordTimeConstantsUs: [microseconds(bassUs * 2), microseconds(middleUs * 2), microseconds(trebleUs * 2)],
  };
}
