import type { PartialDate } from '#model/dates.ts';
import type { Custody } from '#model/reel.ts';
import { isDoubtful } from '../../lineage/intervals.ts';
import { crossCheck } from '../check.ts';
import { personWritten } from '../person-written.ts';

/** Two holders at one time. One who lends or deposits a tape still holds it, and two may own it together. */
export const overlap = crossCheck({
  code: 'custody/overlap',
  title: 'Two holders at one time',
  severity: 'warning',
  scope: 'reel',
  reads: ['custody'],
  judge: ({ custody }) =>
    custody.flatMap((one, at) =>
      custody.slice(at + 1).flatMap((other) => {
        const [before, after] = startsLater(one, other) ? [one, other] : [other, one];
        if (isShared(before, after) || before.until === undefined || after.from === undefined) return [];
        if (!surelyHeldThrough(before, after.from.value)) return [];
        const doubtful = [before.from, before.until, after.from].some(
          (date) => date !== undefined && isDoubtful(date.value),
        );
        return [
          {
            place: after.from.place,
            message: 'Two holders are recorded for one time.',
            found: `${personWritten(before.holder)} until ${before.until.written}, and ${personWritten(after.holder)} from ${after.from.written}`,
            expected: `${after.from.written} or earlier for the first, or ${before.until.written} or later for the second`,
            action:
              'Compare the receipts: one of the two dates may be a letter’s, not the day it changed hands. If one lent or deposited it with the other, write how: lent, and this falls silent.',
            related: [
              { message: `${personWritten(before.holder)}: until ${before.until.written}`, place: before.until.place },
            ].filter(({ place }) => place.line <= (after.from?.place.line ?? 0)),
            ...(doubtful && { severity: 'note' as const }),
          },
        ];
      }),
    ),
});

/** Ways of having a tape beside somebody who goes on holding it. */
const BESIDE =
  /\b(?:lent|loan|borrowed|deposit(?:ed)?|kept for|stored|joint(?:ly)?|together|co-own\w*|half share|in trust)\b/iu;

function isShared(before: Custody, after: Custody): boolean {
  const sameTime = before.from?.written === after.from?.written && before.until?.written === after.until?.written;
  const sameHolder = before.holder.written === after.holder.written;
  return (
    sameTime ||
    sameHolder ||
    [before, after].some(({ how, note }) => BESIDE.test(`${how?.value ?? ''} ${note?.value ?? ''}`))
  );
}

const startsLater = (one: Custody, other: Custody): boolean =>
  (one.from?.value.earliest ?? '') <= (other.from?.value.earliest ?? '');

/** The first surely had it on every day that the second may have begun: whichever it was, both had it. */
function surelyHeldThrough({ from, until }: Custody, start: PartialDate): boolean {
  const begun = from?.value.latest;
  const end = until?.value.earliest;
  if (begun == null || end == null || start.earliest === null || start.latest === null) return false;
  return begun < start.earliest && start.latest < end;
}
