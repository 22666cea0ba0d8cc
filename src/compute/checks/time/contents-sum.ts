import { clock, spanInWords } from '../../figure/in-words.ts';
import { explainDifference } from '../../tape/contents-explained.ts';
import { crossCheck } from '../check.ts';

/** The stated length against the titles, gaps and run-out sound, within a second a title. */
export const contentsSum = crossCheck({
  code: 'time/contents-sum',
  title: 'The contents don’t add up to the stated length',
  severity: 'warning',
  scope: 'reel',
  reads: ['duration', 'contentsSum'],
  judge: ({ duration, contentsSum }) => {
    const difference = explainDifference(duration, contentsSum);
    if (difference.is !== 'differs') return [];
    const way = difference.differenceS > 0 ? 'longer than' : 'shorter than';
    return [
      {
        place: duration.place,
        message: `The stated length is ${spanInWords(difference.differenceS)} ${way} its contents.`,
        found: duration.written,
        expected: `${clock(difference.nearestS)}, the sum of the contents`,
        action: difference.mayBeGaps
          ? `${difference.says} If there are gaps between the titles, record \`gaps:\`.`
          : `${difference.says} If the label does say so, accept this with a reason.`,
        severity: difference.mayBeGaps ? 'note' : 'warning',
      },
    ];
  },
});
