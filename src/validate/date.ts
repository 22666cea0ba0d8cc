import { type Day, day, type PartialDate } from '#model/dates.ts';
import { type Bounds, boundsOf, type Component } from './date-bounds.ts';
import { refuseDate, refuseSpan } from './date-refusal.ts';
import { type Parsed, parsed } from './scalars/parsed.ts';

/** A year, a month, a day or a season, with unread figures as X, and `?`, `~` or `%` before or behind a part.
 * Source: ISO 8601-2:2019 (EDTF), levels 0 to 2, four-figure years. */
const ONE =
  /^[?~%]?(?<year>[\dX]{4})(?:S(?<significant>[1-4]))?[?~%]?(?:-[?~%]?(?<month>[\dX]{2})[?~%]?(?:-[?~%]?(?<day>[\dX]{2})[?~%]?)?)?$/u;

/** Longer than any date that a person writes; a set may name many years. */
const LONGEST = 200;

/** A date as far as it is known: EDTF's days, months, years and seasons, unread figures, intervals with open or unknown
 * ends, and sets. Times of day are refused: nothing here needs one. */
export function parsePartialDate(text: string): Parsed<PartialDate> {
  if (text.length > LONGEST) return refuseDate(text);
  const bracket = text[0];
  if (bracket === '[' || bracket === '{') return parseSet(text, bracket === '[' ? ']' : '}');
  const slash = text.indexOf('/');
  if (slash >= 0) return parseInterval(text, text.slice(0, slash), text.slice(slash + 1));
  const one = parseOne(text);
  return one.ok ? parsed(one.value) : one;
}

function parseOne(text: string): Parsed<PartialDate> {
  const groups = ONE.exec(text)?.groups;
  if (groups === undefined) return refuseDate(text);
  const component: Component = {
    year: groups.year ?? '',
    significant: groups.significant === undefined ? undefined : Number(groups.significant),
    month: groups.month,
    day: groups.day,
  };
  const bounds = boundsOf(component);
  return bounds === undefined ? refuseDate(text) : parsed(datedBy(bounds, text));
}

function datedBy(bounds: Bounds, text: string): PartialDate {
  const both = text.includes('%');
  return {
    earliest: day(bounds.earliest),
    latest: day(bounds.latest),
    uncertain: both || text.includes('?'),
    approximate: both || text.includes('~'),
    openStart: false,
    openEnd: false,
    unknownStart: false,
    unknownEnd: false,
    season: bounds.season,
  };
}

function parseInterval(text: string, from: string, until: string): Parsed<PartialDate> {
  const start = endOf(from);
  const end = endOf(until);
  if (start === undefined && end === undefined) return refuseDate(text);
  if (start?.ok === false) return refuseDate(text, from);
  if (end?.ok === false) return refuseDate(text, until);
  const earliest = start?.value.earliest ?? null;
  const latest = end?.value.latest ?? null;
  if (reversed(earliest, latest)) return refuseSpan(text, from, until);
  return parsed({
    earliest,
    latest,
    uncertain: start?.value.uncertain === true || end?.value.uncertain === true,
    approximate: start?.value.approximate === true || end?.value.approximate === true,
    openStart: from === '..',
    openEnd: until === '..',
    unknownStart: from === '',
    unknownEnd: until === '',
    season: null,
  });
}

const endOf = (text: string): Parsed<PartialDate> | undefined =>
  text === '' || text === '..' ? undefined : parseOne(text);

const reversed = (earliest: Day | null, latest: Day | null) =>
  earliest !== null && latest !== null && latest < earliest;

/** One of several dates `[1667,1668,1670..1672]`, or all of them `{…}`: the bounds are those of the members. */
function parseSet(text: string, closing: string): Parsed<PartialDate> {
  if (!text.endsWith(closing)) return refuseDate(text);
  const members = text.slice(1, -1).split(',');
  const dates: PartialDate[] = [];
  for (const [index, member] of members.entries()) {
    const date = parseMember(member.trim(), index === 0, index === members.length - 1);
    if (!date.ok) return date;
    dates.push(date.value);
  }
  const openStart = dates.some((date) => date.openStart);
  const openEnd = dates.some((date) => date.openEnd);
  return parsed({
    earliest: openStart ? null : dates.reduce<Day | null>((least, { earliest }) => earlier(least, earliest), null),
    latest: openEnd ? null : dates.reduce<Day | null>((most, { latest }) => later(most, latest), null),
    uncertain: dates.some((date) => date.uncertain),
    approximate: dates.some((date) => date.approximate),
    openStart,
    openEnd,
    unknownStart: false,
    unknownEnd: false,
    season: null,
  });
}

function parseMember(text: string, first: boolean, last: boolean): Parsed<PartialDate> {
  const dots = text.indexOf('..');
  if (dots < 0) return parseOne(text);
  const [from, until] = [text.slice(0, dots), text.slice(dots + 2)];
  if ((from === '' && (!first || until === '')) || (until === '' && !last)) return refuseDate(text);
  return parseInterval(text, from === '' ? '..' : from, until === '' ? '..' : until);
}

const earlier = (a: Day | null, b: Day | null) => (a === null || (b !== null && b < a) ? b : a);
const later = (a: Day | null, b: Day | null) => (a === null || (b !== null && b > a) ? b : a);
