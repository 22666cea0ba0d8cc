import type { Edition } from '#model/edition.ts';
import { itemsOf } from '#model/fact.ts';
import type { Place } from '#model/place.ts';
import type { Reel } from '#model/reel.ts';
import { parseNumber } from '../identifiers/parse-number.ts';
import { cutSeries } from '../record-side/cut-series.ts';

/** A cut that somebody saw in the run-out of a copy. */
export interface CutOnCopy {
  readonly edition: string;
  readonly side: string | undefined;
  readonly count: number;
  readonly written: string;
  readonly place: Place;
}

/** What is etched on the copies of an edition, as far as it names a cut by its count. */
export const cutsOnCopies = (edition: Edition): readonly CutOnCopy[] =>
  itemsOf(edition.runOuts).flatMap((runOut) => {
    const cut = runOut.cut?.value ?? parseNumber(runOut.written.value).cut;
    const count = /^-?0*(\d{1,2})$/.exec(cut ?? '')?.[1];
    if (count === undefined || Number(count) === 0) return [];
    const side = runOut.side?.value ?? parseNumber(runOut.written.value).side ?? undefined;
    const place = (runOut.cut ?? runOut.written).place;
    return [{ edition: edition.id, side, count: Number(count), written: runOut.written.written, place }];
  });

/** The counted cuts of an edition's reels, each with the side that it, or else its reel, is of. */
export const cutsOfReels = (reels: readonly Reel[], edition: string) =>
  reels.flatMap((reel) =>
    cutSeries(itemsOf(reel.cuts).filter((cut) => cut.edition === undefined || cut.edition.value === edition))
      .flat()
      .map(({ cut, count }) => {
        const sides = itemsOf(reel.sides);
        return { count, side: cut.side?.value ?? (sides.length === 1 ? sides[0]?.value : undefined) };
      }),
  );
