import { asInches, type Measure, type Micrometres, type Millimetres } from '#model/units.ts';
import type { UnitSystem } from '#model/words.ts';
import { decimal, fraction } from './number.ts';

/** A measured size in the owner's units: `263 mm`, `10.35 in`. */
export function size(mm: Millimetres, units: UnitSystem): string {
  return units === 'imperial' ? `${fraction(asInches(mm))} in` : `${decimal(mm, 1)} mm`;
}

/** With the error it was written with: `263 mm ± 1 mm`. */
export function measured(measure: Measure<Millimetres>, units: UnitSystem): string {
  const error = measure.plusMinus === undefined ? '' : ` ± ${size(measure.plusMinus, units)}`;
  return size(measure.value, units) + error;
}

/** Widths and reel sizes are named in inches everywhere: `¼ in`, `10½ in`. */
export function nominal(mm: Millimetres): string {
  const inches = asInches(mm);
  const named = fraction(inches);
  return named.includes('.') ? `${decimal(mm, 1)} mm` : `${named} in`;
}

export const thickness = (um: Micrometres): string => `${decimal(um, 1)} µm`;
