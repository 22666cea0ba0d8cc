import { type Decibels, decibels, type Seconds, seconds } from '#model/units.ts';

/** How long a side can be at a level. A trade's chart, not a standard: past the last row a side is unusual, never
 * impossible (masters over 30 min were cut, and more than 40 is said to be possible, badly). */
export interface SideLimit {
  readonly sizeIn: number;
  readonly rpm: string;
  /** Longest first level: level in dB against the standard reference, and the minutes that go with it. */
  readonly atLevel: readonly { readonly levelDb: Decibels; readonly lastsS: Seconds }[];
  readonly source: string;
}

const CHART = 'a cutting studio’s chart referred to the RIAA standard reference level; a trade chart, not a standard';

const limit = (
  sizeIn: number,
  rpm: string,
  ...levels: readonly (readonly [db: number, minutes: number])[]
): SideLimit => ({
  sizeIn,
  rpm,
  atLevel: levels.map(([db, minutes]) => ({ levelDb: decibels(db), lastsS: seconds(minutes * 60) })),
  source: CHART,
});

/** Loudest first. The chart's own "1 dB a minute" contradicts its rows (4 min cost 3 dB); the rows are used. */
export const SIDE_LIMITS: readonly SideLimit[] = [
  limit(12, '33⅓', [0, 20], [-3, 24], [-6, 28]),
  limit(12, '45', [3, 10.5], [0, 13.5], [-3, 16]),
  limit(10, '33⅓', [0, 13], [-3, 17], [-6, 19]),
  limit(7, '45', [3, 4], [0, 5], [-3, 6]),
  limit(7, '33⅓', [0, 6.5], [-3, 7.5], [-6, 9.5]),
];

export interface SideAnswer {
  /** The loudest level at which the chart still has room; undefined when the side is longer than its last row. */
  readonly fitsAtDb: Decibels | undefined;
  /** The next louder level, at which it would be too long; undefined when it fits at the loudest. */
  readonly tooLongAtDb: Decibels | undefined;
}

/** Where a side's length stands against the chart. */
export function sideAgainstLimit(lasts: Seconds, { atLevel }: SideLimit): SideAnswer {
  let tooLongAtDb: Decibels | undefined;
  for (const row of atLevel) {
    if (lasts <= row.lastsS) return { fitsAtDb: row.levelDb, tooLongAtDb };
    tooLongAtDb = row.levelDb;
  }
  return { fitsAtDb: undefined, tooLongAtDb };
}
