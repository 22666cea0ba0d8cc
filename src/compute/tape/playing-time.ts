import { type Millimetres, type MillimetresPerSecond, millimetres, type Seconds, seconds } from '#model/units.ts';

/** How long a length of tape plays: t = L / v, v over 0. Source: arithmetic. */
export const playingTime = (lengthMm: Millimetres, speedMmPerS: MillimetresPerSecond): Seconds =>
  seconds(lengthMm / speedMmPerS);

/** How much tape a duration takes: L = v·t. Source: arithmetic. */
export const lengthPlayed = (durationS: Seconds, speedMmPerS: MillimetresPerSecond): Millimetres =>
  millimetres(speedMmPerS * durationS);
