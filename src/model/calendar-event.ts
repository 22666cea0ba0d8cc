import type { Day, LocalTime } from './dates.ts';

/** Something to be done by a day or between two times, for a calendar. */
export interface CalendarEvent {
  /** Stable over builds: the same thing has the same one. */
  readonly uid: string;
  readonly summary: string;
  readonly description: string;
  readonly from: Day | LocalTime;
  /** Missing: the whole day of `from`. */
  readonly until?: LocalTime;
}
