import type { PartialDate } from '#model/dates.ts';
import { CURVE_NAMES, type CurveName, type Equalisation, type TimeConstants } from '#model/equalisation.ts';
import type { MillimetresPerSecond } from '#model/units.ts';
import { sameSpeed } from '../tape/speeds.ts';
import { STANDARDS, type StandardCurve } from './standards.ts';
import { sameConstants } from './time-constants.ts';

/** The years in which a tape may have been recorded; a missing end is open. */
export interface Years {
  readonly from?: number;
  readonly until?: number;
}

export type CurveAnswer =
  /** One meaning. `otherwise` holds what the name meant in other years: the note `equalisation/date-trap`. */
  | { readonly is: 'resolved'; readonly curve: NamedCurve; readonly otherwise: readonly StandardCurve[] }
  /** Several: the year, or the body whose standard it was, has to be asked for. */
  | { readonly is: 'ambiguous'; readonly meanings: readonly StandardCurve[] }
  /** No standard has that name at that speed. */
  | {
      readonly is: 'not-at-speed';
      readonly name: CurveName;
      readonly speedsOfName: readonly MillimetresPerSecond[];
      readonly namesAtSpeed: readonly CurveName[];
    };

interface NamedCurve extends TimeConstants {
  /** The standard in words; for time constants given outright, nothing. */
  readonly called: string | undefined;
  readonly source: string | undefined;
}

/** Which curve an entry's equalisation is at a speed. A name means nothing without the speed, and at 30, 7½ and 3¾ in/s
 * may mean nothing without the year. Time constants written out need neither.
 *
 * @param years  when the tape was recorded, as far as it is known.
 * Source: the table in standards.ts.
 */
export function curveOf(
  equalisation: Equalisation,
  speedMmPerS: MillimetresPerSecond,
  years: Years | undefined,
): CurveAnswer {
  if (equalisation.is === 'time-constants') {
    const { lowUs, highUs } = equalisation;
    return { is: 'resolved', curve: { lowUs, highUs, called: undefined, source: undefined }, otherwise: [] };
  }
  const { name } = equalisation;
  const rows = STANDARDS.filter((row) => row.name === name && sameSpeed(row.speedMmPerS, speedMmPerS));
  if (rows.length === 0) return notAtSpeed(name, speedMmPerS);
  const fitting = years === undefined ? rows.filter((row) => row.undated) : rows.filter((row) => overlaps(row, years));
  const meanings = fitting.length === 0 ? rows : fitting;
  const [first, ...more] = meanings;
  if (first === undefined || more.some((row) => !sameConstants(row, first))) return { is: 'ambiguous', meanings };
  return { is: 'resolved', curve: first, otherwise: rows.filter((row) => !sameConstants(row, first)) };
}

/** The years that a partial date leaves possible; undefined when it says nothing. */
export function yearsOf(date: PartialDate | undefined): Years | undefined {
  const from = date?.earliest === null || date === undefined ? undefined : Number(date.earliest.slice(0, 4));
  const until = date?.latest === null || date === undefined ? undefined : Number(date.latest.slice(0, 4));
  if (from === undefined && until === undefined) return undefined;
  return { ...(from === undefined ? {} : { from }), ...(until === undefined ? {} : { until }) };
}

const overlaps = (row: Years, years: Years) =>
  (row.from ?? -Infinity) <= (years.until ?? Infinity) && (years.from ?? -Infinity) <= (row.until ?? Infinity);

function notAtSpeed(name: CurveName, speedMmPerS: MillimetresPerSecond): CurveAnswer {
  const atSpeed = STANDARDS.filter((row) => sameSpeed(row.speedMmPerS, speedMmPerS));
  return {
    is: 'not-at-speed',
    name,
    speedsOfName: [...new Set(STANDARDS.filter((row) => row.name === name).map((row) => row.speedMmPerS))],
    namesAtSpeed: CURVE_NAMES.filter((known) => atSpeed.some((row) => row.name === known)),
  };
}
