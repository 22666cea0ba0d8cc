import { crossCheck } from '../check.ts';
import { datesApart } from '../dates-apart.ts';

/** A copy of a tape that was no more. */
export const afterParentDestroyed = crossCheck({
  code: 'lineage/after-parent-destroyed',
  title: 'Copied from a reel after it was destroyed',
  severity: 'warning',
  scope: 'reel',
  reads: ['reel', 'recordedOn', 'knownParents'],
  judge: ({ reel, recordedOn, knownParents }) =>
    knownParents.flatMap(({ parent }) => {
      const left = parent.left;
      const destroyed = parent.status.value === 'destroyed' || left?.how?.value === 'destroyed';
      if (!destroyed || left?.on === undefined) return [];
      return datesApart(
        { what: 'the copy', title: reel.title.written, on: recordedOn },
        { what: 'the end of the parent', title: parent.title.written, on: left.on },
        'The copy is dated after the tape it was copied from was destroyed.',
        'If both are right, it was copied from another copy: look for a reel of the same programme that outlived it.',
      );
    }),
});
