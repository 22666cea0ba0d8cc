import type { Edition } from '#model/edition.ts';
import { itemsOf } from '#model/fact.ts';
import { sidesWithReels } from '../record-side/edition-sides.ts';
import { roomOnSide } from '../record-side/over-side.ts';
import type { CheckContext } from './context.ts';
import { cutsOfReels, cutsOnCopies } from './cuts-seen.ts';
import { firstCutsOf } from './edition-cuts.ts';

/** Facts about one edition. */
export const EDITION_FACTS = {
  edition: (edition: Edition) => edition,
  today: (_edition: Edition, context: CheckContext) => context.today,
  /** The reels that name it, in order of id; empty when none does. */
  reels: (edition: Edition, context: CheckContext) => context.reelsOfEdition.get(edition.id) ?? [],
  /** The editions that it reissues, as far as they have entries. */
  reissueOf: (edition: Edition, context: CheckContext) =>
    itemsOf(edition.reissueOf).flatMap((earlier) => context.editions.get(earlier.value) ?? []),
  sides: (edition: Edition) => (edition.sides?.is === 'known' ? edition.sides.value : undefined),
  /** Its sides, each with the reels that may have been cut for it. */
  sidesWithReels: (edition: Edition, context: CheckContext) =>
    sidesWithReels(edition, context.reelsOfEdition.get(edition.id) ?? [], context.reels),
  /** The room on one of its sides, where its format is known. */
  roomOnSide: (edition: Edition) => roomOnSide(edition),
  /** The cuts that its copies bear; missing when no run-out tells of one. */
  cutsSeen: (edition: Edition) => {
    const seen = cutsOnCopies(edition);
    return seen.length === 0 ? undefined : seen;
  },
  cutsOfReels: (edition: Edition, context: CheckContext) =>
    cutsOfReels(context.reelsOfEdition.get(edition.id) ?? [], edition.id),
  issued: (edition: Edition) => (edition.issued?.is === 'known' ? edition.issued : undefined),
  /** The dated cuts that lead to it and that no earlier cut could stand in for. */
  firstCuts: (edition: Edition, context: CheckContext) => firstCutsOf(edition, context),
  madeAs: (edition: Edition) => (edition.madeAs?.is === 'known' ? edition.madeAs : undefined),
};
