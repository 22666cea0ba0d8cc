import type { Share } from '#model/share.ts';
import type { CheckContext } from './context.ts';

/** Facts about one share. */
export const SHARE_FACTS = {
  share: (share: Share) => share,
  today: (_share: Share, context: CheckContext) => context.today,
};
