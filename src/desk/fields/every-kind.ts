import { PHOTO_SUBJECTS } from '#model/words.ts';
import { type Field, free, list, many, one } from './field.ts';

export const TITLE: Field = one('title', 'Title', 'Saltwater Almanac, side 1');

export const PHOTOS: Field = list(
  'photos',
  'Photographs',
  [
    one('file', 'File', 'box-front.jpg'),
    one('shows', 'Shows', PHOTO_SUBJECTS),
    one('note', 'Note'),
    one('on', 'Taken on', '2026-03-02'),
  ],
  'file',
);

/** What every kind of entry ends with. */
export const LAST: readonly Field[] = [
  many('private', 'Kept private too', 'client'),
  list('accepted', 'Accepted', [
    one('code', 'Problem', 'number/sides-differ'),
    one('why', 'Why'),
    one('on', 'On', '2026-03'),
  ]),
  free('also', 'Also'),
];

export const YES_NO = ['yes', 'no'] as const;
