import { feet, type Millimetres, metres } from '#model/units.ts';
import { parseQuantity, type UnitTable } from './measure.ts';
import type { Parsed } from './parsed.ts';

const FORMS = { what: 'a length of tape', forms: ['2500 ft', '762 m'], units: ['ft', 'm'] } as const;

const MM: UnitTable<Millimetres> = new Map([
  ['ft', feet],
  ['foot', feet],
  ['feet', feet],
  ['m', metres],
  ['metres', metres],
]);

/** A length of tape: `2500 ft`, `762 m`. */
export const parseTapeLength = (text: string): Parsed<Millimetres> => parseQuantity(text, MM, FORMS);
