import type { CalendarEvent } from './calendar-event.ts';
import type { BakePlan, PlanReel, PlayingPlan } from './plan.ts';
import type { Room } from './room.ts';

/** A plan for a set of reels that has a name of its own: made for an engineer, or for reels that belong together. */
export interface NamedPlan {
  readonly id: string;
  readonly title: string;
  readonly sub: string;
  readonly reels: readonly string[];
  readonly playing: PlayingPlan;
  readonly bake: BakePlan;
}

/** What the pages about keeping, baking and playing are made from. */
export interface Care {
  /** Every reel that is here, by id. */
  readonly reels: readonly PlanReel[];
  readonly plans: readonly NamedPlan[];
  /** What stands before any talk of baking. */
  readonly bakeCautions: readonly string[];
  /** By places/ id; a place without a log has none. */
  readonly rooms: ReadonlyMap<string, Room>;
  readonly calendar: readonly CalendarEvent[];
}
