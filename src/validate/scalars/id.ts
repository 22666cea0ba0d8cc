import { idLike, isId } from '#model/entry-id.ts';
import { type Parsed, parsed, quoted, refused } from './parsed.ts';

/** An id as one entry names another by. Whether such an entry exists is asked later. */
export function parseId(text: string): Parsed<string> {
  if (isId(text)) return parsed(text);
  const near = idLike(text);
  const action =
    near === ''
      ? 'Write the name of the entry, as its file has it.'
      : `Write ${near}, if that is the entry's file name.`;
  return refused(
    `${quoted(text)} can't be an entry's id.`,
    'lower-case letters, digits and hyphens, such as almanac-side-1',
    action,
  );
}
