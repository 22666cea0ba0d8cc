import { itemsOf } from '#model/fact.ts';
import type { Share } from '#model/share.ts';
import type { CheckContext } from './context.ts';

/** Facts about one share. */
export const SHARE_FACTS = {
  share: (share: Share) => share,
  /** Keys that the owner made private on top of the usual ones, in the collection or in a reel that it shows. */
  ownPrivate: (share: Share, context: CheckContext) =>
    new Set(
      [
        ...context.entries.collection.private,
        ...itemsOf(share.reels).flatMap((id) => context.reels.get(id.value)?.private ?? []),
      ].map((key) => key.value),
    ),
  today: (_share: Share, context: CheckContext) => context.today,
};
