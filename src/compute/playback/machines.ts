import type { Entries } from '#model/entries.ts';
import { valueOf } from '#model/fact.ts';
import type { Machine } from '#model/machine.ts';
import type { MachineVerdict, Playing, PlayingReason, Verdict } from '#model/playing.ts';
import type { Reel } from '#model/reel.ts';
import type { Stock } from '#model/stock.ts';
import { keeping } from '../kept.ts';
import { carriageReasons } from './carriage.ts';
import { curveReason } from './curve-fit.ts';
import { machineNeeds } from './needs.ts';
import { otherSpeeds } from './other-speed.ts';
import { tapePathReasons } from './tape-path.ts';
import { noiseReason, speedReason, stateReason } from './transport.ts';

/** Which machines play each reel, by reel id. */
export function matchMachines(entries: Entries): ReadonlyMap<string, Playing> {
  const stocks = new Map(entries.stocks.map((stock) => [stock.id, stock]));
  return new Map(
    entries.reels.map((reel) => {
      const stock = stocks.get(valueOf(reel.stock) ?? '');
      const goesBy = [stock, ...entries.machines];
      return [reel.id, kept(reel, goesBy, () => playingOf(reel, entries.machines, stock))];
    }),
  );
}

const kept = keeping<Reel, Playing>();

/** Which machines play a reel, each with the reason for every respect; by format only, since whether a tape may be
 * played at all is a matter of its condition. What isn't recorded is never `plays`. With no machine recorded there is
 * no verdict to give. */
export function playingOf(reel: Reel, machines: readonly Machine[], stock: Stock | undefined): Playing {
  return { verdicts: machines.map((machine) => verdictOn(reel, machine, stock)), needs: machineNeeds(reel) };
}

function verdictOn(reel: Reel, machine: Machine, stock: Stock | undefined): MachineVerdict {
  const reasons = [
    ...tapePathReasons(reel, machine),
    speedReason(reel, machine),
    curveReason(reel, machine),
    ...carriageReasons(reel, machine, stock),
    noiseReason(reel, machine),
    stateReason(machine),
  ];
  return { machine: machine.id, verdict: overall(reasons), reasons, otherSpeeds: otherSpeeds(reel, machine) };
}

/** One thing that can't be outweighs everything; then one that isn't known. Noise reduction decides how the tape sounds
 * and not whether it plays, so what isn't known of it asks for care. */
function overall(reasons: readonly PlayingReason[]): Verdict {
  const words = reasons.map(({ of, verdict }) =>
    of === 'noise reduction' && verdict === 'not recorded' ? 'plays with care' : verdict,
  );
  const worst: readonly Verdict[] = ['cannot', 'not recorded', 'plays with care'];
  return worst.find((verdict) => words.includes(verdict)) ?? 'plays';
}
