import { clock } from '../../figure/in-words.ts';
import { explainDifference } from '../../tape/contents-explained.ts';
import type { Doubt } from '../check.ts';
import { crossCheck } from '../check.ts';

/** "No gaps" beside a gap that is listed after a title. */
const listed = crossCheck({
  code: 'time/gap-conflict',
  title: 'The label denies gaps that the contents have',
  severity: 'warning',
  scope: 'reel',
  reads: ['gaps', 'titles'],
  judge: ({ gaps, titles }): readonly Doubt[] => {
    if (gaps.is !== 'none') return [];
    const withGap = titles.filter(({ gapAfterS }) => gapAfterS?.is === 'known' && gapAfterS.value > 0);
    const [first, ...more] = withGap.flatMap((title) =>
      title.gapAfterS === undefined ? [] : [{ title, gap: title.gapAfterS }],
    );
    if (first === undefined) return [];
    return [
      {
        place: first.gap.place,
        message: `The entry says that there are no gaps, and lists one after ${first.title.title.written}.`,
        found: `gap-after: ${first.gap.written}`,
        expected: '`gaps: mixed`, or no gap-after',
        action: 'Look at the label again: where only some titles run on, write `gaps: mixed`.',
        related: [
          { message: `gaps: ${gaps.written}`, place: gaps.place },
          ...more.map(({ title, gap }) => ({
            message: `${title.title.written}, gap-after: ${gap.written}`,
            place: gap.place,
          })),
        ],
      },
    ];
  },
});

/** "No gaps" on the label, and a stated length that only gaps account for. */
const needed = crossCheck({
  code: 'time/gap-conflict',
  title: 'The stated length needs gaps that the label denies',
  severity: 'warning',
  scope: 'reel',
  reads: ['gaps', 'duration', 'contentsSum'],
  judge: ({ gaps, duration, contentsSum }) => {
    const difference = gaps.is === 'none' ? explainDifference(duration, contentsSum) : undefined;
    if (difference?.is !== 'gaps') return [];
    const sumS = duration.value - difference.differenceS;
    return [
      {
        place: gaps.place,
        message: 'The label denies gaps, and the stated length has room for them.',
        found: `gaps: ${gaps.written}, and a length of ${duration.written}`,
        expected: `gaps: ${difference.eachS} s, or a length of ${clock(sumS)}`,
        action: `Look at the label again: gaps of ${difference.eachS} s between the titles make up the ${difference.differenceS} s that the stated length has over their sum. A copy run on without gaps often keeps the length written on its master’s box.${difference.orElse === undefined ? '' : ` Without gaps: ${difference.orElse}`}`,
        related: [{ message: `length: ${duration.written}`, place: duration.place }],
      },
    ];
  },
});

export const gapConflict = [listed, needed] as const;
