import { valueOf } from '#model/fact.ts';
import { entryHref } from '../../links.ts';
import { dateWords } from '../../words/date.ts';
import { factWords } from '../../words/fact.ts';
import { thickness } from '../../words/size.ts';
import { shedWords } from '../../words/stock.ts';
import { reelsByStock } from '../reels-by.ts';
import { entryList } from './entry-list.ts';

export const stockList = entryList({
  path: 'stocks',
  title: 'Stocks',
  of: 'stocks',
  part: 'stocks',
  heading: 'Types of tape',
  columns: ['Stock', 'Base', 'Binder', 'Back coat', 'Thickness', 'Made', 'Sheds?', 'Reels'],
  empty:
    'An entry in stocks/ says what a maker’s tape is made of. Without it no rule about shedding or acetate can speak.',
  all: ({ entries }) => entries.stocks,
  titleOf: ({ title }) => title.value,
  row: (stock, catalogue) => ({
    to: entryHref('stocks', stock.id),
    cells: [
      factWords(stock.base, (base) => base),
      factWords(stock.binder, (binder) => binder),
      factWords(stock.backCoated, (coated) => (coated ? 'yes' : 'no')),
      factWords(stock.thickness, (measure) => thickness(measure.value)),
      factWords(stock.made, dateWords),
      shedWords(valueOf(stock.knownToShed)),
      String(reelsByStock(catalogue).get(stock.id)?.length ?? 0),
    ],
  }),
});
