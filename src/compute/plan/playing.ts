import { CAUTIONS } from '#model/cautions.ts';
import type { MayBePlayed, PlanMachine, PlannedReel, PlanReel, PlayingPlan } from '#model/plan.ts';
import { ACCLIMATISING } from '../climate/acclimatising.ts';
import { AT_THE_FIRST_SQUEAL, CAPTURE } from './capture.ts';
import { SET_UP_S, SET_UP_SOURCE } from './set-up-time.ts';
import { stepsFor } from './steps.ts';

/** A day at the machine for a set of reels: soundest first, then one setting after the other; what isn't to be played
 * stands apart with what it would take. */
export function planPlaying(reels: readonly PlanReel[]): PlayingPlan {
  const fit = reels.map((reel) => ({ reel, machine: machineFor(reel) }));
  const play = fit
    .filter(({ reel, machine }) => reel.may !== 'no' && (machine !== undefined || reel.machines.length === 0))
    .sort(inOrder);
  const leave = fit.filter((one) => !play.includes(one)).map(({ reel }) => withoutMachine(reel));
  const planned = play.map(({ reel, machine }, index): PlannedReel => {
    const before = play[index - 1];
    const sameSettings = before !== undefined && settings(before) === settings({ reel, machine });
    return { reel, machine, sameSettings, steps: stepsFor(reel, machine) };
  });
  const lengths = planned.map(({ reel }) => (reel.runsS === undefined ? undefined : reel.runsS * reel.runs));
  const programmeS = sum(lengths);
  return {
    play: planned,
    leave,
    cautions: cautionsFor(reels),
    acclimatising: ACCLIMATISING.map(({ says, source }) => ({ says, source })),
    capture: CAPTURE,
    squeal: AT_THE_FIRST_SQUEAL,
    programmeS,
    withSetUpS: programmeS === undefined ? undefined : programmeS + setUpS(planned),
    timesSource: SET_UP_SOURCE,
  };
}

/** The best machine that plays it. */
const machineFor = ({ machines }: PlanReel): PlanMachine | undefined =>
  machines.find(({ verdict }) => verdict === 'plays' || verdict === 'plays with care');

/** Sound, and still nothing plays it: that is why it stays. */
function withoutMachine(reel: PlanReel): PlanReel {
  if (reel.may === 'no') return reel;
  const unsure = reel.machines.find(({ verdict }) => verdict === 'not recorded');
  const near = unsure ?? reel.machines[0];
  return {
    ...reel,
    because: [
      unsure === undefined ? 'No machine here plays it.' : 'Whether a machine plays it can’t be told.',
      ...reel.because,
    ],
    takes: near === undefined ? [] : near.says.map((says) => `${near.title}: ${says}`),
  };
}

interface Fit {
  readonly reel: PlanReel;
  readonly machine: PlanMachine | undefined;
}

const SOUNDEST: readonly MayBePlayed[] = ['yes', 'with care', 'no'];

/** One that was baked, or whose baking might be considered, comes last whatever its machine. */
const rank = ({ reel }: Fit) => SOUNDEST.indexOf(reel.may) * 2 + (reel.bake.answer === 'may be considered' ? 1 : 0);

const settings = ({ reel, machine }: Fit) =>
  [machine?.id ?? '', reel.speed.says, reel.equalisation.says, reel.tracks.says, reel.noiseReduction.says].join('\n');

function inOrder(a: Fit, b: Fit): number {
  return (
    rank(a) - rank(b) ||
    compare(settings(a), settings(b)) ||
    compare(a.reel.set ?? '', b.reel.set ?? '') ||
    compare(a.reel.side ?? '', b.reel.side ?? '') ||
    compare(a.reel.id, b.reel.id)
  );
}

const compare = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);

function sum(counts: readonly (number | undefined)[]): number | undefined {
  let total = 0;
  for (const count of counts) {
    if (count === undefined) return undefined;
    total += count;
  }
  return total;
}

function setUpS(planned: readonly PlannedReel[]): number {
  let total = 0;
  for (const { reel, sameSettings } of planned) {
    if (!sameSettings) total += SET_UP_S.liningUp;
    total += SET_UP_S.eachRun * reel.runs;
    if (reel.wind.says === 'tail out') total += SET_UP_S.slowWind;
  }
  return total;
}

/** Nothing on this sheet is about baking; where something is, the whole caution stands. */
const NO_HEAT =
  'Heat: nothing on this sheet asks for it. Never heat acetate, paper or PVC base, nor a tape whose base isn’t known; a bake is planned on a sheet of its own, with its cautions.';

/** What stands on every sheet, then what these reels in particular ask for; each once. */
function cautionsFor(reels: readonly PlanReel[]): readonly string[] {
  const pancakes = reels.some((reel) => reel.carrier === 'bare hub') ? [CAUTIONS.pancake] : [];
  const own = reels.flatMap((reel) => reel.cautions).map((caution) => (caution === CAUTIONS.heat ? NO_HEAT : caution));
  return [...new Set([CAUTIONS.playing, ...own, ...pancakes, CAUTIONS.handling, CAUTIONS.mains])];
}
