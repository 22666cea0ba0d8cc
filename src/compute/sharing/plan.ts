import type { Catalogue } from '#model/catalogue.ts';
import type { SharePlan } from '#model/dossier.ts';
import { itemsOf, valueOf } from '#model/fact.ts';
import { PRIVATE_BY_DEFAULT } from '#model/privacy.ts';
import type { Share } from '#model/share.ts';
import type { Reduced } from './reduce.ts';
import { covers } from './scope.ts';
import { FREE_WORDS, NAMEABLE, TABLE } from './table.ts';

/** Words for what is private by default. */
const PRIVATE_WORDS: Readonly<Record<string, string>> = {
  custody: 'who held it, and what was paid',
  place: 'where it is kept',
  address: 'addresses',
  body: 'your own account of it',
  also: 'your own keys under also:',
  accepted: 'what you accepted, and why',
};
/** What no share shows, whatever it names. */
const NEVER = [
  'your notes, and what your entries say of people',
  'names of files, and what a camera wrote into a photograph',
  'every other reel',
] as const;

/** What goes along with a share and what stays out, for its owner to read before it is sealed. */
export function planOf(share: Share, reduced: Reduced, whole: Pick<Catalogue, 'today' | 'entries'>): SharePlan {
  const scopes = [...reduced.scopes.values()];
  const some = (key: string) => scopes.some((allows) => allows(key));
  const every = (key: string) => scopes.length > 0 && scopes.every((allows) => allows(key));
  const shows = itemsOf(share.shows).map((key) => key.value);
  const meant = itemsOf(share.showsPrivate).map((key) => key.value);
  const rows = TABLE.map((row) => {
    const seen = row.keys.filter(some);
    const out = row.keys.filter((key) => !every(key));
    return { words: row.words, seen, out, whole: out.length === 0 };
  });
  const named = shows.filter(
    (key) => some(key) && !rows.some((row) => row.seen.some((seen) => covers(seen, key) && !isFree(key))),
  );
  const until = valueOf(share.until);
  const known = new Set(whole.entries.reels.map((reel) => reel.id));
  return {
    share: share.id,
    audience: share.audience.value,
    opensBy: valueOf(share.openedBy) ?? 'passphrase',
    reels: reduced.shown.map((reel) => ({ id: reel.id, title: reel.title.value })),
    shown: [
      'which reel it is: title, kind, side, set, numbers, edition, rights',
      ...rows.flatMap((row) =>
        row.seen.length === 0 ? [] : [row.whole ? row.words : `of ${row.words}: ${row.seen.join(', ')}`],
      ),
      ...(named.length === 0 ? [] : [`named by this share: ${named.join(', ')}`]),
    ],
    leftOut: [
      ...rows.flatMap((row) =>
        row.whole ? [] : [row.seen.length === 0 ? row.words : `of ${row.words}: ${row.out.join(', ')}`],
      ),
      ...PRIVATE_BY_DEFAULT.flatMap((key) => {
        const words = PRIVATE_WORDS[key];
        return words === undefined || some(key) ? [] : [words];
      }),
      ...NEVER,
    ],
    privateShown: meant.filter((key) => NAMEABLE.has(key)),
    unknown: [...shows, ...meant].filter((key) => !NAMEABLE.has(key)),
    refused: shows.filter((key) => NAMEABLE.has(key) && !every(key)),
    missingReels: itemsOf(share.reels)
      .map((id) => id.value)
      .filter((id) => !known.has(id)),
    photographs: reduced.photographs.size,
    photographsHeldBack: reduced.heldBack,
    outside: reduced.names.named('outside').length,
    until: share.until?.is === 'known' ? share.until.written : undefined,
    ended: until !== undefined && until.latest !== null && until.latest < whole.today,
  };
}

const isFree = (key: string) => FREE_WORDS.some((word) => key.endsWith(`.${word}`));

/** What a reader is told was left out, in general words. */
export function leftOutWords(reduced: Reduced): readonly string[] {
  const some = (key: string) => [...reduced.scopes.values()].some((allows) => allows(key));
  return [
    ...TABLE.flatMap((row) => (row.keys.some(some) ? [] : [row.words])),
    ...(some('custody.price') ? [] : ['prices paid']),
    ...(some('custody.holder') ? [] : ['who held it, by name']),
    ...(some('place.at') ? [] : ['where it is kept']),
    'the owner’s own notes',
    'every other reel',
  ];
}
