import { listInWords } from '../../figure/in-words.ts';
import { parseNumber } from '../../identifiers/parse-number.ts';
import { orderOf } from '../../identifiers/sides.ts';
import { crossCheck, type Doubt } from '../check.ts';

const LETTERS = 'ABCDEFGH';

/** A matrix number's side letter against the side. With more sides than two any letter is lawful from the second side
 * on: discs may be lettered one by one, or for automatic coupling. */
export const sideLetter = crossCheck({
  code: 'number/side-letter',
  title: 'A number’s side letter isn’t the reel’s side',
  severity: 'warning',
  scope: 'reel',
  reads: ['matrixNumbers', 'sides', 'hasMoreSides'],
  judge: ({ matrixNumbers, sides, hasMoreSides }) => {
    const orders = sides.map((side) => orderOf(side.value));
    const known = orders.filter((order) => order !== undefined);
    const letters = matrixNumbers.map((number) => parseNumber(number.written).side);
    // A number that fits settles a reel that bears several: another may be an older cut's, or another edition's.
    if (known.length < sides.length || letters.some((letter) => letter !== null && fits(letter, known, hasMoreSides)))
      return [];
    return matrixNumbers.flatMap((number, index): readonly Doubt[] => {
      const letter = letters[index];
      if (letter === null || letter === undefined) return [];
      const right = listInWords(
        known.map((order) => LETTERS[order - 1] ?? ''),
        'or',
      );
      const side = listInWords(sides.map((one) => one.written));
      const own = LETTERS.indexOf(letter) + 1;
      return [
        {
          place: number.place,
          message: `The matrix number is side ${letter}’s, and the entry says side ${side}.`,
          found: `${number.written} on side ${side}`,
          expected: `the letter ${right}, or \`side: "${own}"\``,
          action: `Look at the label again, first for the letter${confusableWith(letter, right)}, then for the side: two boxes of a set are easily swapped.`,
          related: sides.map((one) => ({ message: `side: ${one.written}`, place: one.place })),
        },
      ];
    });
  },
});

function fits(letter: string, orders: readonly number[], hasMoreSides: boolean): boolean {
  const own = LETTERS.indexOf(letter) + 1;
  return orders.some((order) => order === own || ((hasMoreSides || order > 2) && order > 1));
}

const confusableWith = (letter: string, right: string) =>
  letter === 'B' && right === 'D' ? ' (a D and a B look alike)' : '';
