import type { PlayingReason, Verdict } from '#model/playing.ts';

/** What a reason says when a fact is missing on either side. */
export const NOT_RECORDED = 'not recorded';

/** A respect in which the tape's own fact is missing: nothing can be said of any machine. */
export function tapeUnknown(of: PlayingReason['of'], has: readonly string[], record: string): PlayingReason {
  const missing = of === 'tracks' ? 'tracks aren’t' : `${of} isn’t`;
  return { of, verdict: 'not recorded', needs: NOT_RECORDED, has, says: `The tape’s ${missing} recorded. ${record}` };
}

/** A respect in which the machine's fact is missing. */
export function machineUnknown(of: PlayingReason['of'], needs: string, record: string): PlayingReason {
  return { of, verdict: 'not recorded', needs, has: [], says: `Nobody recorded this of the machine. ${record}` };
}

export function reason(
  of: PlayingReason['of'],
  verdict: Verdict,
  needs: string,
  has: readonly string[],
  says: string,
): PlayingReason {
  return { of, verdict, needs, has, says };
}
