import { href } from '../../links.ts';
import { mark } from '../../marks.ts';
import { figures } from '../../words/number.ts';
import { families } from '../family.ts';
import { familyFacts } from '../family-facts.ts';
import { lookupOf } from '../lookup.ts';
import { entryList } from './entry-list.ts';

export const lineageList = entryList({
  path: 'lineage',
  title: 'Lineage',
  of: 'families',
  part: 'lineage',
  heading: 'Families of copies',
  columns: ['Family', 'Reels', 'And', 'Editions', 'Cuts', 'Unsettled'],
  empty:
    'No reel says yet what it was copied from, or what was cut from it. copied-from:, cuts: and edition: are what joins them.',
  all: (catalogue) => {
    const lookup = lookupOf(catalogue);
    return families(catalogue).all.map((family) => ({ id: family.id, ...familyFacts(family, lookup) }));
  },
  titleOf: ({ title }) => title,
  row: ({ id, held, reels, editions, cuts, trouble }) => ({
    to: href(`lineage/${id}/`),
    cells: [
      `${held} held`,
      `${reels.length - held} known of`,
      figures(editions, 'edition'),
      figures(cuts, 'cut'),
      trouble.length === 0
        ? mark('clear', 'no contradiction')
        : mark('differs', figures(trouble.length, 'contradiction')),
    ],
  }),
});
