import type { LocalTime } from '#model/dates.ts';
import { isCalendarDay } from '../calendar.ts';
import { type Parsed, parsed, quoted, refused } from './parsed.ts';

const FORM = /^(?<year>\d{4})-(?<month>\d{2})-(?<day>\d{2})[T ](?<hour>\d{2}):(?<minute>\d{2})(?::\d{2})?$/u;
const EXPECTED = '2026-03-11T22:00, or 2026-03-11 22:00';

/** A time on the clock of the place, to the minute: `2026-03-11T22:00`. No zone is read or guessed. */
export function parseLocalTime(text: string): Parsed<LocalTime> {
  const groups = FORM.exec(text)?.groups;
  if (groups === undefined) {
    const zone = /(?:Z|[+-]\d{2}:?\d{2})$/u.test(text)
      ? ' A zone is not read: write the time that the clock showed.'
      : '';
    return refused(`${quoted(text)} isn't a day with a time.`, EXPECTED, `Write the day, a T and the time.${zone}`);
  }
  const [year, month, day] = [Number(groups.year), Number(groups.month), Number(groups.day)];
  if (!isCalendarDay(year, month, day) || Number(groups.hour) > 23 || Number(groups.minute) > 59) {
    return refused(`There is no such time as ${text}.`, EXPECTED, 'Look at the day and at the hour again.');
  }
  return parsed(`${text.slice(0, 10)}T${groups.hour}:${groups.minute}` as LocalTime);
}
