import { crossCheck } from '../check.ts';
import { datesApart } from '../dates-apart.ts';

/** A record out before the lacquer that it was pressed from. A recut for later pressings is lawful, so it is held
 * against the record only where no earlier cut of that reel could have served. */
export const editionBeforeCut = crossCheck({
  code: 'lineage/edition-before-cut',
  title: 'A record issued before it was cut',
  severity: 'warning',
  scope: 'edition',
  reads: ['edition', 'issued', 'firstCuts'],
  judge: ({ edition, issued, firstCuts }) =>
    firstCuts.flatMap(({ reel, cut, on, inferred }) =>
      datesApart(
        { what: `cut ${cut.number?.written ?? 'without a number'}`, title: reel.title.written, on },
        { what: 'the record', title: edition.title.written, on: issued },
        'The record is dated before the cut that it was pressed from.',
        'A first pressing from an earlier cut, and this copy from a later pressing, would agree: add that cut, or give the pressing its own date. Or the date of issue is the announced one.',
      ).map((doubt) => (inferred ? { ...doubt, severity: 'note' as const } : doubt)),
    ),
});
