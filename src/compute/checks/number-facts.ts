import { itemsOf, valueOf } from '#model/fact.ts';
import type { Reel } from '#model/reel.ts';
import { orderOf } from '../identifiers/sides.ts';
import type { CheckContext } from './context.ts';
import { cutsOnCopies } from './cuts-seen.ts';
import { linkedEditions } from './linked-editions.ts';

/** The numbers of a reel and what is read of them. */
export const NUMBER_FACTS = {
  catalogueNumbers: (reel: Reel) => (reel.numbers.catalogue?.is === 'known' ? reel.numbers.catalogue.value : undefined),
  matrixNumbers: (reel: Reel) => (reel.numbers.matrix?.is === 'known' ? reel.numbers.matrix.value : undefined),
  sides: (reel: Reel) => (reel.sides?.is === 'known' ? reel.sides.value : undefined),
  /** The cuts that copies of its editions bear, of its own side where it has one; never missing. */
  cutsOnCopies: (reel: Reel, context: CheckContext) => {
    const sides = itemsOf(reel.sides).map((side) => orderOf(side.value));
    return itemsOf(reel.editions)
      .flatMap(({ value }) => context.editions.get(value) ?? [])
      .flatMap(cutsOnCopies)
      .filter(({ side }) => side === undefined || sides.length === 0 || sides.includes(orderOf(side)));
  },
  readings: (reel: Reel) => (reel.readings?.is === 'known' ? reel.readings.value : undefined),
  /** Whether its set or an edition of it has more sides than two, where every way of numbering is lawful. */
  hasMoreSides: (reel: Reel, context: CheckContext) => {
    const inSet = context.sets.get(valueOf(reel.set) ?? '') ?? [];
    const editions = itemsOf(reel.editions).flatMap(({ value }) => context.editions.get(value) ?? []);
    const sides = [
      ...inSet.flatMap((other) => itemsOf(other.sides).map((side) => side.value)),
      ...editions.flatMap((edition) => itemsOf(edition.sides).map(({ side }) => side.value)),
    ];
    return sides.some((side) => (orderOf(side) ?? 0) > 2);
  },
  /** Its editions' catalogue numbers; missing when no edition of it has one. */
  editionNumbers: (reel: Reel, context: CheckContext) => {
    const numbers = itemsOf(reel.editions).flatMap(({ value }) => {
      const edition = context.editions.get(value);
      return itemsOf(edition?.catalogue).map((number) => ({ title: edition?.title.written ?? value, number }));
    });
    return numbers.length > 0 ? numbers : undefined;
  },
  /** The catalogue numbers of what its editions reissue, and of what reissues them. */
  linkedNumbers: (reel: Reel, context: CheckContext) =>
    itemsOf(reel.editions)
      .flatMap(({ value }) => linkedEditions(value, context))
      .flatMap((edition) => itemsOf(edition.catalogue).map((number) => number.value)),
  /** Whether other reels or editions are compared with it by its numbers. */
  isCompared: (reel: Reel, context: CheckContext) =>
    itemsOf(reel.editions).length > 0 || (context.sets.get(valueOf(reel.set) ?? '') ?? []).length > 1,
};
