import type { MachineVerdict, PlayingReason } from '#model/playing.ts';

/** What a sheet says of one machine. */
export interface MachineTold {
  readonly verdict: MachineVerdict;
  readonly told: readonly PlayingReason[];
  /** What fits and needs no more words. */
  readonly fits: readonly string[];
}

/** A machine that plays the tape tells all, with the care that each thing asks; for one that can't, what fits is only
 * named. What isn't known of the tape itself is the same for every machine, and is told once. */
export function machinesTold(verdicts: readonly MachineVerdict[]): {
  readonly machines: readonly MachineTold[];
  readonly unknown: readonly PlayingReason[];
} {
  const first = verdicts[0]?.reasons ?? [];
  const unknown = first.filter(
    (reason) =>
      reason.verdict === 'not recorded' && verdicts.every((one) => one.reasons.some((other) => isSame(other, reason))),
  );
  const machines = verdicts.map((verdict) => {
    const own = verdict.reasons.filter((reason) => !unknown.some((one) => isSame(one, reason)));
    const plays = verdict.verdict === 'plays' || verdict.verdict === 'plays with care';
    if (plays) return { verdict, told: own, fits: [] };
    const fits = own.filter((reason) => reason.verdict === 'plays').map((reason) => reason.of);
    return { verdict, told: own.filter((reason) => reason.verdict !== 'plays'), fits };
  });
  return { machines, unknown };
}

const isSame = (a: PlayingReason, b: PlayingReason) => a.of === b.of && a.verdict === b.verdict && a.says === b.says;
