import type { Catalogue, ReelSheet } from '#model/catalogue.ts';
import type { MachineVerdict } from '#model/playing.ts';

export interface MachinePlays {
  readonly sheet: ReelSheet;
  readonly verdict: MachineVerdict;
}

/** Every reel held, with what a machine makes of it. */
export function playsOf({ reels }: Catalogue, machine: string): readonly MachinePlays[] {
  return reels.flatMap((sheet) => {
    const verdict = sheet.playing.verdicts.find((one) => one.machine === machine);
    return verdict === undefined || sheet.reel.status.value !== 'held' ? [] : [{ sheet, verdict }];
  });
}

/** Whether its condition leaves a question open: never looked at, at risk, or not recorded. */
export const isUnsettled = ({ findings, reel }: ReelSheet): boolean =>
  reel.condition === undefined || findings.some((finding) => finding.outcome !== 'clear');

/** The reasons against it in short, each once: what differs, and what the tape needs. */
export function reasonsAgainst(verdict: MachineVerdict): readonly string[] {
  return [
    ...new Set(
      verdict.reasons.filter((reason) => reason.verdict !== 'plays').map((reason) => `${reason.of}: ${reason.needs}`),
    ),
  ];
}
