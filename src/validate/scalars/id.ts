import { type Parsed, parsed, quoted, refused } from './parsed.ts';

const ID = /^[a-z0-9][a-z0-9-]{0,99}$/u;

/** Words with a meaning of their own in an entry, so never the name of one. */
const RESERVED: readonly string[] = ['none', 'owner'];

/** The form of an entry's id: lower-case letters, digits and hyphens. */
export const isId = (text: string): boolean => ID.test(text) && !RESERVED.includes(text);

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

/** The id nearest to a text: `Almanac Side 1.md` gives `almanac-side-1`. Empty when nothing of it can be kept. */
export function idLike(text: string): string {
  const plain = text.slice(0, 300).normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase();
  const words = plain.split(/[^a-z0-9]/u).filter((word) => word !== '');
  const joined = words.join('-').slice(0, 100);
  return isId(joined) ? joined : '';
}
