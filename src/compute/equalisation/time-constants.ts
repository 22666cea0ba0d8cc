import type { TimeConstants } from '#model/equalisation.ts';
import {
  type Decibels,
  decibels,
  type Hertz,
  type Microseconds,
  type MillimetresPerSecond,
  microseconds,
} from '#model/units.ts';

export const timeConstants = (lowUs: number, highUs: number): TimeConstants => ({
  lowUs: microseconds(lowUs),
  highUs: microseconds(highUs),
});

/** As a page prints them: `3180/50 µs`, `∞/35 µs`. */
export function constantsInWords({ lowUs, highUs }: TimeConstants): string {
  return `${lowUs === Number.POSITIVE_INFINITY ? '∞' : tidy(lowUs)}/${tidy(highUs)} µs`;
}

export const sameConstants = (a: TimeConstants, b: TimeConstants) =>
  closeEnough(a.lowUs, b.lowUs) && closeEnough(a.highUs, b.highUs);

const closeEnough = (a: number, b: number) => a === b || Math.abs(a - b) < 1e-6 * Math.abs(b);

/** The time constants that the same tape needs at another speed: t′ = t · recorded speed / replay speed.
 *
 * The flux on the tape doesn't change; the time in which it passes the head does. An infinite one stays infinite.
 * Source: time scaling of the flux on the tape.
 */
export function constantsAtSpeed(
  { lowUs, highUs }: TimeConstants,
  recordedMmPerS: MillimetresPerSecond,
  replayedMmPerS: MillimetresPerSecond,
): TimeConstants {
  const ratio = recordedMmPerS / replayedMmPerS;
  return { lowUs: microseconds(lowUs * ratio), highUs: microseconds(highUs * ratio) };
}

/** Flux on the tape at a frequency, in dB, for a level that would be flat without equalisation.
 *
 *      N(f) = 10·log[1 + 1/(2πf·t1)²] − 10·log[1 + (2πf·t2)²]
 *
 * An infinite t1 has no bass term at all: it is left out rather than divided by.
 * Source: IEC 60094-1, tape flux as two time constants; the same formula in the NAB standard of 1965.
 */
export function fluxLevel({ lowUs, highUs }: TimeConstants, frequencyHz: Hertz): Decibels {
  const turnsPerUs = 2 * Math.PI * frequencyHz * 1e-6;
  const bassDb = Number.isFinite(lowUs) ? 10 * Math.log10(1 + 1 / (turnsPerUs * lowUs) ** 2) : 0;
  return decibels(bassDb - 10 * Math.log10(1 + (turnsPerUs * highUs) ** 2));
}

export const isInfinite = (time: Microseconds) => time === Number.POSITIVE_INFINITY;

const tidy = (time: number) => String(Number(time.toPrecision(6)));
