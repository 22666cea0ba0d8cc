import { couldBeSameTime } from '../../lineage/intervals.ts';
import { crossCheck } from '../check.ts';

/** Somebody doing a thing outside the years in which they are known to have worked. */
export const notActive = crossCheck({
  code: 'people/not-active',
  title: 'Somebody at work outside their known years',
  severity: 'note',
  scope: 'reel',
  reads: ['deedsByKnown'],
  judge: ({ deedsByKnown }) =>
    deedsByKnown
      .filter(({ on, active }) => !couldBeSameTime(on.value, active))
      .map(({ who, what, on, person }) => ({
        place: who.place,
        message: `${person.title.written} ${what} outside the years in which they are known to have worked.`,
        found: on.written,
        expected: `within ${person.active?.written ?? 'their years'}`,
        action:
          'Look at the label again: the initials may be somebody else’s, or the date misread. Known years are seldom the whole of a life; widen them if this stands.',
      })),
});
