import { itemsOf } from '#model/fact.ts';
import type { Reel } from '#model/reel.ts';

/** The numbers of a reel and what is read of them. */
export const NUMBER_FACTS = {
  catalogueNumbers: (reel: Reel) => (reel.numbers.catalogue?.is === 'known' ? reel.numbers.catalogue.value : undefined),
  matrixNumbers: (reel: Reel) => (reel.numbers.matrix?.is === 'known' ? reel.numbers.matrix.value : undefined),
  sides: (reel: Reel) => (reel.sides?.is === 'known' ? reel.sides.value : undefined),
  readings: (reel: Reel) => (reel.readings?.is === 'known' ? itemsOf(reel.readings) : undefined),
};
