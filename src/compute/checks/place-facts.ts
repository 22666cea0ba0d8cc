import type { StoragePlace } from '#model/storage-place.ts';
import type { CheckContext } from './context.ts';

/** Facts about one storage place. */
export const PLACE_FACTS = {
  place: (place: StoragePlace) => place,
  today: (_place: StoragePlace, context: CheckContext) => context.today,
};
