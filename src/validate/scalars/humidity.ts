import { type Percent, percent } from '#model/units.ts';
import { type Parsed, parsed, refused } from './parsed.ts';
import { refuseQuantity, splitQuantity } from './quantity.ts';

const FORMS = { what: 'a relative humidity', forms: ['45 %', '45% RH'], units: ['%', '% RH'] } as const;
const UNITS: readonly string[] = ['%', '% RH', '%RH'];

/** A relative humidity: `45 %`. */
export function parseHumidity(text: string): Parsed<Percent> {
  const split = splitQuantity(text);
  if (split === undefined || !UNITS.includes(split.unit)) return refuseQuantity(text, FORMS);
  if (split.count <= 100) return parsed(percent(split.count));
  return refused('Relative humidity ends at 100 %.', '45 %, or 100 %', 'Read the instrument again.');
}
