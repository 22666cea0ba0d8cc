import type { TimeConstants } from './equalisation.ts';
import type { Place } from './place.ts';
import type { Decibels, Hertz, MillimetresPerSecond } from './units.ts';

export interface CurvePoint {
  readonly frequencyHz: Hertz;
  readonly levelDb: Decibels;
}

/** A curve at one speed, with the names that mean it there, and for which years. */
export interface CurveMeaning extends TimeConstants {
  /** `∞/35 µs`. */
  readonly inWords: string;
  /** Sorted by name; a name may stand twice, for other years. */
  readonly names: readonly {
    /** Missing where a maker's own curve has no name that labels use. */
    readonly name: string | undefined;
    readonly from: number | undefined;
    readonly until: number | undefined;
    readonly called: string;
    readonly source: string;
  }[];
}

/** How a tape sounds when it is replayed on another curve than its own, in dB relative to 1 kHz; above 0 it is too
 * strong there. */
export interface CurveDifference {
  readonly recorded: CurveMeaning;
  readonly replayed: CurveMeaning;
  /** At the frequencies of the table. */
  readonly told: readonly CurvePoint[];
  /** From 20 Hz to 20 kHz, for a picture. */
  readonly points: readonly CurvePoint[];
}

/** The curves of one speed, each with its flux relative to 1 kHz, and every two of them held against each other. */
export interface SpeedCurves {
  readonly speed: MillimetresPerSecond;
  readonly curves: readonly (CurveMeaning & { readonly points: readonly CurvePoint[] })[];
  readonly differences: readonly CurveDifference[];
  /** Names of labels that no standard gives a meaning at this speed. */
  readonly undefinedNames: readonly string[];
}

/** What one tape would sound like on the wrong curve, as far as its own is known. */
export interface WrongCurves {
  readonly speed: MillimetresPerSecond;
  /** The tape's curve as its entry has it. */
  readonly written: string;
  /** Missing in a dossier, which names no file. */
  readonly place?: Place | undefined;
  /** True when the name has several meanings and nobody recorded which: each is held against the others. */
  readonly isOpen: boolean;
  readonly differences: readonly CurveDifference[];
  readonly formula: string;
  readonly source: string;
}
