import { inchesPerSecond, type MillimetresPerSecond, millimetresPerSecond } from '#model/units.ts';
import { parseQuantity, type UnitTable } from './measure.ts';
import type { Parsed } from './parsed.ts';

const FORMS = {
  what: 'a speed',
  forms: ['30 in/s', '76.2 cm/s'],
  units: ['in/s', 'cm/s'],
} as const;

/** Labels round the nominal speeds, which are exact in inches: 76 cm/s is 30 in/s.
 * Source: IEC 60094-1, nominal speeds; the rounded spellings are common practice, no source. */
const ROUNDED_CM_PER_S: ReadonlyMap<number, number> = new Map([
  [76, 30],
  [38, 15],
  [19, 7.5],
  [9.5, 3.75],
  [9.53, 3.75],
  [4.75, 1.875],
  [4.76, 1.875],
  [4.8, 1.875],
]);

const MM_PER_S: UnitTable<MillimetresPerSecond> = new Map([
  ['in/s', inchesPerSecond],
  ['in/sec', inchesPerSecond],
  ['ips', inchesPerSecond],
  ['"/s', inchesPerSecond],
  ['cm/s', centimetresPerSecond],
  ['cm/sec', centimetresPerSecond],
  ['mm/s', millimetresPerSecond],
  ['m/s', (count) => millimetresPerSecond(count * 1000)],
]);

/** A tape speed: `30 in/s`, `7½ ips`, `76.2 cm/s`; a label's rounded `38 cm/s` is the exact nominal speed. */
export const parseSpeed = (text: string): Parsed<MillimetresPerSecond> => parseQuantity(text, MM_PER_S, FORMS);

function centimetresPerSecond(count: number): MillimetresPerSecond {
  const nominal = ROUNDED_CM_PER_S.get(count);
  return nominal === undefined ? millimetresPerSecond(count * 10) : inchesPerSecond(nominal);
}
