import { listInWords } from '../../figure/in-words.ts';
import { between, crossCheck } from '../check.ts';

/** One matrix number on editions that nobody linked as reissues: they were pressed from one cut, or one is misread. */
export const shared = crossCheck({
  code: 'number/shared',
  title: 'Two editions share a matrix number and no reissue link',
  severity: 'note',
  scope: 'collection',
  reads: ['sharedMatrices'],
  judge: ({ sharedMatrices }) =>
    sharedMatrices.map((uses) => {
      const titles = listInWords(uses.map(({ edition }) => edition.title.written));
      return {
        message: `One matrix number stands on ${titles}, and no reissue links them.`,
        action:
          'Write `reissue-of:` into the later one if it was pressed from the same cut; metalwork was also sent abroad for an edition of its own, and then this is right as it stands. Otherwise look at the run-outs again.',
        ...between(
          ...uses.map(({ edition, side, matrix }) => ({
            place: matrix.place,
            message: `${edition.title.written}, side ${side}: ${matrix.written}`,
            found: matrix.written,
            expected: '`reissue-of:` the other edition, or another number',
          })),
        ),
      };
    }),
});
