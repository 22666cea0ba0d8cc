import { itemsOf, valueOf } from '#model/fact.ts';
import { entryHref } from '../../links.ts';
import { notRecorded } from '../../marks.ts';
import { html, joined } from '../../markup.ts';
import { dateWords } from '../../words/date.ts';
import { entryList } from './entry-list.ts';

export const editionList = entryList({
  path: 'editions',
  title: 'Editions',
  of: 'editions',
  part: 'editions',
  heading: 'Made from the reels',
  columns: ['Edition', 'Artist', 'Catalogue', 'Made as', 'Label', 'Issued'],
  empty:
    'An entry in editions/ is a record or a cassette that was made from the reels; its run-outs can then be held against the cuts.',
  all: ({ entries }) => entries.editions,
  titleOf: ({ title }) => title.value,
  row: (edition) => ({
    to: entryHref('editions', edition.id),
    cells: [
      valueOf(edition.artist) ?? notRecorded(),
      edition.catalogue
        ? joined(
            itemsOf(edition.catalogue).map(({ value }) => html`<span class="as-written nb">${value}</span>`),
            ' ',
          )
        : notRecorded(),
      valueOf(edition.madeAs) ?? notRecorded(),
      valueOf(edition.label) ?? notRecorded(),
      edition.issued?.is === 'known' ? dateWords(edition.issued.value) : notRecorded(),
    ],
  }),
});
