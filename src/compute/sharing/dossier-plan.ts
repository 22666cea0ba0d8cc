import type { Catalogue } from '#model/catalogue.ts';
import type { DossierPlan } from '#model/dossier.ts';
import { planReels } from '../plan/plan-reels.ts';
import { planPlaying } from '../plan/playing.ts';
import type { Reduced } from './reduce.ts';

/** What a plan goes by: without one of these it would take what is left out for not recorded. */
const GOES_BY = [
  'playing',
  'findings',
  'condition',
  'handling',
  'splices',
  'format',
  'pack',
  'stock',
  'length',
] as const;

/** The sheet for a day at the machine, out of what a share shows and nothing else. A reel goes on it only where the facts
 * shown decide as all facts do: one that stays in its box for a reason left out is never laid out to be played.
 *
 * @param whole  the owner's catalogue.
 * @param reduced  the share's own. */
export function dossierPlan(
  whole: Catalogue,
  reduced: Catalogue,
  { names, shown, scopes }: Pick<Reduced, 'names' | 'shown' | 'scopes'>,
): DossierPlan | undefined {
  const ids = shown.map((reel) => reel.id);
  const decided = new Map(planReels(whole, ids).map((reel) => [names.of('reel', reel.id), reel.may]));
  const told = new Set(
    ids.filter((id) => GOES_BY.every((key) => scopes.get(id)?.(key) === true)).map((id) => names.of('reel', id)),
  );
  const all = planReels(
    reduced,
    ids.map((id) => names.of('reel', id)),
  );
  const onIt = all.filter((reel) => told.has(reel.id) && decided.get(reel.id) === reel.may);
  if (onIt.length === 0) return undefined;
  return { playing: planPlaying(onIt), notOnIt: all.filter((reel) => !onIt.includes(reel)).map((reel) => reel.id) };
}
