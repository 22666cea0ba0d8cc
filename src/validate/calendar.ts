const DAYS: readonly number[] = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

export const isLeapYear = (year: number): boolean => (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;

/** Days of a month, 1 to 12, in the Gregorian calendar; 0 for a month that there isn't. */
export function daysIn(year: number, month: number): number {
  return month === 2 && isLeapYear(year) ? 29 : (DAYS[month - 1] ?? 0);
}

export const isCalendarDay = (year: number, month: number, day: number): boolean =>
  day >= 1 && day <= daysIn(year, month);
