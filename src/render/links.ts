import type { EntryKind } from '#model/words.ts';
import { site } from './site.ts';

/** A link inside the site: `path` from its root, without a leading slash; folders end in `/`. */
export const href = (path: string): string => site().base + path;

/** The page of an entry; a share has no page of its own. */
export const entryHref = (kind: Exclude<EntryKind, 'shares'>, id: string): string => href(`${kind}/${id}/`);
