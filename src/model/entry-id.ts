const ID = /^[a-z0-9][a-z0-9-]{0,199}$/u;

/** Words with a meaning of their own in an entry, so never the name of one. */
const RESERVED: readonly string[] = ['none', 'owner'];

/** Whether a text can be an entry's id: lower-case letters, digits and hyphens. */
export const isId = (text: string): boolean => ID.test(text) && !RESERVED.includes(text);

/** The id nearest to a text: `Almanac Side 1` gives `almanac-side-1`. Empty when nothing of it can be kept. */
export function idLike(text: string): string {
  const plain = text.slice(0, 300).normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase();
  const words = plain.split(/[^a-z0-9]/u).filter((word) => word !== '');
  const joined = words.join('-').slice(0, 100);
  return isId(joined) ? joined : '';
}
