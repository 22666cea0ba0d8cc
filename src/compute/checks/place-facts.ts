import type { StoragePlace } from '#model/storage-place.ts';
import type { CheckContext } from './context.ts';

/** Facts about one storage place. */
export const PLACE_FACTS = {
  place: (place: StoragePlace) => place,
  /** What its climate logs come to; missing when it has none that could be read. */
  climate: (place: StoragePlace, context: CheckContext) => context.assessed.climate?.get(place.id),
  today: (_place: StoragePlace, context: CheckContext) => context.today,
};
