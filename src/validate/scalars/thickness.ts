import { type Measure, type Micrometres, micrometres, mils } from '#model/units.ts';
import { parseMeasure, type UnitTable } from './measure.ts';
import { type Parsed, refused } from './parsed.ts';
import { splitQuantity } from './quantity.ts';
import { type TapeName, tapeNamed } from './tape-names.ts';

const FORMS = { what: 'a thickness', forms: ['52 µm', '52 µm ± 1 µm'], units: ['µm', 'mm'] } as const;

/** Half a mil has been the name of tapes of three thicknesses; from memory, double- and triple-play makers used it. */
const ASKED_MIL = 0.5;

const UM: UnitTable<Micrometres> = new Map([
  ['µm', micrometres], // U+00B5, the micro sign
  ['μm', micrometres], // U+03BC, the Greek letter
  ['um', micrometres],
  ['micron', micrometres],
  ['microns', micrometres],
  ['mm', (count) => micrometres(count * 1000)],
  ['mil', mils],
  ['mils', mils],
  ['in', (count) => mils(count * 1000)],
]);

/** The total thickness of a tape: base, coat and back coat. `52 µm`, `1.5 mil`, `52 µm ± 1 µm`.
 *
 * A thickness in mil is taken as the total that the key asks for, except `0.5 mil`, which is asked about. */
export function parseThickness(text: string): Parsed<Measure<Micrometres>> {
  const named = tapeNamed(text);
  if (named !== undefined) return refuseName(named);
  const split = splitQuantity(text);
  if (split?.count !== ASKED_MIL || !/^mils?$/iu.test(split.unit)) return parseMeasure(text, UM, FORMS);
  return refused(
    '0.5 mil names more than one tape: is it the base, or the total thickness?',
    '18 µm, or 12.7 µm',
    'Measure it, or write the total: 18 µm for triple play on a base of 12.7 µm; 12.7 µm if that is the total; 25 to 26 µm if the tape was sold as double play.',
  );
}

/** A name is no measure: the totals of tapes of one name differ, so the figure is asked for. */
function refuseName({ name, baseUm, totalUm: [from, to], feetOnSevenInches }: TapeName) {
  const total = from === to ? `about ${from} µm` : `${from} to ${to} µm`;
  return refused(
    `${name[0]?.toUpperCase()}${name.slice(1)} is a name: its base is ${baseUm} µm, its total ${total} (${feetOnSevenInches} ft on a 7 in reel).`,
    `${to} µm, or ${to} µm ± 1 µm`,
    `Measure it, or write ${to} µm if that is good enough, and say so under source.`,
  );
}
