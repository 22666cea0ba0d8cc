import { crossCheck } from '../check.ts';
import { datesApart } from '../dates-apart.ts';
import { personWritten } from '../person-written.ts';

/** Held by somebody before it was made. */
export const beforeItExisted = crossCheck({
  code: 'custody/before-it-existed',
  title: 'Held before it was made',
  severity: 'warning',
  scope: 'reel',
  reads: ['reel', 'recordedOn', 'custody'],
  judge: ({ reel, recordedOn, custody }) =>
    custody.flatMap(({ holder, from }) => {
      if (from === undefined) return [];
      const who = personWritten(holder);
      return datesApart(
        { what: 'the recording', title: reel.title.written, on: recordedOn },
        { what: `the first day of ${who}`, title: reel.title.written, on: from },
        `It was held by ${who} before it was recorded.`,
        'If both are right, they held an earlier tape of this programme: move that line to its entry.',
      );
    }),
});
