import { ENTRY_KINDS } from '#model/words.ts';
import type { Listed, Opened } from '../desk.ts';
import { keyOrder } from '../fields/kinds.ts';
import { el } from './element.ts';

/** What references may be chosen from, for every field at once, and the keys of facts. */
export const offeredChoices = (all: readonly Listed[], { kind }: Opened) => [
  ...ENTRY_KINDS.map((one) =>
    el(
      'datalist',
      { id: `ids-${one}` },
      ...all.filter((other) => other.kind === one).map(({ id, title }) => el('option', { value: id }, title)),
    ),
  ),
  // A share names facts of reels, and so does what the collection keeps private.
  el(
    'datalist',
    { id: 'fact-keys' },
    ...keyOrder(kind === 'shares' || kind === 'collection' ? 'reels' : kind).map((key) => el('option', { value: key })),
  ),
];
