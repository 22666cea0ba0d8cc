import type { Machine } from '#model/machine.ts';
import type { PlanMachine } from '#model/plan.ts';
import type { Playing, Verdict } from '#model/playing.ts';

const BEST_FIRST: readonly Verdict[] = ['plays', 'plays with care', 'not recorded', 'cannot'];

/** The machines for a reel, best first, then by id. */
export function machinesFor(playing: Playing, machines: readonly Machine[]): readonly PlanMachine[] {
  const titles = new Map(machines.map((machine) => [machine.id, machine.title.value]));
  return playing.verdicts
    .map(({ machine, verdict, reasons, otherSpeeds }) => ({
      id: machine,
      title: titles.get(machine) ?? machine,
      verdict,
      says: reasons
        .filter(
          (reason) =>
            reason.verdict === (verdict === 'plays' ? 'plays with care' : verdict) || reason.verdict === 'cannot',
        )
        .map((reason) => `${reason.of}: ${reason.says}`),
      otherSpeeds: verdict === 'cannot' ? otherSpeeds : [],
    }))
    .sort(
      (a, b) =>
        BEST_FIRST.indexOf(a.verdict) - BEST_FIRST.indexOf(b.verdict) || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0),
    );
}
