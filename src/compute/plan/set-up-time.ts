/** Time for what isn't playing. Nobody published it: it is there so that a day isn't planned by the tapes' lengths alone. */
export const SET_UP_S = {
  /** Cleaning, demagnetising and lining up, once for each new setting. */
  liningUp: 30 * 60,
  /** Out of the box, threading, tones and azimuth, back into the box; for each run of a tape. */
  eachRun: 15 * 60,
  /** A slow wind to the other end, where a tape lies tail out. */
  slowWind: 10 * 60,
} as const;

export const SET_UP_SOURCE =
  '30 min for each new setting, 15 min for each run, 10 min for a slow wind: common practice, no source';

/** Of one pass after a bake: the machine is lined up while the tape cools. */
export const PASS_SOURCE = '15 min for each run, 10 min for a slow wind: common practice, no source';
