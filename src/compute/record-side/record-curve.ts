import { type Decibels, decibels, type Hertz, hertz, type Microseconds, microseconds } from '#model/units.ts';

/** The three time constants of a record, in µs. Source: IEC 60098, RIAA. */
export const RECORD_TIME_CONSTANTS: readonly [Microseconds, Microseconds, Microseconds] = [
  microseconds(3180),
  microseconds(318),
  microseconds(75),
];

/** The fourth that a 1976 amendment to IEC 98 added on replay alone; optional, never part of the curve by default.
 * From memory. */
export const AMENDMENT_1976_US = microseconds(7950);

/** Replay level of a record against a reference frequency, in dB.
 *
 *      10·log[1 + (2πf·t2)²] − 10·log[1 + (2πf·t1)²] − 10·log[1 + (2πf·t3)²]
 *
 * @param rumbleUs     a fourth, high-pass time constant, such as AMENDMENT_1976_US.
 * @param referenceHz  1 kHz, or half of it for a half-speed cut as heard at the lathe.
 * Source: IEC 60098 / RIAA replay characteristic.
 */
export function recordReplayLevel(
  frequencyHz: Hertz,
  timeConstants: readonly [Microseconds, Microseconds, Microseconds] = RECORD_TIME_CONSTANTS,
  { rumbleUs, referenceHz = hertz(1000) }: { rumbleUs?: Microseconds; referenceHz?: Hertz } = {},
): Decibels {
  const [bassUs, middleUs, trebleUs] = timeConstants;
  const at = (f: number) =>
    rise(f, middleUs) - rise(f, bassUs) - rise(f, trebleUs) + (rumbleUs === undefined ? 0 : rumbleFall(f, rumbleUs));
  return decibels(at(frequencyHz) - at(referenceHz));
}

const rise = (frequencyHz: number, time: Microseconds) =>
  10 * Math.log10(1 + (2 * Math.PI * frequencyHz * time * 1e-6) ** 2);
const rumbleFall = (frequencyHz: number, time: Microseconds) =>
  -10 * Math.log10(1 + 1 / (2 * Math.PI * frequencyHz * time * 1e-6) ** 2);
