import { type Celsius, celsius, fahrenheit } from '#model/units.ts';
import { type Parsed, parsed, refused } from './parsed.ts';
import { refuseQuantity, spaced, splitQuantity } from './quantity.ts';

const FORMS = { what: 'a temperature', forms: ['50 °C', '122 °F'], units: ['°C', '°F'] } as const;
const ABSOLUTE_ZERO_C = -273.15;

/** A temperature: `50 °C`, `50 C`, `122 °F`, `-5 °C`. */
export function parseTemperature(text: string): Parsed<Celsius> {
  const plain = spaced(text).replace(/^[−–]/u, '-').replace('℃', '°C').replace('℉', '°F').replace('º', '°');
  const below = plain.startsWith('-');
  const split = splitQuantity(below ? plain.slice(1) : plain);
  const unit = split?.unit.replace(/^° ?/u, '');
  if (split === undefined || (unit !== 'C' && unit !== 'F')) return refuseQuantity(text, FORMS);
  const degrees = below ? -split.count : split.count;
  const value = unit === 'C' ? celsius(degrees) : fahrenheit(degrees);
  if (value >= ABSOLUTE_ZERO_C) return parsed(value);
  return refused('No temperature is that low.', '50 °C, or 122 °F', 'Look at the sign and at the unit again.');
}
