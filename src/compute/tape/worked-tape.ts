import type { Given } from '#model/given.ts';
import type { Micrometres, Millimetres, MillimetresPerSecond, Seconds } from '#model/units.ts';
import type { Worked } from '#model/worked.ts';
import { diameterWithError, durationWithError, thicknessWithError } from '../figure/assumed-error.ts';
import { workOut } from '../figure/work-out.ts';
import { packDiameter, packLength } from './pack.ts';
import { lengthPlayed, playingTime } from './playing-time.ts';

const GEOMETRY = 'geometry of a wound strip; 1 in = 25.4 mm exactly (international yard and pound agreement, 1959)';
const ARITHMETIC = 'arithmetic; 1 in = 25.4 mm exactly (international yard and pound agreement, 1959)';
const inMetres = (mm: number) => mm / 1000;

/** Length of a wound pack, in m, with the band that a rule and a thickness gauge leave. */
export function workedPackLength(
  outside: Given<Millimetres>,
  hub: Given<Millimetres>,
  thickness: Given<Micrometres>,
): Worked {
  return workOut(
    { name: 'tape-length', unit: 'm', formula: 'L = π(D² − d²) / (4·t)', source: GEOMETRY },
    [diameterWithError(outside), diameterWithError(hub), thicknessWithError(thickness)],
    packLength,
    inMetres,
  );
}

/** Length of tape that a stated duration takes, in m. */
export function workedLengthPlayed(duration: Given<Seconds>, speed: Given<MillimetresPerSecond>): Worked {
  return workOut(
    { name: 'tape-length', unit: 'm', formula: 'L = v·t', source: ARITHMETIC },
    [durationWithError(duration), speed],
    lengthPlayed,
    inMetres,
  );
}

/** Playing time of a length of tape, in s. A length printed on a box is nominal. */
export function workedPlayingTime(length: Given<Millimetres>, speed: Given<MillimetresPerSecond>): Worked {
  return workOut(
    { name: 'playing-time', unit: 's', formula: 't = L / v', source: ARITHMETIC },
    [length, speed],
    playingTime,
  );
}

/** Diameter of the pack that a length of tape makes, in mm. */
export function workedPackDiameter(
  length: Given<Millimetres>,
  hub: Given<Millimetres>,
  thickness: Given<Micrometres>,
): Worked {
  return workOut(
    { name: 'pack-diameter', unit: 'mm', formula: 'D = √(d² + 4·t·L/π)', source: GEOMETRY },
    [length, diameterWithError(hub), thicknessWithError(thickness)],
    packDiameter,
  );
}
