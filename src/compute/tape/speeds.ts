import { inchesPerSecond, type MillimetresPerSecond, millimetresPerSecond } from '#model/units.ts';

export interface StandardSpeed {
  readonly inPerS: number;
  readonly speedMmPerS: MillimetresPerSecond;
  /** As labels round it, in cm/s; it means the exact speed all the same: 38 is 38.1. */
  readonly labelCmPerS: readonly number[];
  readonly source: string;
}

/** The speeds that tapes are recorded at, fastest first. */
export const STANDARD_SPEEDS: readonly StandardSpeed[] = [
  { inPerS: 30, labelCmPerS: [76, 76.2], source: 'IEC 60094-1; printed as 76 cm/s in IASA-TC 04 (2nd ed.) 5.4.10' },
  { inPerS: 15, labelCmPerS: [38, 38.1], source: 'IEC 60094-1; printed as 38 cm/s in IASA-TC 04 (2nd ed.) 5.4.10' },
  { inPerS: 7.5, labelCmPerS: [19, 19.05], source: 'IEC 60094-1; printed as 19 cm/s in IASA-TC 04 (2nd ed.) 5.4.10' },
  { inPerS: 3.75, labelCmPerS: [9.5, 9.53, 9.525], source: 'IEC 60094-1; 9.5 cm/s in IASA-TC 04 (2nd ed.) 5.4.10' },
  { inPerS: 1.875, labelCmPerS: [4.75, 4.76, 4.8, 4.7625], source: 'IEC 60094-1; the rounded forms from memory' },
].map((row) => ({ ...row, speedMmPerS: inchesPerSecond(row.inPerS) }));

/** The exact speed that a label's rounded cm/s means; undefined when no standard speed is printed so. */
export function nominalSpeed(labelCmPerS: number): MillimetresPerSecond | undefined {
  return STANDARD_SPEEDS.find((speed) => speed.labelCmPerS.includes(labelCmPerS))?.speedMmPerS;
}

export const halved = (speedMmPerS: MillimetresPerSecond) => millimetresPerSecond(speedMmPerS / 2);
export const doubled = (speedMmPerS: MillimetresPerSecond) => millimetresPerSecond(speedMmPerS * 2);

/** True when two speeds are the same but for rounding in arithmetic. */
export const sameSpeed = (a: MillimetresPerSecond, b: MillimetresPerSecond) => Math.abs(a - b) < 1e-6 * Math.abs(a);
