import { between, crossCheck } from '../check.ts';

/** A copy made while the master's log was kept, and no line of the log can be about it. */
export const logLacksCopy = crossCheck({
  code: 'lineage/log-lacks-copy',
  title: 'The copy log lacks a copy',
  severity: 'note',
  scope: 'reel',
  reads: ['reel', 'unloggedCopies'],
  judge: ({ reel, unloggedCopies }) =>
    unloggedCopies.map(({ copy, on, first, last }) => {
      const kept = `a log kept from ${first.written} to ${last.written}`;
      return {
        ...between(
          {
            place: on.place,
            message: `${copy.title.written}: ${on.written}`,
            found: on.written,
            expected: `a line of ${reel.id}’s log near that date`,
          },
          {
            place: first.place,
            message: `${reel.title.written}: ${kept}`,
            found: kept,
            expected: `a line near ${on.written}`,
          },
        ),
        message: 'A copy is dated inside the time that its parent’s log covers, and the log has no line for it.',
        action:
          'Look at the log again: a line may be unread or its date misread. Or it was copied from another tape. Logs were not always kept up, so this may be perfectly right.',
      };
    }),
});
