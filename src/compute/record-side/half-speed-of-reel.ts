import type { Edition } from '#model/edition.ts';
import type { Known } from '#model/fact.ts';
import { itemsOf, valueOf } from '#model/fact.ts';
import type { Cut, Reel } from '#model/reel.ts';
import { type MillimetresPerSecond, type RevolutionsPerMinute, revolutionsPerMinute } from '#model/units.ts';
import { curveOf, yearsOf } from '../equalisation/curve-of.ts';
import { type PositionWanted, positionAtSpeed } from '../equalisation/other-speed.ts';
import { halved } from '../tape/speeds.ts';

/** What half-speed cuts from a reel take of the tape machine and the lathe. */
export interface HalfSpeedOfReel {
  readonly cuts: readonly Cut[];
  readonly speed: Known<MillimetresPerSecond>;
  readonly tapeSpeedMmPerS: MillimetresPerSecond;
  /** Half of the record's own speed; undefined where neither the edition's speed nor that it is an LP is recorded. */
  readonly latheRpm: RevolutionsPerMinute | undefined;
  /** The replay position at the halved speed; undefined where the tape's curve isn't known. */
  readonly position: PositionWanted | undefined;
}

const LONG_PLAY_RPM = 100 / 3;

/** The half-speed cuts of a reel and what they take; undefined when it has none, or its speed isn't recorded. */
export function halfSpeedOf(reel: Reel, editions: readonly Edition[]): HalfSpeedOfReel | undefined {
  const cuts = itemsOf(reel.cuts).filter((cut) => cut.halfSpeed?.value === true);
  const { speed, equalisation } = reel.format;
  if (cuts.length === 0 || speed?.is !== 'known') return undefined;
  const years = yearsOf(valueOf(reel.recorded)?.on?.value);
  const curve = equalisation?.is === 'known' ? curveOf(equalisation.value, speed.value, years) : undefined;
  const tapeSpeedMmPerS = halved(speed.value);
  const position = curve?.is === 'resolved' ? positionAtSpeed(curve.curve, speed.value, tapeSpeedMmPerS) : undefined;
  const rpm = recordSpeed(editions);
  const latheRpm = rpm === undefined ? undefined : revolutionsPerMinute(rpm / 2);
  return { cuts, speed, tapeSpeedMmPerS, latheRpm, position };
}

/** The speed that all of the editions share. */
function recordSpeed(editions: readonly Edition[]): number | undefined {
  const speeds = editions.map(
    (edition) => valueOf(edition.speed) ?? (valueOf(edition.madeAs) === 'LP' ? LONG_PLAY_RPM : undefined),
  );
  const [first] = speeds;
  return speeds.every((speed) => speed !== undefined && first !== undefined && Math.abs(speed - first) < 0.1)
    ? first
    : undefined;
}
