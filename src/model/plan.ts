import type { LocalTime } from './dates.ts';
import type { OtherSpeed, Verdict } from './playing.ts';
import type { BaseFilm, Carrier } from './words.ts';

/** Whether a reel may go on a machine on the day of the plan, by its condition and not by its format. */
export type MayBePlayed = 'yes' | 'with care' | 'no';

/** A thing that stands on the sheet in words; not recorded says so instead of being left out. */
export interface PlanFact {
  readonly says: string;
  readonly known: boolean;
}

/** How a machine would be set for a reel. */
export interface PlanMachine {
  readonly id: string;
  readonly title: string;
  readonly verdict: Verdict;
  /** What to do about the respects that ask for care, and why it can't where it can't. */
  readonly says: readonly string[];
  readonly otherSpeeds: readonly OtherSpeed[];
}

/** An earlier bake, as the entry has it. */
export interface EarlierBake {
  readonly on: string;
  readonly how: string;
  readonly ended: LocalTime | undefined;
  /** A transfer written down for the day on which it ended or later, up to a month. */
  readonly transferredOn: string | undefined;
}

/** All that a plan needs to know of one reel: facts, never an address, a price or a place. */
export interface PlanReel {
  readonly id: string;
  readonly title: string;
  readonly set: string | undefined;
  readonly side: string | undefined;
  readonly may: MayBePlayed;
  /** Why it may not, or what asks for care; one sentence each. */
  readonly because: readonly string[];
  /** What it would take; empty when nothing stands in its way. */
  readonly takes: readonly string[];
  readonly cautions: readonly string[];
  /** The last look at it, as its date was written; undefined when nobody looked. */
  readonly looked: string | undefined;
  readonly speed: PlanFact;
  /** The curve as written, with its time constants. */
  readonly equalisation: PlanFact;
  readonly tracks: PlanFact;
  readonly level: PlanFact;
  readonly tones: PlanFact;
  readonly noiseReduction: PlanFact;
  readonly carrier: Carrier | undefined;
  readonly woundOn: PlanFact;
  readonly wind: PlanFact;
  readonly splices: PlanFact;
  /** Passes that it takes to play all of it: two when it was recorded in both directions. */
  readonly runs: 1 | 2;
  /** How long one run of the tape takes, the longer of what is stated and what the pack gives; undefined: not recorded. */
  readonly runsS: number | undefined;
  /** Which of the two that is. */
  readonly runsBy: string;
  /** Best first. */
  readonly machines: readonly PlanMachine[];
  readonly base: BaseFilm | undefined;
  readonly bake: {
    readonly answer: 'never' | 'may be considered' | 'no reason to' | 'not known';
    readonly because: string;
    readonly action: string;
    readonly sources: readonly string[];
    readonly earlier: readonly EarlierBake[];
  };
}

/** A reel in its place in the order. */
export interface PlannedReel {
  readonly reel: PlanReel;
  readonly machine: PlanMachine | undefined;
  /** The settings are the ones of the reel before it. */
  readonly sameSettings: boolean;
  readonly steps: readonly string[];
}

export interface PlayingPlan {
  readonly play: readonly PlannedReel[];
  readonly leave: readonly PlanReel[];
  /** What goes for all of them, before anything else. */
  readonly cautions: readonly string[];
  readonly acclimatising: readonly { readonly says: string; readonly source: string }[];
  readonly capture: readonly { readonly says: string; readonly source: string }[];
  readonly squeal: readonly string[];
  /** Undefined while a length isn't recorded. */
  readonly programmeS: number | undefined;
  readonly withSetUpS: number | undefined;
  readonly timesSource: string;
}

/** One practice of baking, laid out in time from a given start. */
export interface BakeRow {
  readonly practice: string;
  readonly rests: string;
  readonly source: string;
  readonly warmth: string;
  readonly hours: string;
  readonly remark: string | undefined;
  readonly startsAt: LocalTime;
  readonly heatEnds: readonly [earliest: LocalTime, latest: LocalTime] | undefined;
  /** What the source says of cooling; undefined: nothing. */
  readonly cooledAt: readonly [earliest: LocalTime, latest: LocalTime] | undefined;
  /** When the tape is said to stop playing; undefined: this source says nothing of it. */
  readonly closes: readonly [earliest: LocalTime, latest: LocalTime] | undefined;
  readonly saysOfWindow: string | undefined;
  /** How often all of it could be played before the window closes: at its earliest and at its latest. */
  readonly passes: readonly [least: number, most: number] | undefined;
}

export interface BakePlan {
  readonly startsAt: LocalTime;
  /** Those that might be baked, by an experienced hand that agrees. */
  readonly considered: readonly PlanReel[];
  /** Those that are not, each with its reason. */
  readonly refused: readonly PlanReel[];
  readonly rows: readonly BakeRow[];
  /** One pass of all that are considered, set-up included; undefined while a length isn't recorded. */
  readonly passS: number | undefined;
  readonly passSource: string;
  readonly costs: readonly { readonly says: string; readonly source: string }[];
  readonly usualBakes: number;
  readonly usualBakesSource: string;
  readonly cautions: readonly string[];
}
