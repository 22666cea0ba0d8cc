import type { Care } from '#model/care.ts';
import type { Catalogue } from '#model/catalogue.ts';
import { CAUTIONS } from '#model/cautions.ts';
import { planReels } from '../plan/plan-reels.ts';
import { fallsDue } from './falls-due.ts';
import { namedPlans } from './named-plans.ts';
import { roomsOf } from './rooms.ts';

/** What the pages about keeping, baking and playing are made from, of the owner's whole catalogue. */
export function careOf(catalogue: Catalogue): Care {
  const here = catalogue.reels.filter(({ reel }) => reel.status.value === 'held').map(({ reel }) => reel.id);
  const reels = planReels(catalogue, here);
  return {
    reels,
    plans: namedPlans(catalogue, reels),
    bakeCautions: [CAUTIONS.heat, CAUTIONS.playing, CAUTIONS.mains],
    rooms: roomsOf(catalogue),
    calendar: fallsDue(catalogue),
  };
}
