import type { MachineVerdict, PlayingReason } from '#model/playing.ts';

/** A machine that plays the tape tells all, with the care that each thing asks; for one that can't, what fits is only named. */
export function reasonsTold({ verdict, reasons }: MachineVerdict): {
  readonly told: readonly PlayingReason[];
  readonly fits: readonly string[];
} {
  const plays = verdict === 'plays' || verdict === 'plays with care';
  if (plays) return { told: reasons, fits: [] };
  const told = reasons.filter((reason) => reason.verdict !== 'plays');
  return { told, fits: reasons.filter((reason) => reason.verdict === 'plays').map((reason) => reason.of) };
}
