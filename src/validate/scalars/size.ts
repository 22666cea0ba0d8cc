import {
  inches,
  inMillimetres,
  type Measure,
  type Millimetres,
  metres,
  micrometres,
  millimetres,
  mils,
} from '#model/units.ts';
import { parseMeasure, type UnitTable } from './measure.ts';
import type { Parsed } from './parsed.ts';

const FORMS = { what: 'a size', forms: ['10.5 in', '250 mm'], units: ['in', 'mm'] } as const;

const MM: UnitTable<Millimetres> = new Map([
  ['in', inches],
  ['inch', inches],
  ['inches', inches],
  ['"', inches],
  ['″', inches],
  ['mm', millimetres],
  ['cm', (count) => millimetres(count * 10)],
  ['m', metres],
  ['µm', (count) => inMillimetres(micrometres(count))], // U+00B5, the micro sign
  ['μm', (count) => inMillimetres(micrometres(count))], // U+03BC, the Greek letter
  ['um', (count) => inMillimetres(micrometres(count))],
  ['mil', (count) => inMillimetres(mils(count))],
  ['mils', (count) => inMillimetres(mils(count))],
]);

/** A size: `10½ in`, `250 mm`, `52 µm`; with the error of measurement, `260 mm ± 1 mm` or `260 ± 1 mm`. */
export const parseSize = (text: string): Parsed<Measure<Millimetres>> => parseMeasure(text, MM, FORMS);
