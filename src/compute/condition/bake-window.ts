import type { LocalTime } from '#model/dates.ts';

/** How long a baked tape is said to play, as one practice has it. */
export interface PlaybackWindow {
  readonly practice: 'common-practice' | 'published';
  readonly closesEarliest: LocalTime;
  readonly closesLatest: LocalTime;
  /** `may be closed`: between the two. `not yet`: the bake hasn't ended. */
  readonly state: 'not yet' | 'open' | 'may be closed' | 'closed';
  readonly says: string;
  readonly source: string;
}

interface WindowPractice {
  readonly practice: PlaybackWindow['practice'];
  readonly fromHours: number;
  readonly toHours: number;
  readonly says: string;
  readonly source: string;
}

const WEEK_HOURS = 7 * 24;

/** Shortest first. They rest on different things, and a figure between them has no source at all: plan for the first. */
const WINDOW_PRACTICES: readonly WindowPractice[] = [
  {
    practice: 'common-practice',
    fromHours: 7,
    toHours: 10,
    says: 'play within about 7 to 10 hours',
    source: 'common practice, no source',
  },
  {
    practice: 'published',
    fromHours: WEEK_HOURS,
    toHours: 2 * WEEK_HOURS,
    says: 'copy within one to two weeks',
    source: 'a tape maker’s advice printed in UNESCO RAMP study r9704e; a month and several months are reported too',
  },
];

/** Until when a baked tape plays, practice by practice; never merged into one figure.
 * @param ended  when the heat was taken away, on the clock of the place; cooling counts.
 * @param now    on the same clock. */
export function bakeWindow(ended: LocalTime, now: LocalTime): readonly PlaybackWindow[] {
  return WINDOW_PRACTICES.map(({ practice, fromHours, toHours, says, source }) => {
    const closesEarliest = hoursAfter(ended, fromHours);
    const closesLatest = hoursAfter(ended, toHours);
    return {
      practice,
      closesEarliest,
      closesLatest,
      state: stateAt(now, ended, closesEarliest, closesLatest),
      says,
      source,
    };
  });
}

function stateAt(now: LocalTime, ended: LocalTime, earliest: LocalTime, latest: LocalTime): PlaybackWindow['state'] {
  if (now < ended) return 'not yet';
  if (now <= earliest) return 'open';
  return now <= latest ? 'may be closed' : 'closed';
}

/** On the clock of the place, as if it ran on: a change to summer time inside the window shifts it by the hour. */
export function hoursAfter(time: LocalTime, hours: number): LocalTime {
  const ms = Date.parse(`${time}:00Z`) + hours * 3_600_000;
  return new Date(ms).toISOString().slice(0, 16) as LocalTime;
}
