import type { MachineVerdict, PlayingReason } from '#model/playing.ts';

/** What a sheet says of one machine. */
export interface MachineTold {
  readonly verdict: MachineVerdict;
  readonly told: readonly PlayingReason[];
  /** What fits and needs no more words. */
  readonly fits: readonly string[];
}

/** A machine that plays the tape tells all, with the care that each thing asks; for one that can't, what fits is only
 * named. What isn't known of the tape itself is the same for every machine, and is told once; but for what only asks for
 * care, which stands with the machines that play it. */
export function machinesTold(verdicts: readonly MachineVerdict[]): {
  readonly machines: readonly MachineTold[];
  readonly unknown: readonly PlayingReason[];
} {
  const first = verdicts[0]?.reasons ?? [];
  const unknownOfTape = first.filter(
    (reason) =>
      reason.verdict === 'not recorded' && verdicts.every((one) => one.reasons.some((other) => isSame(other, reason))),
  );
  const asksCare = unknownOfTape.filter(({ of }) => of === CARE_ONLY && verdicts.some(isPlayed));
  const unknown = unknownOfTape.filter((reason) => !asksCare.includes(reason));
  const machines = verdicts.map((verdict) => {
    const own = verdict.reasons.filter((reason) => !unknown.some((one) => isSame(one, reason)));
    if (isPlayed(verdict)) return { verdict, told: own, fits: [] };
    const fits = own.filter((reason) => reason.verdict === 'plays').map((reason) => reason.of);
    const against = own.filter((reason) => reason.verdict !== 'plays' && !asksCare.some((one) => isSame(one, reason)));
    return { verdict, told: against, fits };
  });
  return { machines, unknown };
}

/** It decides how the tape sounds, not whether it turns: a machine plays it, with care. */
const CARE_ONLY = 'noise reduction';

const isPlayed = ({ verdict }: MachineVerdict) => verdict === 'plays' || verdict === 'plays with care';

const isSame = (a: PlayingReason, b: PlayingReason) => a.of === b.of && a.verdict === b.verdict && a.says === b.says;
