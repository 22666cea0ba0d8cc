import type { Audience } from './words.ts';

/** Facts that no share shows unless it means to, by their dotted keys; a key stands for all below it. The bodies of
 * people, the notes folder, original file names and image metadata are no keys, and are never shown for being asked. */
export const PRIVATE_BY_DEFAULT: readonly string[] = [
  'custody',
  'valuations',
  'place',
  'address',
  'body',
  'notes',
  'also',
  'accepted',
];

/** What an audience sees of those all the same: an insurer's valuations, and how and when a reel changed hands. */
export const SEEN_ALL_THE_SAME: Readonly<Record<Audience, readonly string[]>> = {
  valuer: ['custody.how', 'custody.from', 'custody.until'],
  insurer: ['custody.how', 'custody.from', 'custody.until', 'valuations'],
  engineer: [],
  researcher: ['custody.how', 'custody.from', 'custody.until'],
  friend: [],
};

/** The private key that covers a dotted key, or undefined when it may be shown for the asking. `custody` covers
 * `custody.price`; and asking for `recorded` asks for a private `recorded.by` too. */
export function privateKeyOf(key: string, audience: Audience, own: ReadonlySet<string>): string | undefined {
  const covers = (outer: string, inner: string) => inner === outer || inner.startsWith(`${outer}.`);
  if (SEEN_ALL_THE_SAME[audience].some((seen) => covers(seen, key)) && ![...own].some((one) => covers(one, key)))
    return undefined;
  return [...PRIVATE_BY_DEFAULT, ...own].find((one) => covers(one, key) || covers(key, one));
}
