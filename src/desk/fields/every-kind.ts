import { PHOTO_SUBJECTS } from '#model/words.ts';
import { type Field, free, list, many, neverNone, one } from './field.ts';

export const TITLE: Field = one('title', 'Title', 'Saltwater Almanac, side 1');

export const PHOTOS: Field = list(
  'photos',
  'Photographs',
  [
    one('file', 'File', { file: true, example: 'box-front.jpg' }),
    one('shows', 'Shows', PHOTO_SUBJECTS),
    one('note', 'Note'),
    one('on', 'Taken on', '2026-03-02'),
  ],
  'file',
);

/** What every kind of entry ends with. */
export const LAST: readonly Field[] = [
  neverNone(many('private', 'Kept private too', { facts: true, example: 'client' })),
  neverNone(
    list('accepted', 'Accepted', [
      one('code', 'Problem', 'number/sides-differ'),
      one('why', 'Why'),
      one('on', 'On', '2026-03'),
    ]),
  ),
  free('also', 'Also'),
];

export const YES_NO = ['yes', 'no'] as const;
