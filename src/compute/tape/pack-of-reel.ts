import type { Known } from '#model/fact.ts';
import type { Given } from '#model/given.ts';
import type { Reel } from '#model/reel.ts';
import type { Stock } from '#model/stock.ts';
import {
  type Measure,
  type Micrometres,
  type Millimetres,
  micrometres,
  millimetres,
  type Seconds,
  seconds,
} from '#model/units.ts';
import type { Worked } from '#model/worked.ts';
import { ASSUMED_DIAMETER_MM, ASSUMED_DURATION_S, ASSUMED_THICKNESS_UM } from '../figure/assumed-error.ts';
import { givenOfMeasure, measured } from '../figure/given-of.ts';
import { packLength } from './pack.ts';
import type { PackBand, StatedLength } from './pack-decides.ts';
import { workedPackLength } from './worked-tape.ts';

/** A measured pack: what was measured, and how much tape that is at least, about and at most. */
export interface MeasuredPack {
  readonly outside: Known<Measure<Millimetres>>;
  readonly hub: Known<Measure<Millimetres>>;
  readonly thickness: Known<Measure<Micrometres>>;
  readonly band: PackBand;
}

/** The pack of a reel, when its outside diameter, its hub and its stock's thickness are all recorded. */
export function packOfReel(reel: Reel, stock: Stock | undefined): MeasuredPack | undefined {
  const { outsideDiameter: outside, hubDiameter: hub } = reel.pack;
  const thickness = stock?.thickness;
  if (outside?.is !== 'known' || hub?.is !== 'known' || thickness?.is !== 'known') return undefined;
  if (outside.value.value <= hub.value.value || thickness.value.value <= 0) return undefined;
  return { outside, hub, thickness, band: bandOf(outside.value, hub.value, thickness.value) };
}

/** The shortest pack is the narrowest one on the widest hub of the thickest tape; the longest the other way round. */
function bandOf(outside: Measure<Millimetres>, hub: Measure<Millimetres>, thickness: Measure<Micrometres>): PackBand {
  const outsideError = outside.plusMinus ?? ASSUMED_DIAMETER_MM;
  const hubError = hub.plusMinus ?? ASSUMED_DIAMETER_MM;
  const thicknessError = thickness.plusMinus ?? ASSUMED_THICKNESS_UM;
  // 1 is a pack with its errors one way, −1 the other, 0 as measured.
  const length = (way: number) =>
    packLength(
      millimetres(outside.value + way * outsideError),
      millimetres(Math.max(0, hub.value - way * hubError)),
      micrometres(Math.max(1, thickness.value - way * thicknessError)),
    );
  return { lowMm: length(-1), valueMm: length(0), highMm: length(1) };
}

/** The length of a measured pack, with all that it rests on. */
export const workedPack = ({ outside, hub, thickness }: MeasuredPack): Worked => ({
  ...workedPackLength(measured('outside-diameter', outside), measured('hub-diameter', hub), thicknessGiven(thickness)),
  name: 'pack-length',
});

/** A stock's thickness is what its maker or someone with a gauge said; the reel's own tape wasn't measured. */
export const thicknessGiven = (thickness: Known<Measure<Micrometres>>): Given<Micrometres> =>
  givenOfMeasure('thickness', thickness, 'stated');

/** The least time that the tape must run for what its label states. A tape recorded in both directions runs once for
 * both sides, so that the longer side, at least half of the whole, decides; and where nobody recorded the direction, a
 * track format that is used both ways is given the same benefit. */
export function leastRun(reel: Reel, duration: Known<Seconds>): StatedLength {
  const whole = { valueS: duration.value, errorS: ASSUMED_DURATION_S };
  return mayRunBothWays(reel) ? { ...whole, valueS: seconds(duration.value / 2) } : whole;
}

/** Formats of which a tape holds two programmes, one in each direction, as often as not. */
const USED_BOTH_WAYS = ['half-track mono', 'quarter-track stereo'];

export function mayRunBothWays(reel: Reel): boolean {
  const { direction, tracks } = reel.format;
  if (direction?.is === 'known') return direction.value === 'both';
  if (reel.sides?.is === 'known' && reel.sides.value.length > 1) return true;
  return tracks?.is === 'known' && USED_BOTH_WAYS.includes(tracks.value);
}
