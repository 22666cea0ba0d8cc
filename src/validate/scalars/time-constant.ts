import { type Microseconds, microseconds } from '#model/units.ts';
import { parseQuantity, type UnitTable } from './measure.ts';
import { type Parsed, parsed } from './parsed.ts';
import { spaced } from './quantity.ts';

const FORMS = { what: 'a time constant', forms: ['35 µs', 'inf'], units: ['µs', 'ms'] } as const;
const ENDLESS: readonly string[] = ['inf', '∞', 'infinite'];
const US: UnitTable<Microseconds> = new Map([
  ['us', microseconds],
  ['µs', microseconds], // U+00B5, the micro sign
  ['μs', microseconds], // U+03BC, the Greek letter
  ['ms', (count) => microseconds(count * 1000)],
  ['s', (count) => microseconds(count * 1e6)],
]);

/** A time constant: `35us`, `35 µs`, `3.18 ms`; `inf` for one that lifts no bass. */
export function parseTimeConstant(text: string): Parsed<Microseconds> {
  if (ENDLESS.includes(spaced(text).toLowerCase())) return parsed(microseconds(Infinity));
  return parseQuantity(text, US, FORMS);
}
