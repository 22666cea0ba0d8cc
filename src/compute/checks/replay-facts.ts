import { type Fact, itemsOf, type Known } from '#model/fact.ts';
import type { Machine } from '#model/machine.ts';
import type { PlayingReason } from '#model/playing.ts';
import type { Reel } from '#model/reel.ts';
import { curveOf, yearsOf } from '../equalisation/curve-of.ts';
import { type Player, playersBut } from '../playback/players.ts';
import { halfSpeedOf } from '../record-side/half-speed-of-reel.ts';
import { packOfReel } from '../tape/pack-of-reel.ts';
import type { CheckContext } from './context.ts';

const known = <T>(fact: Fact<T> | undefined): Known<T> | undefined => (fact?.is === 'known' ? fact : undefined);

/** A machine that could play the tape but for one respect. */
export interface Candidate extends Player {
  readonly entry: Machine;
}

/** The machines that could play the reel but for one respect; missing when there are none. */
function candidates(reel: Reel, context: CheckContext, of: PlayingReason['of']): readonly Candidate[] | undefined {
  const playing = context.assessed.playing?.get(reel.id);
  if (playing === undefined) return undefined;
  const found = playersBut(playing, of).flatMap((player) => {
    const entry = context.machines.get(player.machine);
    return entry === undefined ? [] : [{ ...player, entry }];
  });
  return found.length > 0 ? found : undefined;
}

/** What is recorded of how a tape was recorded, and what could replay it. */
export const REPLAY_FACTS = {
  equalisation: (reel: Reel) => known(reel.format.equalisation),
  tracks: (reel: Reel) => known(reel.format.tracks),
  direction: (reel: Reel) => known(reel.format.direction),
  /** One direction or both; `not recorded` is an answer here, since for some formats it makes no difference. */
  runs: (reel: Reel) => known(reel.format.direction)?.value ?? ('not recorded' as const),
  noiseReduction: (reel: Reel) => known(reel.format.noiseReduction),
  copyLog: (reel: Reel) => known(reel.copyLog)?.value,
  cuts: (reel: Reel) => known(reel.cuts)?.value,
  /** The years in which it may have been recorded; `unknown` is an answer here, since it asks for the year. */
  recordedYears: (reel: Reel) => yearsOf(known(reel.recorded)?.value.on?.value) ?? ('unknown' as const),
  /** What its equalisation means at its speed, by the year as far as it is known. */
  curve: (reel: Reel) => {
    const { equalisation, speed } = reel.format;
    if (equalisation?.is !== 'known' || speed?.is !== 'known') return undefined;
    return curveOf(equalisation.value, speed.value, yearsOf(known(reel.recorded)?.value.on?.value));
  },
  /** Every machine of the collection; missing when none is recorded. */
  machines: (_reel: Reel, context: CheckContext) =>
    context.machines.size > 0 ? [...context.machines.values()] : undefined,
  /** What a half-speed cut of it takes; missing when none is recorded. */
  halfSpeed: (reel: Reel, context: CheckContext) =>
    halfSpeedOf(
      reel,
      itemsOf(reel.editions).flatMap(({ value }) => context.editions.get(value) ?? []),
    ),
  /** The lines of its copy log, each with the reel that it names, if that has an entry. */
  logLines: (reel: Reel, context: CheckContext) =>
    known(reel.copyLog)?.value.map((line) => {
      const copy = line.reel === undefined ? undefined : context.reels.get(line.reel.value);
      const stock = copy?.stock?.is === 'known' ? context.stocks.get(copy.stock.value) : undefined;
      return { line, copy, pack: copy === undefined ? undefined : packOfReel(copy, stock) };
    }),
  playersByTracks: (reel: Reel, context: CheckContext) => candidates(reel, context, 'tracks'),
  playersByCurve: (reel: Reel, context: CheckContext) => candidates(reel, context, 'equalisation'),
  playersByNoiseReduction: (reel: Reel, context: CheckContext) => candidates(reel, context, 'noise reduction'),
};
