import type { CurveDifference, CurveMeaning, CurvePoint, SpeedCurves } from '#model/curve-sheet.ts';
import { CURVE_NAMES, type TimeConstants } from '#model/equalisation.ts';
import { type Decibels, decibels, type Hertz, hertz, type MillimetresPerSecond } from '#model/units.ts';
import { STANDARD_SPEEDS, sameSpeed } from '../tape/speeds.ts';
import { octaveSteps, replayDifference } from './replay-difference.ts';
import { OTHER_CURVES, STANDARDS } from './standards.ts';
import { constantsInWords, fluxLevel, sameConstants } from './time-constants.ts';

/** The frequencies of a table: bass that a curve lifts, the reference, and treble. */
const TOLD_AT_HZ: readonly Hertz[] = [40, 63, 125, 1000, 4000, 8000, 16_000].map(hertz);

/** What is heard, six points an octave: the curves turn too gently for more to be seen. */
const DRAWN_AT_HZ: readonly Hertz[] = octaveSteps(hertz(20), hertz(20_000), 6);
const REFERENCE_HZ = hertz(1000);

/** Every curve that a standard or a maker has defined at each standard speed, fastest speed first, and every two of a
 * speed held against each other.
 *
 * Source: the table in standards.ts; the formulas of fluxLevel and replayDifference.
 */
export function allSpeedCurves(): readonly SpeedCurves[] {
  return STANDARD_SPEEDS.map(({ speedMmPerS: speed }) => {
    const meanings = meaningsAt(speed);
    return {
      speed,
      curves: meanings.map((curve) => ({ ...curve, points: fluxPoints(curve) })),
      differences: meanings.flatMap((recorded, at) =>
        meanings.slice(at + 1).map((replayed) => differenceOf(recorded, replayed, speed)),
      ),
      undefinedNames: CURVE_NAMES.filter((name) =>
        meanings.every(({ names }) => names.every((one) => one.name !== name)),
      ),
    };
  });
}

/** The different curves at a speed, each with all the names that mean it. Without bass lift first, then by treble. */
export function meaningsAt(speed: MillimetresPerSecond): readonly CurveMeaning[] {
  const rows = [...STANDARDS, ...OTHER_CURVES.map((row) => ({ ...row, name: undefined }))].filter((row) =>
    sameSpeed(row.speedMmPerS, speed),
  );
  const meanings: { constants: TimeConstants; rows: (typeof rows)[number][] }[] = [];
  for (const row of rows) {
    const known = meanings.find(({ constants }) => sameConstants(constants, row));
    if (known === undefined) meanings.push({ constants: row, rows: [row] });
    else known.rows.push(row);
  }
  return meanings
    .map(({ constants: { lowUs, highUs }, rows: named }) => ({
      lowUs,
      highUs,
      inWords: constantsInWords({ lowUs, highUs }),
      names: named.map(({ name, from, until, called, source }) => ({ name, from, until, called, source })),
    }))
    .sort((a, b) => finite(b.lowUs) - finite(a.lowUs) || a.highUs - b.highUs);
}

const finite = (time: number) => (Number.isFinite(time) ? time : 1e9);

/** One curve replayed on another at the same speed. */
export function differenceOf(
  recorded: CurveMeaning,
  replayed: CurveMeaning,
  speedMmPerS: MillimetresPerSecond,
): CurveDifference {
  const at = (frequencyHz: Hertz): CurvePoint => ({
    frequencyHz,
    levelDb: replayDifference({ ...recorded, speedMmPerS }, { ...replayed, speedMmPerS }, frequencyHz),
  });
  return { recorded, replayed, told: TOLD_AT_HZ.map(at), points: DRAWN_AT_HZ.map(at) };
}

/** Flux on the tape relative to 1 kHz. */
function fluxPoints(curve: TimeConstants): readonly CurvePoint[] {
  const level = (frequencyHz: Hertz): Decibels =>
    decibels(fluxLevel(curve, frequencyHz) - fluxLevel(curve, REFERENCE_HZ));
  return DRAWN_AT_HZ.map((frequencyHz) => ({ frequencyHz, levelDb: level(frequencyHz) }));
}
