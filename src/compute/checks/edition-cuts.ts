import type { PartialDate } from '#model/dates.ts';
import type { Edition } from '#model/edition.ts';
import { itemsOf, type Known, valueOf } from '#model/fact.ts';
import type { Cut, Reel } from '#model/reel.ts';
import { orderOf } from '../identifiers/sides.ts';
import { sequence } from '../lineage/intervals.ts';
import { cutNode, editionNode, reelOfCut } from '../lineage/nodes.ts';
import type { CheckContext } from './context.ts';

export interface LeadingCut {
  readonly reel: Reel;
  readonly cut: Cut;
  readonly on: Known<PartialDate>;
  /** Nobody says that it was pressed: it is the first cut of a reel that is this edition's alone. */
  readonly inferred: boolean;
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
    return [{ reel, cut, on: cut.on, inferred: false }];
  });
  if (into.some((edge) => reelOfCut(edge.from) !== undefined)) return found.length === 0 ? undefined : found;
  const unsaid = unsaidCuts(edition, context);
  return unsaid.length === 0 ? undefined : unsaid;
}

/** Where no cut is said to lead to the edition: the dated cuts that were used, and the first ones, of the reels that are
 * its alone, unless another cut of any of them could have served. */
function unsaidCuts(edition: Edition, context: CheckContext): readonly LeadingCut[] {
  const issued = valueOf(edition.issued);
  const reels = (context.reelsOfEdition.get(edition.id) ?? []).filter((reel) => itemsOf(reel.editions).length === 1);
  const all = reels.flatMap((reel) => itemsOf(reel.cuts).map((cut) => ({ reel, cut })));
  return all.flatMap(({ reel, cut }): readonly LeadingCut[] => {
    const isFirst = /^-?0*1$/.test(cut.number?.value ?? '');
    if (cut.on === undefined || cut.edition !== undefined || cut.used?.value === false) return [];
    if (!isFirst && cut.used?.value !== true) return [];
    const mayServe = all.some(
      (other) => isOfOneSide(other, { reel, cut }) && couldHaveServed(other.cut, cut, issued, edition.id),
    );
    return mayServe ? [] : [{ reel, cut, on: cut.on, inferred: cut.used?.value !== true }];
  });
}

interface CutOfReel {
  readonly reel: Reel;
  readonly cut: Cut;
}

function isOfOneSide(one: CutOfReel, other: CutOfReel): boolean {
  const sidesOf = ({ reel, cut }: CutOfReel) =>
    (cut.side === undefined ? itemsOf(reel.sides).map((side) => side.value) : [cut.side.value]).map(
      (side) => orderOf(side) ?? side,
    );
  const [mine, theirs] = [sidesOf(one), sidesOf(other)];
  return mine.length === 0 || theirs.length === 0 || mine.some((side) => theirs.includes(side));
}

function couldHaveServed(other: Cut, cut: Cut, issued: PartialDate | undefined, edition: string): boolean {
  if (other === cut || other.used?.value === false) return false;
  if (other.edition !== undefined && other.edition.value !== edition) return false;
  if (other.side !== undefined && cut.side !== undefined && other.side.value !== cut.side.value) return false;
  return sequence(other.on?.value, issued) === 'possible';
}
