import { daysIn } from './calendar.ts';

/** The parts of one date as written, X for a figure that nobody read. */
export interface Component {
  readonly year: string;
  /** How many of the year's figures are significant. */
  readonly significant: number | undefined;
  readonly month: string | undefined;
  readonly day: string | undefined;
}

export interface Bounds {
  readonly earliest: string;
  readonly latest: string;
  readonly season: number | null;
}

/** Parts of a year that have months of their own: quarters, thirds, halves (level 2). First month and last. */
const MONTHS_OF: ReadonlyMap<number, readonly [number, number]> = new Map([
  [33, [1, 3]],
  [34, [4, 6]],
  [35, [7, 9]],
  [36, [10, 12]],
  [37, [1, 4]],
  [38, [5, 8]],
  [39, [9, 12]],
  [40, [1, 6]],
  [41, [7, 12]],
]);

/** First and last day that a date can mean; undefined when no day of the calendar fits. A season has no hemisphere and
 * no days in the standard, so its year is the only honest bound. */
export function boundsOf(date: Component): Bounds | undefined {
  if (date.significant !== undefined)
    return date.month === undefined ? significantYears(date.year, date.significant) : undefined;
  const group = Number(date.month);
  if (group >= 21 && group <= 41) return date.day === undefined ? partOfYear(date.year, group) : undefined;
  const first = firstDay(date, 1);
  const last = firstDay(date, -1);
  return first === undefined || last === undefined ? undefined : { earliest: first, latest: last, season: null };
}

function partOfYear(year: string, group: number): Bounds {
  const [from, until] = MONTHS_OF.get(group) ?? [1, 12];
  const lastYear = highest(year);
  return {
    earliest: iso(Number(lowest(year)), from, 1),
    latest: iso(Number(lastYear), until, daysIn(Number(lastYear), until)),
    season: group <= 32 ? group : null,
  };
}

/** `1950S2`: two figures are significant, so any year from 1900 to 1999. */
function significantYears(year: string, significant: number): Bounds | undefined {
  if (year.includes('X')) return undefined;
  const kept = year.slice(0, significant);
  return { earliest: `${kept.padEnd(4, '0')}-01-01`, latest: `${kept.padEnd(4, '9')}-12-31`, season: null };
}

/** The first day that fits, from the start of the calendar (step 1) or from its end (step -1). */
function firstDay(date: Component, step: 1 | -1): string | undefined {
  for (const year of fits(date.year, 0, 9999, step)) {
    for (const month of fits(date.month ?? 'XX', 1, 12, step)) {
      const day = fits(date.day ?? 'XX', 1, daysIn(year, month), step)[0];
      if (day !== undefined) return iso(year, month, day);
    }
    // Only the length of February changes with the year.
    if (!canBeLeapDay(date)) return undefined;
  }
  return undefined;
}

const canBeLeapDay = (date: Component) => matches('02', date.month ?? 'XX') && matches('29', date.day ?? 'XX');

/** The numbers within the bounds whose figures fit the mask, in order. */
function fits(mask: string, least: number, most: number, step: 1 | -1): number[] {
  if (!mask.includes('X')) {
    const only = Number(mask);
    return only >= least && only <= most ? [only] : [];
  }
  const found: number[] = [];
  const from = Math.max(least, Number(lowest(mask)));
  const to = Math.min(most, Number(highest(mask)));
  for (let count = from; count <= to; count++) {
    if (matches(String(count).padStart(mask.length, '0'), mask)) found.push(count);
  }
  return step === 1 ? found : found.reverse();
}

function matches(figures: string, mask: string): boolean {
  for (let i = 0; i < mask.length; i++) if (mask[i] !== 'X' && mask[i] !== figures[i]) return false;
  return true;
}

const lowest = (mask: string) => mask.replaceAll('X', '0');
const highest = (mask: string) => mask.replaceAll('X', '9');
const two = (count: number) => String(count).padStart(2, '0');
const iso = (year: number, month: number, day: number) => `${String(year).padStart(4, '0')}-${two(month)}-${two(day)}`;
