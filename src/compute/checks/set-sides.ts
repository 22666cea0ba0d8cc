import { itemsOf, type Known } from '#model/fact.ts';
import type { Reel } from '#model/reel.ts';
import { plainForm } from '../identifiers/plain.ts';
import { likeliestText, parseReading } from '../identifiers/reading-pattern.ts';
import { orderOf } from '../identifiers/sides.ts';
import { onlySide } from '../record-side/edition-sides.ts';
import type { ReelSet } from './set-facts.ts';

/** A side of a set with one of the matrix numbers that its reels bear. */
export interface NumberedSide {
  readonly reel: Reel;
  readonly side: Known<string>;
  readonly number: Known<string>;
  /** The number with a reader's doubts marked, where a reading of it has them; else as written. */
  readonly read: string;
}

/** The numbers of each side of a set, by side; several where its reels bear several. Undefined when fewer than two sides
 * have one. A reel with no side, or with two, has no say. */
export function numberedSides({ reels }: ReelSet): readonly (readonly NumberedSide[])[] | undefined {
  const bySide = new Map<number, Map<string, NumberedSide>>();
  for (const reel of reels) {
    const side = onlySide(reel);
    const order = orderOf(side?.value);
    if (side === undefined || order === undefined) continue;
    for (const number of itemsOf(reel.numbers.matrix)) {
      const numbers = bySide.get(order) ?? new Map<string, NumberedSide>();
      const plain = plainForm(number.written);
      if (!numbers.has(plain)) numbers.set(plain, { reel, side, number, read: readingOf(reel, number.written) });
      bySide.set(order, numbers);
    }
  }
  if (bySide.size < 2) return undefined;
  return [...bySide].sort(([a], [b]) => a - b).map(([, numbers]) => [...numbers.values()]);
}

/** The reading that the number was taken from, when it says which of its characters are in doubt. */
function readingOf(reel: Reel, number: string): string {
  const reading = itemsOf(reel.readings).find(({ of, written }) => {
    if (!of.value.startsWith('numbers.matrix')) return false;
    const pattern = parseReading(written.value);
    return pattern.ok && plainForm(likeliestText(pattern.parts)) === plainForm(number);
  });
  return reading?.written.value ?? number;
}
