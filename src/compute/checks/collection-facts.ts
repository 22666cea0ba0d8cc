import type { Entries } from '#model/entries.ts';
import type { CheckContext } from './context.ts';
import { sharedMatrices } from './shared-matrices.ts';

/** Facts about the collection as a whole, for checks that hold many entries against each other. */
export const COLLECTION_FACTS = {
  entries: (entries: Entries) => entries,
  lineage: (_entries: Entries, context: CheckContext) => context.lineage,
  today: (_entries: Entries, context: CheckContext) => context.today,
  /** Matrix numbers that stand on several editions of which some have no reissue link to the others. */
  sharedMatrices: (_entries: Entries, context: CheckContext) => sharedMatrices(context),
  reelsById: (_entries: Entries, context: CheckContext) => context.reels,
  editionsById: (_entries: Entries, context: CheckContext) => context.editions,
  peopleById: (_entries: Entries, context: CheckContext) => context.people,
};
