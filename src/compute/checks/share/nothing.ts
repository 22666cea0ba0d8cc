import { itemsOf } from '#model/fact.ts';
import { crossCheck } from '../check.ts';

/** A share of no reels. Each audience sees what a reel is, so one reel is always something. */
export const nothing = crossCheck({
  code: 'share/nothing',
  title: 'A share that shows nothing',
  severity: 'error',
  scope: 'share',
  reads: ['share'],
  judge: ({ share }) => {
    if (itemsOf(share.reels).length > 0) return [];
    return [
      {
        place: share.reels.place,
        message: 'This share shows no reel, so there is nothing in it to see.',
        found: share.reels.written === '' ? 'reels: []' : share.reels.written,
        expected: 'reels: [an-id], one or more',
        action: 'Write the ids of the reels it is to show, or take the share away.',
      },
    ];
  },
});
