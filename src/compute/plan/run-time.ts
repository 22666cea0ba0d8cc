import { valueOf } from '#model/fact.ts';
import type { Reel } from '#model/reel.ts';
import type { Worked } from '#model/worked.ts';
import { clock } from '../figure/in-words.ts';

export interface RunTime {
  readonly runsS: number | undefined;
  readonly runsBy: string;
}

/** How long one run of the tape takes: the longer of the stated length and of what the wound pack gives, since a tape is
 * played to its end.
 * @param worked  the reel's worked figures; `playing-time` is the pack's. */
export function runTime(reel: Reel, worked: readonly Worked[]): RunTime {
  const stated = valueOf(reel.durationS);
  const pack = worked.find((figure) => figure.name === 'playing-time')?.value;
  if (stated === undefined && pack === undefined) return { runsS: undefined, runsBy: 'length not recorded' };
  if (pack === undefined) return { runsS: stated, runsBy: 'as stated' };
  if (stated === undefined) return { runsS: pack, runsBy: 'by its pack' };
  return pack > stated
    ? { runsS: pack, runsBy: `by its pack; ${clock(stated)} stated` }
    : { runsS: stated, runsBy: 'as stated' };
}
