import type { Edition } from '#model/edition.ts';
import { itemsOf, valueOf } from '#model/fact.ts';
import type { Reel } from '#model/reel.ts';
import { parseNumber } from './parse-number.ts';
import { plainForm } from './plain.ts';
import { orderOf } from './sides.ts';

interface Looked {
  /** The side that is missing, 1 to 8. */
  readonly order: number;
  /** A side of the same set that is here, as written. */
  readonly heldSide: string;
  /** A reel that is known to be the missing one. */
  readonly known: Reel | undefined;
  readonly reels: readonly Reel[];
  readonly editions: readonly Edition[];
}

/** Every number to look for on boxes and lists when a side is missing: those that are known to be its own first, then
 * what the edition and its copies say of that side, then what the numbers of the held side would make it, last the
 * numbers that all of the set share. No house's system is certain, so what is only worked out says so. */
export function numbersToLookFor({ order, heldSide, known, reels, editions }: Looked): readonly string[] {
  const own =
    known === undefined ? [] : [known.numbers.matrix, known.numbers.job, known.numbers.other].flatMap(itemsOf);
  const ofSide = editions.flatMap((edition) => [
    ...itemsOf(edition.sides).flatMap(({ side, matrix }) => (orderOf(side.value) === order ? [valueOf(matrix)] : [])),
    ...itemsOf(edition.runOuts).flatMap(({ side, written }) => (orderOf(side?.value) === order ? [written.value] : [])),
  ]);
  const held = reels.find((reel) => reel !== known && itemsOf(reel.sides).some((side) => side.value === heldSide));
  const guessed = itemsOf(held?.numbers.matrix).flatMap((number) => partnersOf(number.value, heldSide, order));
  const shared = [
    ...reels.flatMap((reel) => itemsOf(reel.numbers.catalogue)).map((number) => number.value),
    ...editions.flatMap((edition) => itemsOf(edition.catalogue)).map((number) => number.value),
  ];
  const certain = [...own.map((number) => number.value), ...ofSide.flatMap((number) => number ?? [])];
  return distinct([...certain, ...guessed.map((number) => `${number} (perhaps)`), ...shared]);
}

const LETTERS = 'ABCDEFGH';

/** What a side's number would be for another side: its side letter changed, or its last figures counted on. */
function partnersOf(written: string, heldSide: string, order: number): readonly string[] {
  const heldOrder = orderOf(heldSide);
  const { stem, side } = parseNumber(written);
  if (heldOrder === undefined || stem === null) return [];
  const letter = LETTERS[order - 1];
  if (side !== null && letter !== undefined) return [written.replace(new RegExp(`${side}(?=[^A-Z]*$)`, 'iu'), letter)];
  return [countedOn(stem, order - heldOrder)].flatMap((number) => number ?? []);
}

/** No number is nearly so long; the search for its last figures is quick on this length only. */
const LONGEST_STEM = 200;

/** The last run of figures, with as many places, higher or lower by some; undefined below 0. */
function countedOn(stem: string, by: number): string | undefined {
  const found = /^(|.*?\D)(\d+)(\D*)$/su.exec(stem.length > LONGEST_STEM ? '' : stem);
  const [, before = '', figures = '', after = ''] = found ?? [];
  const number = BigInt(figures === '' ? -1 : figures) + BigInt(by);
  return figures === '' || number < 0n ? undefined : `${before}${String(number).padStart(figures.length, '0')}${after}`;
}

/** One a number, in any spelling, the first kept. */
function distinct(numbers: readonly string[]): readonly string[] {
  const seen = new Set<string>();
  return numbers.filter((number) => {
    const plain = plainForm(number.replace(' (perhaps)', ''));
    if (seen.has(plain)) return false;
    seen.add(plain);
    return true;
  });
}
