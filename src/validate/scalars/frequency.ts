import { type Hertz, hertz } from '#model/units.ts';
import { parseQuantity, type UnitTable } from './measure.ts';
import type { Parsed } from './parsed.ts';

const FORMS = { what: 'a frequency', forms: ['1 kHz', '100 Hz'], units: ['Hz', 'kHz'] } as const;

const HZ: UnitTable<Hertz> = new Map([
  ['hz', hertz],
  ['khz', (count) => hertz(count * 1000)],
  ['c/s', hertz],
  ['kc/s', (count) => hertz(count * 1000)],
]);

/** A frequency: `1 kHz`, `100 Hz`; `c/s` and `kc/s` on older labels. */
export const parseFrequency = (text: string): Parsed<Hertz> => parseQuantity(text, HZ, FORMS);
