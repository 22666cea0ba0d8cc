import type { Day, LocalTime, PartialDate } from '#model/dates.ts';

const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];
const SEASONS: Readonly<Record<number, string>> = { 21: 'spring', 22: 'summer', 23: 'autumn', 24: 'winter' };

/** `18 Feb 1977`. */
export function dayWords(day: Day): string {
  const { year, month, date } = parts(day);
  return `${date} ${MONTHS[month - 1]} ${year}`;
}

/** A date as an owner wrote it: a whole day as `18 Feb 1977`, anything else as it stands. */
export function writtenDateWords(written: string): string {
  return /^\d{4}-\d{2}-\d{2}$/.test(written) ? dayWords(written as Day) : written;
}

/** `11 Mar 2026, 22:00`. */
export function timeWords(time: LocalTime): string {
  const [day = '', hour = ''] = time.split('T');
  return `${dayWords(day as Day)}, ${hour}`;
}

/** A date as far as it is known: `18 Feb 1977`, `about 1974`, `1970s`, `1974 to 1976`, `from 1974 on`, `1974, uncertain`. */
export function dateWords(date: PartialDate): string {
  const about = date.approximate ? `about ${bounds(date)}` : bounds(date);
  return date.uncertain ? `${about}, uncertain` : about;
}

function bounds({ earliest, latest, season, openEnd }: PartialDate): string {
  if (earliest === null && latest === null) return 'at a time not known';
  if (earliest === null) return `until ${point(latest as Day, 'last')}`;
  if (latest === null) return openEnd ? `${point(earliest, 'first')} till now` : `from ${point(earliest, 'first')} on`;
  if (season !== null && SEASONS[season] !== undefined) return `${SEASONS[season]} ${parts(earliest).year}`;
  return span(earliest, latest);
}

function span(earliest: Day, latest: Day): string {
  if (earliest === latest) return dayWords(earliest);
  const from = parts(earliest);
  const to = parts(latest);
  const wholeYears = startsYear(earliest) && endsYear(latest);
  if (wholeYears && from.year === to.year) return String(from.year);
  if (wholeYears && from.year % 10 === 0 && to.year === from.year + 9) return `${from.year}s`;
  if (wholeYears && from.year % 100 === 0 && to.year === from.year + 99) return `${from.year} to ${to.year}`;
  if (from.year === to.year && from.month === to.month && startsMonth(earliest) && endsMonth(latest))
    return point(earliest, 'first');
  return `${point(earliest, 'first')} to ${point(latest, 'last')}`;
}

/** The largest whole thing that a bound is the edge of: a year, a month, or the day itself. */
function point(day: Day, edge: 'first' | 'last'): string {
  const { year, month } = parts(day);
  if (edge === 'first' ? startsYear(day) : endsYear(day)) return String(year);
  if (edge === 'first' ? startsMonth(day) : endsMonth(day)) return `${MONTHS[month - 1]} ${year}`;
  return dayWords(day);
}

function parts(day: Day) {
  const [year = '0', month = '1', date = '1'] = day.split('-');
  return { year: Number(year), month: Number(month), date: Number(date) };
}

const startsMonth = (day: Day) => day.endsWith('-01');
const startsYear = (day: Day) => day.endsWith('-01-01');
const endsYear = (day: Day) => day.endsWith('-12-31');

function endsMonth(day: Day): boolean {
  const { year, month, date } = parts(day);
  return date === new Date(Date.UTC(year, month, 0)).getUTCDate();
}
