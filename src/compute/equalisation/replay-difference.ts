import type { TimeConstants } from '#model/equalisation.ts';
import { type Decibels, decibels, type Hertz, hertz, type MillimetresPerSecond } from '#model/units.ts';
import { constantsAtSpeed, fluxLevel } from './time-constants.ts';

/** A curve at the speed that goes with it. */
export interface CurveAtSpeed extends TimeConstants {
  readonly speedMmPerS: MillimetresPerSecond;
}

const REFERENCE_HZ = hertz(1000);

/** What a tape recorded with one curve sounds like on a machine set to another, in dB relative to 1 kHz.
 *
 *      Δ(f) = [N_recorded(f; t·r) − N_replayed(f; t)] − the same at 1 kHz,   r = recorded speed / replay speed
 *
 * Above 0 the tape sounds too strong there. A NAB tape on an IEC machine has its bass raised, not lowered.
 *
 * @param frequencyHz  as heard at the replay speed.
 * Source: IEC 60094-1 (flux as two time constants), time scaling for another speed.
 */
export function replayDifference(recorded: CurveAtSpeed, replayed: CurveAtSpeed, frequencyHz: Hertz): Decibels {
  const onTape = constantsAtSpeed(recorded, recorded.speedMmPerS, replayed.speedMmPerS);
  const at = (f: Hertz) => fluxLevel(onTape, f) - fluxLevel(replayed, f);
  return decibels(at(frequencyHz) - at(REFERENCE_HZ));
}

/** The same over a range, for a picture and for the worst that can happen: evenly spaced by octaves. */
export function differenceCurve(
  recorded: CurveAtSpeed,
  replayed: CurveAtSpeed,
  frequencies: readonly Hertz[],
): readonly { readonly frequencyHz: Hertz; readonly differenceDb: Decibels }[] {
  return frequencies.map((frequencyHz) => ({
    frequencyHz,
    differenceDb: replayDifference(recorded, replayed, frequencyHz),
  }));
}

/** The largest difference, either way, between two frequencies. Between them the curves turn at most a few times, so
 * some 20 points an octave don't miss it by more than 0.01 dB. */
export function worstDifference(recorded: CurveAtSpeed, replayed: CurveAtSpeed, fromHz: Hertz, toHz: Hertz): Decibels {
  const curve = differenceCurve(recorded, replayed, octaveSteps(fromHz, toHz, 20));
  let worst = 0;
  for (const point of curve) if (Math.abs(point.differenceDb) > Math.abs(worst)) worst = point.differenceDb;
  return decibels(worst);
}

/** Frequencies from one to another, both included, evenly spaced by octaves. */
export function octaveSteps(fromHz: Hertz, toHz: Hertz, stepsAnOctave: number): readonly Hertz[] {
  const count = Math.max(1, Math.ceil(Math.log2(toHz / fromHz) * stepsAnOctave));
  return Array.from({ length: count + 1 }, (_, step) => hertz(fromHz * (toHz / fromHz) ** (step / count)));
}
