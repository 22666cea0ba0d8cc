import { itemsOf } from '#model/fact.ts';
import { NUMBER_ROLES, type NumberSeen } from '#model/number-seen.ts';
import type { Reel } from '#model/reel.ts';
import { parseNumber } from './parse-number.ts';

/** Every number that a reel's entry gives it, taken apart, in the order of the entry's own keys. */
export function numbersOf(reel: Reel): readonly NumberSeen[] {
  return NUMBER_ROLES.flatMap((as) =>
    itemsOf(reel.numbers[as]).map(({ written, place }) => {
      const { plain, stem, side, cut } = parseNumber(written);
      return { as, written, plain, stem, side, cut, place };
    }),
  );
}
