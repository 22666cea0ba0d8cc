import { itemsOf } from '#model/fact.ts';
import type { Reel } from '#model/reel.ts';

/** A reel's numbers as written: matrix first, then catalogue and job; each once. */
export function numbersOf(reel: Reel, most = Number.POSITIVE_INFINITY): readonly string[] {
  const { matrix, catalogue, job } = reel.numbers;
  const written = [matrix, catalogue, job].flatMap((numbers) => itemsOf(numbers).map((number) => number.value));
  return [...new Set(written)].slice(0, most);
}
