import type { TimeConstants } from '#model/equalisation.ts';
import type { MillimetresPerSecond } from '#model/units.ts';
import { sameSpeed } from '../tape/speeds.ts';
import { OTHER_CURVES, STANDARDS, type StandardCurve } from './standards.ts';
import { constantsAtSpeed, sameConstants } from './time-constants.ts';

type Position = Omit<StandardCurve, 'name'>;

export interface PositionWanted {
  /** What the tape needs at the replay speed. */
  readonly wanted: TimeConstants;
  /** The machine's positions that are just that; empty when no standard defines one. */
  readonly exact: readonly StandardCurve[];
  /** Curves at that speed with the same treble and another bass: near, and audibly not the same below 100 Hz. */
  readonly sameTreble: readonly Position[];
}

/** Which replay position a tape needs at another speed than its own: its time constants, scaled, and whether a standard
 * has them. 30 in/s AES at 15 is just IEC; 15 in/s NAB at 7½ wants 6360/100 µs, which no standard defines.
 *
 * Source: t′ = t · recorded speed / replay speed, against the table in standards.ts.
 */
export function positionAtSpeed(
  curve: TimeConstants,
  recordedMmPerS: MillimetresPerSecond,
  replayedMmPerS: MillimetresPerSecond,
): PositionWanted {
  const wanted = constantsAtSpeed(curve, recordedMmPerS, replayedMmPerS);
  const atSpeed = STANDARDS.filter((row) => sameSpeed(row.speedMmPerS, replayedMmPerS));
  const others = OTHER_CURVES.filter((row) => sameSpeed(row.speedMmPerS, replayedMmPerS));
  const exact = atSpeed.filter((row) => sameConstants(row, wanted));
  const sameTreble = [...atSpeed, ...others].filter(
    (row) => !sameConstants(row, wanted) && sameConstants({ ...row, lowUs: wanted.lowUs }, wanted),
  );
  return { wanted, exact, sameTreble };
}
