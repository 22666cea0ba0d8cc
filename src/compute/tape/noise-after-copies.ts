import type { Given } from '#model/given.ts';
import { type Decibels, decibels } from '#model/units.ts';
import type { Worked } from '#model/worked.ts';
import { workOut } from '../figure/work-out.ts';

/** Signal to noise after passes whose noises are independent: their powers add, so two equal passes cost 3.01 dB.
 *
 *      S/N = −10·log Σ 10^(−S/Nᵢ/10)
 *
 * Source: addition of independent noise powers; textbook.
 */
export function noiseAfterCopies(ratiosDb: readonly Decibels[]): Decibels {
  let noise = 0;
  for (const ratioDb of ratiosDb) noise += 10 ** (-ratioDb / 10);
  return decibels(-10 * Math.log10(noise));
}

export function workedNoise(ratios: readonly Given<Decibels>[]): Worked {
  return workOut(
    {
      name: 'noise-after-copies',
      unit: 'dB',
      formula: 'S/N = −10·log Σ 10^(−S/Nᵢ/10)',
      source: 'addition of independent noise powers; textbook',
    },
    ratios,
    (...values) => noiseAfterCopies(values as Decibels[]),
  );
}
