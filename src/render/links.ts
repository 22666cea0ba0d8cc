import type { EntryKind } from '#model/words.ts';
import { site } from './site.ts';

/** A link inside the site: `path` from its root, without a leading slash; folders end in `/`. */
export const href = (path: string): string => site().base + path;

/** The page of an entry; a share has no page of its own. */
export const entryHref = (kind: Exclude<EntryKind, 'shares'>, id: string): string => href(`${kind}/${id}/`);

/** The page of a lineage graph's node: a cut stands on its reel's page. */
export function nodeHref(node: string): string | undefined {
  const [kind, rest] = split(node);
  if (kind === 'reel') return entryHref('reels', rest);
  if (kind === 'edition') return entryHref('editions', rest);
  if (kind === 'cut') return `${entryHref('reels', rest.split('#')[0] ?? '')}#cuts`;
  return undefined;
}

const split = (node: string): readonly [string, string] => {
  const colon = node.indexOf(':');
  return [node.slice(0, colon), node.slice(colon + 1)];
};
