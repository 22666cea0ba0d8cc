import type { EditionSide } from '#model/edition.ts';
import { itemsOf, type Known } from '#model/fact.ts';
import type { Reel } from '#model/reel.ts';
import { howMistaken, lettersOf, sameStem } from '../../identifiers/same-number.ts';
import { between, crossCheck, type Doubt } from '../check.ts';

/** An edition side's matrix number against that of the reel it was cut from, by stem. Another house's system, told by
 * its letters, may be just right: then it is a note. */
export const matrixDiffers = crossCheck({
  code: 'number/matrix-differs',
  title: 'The edition’s matrix number isn’t its reel’s',
  severity: 'warning',
  scope: 'edition',
  reads: ['edition', 'sidesWithReels'],
  judge: ({ edition, sidesWithReels }) =>
    sidesWithReels.flatMap(({ side, reels, named }) => {
      const { matrix } = side;
      if (matrix?.is !== 'known') return [];
      const numbered = reels
        .map((reel) => ({ reel, numbers: numbersOf(reel, edition.id) }))
        .filter(({ numbers }) => numbers.length > 0);
      if (numbered.some(({ numbers }) => numbers.some((number) => sameStem(number.value, matrix.value)))) return [];
      return numbered
        .slice(0, 1)
        .flatMap(({ reel, numbers }) => doubtAbout(edition.title.written, side, matrix, reel, numbers, named));
    }),
});

/** The reel's own matrix numbers, and those of the cuts made from it for this edition. */
function numbersOf(reel: Reel, edition: string): readonly Known<string>[] {
  const ofCuts = itemsOf(reel.cuts).flatMap((cut) =>
    cut.matrix !== undefined && (cut.edition === undefined || cut.edition.value === edition) ? [cut.matrix] : [],
  );
  return [...itemsOf(reel.numbers.matrix), ...ofCuts];
}

function doubtAbout(
  edition: string,
  side: EditionSide,
  matrix: Known<string>,
  reel: Reel,
  numbers: readonly Known<string>[],
  named: boolean,
): readonly Doubt[] {
  const mistaken = numbers.flatMap((number) => {
    const how = howMistaken(number.value, matrix.value);
    return how === undefined ? [] : [{ number, how }];
  });
  const likeliest = mistaken.length === 1 ? mistaken[0] : undefined;
  const number = likeliest?.number ?? numbers[0];
  if (number === undefined) return [];
  const isOneSystem = numbers.some((one) => lettersOf(one.value) === lettersOf(matrix.value));
  return [
    {
      message: `Side ${side.side.written} of ${edition} bears another matrix number than the reel for it.`,
      action:
        likeliest === undefined
          ? 'Look at both again. A plant or an affiliate often gives a side a number of its own: then accept this, or add that number to the reel’s cut.'
          : `Look at both again: on the reel, ${likeliest.how}.`,
      severity: named || likeliest !== undefined || isOneSystem ? 'warning' : 'note',
      ...between(
        {
          place: number.place,
          message: `${reel.title.written}: ${number.written}`,
          found: number.written,
          expected: `${matrix.written}, as on side ${side.side.written} of ${edition}`,
        },
        {
          place: matrix.place,
          message: `${edition}, side ${side.side.written}: ${matrix.written}`,
          found: matrix.written,
          expected: `${number.written}, as on ${reel.title.written}`,
        },
      ),
    },
  ];
}
