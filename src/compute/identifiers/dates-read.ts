import type { PartialDate } from '#model/dates.ts';
import { likeliestText, parseReading } from './reading-pattern.ts';

/** First and last day that a text can mean, `YYYY-MM-DD`. */
interface Span {
  readonly from: string;
  readonly to: string;
}

const MONTHS = 'january february march april may june july august september october november december'.split(' ');
const ROMAN = ['i', 'ii', 'iii', 'iv', 'v', 'vi', 'vii', 'viii', 'ix', 'x', 'xi', 'xii'];

const YEAR_FIRST = /(?<!\d)(\d{4})[-./](\d{1,2})[-./](\d{1,2})(?!\d)/g;
const YEAR_LAST = /(?<![\d])(\d{1,2})\s?[-./\s]\s?(\d{1,2}|[ivx]{1,4})\s?[-./\s']\s?(\d{4}|\d{2})(?!\d)/g;
const DAY_MONTH = /(?<!\d)(\d{1,2})(?:st|nd|rd|th)?[-./\s]*([a-z]{3,9})\.?[-./,\s']*(\d{4}|\d{2})(?!\d)/g;
const MONTH_DAY = /(?<![a-z])([a-z]{3,9})\.?[-./\s]*(\d{1,2})(?:st|nd|rd|th)?[-./,\s']+(\d{4}|\d{2})(?!\d)/g;
const MONTH_YEAR = /(?<![a-z])([a-z]{3,9})\.?[-./,\s']*(\d{4}|\d{2})(?!\d)/g;
const YEAR = /(?<!\d)((?:19|20)\d{2})(?!\d)/g;

/** Whether a label's text can mean this date, in any order of day, month and year. A text with unread characters, or
 * with no date in it that can be told, allows any, and so does a date that is itself uncertain. */
export function dateIsRead(read: string, date: PartialDate): boolean {
  if (date.uncertain || date.approximate) return true;
  const pattern = parseReading(read);
  if (!pattern.ok || pattern.parts.some((part) => part.is === 'character' && part.doubt !== 'none')) return true;
  const text = pattern.parts.some((part) => part.is === 'line break')
    ? read.replaceAll(' / ', '\n').toLowerCase()
    : likeliestText(pattern.parts).toLowerCase();
  const spans = spansIn(text);
  return (
    spans.length === 0 ||
    spans.some(({ from, to }) => (date.latest ?? '9999') >= from && (date.earliest ?? '0000') <= to)
  );
}

/** The dates of a text; whole ones where there are any, else months, else years. */
function spansIn(text: string): readonly Span[] {
  const days = [
    ...[...text.matchAll(YEAR_FIRST)].flatMap(([, y = '', m, d]) => dayOf(y, Number(m), Number(d))),
    ...[...text.matchAll(YEAR_LAST)].flatMap(([, a, b = '', y = '']) => {
      const roman = ROMAN.indexOf(b) + 1;
      if (roman > 0) return dayOf(y, roman, Number(a));
      return [...dayOf(y, Number(b), Number(a)), ...dayOf(y, Number(a), Number(b))];
    }),
    ...[...text.matchAll(DAY_MONTH)].flatMap(([, d, m = '', y = '']) => dayOf(y, monthOf(m), Number(d))),
    ...[...text.matchAll(MONTH_DAY)].flatMap(([, m = '', d, y = '']) => dayOf(y, monthOf(m), Number(d))),
  ];
  if (days.length > 0) return days;
  const months = [...text.matchAll(MONTH_YEAR)].flatMap(([, m = '', y = '']) => monthSpan(y, monthOf(m)));
  if (months.length > 0) return months;
  return [...text.matchAll(YEAR)].flatMap(([, y = '']) => [{ from: `${y}-01-01`, to: `${y}-12-31` }]);
}

/** 1 to 12 for a month's name or its beginning; 0 for another word. `sept` is usual beside `sep`. */
const monthOf = (word: string): number => MONTHS.findIndex((month) => month.startsWith(word)) + 1;

const two = (count: number) => String(count).padStart(2, '0');

/** Two figures are a year of the twentieth century, or of this one. */
const yearsOf = (written: string): readonly string[] =>
  written.length === 4 ? [written] : [`19${written}`, `20${written}`];

function dayOf(year: string, month: number, day: number): readonly Span[] {
  if (month < 1 || month > 12 || day < 1 || day > 31) return [];
  return yearsOf(year).map((y) => ({ from: `${y}-${two(month)}-${two(day)}`, to: `${y}-${two(month)}-${two(day)}` }));
}

const monthSpan = (year: string, month: number): readonly Span[] =>
  month < 1 ? [] : yearsOf(year).map((y) => ({ from: `${y}-${two(month)}-01`, to: `${y}-${two(month)}-31` }));
