import type { Catalogue } from '#model/catalogue.ts';
import { editionList } from './editions.ts';
import type { EntryList } from './entry-list.ts';
import { lineageList } from './lineages.ts';
import { noteList } from './notes.ts';
import { peopleList } from './people.ts';
import { placeList } from './places.ts';
import { stockList } from './stocks.ts';

/** The lists that grow with a collection. */
export const entryLists = (catalogue: Catalogue): readonly EntryList[] =>
  [editionList, lineageList, stockList, placeList, peopleList, noteList].map((list) => list(catalogue));
