import { valueOf } from '#model/fact.ts';
import { crossCheck } from '../check.ts';
import { datesApart } from '../dates-apart.ts';

/** A copy that can't have been made yet. */
export const copyBeforeParent = crossCheck({
  code: 'lineage/copy-before-parent',
  title: 'A copy dated before the tape it was copied from',
  severity: 'warning',
  scope: 'reel',
  reads: ['reel', 'recordedOn', 'knownParents'],
  judge: ({ reel, recordedOn, knownParents }) =>
    knownParents.flatMap(({ parent }) => {
      const parentOn = valueOf(parent.recorded)?.on;
      if (parentOn === undefined) return [];
      return datesApart(
        { what: 'the parent', title: parent.title.written, on: parentOn },
        { what: 'the copy', title: reel.title.written, on: recordedOn },
        'The copy is dated before the tape it was copied from.',
        'If both are right, it was copied from another tape: look for an earlier one of the same kind.',
      );
    }),
});
