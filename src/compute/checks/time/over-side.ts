import type { Known } from '#model/fact.ts';
import type { Seconds } from '#model/units.ts';
import { clock } from '../../figure/in-words.ts';
import type { SideWithReels } from '../../record-side/edition-sides.ts';
import type { SideRoom } from '../../record-side/over-side.ts';
import { crossCheck, type Doubt } from '../check.ts';

/** A side's length past what a side of its edition's format holds at a usable level: unusual first, then too long. */
export const overSide = crossCheck({
  code: 'time/over-side',
  title: 'The side is longer than its format holds',
  severity: 'warning',
  scope: 'edition',
  reads: ['edition', 'sidesWithReels', 'roomOnSide'],
  judge: ({ sidesWithReels, roomOnSide }) =>
    sidesWithReels.flatMap((side) => lengthsOf(side).flatMap((length) => doubtAbout(length, side, roomOnSide))),
});

/** The edition's own length goes before those of its reels. */
function lengthsOf({ side, reels }: SideWithReels): readonly Known<Seconds>[] {
  if (side.durationS !== undefined) return [side.durationS];
  return reels.flatMap((reel) => (reel.durationS?.is === 'known' ? [reel.durationS] : []));
}

function doubtAbout(length: Known<Seconds>, { side }: SideWithReels, room: SideRoom): readonly Doubt[] {
  const { format, unusualS, tooLongS } = room;
  const isTooLong = length.value > tooLongS;
  if (!isTooLong && (unusualS === undefined || length.value <= unusualS)) return [];
  const limitS = isTooLong ? tooLongS : (unusualS ?? tooLongS);
  return [
    {
      place: length.place,
      severity: isTooLong ? 'warning' : 'note',
      message: isTooLong
        ? `Side ${side.side.written} is longer than ${format} holds at a usable level.`
        : `Side ${side.side.written} is unusually long for ${format}.`,
      found: length.written,
      expected: `${clock(limitS)} or less`,
      action: isTooLong
        ? 'Look at the length again, and at how the edition was made: a cassette, another size or speed, or a side split over two would explain it.'
        : 'Leave it if the record says so: sides past 28 min have been cut, at a lower level. Cutters differ.',
    },
  ];
}
