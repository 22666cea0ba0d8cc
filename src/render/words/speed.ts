import { asCentimetresPerSecond, asInchesPerSecond, type MillimetresPerSecond } from '#model/units.ts';
import { decimal, fraction } from './number.ts';

/** `30 in/s`, `7½ in/s`. */
export const inchesSpeed = (speed: MillimetresPerSecond): string => `${fraction(asInchesPerSecond(speed))} in/s`;

/** `76.2 cm/s`. */
export const metricSpeed = (speed: MillimetresPerSecond): string => `${decimal(asCentimetresPerSecond(speed), 2)} cm/s`;
