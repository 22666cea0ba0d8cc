import type { Entries } from '#model/entries.ts';
import type { NumberOf } from '#model/numbered.ts';
import { gatherNumbers } from './gather-numbers.ts';

/** Every number of a collection, put in order when it is first asked for, and once: only pages and the number index
 *  ask, and a check of many reels doesn't wait for it. */
export function allNumbers(entries: Entries): () => readonly NumberOf[] {
  let numbers: readonly NumberOf[] | undefined;
  return () => {
    numbers ??= gatherNumbers(entries);
    return numbers;
  };
}
