import type { CurveName, TimeConstants } from '#model/equalisation.ts';
import { inchesPerSecond, type MillimetresPerSecond } from '#model/units.ts';
import { timeConstants } from './time-constants.ts';

/** What one name means at one speed, for recordings of some years. */
export interface StandardCurve extends TimeConstants {
  readonly name: CurveName;
  readonly speedMmPerS: MillimetresPerSecond;
  /** First and last year in which the name may have meant this; missing: no such bound is known. Two rows of a name may
   * share years: sources differ on the year of the change, and tapes were still made the old way after it. */
  readonly from?: number;
  readonly until?: number;
  /** True for what is still the standard, and what the name means when no year is known. Where neither meaning may be
   * taken for granted, no row has it. */
  readonly undated?: true;
  readonly called: string;
  readonly source: string;
}

const TC04 = 'IASA-TC 04 (2nd ed. 2009) section 5.4.10.2, table 1';

type Row = readonly [
  name: CurveName,
  inPerS: number,
  lowUs: number,
  highUs: number,
  years: { from?: number; until?: number; undated?: true },
  called: string,
  source?: string,
];

const NO_BASS_LIFT = Number.POSITIVE_INFINITY;

/** Sorted by name, then speed from fast to slow, then first year. Time constants in µs. */
const ROWS: readonly Row[] = [
  ['AES', 30, NO_BASS_LIFT, 17.5, { undated: true }, 'AES, the same as IEC2 (1981, current)'],
  ['CCIR', 30, NO_BASS_LIFT, 35, { undated: true }, 'CCIR (1953 to 1966)'],
  ['CCIR', 15, NO_BASS_LIFT, 35, { undated: true }, 'CCIR (1953), the same as IEC1 (current)'],
  ['CCIR', 7.5, NO_BASS_LIFT, 100, { until: 1968 }, 'CCIR (up to 1966)'],
  ['CCIR', 7.5, NO_BASS_LIFT, 70, { from: 1965 }, 'CCIR (from 1966), the same as IEC1 (current)'],
  ['DIN', 30, NO_BASS_LIFT, 35, { undated: true }, 'DIN (1962)'],
  ['DIN', 15, NO_BASS_LIFT, 35, { undated: true }, 'DIN (1962), the same as IEC1 (current)'],
  ['DIN', 7.5, NO_BASS_LIFT, 100, { until: 1966 }, 'DIN (up to 1965)'],
  ['DIN', 7.5, NO_BASS_LIFT, 70, { from: 1965 }, 'DIN studio (from 1965), the same as IEC1 (current)'],
  ['DIN', 7.5, 3180, 50, { from: 1966 }, 'DIN home (from 1966), the same as NAB'],
  ['DIN', 3.75, NO_BASS_LIFT, 200, { until: 1962 }, 'DIN (1955 to 1961)'],
  ['DIN', 3.75, 3180, 120, { from: 1961 }, 'DIN (from 1962)'],
  ['DIN', 1.875, 3180, 120, { undated: true }, 'DIN (1971, current)', `${TC04}; figures from memory`],
  ['IEC', 30, NO_BASS_LIFT, 35, { until: 1981 }, 'IEC1 (1968), the same as CCIR and DIN'],
  ['IEC', 30, NO_BASS_LIFT, 17.5, { from: 1981 }, 'IEC2 (1981, current), the same as AES'],
  ['IEC', 15, NO_BASS_LIFT, 35, { undated: true }, 'IEC1 (1968, current)'],
  ['IEC', 7.5, NO_BASS_LIFT, 100, { until: 1968 }, 'IEC (up to 1968)'],
  ['IEC', 7.5, NO_BASS_LIFT, 70, { from: 1965, undated: true }, 'IEC1 (1968, current)'],
  ['IEC', 3.75, 3180, 140, { until: 1968 }, 'IEC (1962 to 1968)'],
  ['IEC', 3.75, 3180, 90, { from: 1968, undated: true }, 'IEC2 (1968, current), the same as NAB'],
  ['IEC', 1.875, 3180, 120, { undated: true }, 'IEC (1971, current)', `${TC04}; figures from memory`],
  ['IEC1', 30, NO_BASS_LIFT, 35, { undated: true }, 'IEC1 (1968), the same as CCIR and DIN'],
  ['IEC1', 15, NO_BASS_LIFT, 35, { undated: true }, 'IEC1 (1968, current)'],
  ['IEC1', 7.5, NO_BASS_LIFT, 70, { undated: true }, 'IEC1 (1968, current)'],
  ['IEC2', 30, NO_BASS_LIFT, 17.5, { undated: true }, 'IEC2 (1981, current), the same as AES'],
  [
    'IEC2',
    15,
    3180,
    50,
    { undated: true },
    'NAB; not in the table as IEC2',
    `${TC04}; the name at this speed from memory`,
  ],
  ['IEC2', 7.5, 3180, 50, { undated: true }, 'IEC2 (1965, current), the same as NAB'],
  ['IEC2', 3.75, 3180, 90, { undated: true }, 'IEC2 (1968, current), the same as NAB'],
  ['NAB', 15, 3180, 50, { undated: true }, 'NAB (1953, current), the same as EIA (1963)'],
  ['NAB', 7.5, 3180, 50, { undated: true }, 'NAB (1966), the same as IEC2 (1965, current)'],
  ['NAB', 3.75, 3180, 90, { undated: true }, 'NAB (1965), the same as IEC2 (1968, current)'],
  ['NAB', 1.875, 3180, 90, { undated: true }, 'NAB (1965)', 'NAB standard of 1965, from memory'],
];

export const STANDARDS: readonly StandardCurve[] = ROWS.map(
  ([name, inPerS, lowUs, highUs, years, called, source = TC04]) => ({
    name,
    speedMmPerS: inchesPerSecond(inPerS),
    ...timeConstants(lowUs, highUs),
    ...years,
    called,
    source,
  }),
);

/** Curves in the table that go by none of the names above: they are met on tapes all the same. */
export const OTHER_CURVES: readonly (Omit<StandardCurve, 'name'> & { readonly called: string })[] = [
  {
    speedMmPerS: inchesPerSecond(7.5),
    ...timeConstants(NO_BASS_LIFT, 50),
    from: 1967,
    called: 'a maker’s home series, and EIA (proposed, 1967)',
    source: TC04,
  },
  {
    speedMmPerS: inchesPerSecond(3.75),
    ...timeConstants(NO_BASS_LIFT, 100),
    from: 1967,
    called: 'a maker’s home series, and EIA (proposed, 1967)',
    source: TC04,
  },
  {
    speedMmPerS: inchesPerSecond(3.75),
    ...timeConstants(3180, 200),
    from: 1953,
    until: 1958,
    called: 'a maker’s own (1953 to 1958)',
    source: TC04,
  },
];
