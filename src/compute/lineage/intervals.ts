import type { Day, PartialDate } from '#model/dates.ts';

/** How two partial dates that ought to follow one another do. `doubtful`: they contradict, but only as far as a `~`
 * or `?` can be taken at its word, so it is worth a note and no more. */
export type Sequence = 'possible' | 'doubtful' | 'contradicted';

/** Whether `later` can be on or after `earlier`.
 *
 * Partial dates are intervals of days with their bounds as written. It is contradicted only when the last possible
 * day of `later` is before the first possible day of `earlier`; any overlap is possible, and so is an open or unknown
 * bound. Source: ISO 8601-2 (EDTF) gives `~` and `?` no width, so none is invented. */
export function sequence(earlier: PartialDate | undefined, later: PartialDate | undefined): Sequence {
  if (earlier === undefined || later === undefined || !isWhollyBefore(later, earlier)) return 'possible';
  return isDoubtful(earlier) || isDoubtful(later) ? 'doubtful' : 'contradicted';
}

/** Every possible day of `a` is before every possible day of `b`. */
export function isWhollyBefore(a: PartialDate, b: PartialDate): boolean {
  return a.latest !== null && b.earliest !== null && a.latest < b.earliest;
}

/** Some day could be both; an open or unknown bound could be anything. */
export function couldBeSameTime(a: PartialDate, b: PartialDate): boolean {
  return !isWhollyBefore(a, b) && !isWhollyBefore(b, a);
}

export const isDoubtful = (date: PartialDate): boolean => date.uncertain || date.approximate;

/** Whole days from one day to another, in the Gregorian calendar; negative when `to` is before `from`. */
export function daysBetween(from: Day, to: Day): number {
  return Math.round((Date.parse(to) - Date.parse(from)) / 86_400_000);
}

/** Days that the date leaves open, both ends counted; Infinity for an open or unknown end. */
export function width(date: PartialDate): number {
  if (date.earliest === null || date.latest === null) return Number.POSITIVE_INFINITY;
  return daysBetween(date.earliest, date.latest) + 1;
}

/** The months that the date could lie in, as `1978-02`, or nothing when there are more than `most` or an end is open. */
export function monthsOf(date: PartialDate, most: number): readonly string[] {
  if (date.earliest === null || date.latest === null) return [];
  const first = monthNumber(date.earliest);
  const count = monthNumber(date.latest) - first + 1;
  if (count > most) return [];
  return Array.from({ length: count }, (_, step) => {
    const month = first + step;
    return `${Math.floor(month / 12)}-${String((month % 12) + 1).padStart(2, '0')}`;
  });
}

const monthNumber = (date: Day): number => {
  const [year, month] = date.split('-').slice(-3);
  return Number(year) * 12 + Number(month) - 1;
};
