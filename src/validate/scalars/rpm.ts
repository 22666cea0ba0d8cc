import { type RevolutionsPerMinute, revolutionsPerMinute } from '#model/units.ts';
import { type Parsed, parsed, refused } from './parsed.ts';
import { parseCount, refuseQuantity, spaced, splitQuantity } from './quantity.ts';

const FORMS = { what: "a record's speed", forms: ['33⅓ rpm', '45 rpm'], units: ['rpm', 'r/min'] } as const;
const UNITS: readonly string[] = ['rpm', 'r/min', 'rev/min'];

/** Spellings that round a nominal speed with thirds. */
const NOMINAL: ReadonlyMap<number, number> = new Map([
  [33, 100 / 3],
  [33.3, 100 / 3],
  [33.33, 100 / 3],
  [33.333, 100 / 3],
  [16, 50 / 3],
  [16.6, 50 / 3],
  [16.7, 50 / 3],
  [16.66, 50 / 3],
  [16.67, 50 / 3],
  [16.667, 50 / 3],
]);

/** A record's or a lathe's speed: `33⅓ rpm`, `45 rpm`; a bare number can mean nothing else and is read too. */
export function parseRpm(text: string): Parsed<RevolutionsPerMinute> {
  const split = splitQuantity(text);
  const count =
    split === undefined ? parseCount(text) : UNITS.includes(spaced(split.unit).toLowerCase()) ? split.count : undefined;
  if (count === undefined) return refuseQuantity(text, FORMS);
  if (count > 0) return parsed(revolutionsPerMinute(NOMINAL.get(count) ?? count));
  return refused('A record turns.', '33⅓ rpm, or 45 rpm', 'Leave the key out if its speed is not known.');
}
