import type { Edition } from '#model/edition.ts';
import { type Seconds, seconds } from '#model/units.ts';

/** How long a side of an edition's format may be before it is worth a word. */
export interface SideRoom {
  /** In words: `a 12 in side at 33⅓ rpm`. */
  readonly format: string;
  /** Past this a side is unusual, and worth a note. */
  readonly unusualS: Seconds | undefined;
  /** Past this it holds no usable level. */
  readonly tooLongS: Seconds;
  readonly source: string;
}

const CHART =
  'a cutting studio’s chart: 12 in at 33⅓ rpm holds 28 min at −6 dB; 35 min, and 10 min for 7 in at 45 rpm, are common practice, no source';

const LONG_PLAY: SideRoom = {
  format: 'a 12 in side at 33⅓ rpm',
  unusualS: seconds(28 * 60),
  tooLongS: seconds(35 * 60),
  source: CHART,
};
const SEVEN_INCH: SideRoom = {
  format: 'a 7 in side at 45 rpm',
  unusualS: undefined,
  tooLongS: seconds(10 * 60),
  source: CHART,
};

/** The room on a side of this edition, as its made-as and speed tell the format; undefined where they don't: a cassette
 * has no limit of this kind, an LP at 45 rpm and an EP at 33⅓ may be of several sizes, and a single without a speed may
 * be a 12 in one. */
export function roomOnSide(edition: Edition): SideRoom | undefined {
  const madeAs = edition.madeAs?.is === 'known' ? edition.madeAs.value : undefined;
  const rpm = edition.speed?.is === 'known' ? edition.speed.value : undefined;
  if (madeAs === 'LP') return rpm === undefined || isAbout(rpm, 100 / 3) ? LONG_PLAY : undefined;
  if (madeAs === 'single' || madeAs === 'EP') return rpm !== undefined && isAbout(rpm, 45) ? SEVEN_INCH : undefined;
  return undefined;
}

const isAbout = (rpm: number, nominal: number) => Math.abs(rpm - nominal) < 0.5;
