import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';

/** How much the heap may grow beyond what is in use, in percent, before it is cleared. */
const GROWTH_PERCENT = 35;

/** For a program that makes one large site and ends: by itself the engine lets the heap of a large collection grow to
 * several times of what is in use, to save a little time. */
export function keepHeapSmall(): void {
  setFlagsFromString(`--heap-growing-percent=${GROWTH_PERCENT}`);
}

/** Clears the heap now: before another program needs memory beside this one. */
export function clearHeap(): void {
  setFlagsFromString('--expose-gc');
  const clear: unknown = runInNewContext('gc');
  if (typeof clear === 'function') clear();
}
