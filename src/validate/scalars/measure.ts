import type { Measure } from '#model/units.ts';
import { type Parsed, parsed, quoted, refused } from './parsed.ts';
import { parseCount, type QuantityForms, refuseQuantity, spaced, splitQuantity } from './quantity.ts';

const PLUS_MINUS = /^(?<size>[^±+]{1,40}?) ?(?:±|\+\/-|\+-) ?(?<error>[^±+]{1,40})$/u;

/** How the units of a measured quantity come into ours; keys in lower case. */
export type UnitTable<Q extends number> = ReadonlyMap<string, (count: number) => Q>;

/** A quantity above nothing, with the error of measurement if one is written: `260 mm ± 1 mm`, `260 ± 1 mm`. */
export function parseMeasure<Q extends number>(
  text: string,
  units: UnitTable<Q>,
  forms: QuantityForms,
): Parsed<Measure<Q>> {
  const both = PLUS_MINUS.exec(spaced(text))?.groups;
  if (both === undefined) {
    const alone = parseQuantity(text, units, forms);
    return alone.ok ? parsed({ value: alone.value }) : alone;
  }
  const { size = '', error = '' } = both;
  const plusMinus = parseError(error, units, forms);
  if (!plusMinus.ok) return plusMinus;
  const withUnit = parseCount(size) === undefined ? size : `${size} ${splitQuantity(error)?.unit ?? ''}`;
  const value = parseQuantity(withUnit, units, forms);
  return value.ok ? parsed({ value: value.value, plusMinus: plusMinus.value }) : value;
}

/** An error of measurement may be nothing: the size is then taken as exact. */
function parseError<Q extends number>(text: string, units: UnitTable<Q>, forms: QuantityForms): Parsed<Q> {
  const split = splitQuantity(text);
  const none = split?.count === 0 ? units.get(split.unit.toLowerCase())?.(0) : undefined;
  return none === undefined ? parseQuantity(text, units, forms) : parsed(none);
}

/** A quantity above nothing. */
export function parseQuantity<Q extends number>(text: string, units: UnitTable<Q>, forms: QuantityForms): Parsed<Q> {
  const split = splitQuantity(text);
  const inside = split === undefined ? undefined : units.get(split.unit.toLowerCase());
  if (split === undefined || inside === undefined) return refuseQuantity(text, forms);
  if (split.count > 0) return parsed(inside(split.count));
  const action = 'Leave the key out if it is not known.';
  return refused(`${quoted(text)} is nothing, and ${forms.what} is more.`, forms.forms.join(', or '), action);
}
