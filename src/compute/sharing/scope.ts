import { itemsOf } from '#model/fact.ts';
import { PRIVATE_BY_DEFAULT, SEEN_ALL_THE_SAME } from '#model/privacy.ts';
import type { Share } from '#model/share.ts';
import type { Audience } from '#model/words.ts';
import { FREE_WORDS, IDENTITY, TABLE } from './table.ts';

/** Whether a fact, by its dotted key without indexes, may be shown. */
export type Allows = (key: string) => boolean;

/** Whether a key is the other, or stands below it. */
export const covers = (outer: string, inner: string): boolean => inner === outer || inner.startsWith(`${outer}.`);

const coveredBy = (list: Iterable<string>, key: string): boolean => [...list].some((one) => covers(one, key));

/** What a share lets its reader see of an entry.
 *
 * @param ownPrivate  keys that the collection or the entry itself made private; what a share shows by name doesn't
 *   open them, what it means to show does. */
export function scopeOf(share: Share, ownPrivate: readonly string[]): Allows {
  const audience = share.audience.value;
  const shows = itemsOf(share.shows).map((key) => key.value);
  const meant = itemsOf(share.showsPrivate).map((key) => key.value);
  const listed = new Set([...IDENTITY, ...listedFor(audience), ...shows]);
  return (key) => {
    if (coveredBy(meant, key)) return true;
    // Whoever made a part private made the whole of it unfit to be shown as a whole.
    if (ownPrivate.some((one) => covers(one, key) || covers(key, one))) return false;
    if (coveredBy(PRIVATE_BY_DEFAULT, key) && !coveredBy(SEEN_ALL_THE_SAME[audience], key)) return false;
    const last = key.slice(key.lastIndexOf('.') + 1);
    if (key !== last && FREE_WORDS.includes(last)) return coveredBy(shows, key);
    return coveredBy(listed, key);
  };
}

/** All that isn't private: what may be concluded from, where a conclusion may be told. */
export function notPrivate(share: Share, ownPrivate: readonly string[]): Allows {
  const meant = itemsOf(share.showsPrivate).map((key) => key.value);
  return (key) =>
    coveredBy(meant, key) ||
    !(ownPrivate.some((one) => covers(one, key) || covers(key, one)) || coveredBy(PRIVATE_BY_DEFAULT, key));
}

const listedFor = (audience: Audience): readonly string[] => TABLE.flatMap((row) => row.seenBy[audience] ?? []);
