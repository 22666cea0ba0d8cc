import { mistakenFor } from './confusables.ts';
import type { Asked } from './question.ts';

/** More characters than a machine word has bits can't be walked at once; a longer etching is asked for without its
 *  rest. */
export const LONGEST_WALKED = 30;

/** Which characters of a question each character of the index fits, one bit a place. */
export interface Masks {
  readonly length: number;
  /** By letter of the index: the places that it fits as asked. */
  readonly fits: Uint32Array;
  /** By letter of the index: the places that it fits when it was misread. */
  readonly misread: Uint32Array;
  /** The places after which anything may stand. */
  readonly thenAny: number;
  /** The last place. */
  readonly last: number;
}

/** Masks for a question of at most LONGEST_WALKED characters. An unread character in a stored reading fits everywhere.
 *
 * @param letterOf  the place of each character in the index's own alphabet.
 */
export function masksOf(asked: readonly Asked[], letterOf: ReadonlyMap<string, number>): Masks {
  const fits = new Uint32Array(letterOf.size + 1);
  const misread = new Uint32Array(letterOf.size + 1);
  const mark = (masks: Uint32Array, letter: number | undefined, bit: number) => {
    if (letter !== undefined) masks[letter] = (masks[letter] ?? 0) | bit;
  };
  let thenAny = 0;
  for (const [place, { mayBe, thenAny: any }] of asked.entries()) {
    const bit = 1 << place;
    if (any) thenAny |= bit;
    if (mayBe === '') for (const letter of letterOf.values()) mark(fits, letter, bit);
    for (const character of mayBe) mark(fits, letterOf.get(character), bit);
    if (mayBe.length !== 1) continue;
    for (const other of mistakenFor(mayBe).keys()) mark(misread, letterOf.get(other), bit);
  }
  mark(fits, letterOf.get('?'), 2 ** asked.length - 1);
  return { length: asked.length, fits, misread, thenAny, last: 1 << (asked.length - 1) };
}
