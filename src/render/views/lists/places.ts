import { entryHref } from '../../links.ts';
import { climateWords } from '../../words/climate.ts';
import { reelsByPlace } from '../reels-by.ts';
import { entryList } from './entry-list.ts';

export const placeList = entryList({
  path: 'places',
  title: 'Places',
  of: 'places',
  part: 'places',
  heading: 'Where they are',
  columns: ['Place', 'Reels', 'The air there'],
  empty: 'An entry in places/ is a room or a shelf. A logger’s file beside it tells whether tape is safe there.',
  all: ({ entries }) => entries.places,
  titleOf: ({ title }) => title.value,
  row: ({ id }, catalogue) => ({
    to: entryHref('places', id),
    cells: [String(reelsByPlace(catalogue).get(id)?.length ?? 0), climateWords(catalogue.climate.get(id))],
  }),
});
