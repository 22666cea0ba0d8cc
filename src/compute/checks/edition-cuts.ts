import type { PartialDate } from '#model/dates.ts';
import type { Edition } from '#model/edition.ts';
import { itemsOf, type Known, valueOf } from '#model/fact.ts';
import type { Cut, Reel } from '#model/reel.ts';
import { sequence } from '../lineage/intervals.ts';
import { cutNode, editionNode, reelOfCut } from '../lineage/nodes.ts';
import type { CheckContext } from './context.ts';

export interface LeadingCut {
  readonly reel: Reel;
  readonly cut: Cut;
  readonly on: Known<PartialDate>;
}

/** The dated cuts that are known to lead to an edition, but for those where an earlier cut of the same reel and side,
 * not known to be unused, may have made the first pressing. Missing when there are none. */
export function firstCutsOf(edition: Edition, context: CheckContext): readonly LeadingCut[] | undefined {
  const issued = valueOf(edition.issued);
  const node = editionNode(edition.id);
  const into = (context.editionLineages.get(edition.id)?.edges ?? []).filter((edge) => edge.to === node);
  const found = into.flatMap((edge): readonly LeadingCut[] => {
    const reel = context.reels.get(reelOfCut(edge.from) ?? '');
    if (reel === undefined) return [];
    const cuts = itemsOf(reel.cuts);
    const cut = cuts.find((one, index) => cutNode(reel.id, one, index) === edge.from);
    if (cut?.on === undefined || cuts.some((other) => couldHaveServed(other, cut, issued, edition.id))) return [];
    return [{ reel, cut, on: cut.on }];
  });
  return found.length === 0 ? undefined : found;
}

function couldHaveServed(other: Cut, cut: Cut, issued: PartialDate | undefined, edition: string): boolean {
  if (other === cut || other.used?.value === false) return false;
  if (other.edition !== undefined && other.edition.value !== edition) return false;
  if (other.side !== undefined && cut.side !== undefined && other.side.value !== cut.side.value) return false;
  return sequence(other.on?.value, issued) === 'possible';
}
