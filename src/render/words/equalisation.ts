import type { Equalisation } from '#model/equalisation.ts';
import { decimal } from './number.ts';

/** A name as labels give it, or the time constants: `AES`, `3180/50 µs`, `35 µs` where no bass is lifted. */
export function equalisationWords(equalisation: Equalisation): string {
  if (equalisation.is === 'name') return equalisation.name;
  const high = decimal(equalisation.highUs, 2);
  return Number.isFinite(equalisation.lowUs) ? `${decimal(equalisation.lowUs, 0)}/${high} µs` : `${high} µs`;
}
