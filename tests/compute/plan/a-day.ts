import { planReels } from '#compute/plan/plan-reels.ts';
import type { PlanReel } from '#model/plan.ts';
import { catalogueOf, type Given } from '../../given/small-collection.ts';

/** A polyester stock that doesn't shed, one that does, an acetate one, and a machine that plays all of them. */
const ALWAYS: Given = {
  'stocks/sound': 'base: polyester\nbinder: other\nback-coated: yes\nthickness: 50 µm\nmade: 1980/1990',
  'stocks/gummy': 'base: polyester\nbinder: polyurethane\nback-coated: yes\nthickness: 51 µm\nmade: 1976/1983',
  'stocks/clear': 'base: acetate\nbinder: other\nback-coated: no\nthickness: 50 µm\nmade: 1956/1965',
  'machines/bench': `
    speeds: [7.5 in/s, 15 in/s, 30 in/s]
    equalisations: [{ speed: 15 in/s, curve: NAB }, { speed: 15 in/s, curve: IEC }, { speed: 30 in/s, curve: AES }]
    tracks: [two-track stereo, full-track mono]
    largest-reel: 14 in
    takes: [reel, bare hub]
    width: 1/4 in
    noise-reduction: none
    state: working`,
};

/** A whole entry of a reel that nothing is wrong with; lines of `more` come on top. */
export const reel = (stock: string, more = '', curve = 'NAB'): string => `
stock: ${stock}
length: "20:00"
format: { width: 1/4 in, tracks: two-track stereo, speed: 15 in/s, equalisation: ${curve}, direction: one, noise-reduction: none, level: 320 nWb/m, tones: none }
pack: { wound-on: reel, reel-size: 10.5 in, wind: tail out }
splices: none
${more}`;

export const LOOKED = 'condition: [{ on: "2026-01-10", found: none }]';

/** What the reels of a small collection come to for a plan, by id. */
export async function planned(given: Given, today?: string): Promise<readonly PlanReel[]> {
  return planReels(await catalogueOf({ ...ALWAYS, ...given }, today));
}

export function only<T>(list: readonly T[]): T {
  const [first] = list;
  if (first === undefined || list.length !== 1) throw new Error(`one was expected, not ${list.length}`);
  return first;
}
