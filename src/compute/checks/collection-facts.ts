import type { Entries } from '#model/entries.ts';
import type { CheckContext } from './context.ts';

/** Facts about the collection as a whole, for checks that hold many entries against each other. */
export const COLLECTION_FACTS = {
  entries: (entries: Entries) => entries,
  lineage: (_entries: Entries, context: CheckContext) => context.lineage,
  today: (_entries: Entries, context: CheckContext) => context.today,
  reelsById: (_entries: Entries, context: CheckContext) => context.reels,
  editionsById: (_entries: Entries, context: CheckContext) => context.editions,
  peopleById: (_entries: Entries, context: CheckContext) => context.people,
};
