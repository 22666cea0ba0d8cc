import { daysWithoutHolder } from '../care-facts.ts';
import { crossCheck } from '../check.ts';
import { personWritten } from '../person-written.ts';

/** A gap shorter than a year is the way of removals and probate: nobody wrote the day. */
const YEAR_DAYS = 365;

/** Years with no holder. */
export const gap = crossCheck({
  code: 'custody/gap',
  title: 'Years in which nobody is known to have held it',
  severity: 'note',
  scope: 'reel',
  reads: ['custody'],
  judge: ({ custody }) =>
    custody.flatMap((after, index) => {
      const before = custody[index - 1];
      const from = after.from;
      if (before?.until === undefined || from === undefined || daysWithoutHolder(before, after) < YEAR_DAYS) return [];
      return [
        {
          place: from.place,
          message: `Nobody is known to have held it between ${before.until.written} and ${from.written}.`,
          found: `${personWritten(before.holder)} until ${before.until.written}, then ${personWritten(after.holder)} from ${from.written}`,
          expected: 'a holder for those years, or dates that meet',
          action:
            'Ask the holder after the gap whom they had it from. A gap is usual, and says nothing against the reel; leave it open rather than guess.',
          related: [
            { message: `${personWritten(before.holder)}: until ${before.until.written}`, place: before.until.place },
          ],
        },
      ];
    }),
});
