import type { Given } from '#model/given.ts';
import {
  type Hertz,
  hertz,
  inMillimetres,
  type Micrometres,
  type Millimetres,
  type MillimetresPerSecond,
  millimetres,
} from '#model/units.ts';
import type { Worked } from '#model/worked.ts';
import { thicknessWithError } from '../figure/assumed-error.ts';
import { workOut } from '../figure/work-out.ts';

/** The wavelength that prints most from one turn into the next: λ = 2π·t, t the spacing of the layers. */
export const worstWavelength = (thicknessUm: Micrometres): Millimetres =>
  millimetres(2 * Math.PI * inMillimetres(thicknessUm));

/** The frequency at which print-through is worst: f = v / (2π·t). No level follows from it: that depends on the stock,
 * its age and the warmth it has lain in, and no published figure holds for an unknown tape.
 * Source: H. N. Bertram and others, The print-through phenomenon, JAES 28 (1980). */
export const printThroughFrequency = (thicknessUm: Micrometres, speedMmPerS: MillimetresPerSecond): Hertz =>
  hertz(speedMmPerS / worstWavelength(thicknessUm));

export function workedPrintThrough(thickness: Given<Micrometres>, speed: Given<MillimetresPerSecond>): Worked {
  return workOut(
    {
      name: 'print-through-frequency',
      unit: 'Hz',
      formula: 'f = v / (2π·t)',
      source:
        'Bertram and others, The print-through phenomenon, JAES 28 (1980): worst at a wavelength of 2π × thickness',
    },
    [thicknessWithError(thickness), speed],
    printThroughFrequency,
  );
}
