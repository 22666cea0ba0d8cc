import { listInWords } from '../../figure/in-words.ts';
import { howMistaken, sameStem } from '../../identifiers/same-number.ts';
import { crossCheck, type Doubt } from '../check.ts';

/** A reel's catalogue number against its editions'. A reel made for one edition may serve others: one number that is
 * an edition's is enough, and so is that of an edition reissued. */
export const catalogueDiffers = crossCheck({
  code: 'number/catalogue-differs',
  title: 'The reel’s catalogue number isn’t its edition’s',
  severity: 'warning',
  scope: 'reel',
  reads: ['catalogueNumbers', 'editionNumbers', 'linkedNumbers'],
  judge: ({ catalogueNumbers, editionNumbers, linkedNumbers }): readonly Doubt[] => {
    const lawful = [...editionNumbers.map(({ number }) => number.value), ...linkedNumbers];
    const [first] = catalogueNumbers;
    if (first === undefined || catalogueNumbers.some((own) => lawful.some((other) => sameStem(own.value, other))))
      return [];
    const pairs = catalogueNumbers.flatMap((own) => editionNumbers.map((other) => ({ own, other })));
    const mistaken = pairs.flatMap(({ own, other }) => {
      const how = howMistaken(own.value, other.number.value);
      return how === undefined ? [] : [{ own, other, how }];
    });
    const likeliest = mistaken.length === 1 ? mistaken[0] : undefined;
    const own = likeliest?.own ?? first;
    const numbers = listInWords([...new Set(editionNumbers.map(({ number }) => number.written))], 'or');
    return [
      {
        place: own.place,
        message: 'The reel’s catalogue number is not its edition’s.',
        found: own.written,
        expected: likeliest?.other.number.written ?? numbers,
        action:
          likeliest === undefined
            ? 'Look at the label again, and at `edition:`: the reel may belong to another edition, or the label may bear the number that the programme has at home. If so, list that edition as well.'
            : `Look at the label again: ${likeliest.how}. If the label does say ${own.written}, look at the edition’s entry.`,
        related: editionNumbers.map(({ title, number }) => ({
          message: `${title}: ${number.written}`,
          place: number.place,
        })),
      },
    ];
  },
});
