import { type NanowebersPerMetre, nanowebersPerMetre } from '#model/units.ts';
import { parseQuantity, type UnitTable } from './measure.ts';
import type { Parsed } from './parsed.ts';

const FORMS = { what: 'a reference level', forms: ['320 nWb/m', '185 nWb/m'], units: ['nWb/m', 'pWb/mm'] } as const;

/** One picoweber to the millimetre is one nanoweber to the metre. */
const NWB_PER_M: UnitTable<NanowebersPerMetre> = new Map([
  ['nwb/m', nanowebersPerMetre],
  ['pwb/mm', nanowebersPerMetre],
]);

/** A reference fluxivity: `320 nWb/m`. */
export const parseLevel = (text: string): Parsed<NanowebersPerMetre> => parseQuantity(text, NWB_PER_M, FORMS);
