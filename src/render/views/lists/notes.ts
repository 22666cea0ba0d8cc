import { entryHref } from '../../links.ts';
import { entryList } from './entry-list.ts';

export const noteList = entryList({
  path: 'notes',
  title: 'Notes',
  of: 'notes',
  part: 'reels',
  heading: 'The notes',
  columns: ['Note', 'Length'],
  empty: 'A file in notes/ with a title is a note; numbers and ids in it become links.',
  all: ({ entries }) => entries.notes,
  titleOf: ({ title }) => title.value,
  row: ({ id, body }) => ({ to: entryHref('notes', id), cells: [`${body.trim().split(/\s+/).length} words`] }),
});
