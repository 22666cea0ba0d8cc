import type { Given } from '#model/given.ts';
import { type Hertz, hertz, type Microseconds } from '#model/units.ts';
import type { Worked } from '#model/worked.ts';
import { workOut } from '../figure/work-out.ts';

/** Where a time constant turns the curve: f = 1 / (2πt). An infinite one turns at 0 Hz: there is no turn. */
export const transitionFrequency = (time: Microseconds): Hertz => hertz(1 / (2 * Math.PI * time * 1e-6));

export function workedTransition(time: Given<Microseconds>): Worked {
  return workOut(
    {
      name: 'transition-frequency',
      unit: 'Hz',
      formula: 'f = 1 / (2π·t)',
      source: 'definition of a time constant; IASA-TC 04 (2nd ed.) section 5.4.10 lists the rounded values',
    },
    [time],
    transitionFrequency,
  );
}
