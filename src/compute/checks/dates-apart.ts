import type { PartialDate } from '#model/dates.ts';
import type { Severity } from '#model/diagnostic.ts';
import type { Known } from '#model/fact.ts';
import type { Place } from '#model/place.ts';
import { sequence } from '../lineage/intervals.ts';
import { between, type Doubt } from './check.ts';

/** A date with what it is the date of, as a sentence's subject: `the copy`. */
export interface DatedThing {
  readonly what: string;
  readonly title: string;
  readonly on: Known<PartialDate>;
}

/** What a check says when `later` is dated before `earlier`: a warning, or a note where a `~` or `?` carries it; nothing
 * when the dates can follow one another. The reading that would agree is named where turning day and month round
 * would do it. */
export function datesApart(earlier: DatedThing, later: DatedThing, message: string, causes: string): readonly Doubt[] {
  const how = sequence(earlier.on.value, later.on.value);
  if (how === 'possible') return [];
  const severity: Severity | undefined = how === 'doubtful' ? 'note' : undefined;
  return [
    {
      ...between(view(later, `${earlier.on.written} or later`), view(earlier, `${later.on.written} or earlier`)),
      message,
      action: `${turnedRound(earlier, later)}${causes}`,
      ...(severity !== undefined && { severity }),
    },
  ];
}

function view(
  { what, title, on }: DatedThing,
  expected: string,
): { place: Place; message: string; found: string; expected: string } {
  return { place: on.place, message: `${title}, ${what}: ${on.written}`, found: `${on.written} (${what})`, expected };
}

/** Day and month swapped on one of the two, when that makes them agree. */
function turnedRound(earlier: DatedThing, later: DatedThing): string {
  const laterTurned = swapped(later.on.value);
  if (laterTurned !== undefined && sequence(earlier.on.value, laterTurned) === 'possible') {
    return `Look at ${later.what}’s date first: read the other way round, ${laterTurned.earliest}, it would agree. `;
  }
  const earlierTurned = swapped(earlier.on.value);
  if (earlierTurned !== undefined && sequence(earlierTurned, later.on.value) === 'possible') {
    return `Look at ${earlier.what}’s date first: read the other way round, ${earlierTurned.earliest}, it would agree. `;
  }
  return 'Compare both dates again. ';
}

function swapped(date: PartialDate): PartialDate | undefined {
  if (date.earliest === null || date.earliest !== date.latest) return undefined;
  const parts = /^(\d{4})-(\d\d)-(\d\d)$/u.exec(date.earliest);
  const [, year, month, dayOfMonth] = parts ?? [];
  if (
    year === undefined ||
    month === undefined ||
    dayOfMonth === undefined ||
    Number(dayOfMonth) > 12 ||
    month === dayOfMonth
  ) {
    return undefined;
  }
  const turned = `${year}-${dayOfMonth}-${month}` as typeof date.earliest;
  return { ...date, earliest: turned, latest: turned };
}
