import type { MillimetresPerSecond, Seconds } from './units.ts';

export const VERDICTS = ['plays', 'plays with care', 'cannot', 'not recorded'] as const;
export type Verdict = (typeof VERDICTS)[number];

/** One respect in which a machine fits a tape or doesn't. */
export interface PlayingReason {
  readonly of:
    | 'width'
    | 'tracks'
    | 'direction'
    | 'speed'
    | 'equalisation'
    | 'size'
    | 'carrier'
    | 'noise reduction'
    | 'state';
  readonly verdict: Verdict;
  readonly needs: string;
  readonly has: readonly string[];
  /** What it means and what to do about it, one sentence. */
  readonly says: string;
}

/** Playing at another speed than the tape's, put right in the digital file. */
export interface OtherSpeed {
  readonly speed: MillimetresPerSecond;
  /** Replay speed over recorded speed: 0.5 or 2. */
  readonly ratio: number;
  readonly curve: string;
  /** True when the scaled time constants are just this curve's. */
  readonly exact: boolean;
  /** The largest difference over 40 Hz to 20 kHz as recorded, in dB; 0 when exact; undefined when the machine's curve
   * there isn't known. */
  readonly worstDb: number | undefined;
  readonly takesS: Seconds | undefined;
  readonly says: string;
}

export interface MachineVerdict {
  readonly machine: string;
  readonly verdict: Verdict;
  readonly reasons: readonly PlayingReason[];
  readonly otherSpeeds: readonly OtherSpeed[];
}

/** What any machine must have to play this reel; a fact that isn't recorded says so. */
export interface MachineNeeds {
  readonly needs: readonly { readonly of: PlayingReason['of']; readonly needs: string; readonly known: boolean }[];
}

export interface Playing {
  readonly verdicts: readonly MachineVerdict[];
  readonly needs: MachineNeeds['needs'];
}
