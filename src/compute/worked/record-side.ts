import type { Edition } from '#model/edition.ts';
import type { Given } from '#model/given.ts';
import type { Reel } from '#model/reel.ts';
import { type RevolutionsPerMinute, revolutionsPerMinute } from '#model/units.ts';
import type { Worked } from '#model/worked.ts';
import { givenOf } from '../figure/given-of.ts';
import { WIDEST_BAND_MM } from '../record-side/disc-dimensions.ts';
import { workedPitch } from '../record-side/groove-pitch.ts';

/** How close the groove of the record's side would lie, for the first edition of the reel that is an LP: on the widest
 * band that the standards allow, so that a lathe has no more room than this. */
export function workOutRecordSide(reel: Reel, editions: readonly Edition[]): readonly Worked[] {
  if (reel.durationS?.is !== 'known' || reel.sides?.is !== 'known' || reel.sides.value.length !== 1) return [];
  const speed = editions.flatMap(longPlaySpeed)[0];
  if (speed === undefined) return [];
  const { linesPerInch, grooves, pitch } = workedPitch(
    givenOf('length', reel.durationS),
    {
      name: 'cut-width',
      value: WIDEST_BAND_MM,
      written: '85.7 mm, the widest band: 11½ to 4¾ in',
      basis: 'assumed',
    },
    speed,
  );
  return [{ ...linesPerInch, name: 'lines-per-inch' }, { ...grooves, name: 'grooves' }, pitch];
}

const LONG_PLAY_RPM = revolutionsPerMinute(100 / 3);

/** 33⅓ rpm, as recorded or as an LP is; nothing for another speed, whose band is another. */
function longPlaySpeed({ madeAs, speed }: Edition): readonly Given<RevolutionsPerMinute>[] {
  if (madeAs?.is !== 'known' || madeAs.value !== 'LP') return [];
  if (speed?.is === 'known') return Math.abs(speed.value - LONG_PLAY_RPM) < 0.5 ? [givenOf('speed', speed)] : [];
  return [
    { name: 'rpm', value: LONG_PLAY_RPM, written: '33⅓ rpm, as an LP is', basis: 'assumed', place: madeAs.place },
  ];
}
