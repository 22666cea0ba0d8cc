import { byText } from '#model/diagnostic.ts';

/** The entry with an id among entries sorted by id, as all of a collection's are; undefined when there is none. */
export function byId<T extends { readonly id: string }>(sorted: readonly T[], id: string): T | undefined {
  let [low, high] = [0, sorted.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    const entry = sorted[middle];
    if (entry === undefined) return undefined;
    const order = byText(entry.id, id);
    if (order === 0) return entry;
    if (order < 0) low = middle + 1;
    else high = middle;
  }
  return undefined;
}
