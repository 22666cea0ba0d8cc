import type { MachineVerdict, Playing, PlayingReason } from '#model/playing.ts';

/** A machine that nothing else than one respect keeps from playing a tape, and its reason in that respect. */
export interface Player {
  readonly machine: string;
  readonly reason: PlayingReason;
}

/** The machines that matter when one respect is looked at: those that could play the tape but for it. One that can't
 * run at the tape's speed, say, doesn't make its curve a matter of interest. */
export function playersBut(playing: Playing, of: PlayingReason['of']): readonly Player[] {
  return playing.verdicts.flatMap((verdict) => {
    const reason = verdict.reasons.find((one) => one.of === of);
    return reason === undefined || isRuledOut(verdict, of) ? [] : [{ machine: verdict.machine, reason }];
  });
}

const isRuledOut = ({ reasons }: MachineVerdict, of: PlayingReason['of']) =>
  reasons.some((reason) => reason.of !== of && reason.verdict === 'cannot');
