const MINUTE_MS = 60_000;
const HOUR_MS = 3_600_000;
const DAY_MS = 24 * HOUR_MS;

/** The year first, or the day and the month in an order that the log itself must show. */
const YEAR_FIRST = /^(?<year>\d{4})[-/.](?<month>\d{1,2})[-/.](?<day>\d{1,2})$/;
const YEAR_LAST = /^(?<first>\d{1,2})[-/.](?<second>\d{1,2})[-/.](?<year>\d{4}|\d{2})$/;
const CLOCK =
  /^(?<hour>\d{1,2}):(?<minute>\d{2})(?::(?<second>\d{2})(?:[.,]\d{1,9})?)? ?(?<half>[ap]\.?m\.?)? ?(?<zone>z|utc|[+-]\d{2}:?\d{2})?$/i;

/** Which of two numbers is the day in `12/4/2020`. */
export type DayOrder = 'day first' | 'month first';

/** The order that one written day proves: a 13 can be no month. undefined when it proves none. */
export function orderShownBy(text: string): DayOrder | undefined {
  const groups = YEAR_LAST.exec(datePart(text))?.groups;
  if (groups === undefined) return undefined;
  if (Number(groups['first']) > 12) return 'day first';
  return Number(groups['second']) > 12 ? 'month first' : undefined;
}

/** True for a day that could be read two ways. */
export const needsOrder = (text: string): boolean => YEAR_LAST.test(datePart(text));

/** True for a day that can be read one way only; a log that has one has no other kind. */
export const isYearFirst = (text: string): boolean => YEAR_FIRST.test(datePart(text));

const datePart = (text: string) => text.trim().split(/[ T]/, 1)[0] ?? '';

/** Reads the times of one log: ms since 1970 in UTC, or NaN for no time.
 * @param zone  offset of the clock that wrote it, `+02:00`; a time that carries its own keeps that. */
export function timeReader(zone: string | undefined, order: DayOrder | undefined): (text: string) => number {
  const zoneMs = offsetMs(zone ?? 'Z');
  let lastDay = '';
  let lastDayMs = Number.NaN;
  return (text) => {
    const written = text.trim();
    const space = dayEnd(written);
    if (space < 0) return Number.NaN;
    const day = written.slice(0, space);
    // Rows of one day follow one another: its day is worked out once.
    if (day !== lastDay) {
      lastDay = day;
      lastDayMs = dayMs(day, order);
    }
    return lastDayMs + clockMs(written, space + 1, zoneMs);
  };
}

/** Where the day ends and the clock begins; nearly always after ten characters. */
function dayEnd(text: string): number {
  const eleventh = text[10];
  return eleventh === ' ' || eleventh === 'T' ? 10 : text.search(/[ T]/);
}

function dayMs(text: string, order: DayOrder | undefined): number {
  const first = YEAR_FIRST.exec(text)?.groups;
  if (first !== undefined) return calendarMs(Number(first['year']), Number(first['month']), Number(first['day']));
  const last = YEAR_LAST.exec(text)?.groups;
  if (last === undefined || order === undefined) return Number.NaN;
  const year = Number(last['year']) + (last['year']?.length === 2 ? 2000 : 0);
  const [day, month] =
    order === 'day first'
      ? [Number(last['first']), Number(last['second'])]
      : [Number(last['second']), Number(last['first'])];
  return calendarMs(year, month, day);
}

function calendarMs(year: number, month: number, day: number): number {
  const ms = Date.UTC(year, month - 1, day);
  const back = new Date(ms);
  return back.getUTCMonth() === month - 1 && back.getUTCDate() === day ? ms : Number.NaN;
}

/** The time of day less the zone; plain `HH:MM` and `HH:MM:SS` are read figure by figure. */
function clockMs(text: string, from: number, zoneMs: number): number {
  if (text.charCodeAt(from + 2) === COLON && (text.length === from + 5 || text.length === from + 8)) {
    const minutes = twoFigures(text, from) * 60 + twoFigures(text, from + 3);
    if (text.length === from + 5) return inDay(minutes * MINUTE_MS, text, from) - zoneMs;
    if (text.charCodeAt(from + 5) === COLON) {
      return inDay(minutes * MINUTE_MS + twoFigures(text, from + 6) * 1000, text, from) - zoneMs;
    }
  }
  const groups = CLOCK.exec(text.slice(from))?.groups;
  if (groups === undefined) return Number.NaN;
  const half = groups['half']?.toLowerCase().replaceAll('.', '');
  const hour = Number(groups['hour']);
  if (half !== undefined && (hour < 1 || hour > 12)) return Number.NaN;
  const hours = half === undefined ? hour : (hour % 12) + (half === 'pm' ? 12 : 0);
  const minute = Number(groups['minute']);
  const second = Number(groups['second'] ?? 0);
  if (hours > 23 || minute > 59 || second > 59) return Number.NaN;
  const ms = hours * HOUR_MS + minute * MINUTE_MS + second * 1000;
  return ms - (groups['zone'] === undefined ? zoneMs : offsetMs(groups['zone']));
}

const COLON = 58;
const ZERO = 48;

function twoFigures(text: string, at: number): number {
  const tens = text.charCodeAt(at) - ZERO;
  const ones = text.charCodeAt(at + 1) - ZERO;
  return tens >= 0 && tens <= 9 && ones >= 0 && ones <= 9 ? tens * 10 + ones : Number.NaN;
}

/** NaN for 24:00 and later, and for a minute or a second past 59. */
function inDay(ms: number, text: string, from: number): number {
  const seconds = text.length === from + 8 ? twoFigures(text, from + 6) : 0;
  return ms < DAY_MS && twoFigures(text, from + 3) < 60 && seconds < 60 ? ms : Number.NaN;
}

/** `+02:00`, `+0200`, `Z`, `UTC` in ms; NaN for anything else. */
export function offsetMs(zone: string): number {
  if (/^(?:z|utc)$/i.test(zone)) return 0;
  const groups = /^(?<sign>[+-])(?<hours>\d{2}):?(?<minutes>\d{2})$/.exec(zone)?.groups;
  if (groups === undefined) return Number.NaN;
  const ms = Number(groups['hours']) * HOUR_MS + Number(groups['minutes']) * MINUTE_MS;
  return groups['sign'] === '-' ? -ms : ms;
}
