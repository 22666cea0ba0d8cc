import type { Basis } from '#model/fact.ts';
import { feet } from '#model/units.ts';
import type { UnitSystem } from '#model/words.ts';
import type { Worked } from '#model/worked.ts';
import { clock } from './duration.ts';
import { capital, decimal } from './number.ts';

const METRES_IN_A_FOOT = feet(1) / 1000;
const MM_IN_AN_INCH = 25.4;

/** A curve turns at 50 or 100 Hz in the bass, and from 800 Hz on in the treble. */
const BASS_BELOW_HZ = 300;

/** What each figure is called where a name by itself would not say it. */
const CAPTIONS: Readonly<Record<string, string>> = {
  'tape-length': 'Length of the tape',
  'playing-time': 'Playing time',
  'pack-diameter': 'Across the wound tape',
  'duration-sum': 'Titles, gaps and run-out together',
  'transition-frequency': 'Turnover of the replay curve',
  'print-through-frequency': 'Print-through is worst at',
  'noise-after-copies': 'Signal to noise after the copies',
  'storage-years': 'Measure of the room',
  'storage-years-over-log': 'Measure of the room over its log',
  'dew-point': 'Dew point',
  'replay-difference': 'Difference on the wrong curve',
};

export function workedCaption(worked: Worked): string {
  const caption = CAPTIONS[worked.name] ?? capital(worked.name.replaceAll('-', ' '));
  if (worked.name !== 'transition-frequency') return caption;
  return `${caption}, in the ${worked.value < BASS_BELOW_HZ ? 'bass' : 'treble'}`;
}

/** The figure in the owner's units: `19:26`, `888.5 m`, `263.1 mm`. */
export function workedValue(worked: Worked, units: UnitSystem): string {
  return inUnit(worked.value, worked.unit, units);
}

/** The band that the inputs' errors leave, `887.3 to 889.9 m`; undefined when every input is exact,
 * or the band too narrow to be told. */
export function workedBand(worked: Worked, units: UnitSystem): string | undefined {
  if (worked.low === undefined || worked.high === undefined) return undefined;
  const [low, high] = [inUnit(worked.low, worked.unit, units), inUnit(worked.high, worked.unit, units)];
  if (low === high) return undefined;
  const unit = high.includes(' ') ? high.slice(high.indexOf(' ')) : '';
  return `${unit !== '' && low.endsWith(unit) ? low.slice(0, -unit.length) : low} to ${high}`;
}

function inUnit(value: number, unit: string, units: UnitSystem): string {
  if (unit === 's') return clock(value);
  if (unit === 'm')
    return units === 'imperial' ? `${decimal(value / METRES_IN_A_FOOT, 0)} ft` : `${decimal(value, 1)} m`;
  if (unit === 'mm')
    return units === 'imperial'
      ? `${decimal(value / MM_IN_AN_INCH, 2)} in`
      : `${decimal(value, Math.abs(value) < 1 ? 3 : 1)} mm`;
  if (unit === '°C' && units === 'imperial') return `${decimal((value * 9) / 5 + 32, 0)} °F`;
  return `${decimal(value, Math.abs(value) < 10 ? 2 : Math.abs(value) < 100 ? 1 : 0)} ${unit}`;
}

const BASIS_WORDS: Readonly<Record<Basis, string>> = {
  stated: 'stated',
  measured: 'measured',
  worked: 'worked out',
  assumed: 'assumed by the program',
};

export const basisWords = (basis: Basis): string => BASIS_WORDS[basis];
