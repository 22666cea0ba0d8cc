import { crossCheck } from '../check.ts';
import { datesApart } from '../dates-apart.ts';

/** A lacquer cut from a tape that wasn't recorded yet. */
export const cutBeforeTape = crossCheck({
  code: 'lineage/cut-before-tape',
  title: 'A cut dated before the tape it was made from',
  severity: 'warning',
  scope: 'reel',
  reads: ['reel', 'recordedOn', 'cuts'],
  judge: ({ reel, recordedOn, cuts }) =>
    cuts.flatMap((cut) => {
      if (cut.on === undefined) return [];
      const name = cut.number === undefined ? 'the cut' : `cut ${cut.number.written}`;
      return datesApart(
        { what: 'the tape', title: reel.title.written, on: recordedOn },
        { what: name, title: reel.title.written, on: cut.on },
        'The cut is dated before the tape it was made from.',
        'If both are right, it was cut from an earlier tape of this side: move it to that tape’s entry.',
      );
    }),
});
