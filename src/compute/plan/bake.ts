import { CAUTIONS } from '#model/cautions.ts';
import type { LocalTime } from '#model/dates.ts';
import type { BakePlan, BakeRow, PlanReel } from '#model/plan.ts';
import {
  BAKE_COSTS,
  BAKE_PRACTICES,
  type BakePractice,
  USUAL_BAKES,
  USUAL_BAKES_SOURCE,
} from '../condition/bake-practices.ts';
import { hoursAfter } from '../condition/bake-window.ts';
import { PASS_SOURCE, SET_UP_S } from './set-up-time.ts';

/** Each practice laid out in time from one start, side by side; none is chosen and nothing is averaged. Whether any of it
 * is done is for an experienced practitioner: the answer to an unknown base is no.
 * @param startsAt  when the heat would be turned on, on the clock of the place. */
export function planBake(reels: readonly PlanReel[], startsAt: LocalTime): BakePlan {
  const considered = reels.filter((reel) => reel.bake.answer === 'may be considered');
  const passS = onePass(considered);
  return {
    startsAt,
    considered,
    refused: reels.filter((reel) => reel.bake.answer !== 'may be considered'),
    rows: considered.length === 0 ? [] : BAKE_PRACTICES.map((practice) => rowOf(practice, startsAt, passS)),
    passS,
    passSource: PASS_SOURCE,
    costs: BAKE_COSTS,
    usualBakes: USUAL_BAKES,
    usualBakesSource: USUAL_BAKES_SOURCE,
    cautions: [CAUTIONS.heat, CAUTIONS.playing, CAUTIONS.mains],
  };
}

/** All of them played once, one after the other, with set-up. */
function onePass(reels: readonly PlanReel[]): number | undefined {
  let total = 0;
  for (const { runsS, runs, wind } of reels) {
    if (runsS === undefined) return undefined;
    total += (runsS + SET_UP_S.eachRun) * runs + (wind.says === 'tail out' ? SET_UP_S.slowWind : 0);
  }
  return reels.length === 0 ? undefined : total;
}

function rowOf(practice: BakePractice, startsAt: LocalTime, passS: number | undefined): BakeRow {
  const { lowHours, highHours, coolHours, playWithin } = practice;
  const least = lowHours ?? highHours;
  const most = highHours ?? lowHours;
  const heatEnds =
    least === undefined || most === undefined
      ? undefined
      : ([hoursAfter(startsAt, least), hoursAfter(startsAt, most)] as const);
  const from = heatEnds?.[0];
  const until = heatEnds?.[1];
  const known = from !== undefined && until !== undefined;
  const cooledAt =
    known && coolHours !== undefined
      ? ([hoursAfter(from, coolHours), hoursAfter(until, coolHours)] as const)
      : undefined;
  const closes =
    known && playWithin !== undefined
      ? ([hoursAfter(from, playWithin[0]), hoursAfter(until, playWithin[1])] as const)
      : undefined;
  const passes =
    playWithin === undefined || passS === undefined || isWide(practice)
      ? undefined
      : ([fits(playWithin[0], coolHours, passS), fits(playWithin[1], coolHours, passS)] as const);
  return {
    practice: `${practice.name}${practice.tape === 'not said' ? '' : `, ${practice.tape}`}`,
    rests: practice.rests,
    source: practice.source,
    warmth: range(practice.lowC, practice.highC, '°C'),
    hours: range(lowHours, highHours, 'h'),
    remark: practice.remark,
    startsAt,
    heatEnds,
    cooledAt,
    closes,
    saysOfWindow: practice.afterwards,
    passes,
  };
}

/** A practice for tape of another width says nothing of how these reels play. */
const isWide = ({ tape }: BakePractice) => tape.startsWith('2 in');

/** Whole passes between cooling and closing; cooling counts towards the window. */
const fits = (windowHours: number, coolHours: number | undefined, passS: number) =>
  Math.max(0, Math.floor(((windowHours - (coolHours ?? 0)) * 3600) / passS));

function range(low: number | undefined, high: number | undefined, unit: string): string {
  if (low === undefined && high === undefined) return 'not given';
  if (low === undefined) return `up to ${high} ${unit}`;
  if (high === undefined) return `${low} ${unit} at least`;
  return low === high ? `${low} ${unit}` : `${low} to ${high} ${unit}`;
}
