import { daysIn, isCalendarDay, isLeapYear } from './calendar.ts';
import { respelled } from './date-respelling.ts';
import { quoted, type Refusal, refused } from './scalars/parsed.ts';

const FORMS = '1974-03-12, 1974-03, 1974, 1974~ or 1974/1976';
const MONTHS = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
];
const WRITTEN_OUT = /^[?~%]?(?<year>\d{4})-(?<month>\d{1,2})(?:-(?<day>\d{1,2}))?[?~%]?$/u;
const FIGURES = /^(?<a>\d{1,2})(?<sign>[/.-])(?<b>\d{1,2})\k<sign>(?<year>\d{2}|\d{4})$/u;

/** The month's English name; 1 is January. */
const monthName = (month: number): string => MONTHS[month - 1] ?? String(month);

/** Why a text isn't a date, and what to write: the form that is meant where it can only be one, a question where not.
 *
 * @param part  The part of an interval that isn't read; the whole text is looked at first, as `12/4/74` is no interval. */
export function refuseDate(text: string, part = text): Refusal {
  const whole = text.trim();
  const plain = part.trim();
  return (
    refuseFigures(whole) ??
    refuseRespelled(whole) ??
    refuseWrittenOut(plain) ??
    refuseOther(plain) ??
    refuseRespelled(plain) ??
    refused(
      `${quoted(text)} can't be read as a date.`,
      FORMS,
      'Write year, month and day as far as they are known, or leave the key out.',
    )
  );
}

/** An interval whose end comes before its start. */
export function refuseSpan(text: string, from: string, until: string): Refusal {
  const swapped = `${until}/${from}`;
  return refused(`In ${text} the end is before the start.`, swapped, `Write ${swapped} if the two were swapped.`);
}

/** Day and month in figures: both days are named when either can be meant. */
function refuseFigures(plain: string): Refusal | undefined {
  const groups = FIGURES.exec(plain)?.groups;
  if (groups === undefined) return undefined;
  const [a, b] = [Number(groups.a), Number(groups.b)];
  const short = groups.year?.length === 2;
  // Two figures are taken for the years when tape was used; the sentence says so, and nothing is read without asking.
  const year = short ? 1900 + Number(groups.year) : Number(groups.year);
  const century = short ? ` The century is assumed.` : '';
  const dayFirst = isCalendarDay(year, b, a) ? dashed(year, b, a) : undefined;
  const monthFirst = isCalendarDay(year, a, b) ? dashed(year, a, b) : undefined;
  if (dayFirst !== undefined && monthFirst !== undefined && dayFirst !== monthFirst) {
    const message = `${plain} can be ${a} ${monthName(b)} or ${b} ${monthName(a)} ${year}.${century}`;
    const usual = groups.sign === '.' ? ', as it usually does with points' : '';
    const action = `Write ${dayFirst} if the day comes first${usual}, ${monthFirst} if the month does; ${year} if nobody can tell.`;
    return refused(message, `${dayFirst}, or ${monthFirst}`, action, 'entry/ambiguous-date');
  }
  const only = dayFirst ?? monthFirst;
  if (only === undefined)
    return refused(
      `There is no such day as ${plain}, whichever figure is the month.`,
      FORMS,
      'Look at the label again.',
    );
  return refused(`A date has the year first.${century}`, only, `Write ${only}.`);
}

/** A date in the right order that isn't one of the calendar, or lacks a figure. */
function refuseWrittenOut(plain: string): Refusal | undefined {
  const groups = WRITTEN_OUT.exec(plain)?.groups;
  if (groups === undefined) return undefined;
  const [year, month] = [Number(groups.year), Number(groups.month)];
  const day = groups.day === undefined ? undefined : Number(groups.day);
  if (month < 1 || month > 12) return refuseMonth(plain, groups.month ?? '', day);
  if (day !== undefined && !isCalendarDay(year, month, day)) return refuseDay(plain, year, month, day);
  const full = day === undefined ? dashed(year, month) : dashed(year, month, day);
  const which = groups.month?.length === 1 ? 'month' : 'day';
  return refused(`Each part has its figures in full: two-digit ${which} needed.`, full, `Write ${full}.`);
}

function refuseMonth(plain: string, month: string, day: number | undefined): Refusal {
  if (/^(?:2[1-9]|3\d|4[01])$/u.test(month) && day !== undefined) {
    return refused(`${plain} gives a day to a season.`, FORMS, 'Leave the day out, or write the month.');
  }
  const message =
    month === '00' || month === '0'
      ? `There is no such month as month ${month}.`
      : `There is no such month: ${month} is neither a month (01–12) nor a season (21–41).`;
  const action = `Look at the label again; write ${plain.slice(0, 4)} if only the year is sure.`;
  return refused(message, FORMS, action);
}

function refuseDay(plain: string, year: number, month: number, day: number): Refusal {
  const leap = month === 2 && day === 29 && !isLeapYear(year);
  const why = leap ? `${year} was not a leap year` : `${monthName(month)} ${year} has ${daysIn(year, month)} days`;
  const action = `Look at the label again; write ${dashed(year, month)} if only the month is sure.`;
  return refused(`There is no such day as ${plain}: ${why}.`, FORMS, action);
}

function refuseOther(plain: string): Refusal | undefined {
  if (/^['’]?\d{2}$/u.test(plain)) {
    const year = `19${plain.slice(-2)}`;
    return refused(`${plain} is only part of a year: which century?`, FORMS, `Write ${year}, if that is the year.`);
  }
  if (/^\d{4}-\d{2}(?:-\d{2})?[T ]\d/u.test(plain)) {
    return refused('A time of day stands behind the date.', FORMS, `Write ${plain.split(/[T ]/u)[0]} alone.`);
  }
  if (/^\d{8}$/u.test(plain)) {
    const full = `${plain.slice(0, 4)}-${plain.slice(4, 6)}-${plain.slice(6)}`;
    return refused('Dates are read in the hyphenated (extended) form only: EDTF level 0.', full, `Write ${full}.`);
  }
  return undefined;
}

function refuseRespelled(plain: string): Refusal | undefined {
  const better = respelled(plain);
  if (better === undefined) return undefined;
  return refused(`${quoted(plain)} isn't one of the forms of a date.`, better, `Write ${better}.`);
}

function dashed(year: number, month: number, day?: number): string {
  const start = `${String(year).padStart(4, '0')}-${String(month).padStart(2, '0')}`;
  return day === undefined ? start : `${start}-${String(day).padStart(2, '0')}`;
}
