import { moneyWords } from '../words/money.ts';
import { figures } from '../words/number.ts';
import type { Schedule } from './schedule.ts';

/** What a reader of the figures must know, where the figures stand. */
export const WHAT_FIGURES_MEAN: readonly string[] = [
  'Each figure is the named person’s, on the day given. The program adds; it doesn’t appraise.',
  'A tape can’t be replaced: a figure is a sum of money, not another tape.',
  'The reels are the owner’s. The recordings and the works on them aren’t, and no right in them is insured here.',
  'Where the reels are kept, what was paid and from whom they came doesn’t stand here.',
];

/** The lines under the items: a total for each currency, and what adds nothing. */
export function totalLines({ totals, withoutFigure }: Schedule): readonly (readonly [words: string, sum: string])[] {
  const lines = totals.flatMap(({ currency, sum, items, byOwner }) => {
    const total = [
      figures(items, 'item with a figure', 'items with a figure'),
      moneyWords({ amount: sum, currency }),
    ] as const;
    if (byOwner === 0) return [total];
    return [total, ['of that by the owner, who isn’t a valuer', moneyWords({ amount: byOwner, currency })] as const];
  });
  if (withoutFigure === 0) return lines;
  const none = `${figures(withoutFigure, 'item has', 'items have')} no figure and add${withoutFigure === 1 ? 's' : ''} nothing. That doesn’t mean that ${withoutFigure === 1 ? 'it is' : 'they are'} worth nothing.`;
  return [...lines, [none, ''] as const];
}
