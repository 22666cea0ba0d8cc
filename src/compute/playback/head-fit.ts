import type { Verdict } from '#model/playing.ts';
import type { Direction, TrackFormat } from '#model/words.ts';

/** What a head makes of a tape of some track format. */
export interface HeadFit {
  readonly recorded: TrackFormat;
  /** Undefined where it makes no difference. */
  readonly direction: Direction | undefined;
  readonly head: TrackFormat;
  readonly verdict: Verdict;
  readonly says: string;
  readonly source: string;
}

const PRACTICE = 'common practice, no source';
const QUARTER =
  'a restoration engineer’s page on quarter-inch formats: full-track tapes are best reproduced with a full-track head';
const GUARD =
  'an engineers’ forum on two-track heads: guard bands of 2 mm (NAB) and 0.75 mm (DIN) are met on the same two-track tape; tracks of 75, 82 and 100 mil';

const BOTH_AT_ONCE = 'Both directions would sound at once, one of them backwards.';
const BLANK = 'The head also reads the part that was never recorded, and adds its noise.';
const NARROWER =
  'The head covers only a part of each track: a little less signal over the noise, and bass below about 100 Hz raised by fringing.';
const ONE_OF_TWO = 'The head reads one of the two channels, and the other is lost.';

type Row = readonly [TrackFormat, Direction | undefined, TrackFormat, Verdict, string, string];

/** Recorded format, direction, head. Sorted by format, then head; a pair that is missing here isn't known. */
const ROWS: readonly Row[] = [
  ['full-track mono', undefined, 'full-track mono', 'plays', 'The head reads the whole track.', PRACTICE],
  ['full-track mono', undefined, 'half-track mono', 'plays with care', NARROWER, QUARTER],
  [
    'full-track mono',
    undefined,
    'two-track stereo',
    'plays with care',
    `${NARROWER} Use one channel, or both added in phase.`,
    QUARTER,
  ],
  ['full-track mono', undefined, 'quarter-track stereo', 'plays with care', NARROWER, QUARTER],
  ['half-track mono', 'one', 'full-track mono', 'plays with care', BLANK, PRACTICE],
  ['half-track mono', 'both', 'full-track mono', 'cannot', BOTH_AT_ONCE, PRACTICE],
  ['half-track mono', undefined, 'half-track mono', 'plays', 'The head reads the track.', PRACTICE],
  [
    'half-track mono',
    'one',
    'two-track stereo',
    'plays',
    'The left channel reads the track; leave the right one out.',
    PRACTICE,
  ],
  [
    'half-track mono',
    'both',
    'two-track stereo',
    'plays with care',
    'Each channel reads one direction: take the left alone, and turn the tape over for the other. The right channel runs backwards.',
    PRACTICE,
  ],
  ['half-track mono', undefined, 'quarter-track stereo', 'plays with care', NARROWER, PRACTICE],
  [
    'quarter-track stereo',
    'one',
    'full-track mono',
    'plays with care',
    `${BLANK} Both channels come off as one.`,
    PRACTICE,
  ],
  ['quarter-track stereo', 'both', 'full-track mono', 'cannot', BOTH_AT_ONCE, PRACTICE],
  ['quarter-track stereo', 'one', 'half-track mono', 'cannot', ONE_OF_TWO, PRACTICE],
  ['quarter-track stereo', 'both', 'half-track mono', 'cannot', BOTH_AT_ONCE, PRACTICE],
  ['quarter-track stereo', 'one', 'two-track stereo', 'plays with care', BLANK, PRACTICE],
  ['quarter-track stereo', 'both', 'two-track stereo', 'cannot', BOTH_AT_ONCE, PRACTICE],
  ['quarter-track stereo', undefined, 'quarter-track stereo', 'plays', 'The head reads both tracks.', PRACTICE],
  [
    'two-track stereo',
    undefined,
    'full-track mono',
    'plays with care',
    'Both channels come off as one: the stereo is lost.',
    PRACTICE,
  ],
  ['two-track stereo', undefined, 'half-track mono', 'cannot', ONE_OF_TWO, PRACTICE],
  [
    'two-track stereo',
    undefined,
    'two-track stereo',
    'plays',
    'The head reads both tracks. Heads with another guard band than the tape’s lose or pick up a little.',
    GUARD,
  ],
  ['two-track stereo', undefined, 'quarter-track stereo', 'plays with care', NARROWER, PRACTICE],
];

export const HEAD_FITS: readonly HeadFit[] = ROWS.map(([recorded, direction, head, verdict, says, source]) => ({
  recorded,
  direction,
  head,
  verdict,
  says,
  source,
}));

/** What a head makes of a tape; undefined where the direction decides and isn't recorded, or a format is `other`. */
export function headFit(
  recorded: TrackFormat,
  direction: Direction | undefined,
  head: TrackFormat,
): HeadFit | undefined {
  return HEAD_FITS.find(
    (fit) =>
      fit.recorded === recorded && fit.head === head && (fit.direction === undefined || fit.direction === direction),
  );
}

/** True when the direction decides whether this head can read that format at all. */
export const directionDecides = (recorded: TrackFormat, head: TrackFormat): boolean =>
  HEAD_FITS.some((fit) => fit.recorded === recorded && fit.head === head && fit.direction !== undefined);
