import type { Diagnostic } from '#model/diagnostic.ts';
import { idLike, isId } from '#model/entry-id.ts';
import { ENTRY_KINDS, type EntryKind } from '#model/words.ts';
import { entryProblem, startOf } from './entry-problem.ts';

/** What a path says of the entry in it. `collection.md` has no id. */
export interface Address {
  readonly folder: EntryKind | 'collection';
  readonly id: string;
}

export const isEntryKind = (name: string): name is EntryKind => (ENTRY_KINDS as readonly string[]).includes(name);

/** The kind and id of the entry at a path: `reels/x.md`, `reels/x/index.md` or `collection.md`. */
export function addressOf(path: string): Address | Diagnostic {
  if (path === 'collection.md') return { folder: 'collection', id: '' };
  const [folder = '', name = '', index, ...deeper] = path.split('/');
  const placed = index === undefined ? name.endsWith('.md') : index === 'index.md' && deeper.length === 0;
  if (!isEntryKind(folder) || !placed) {
    return entryProblem('entry/out-of-place', startOf(path), {
      message: 'No entry is read from here.',
      found: path,
      expected: `a file in one of ${ENTRY_KINDS.join(', ')}, such as reels/almanac-side-1.md or reels/almanac-side-1/index.md`,
      action: 'Move the file into the folder for its kind, or out of the collection if it is no entry.',
    });
  }
  const id = index === undefined ? name.slice(0, -'.md'.length) : name;
  return isId(id) ? { folder, id } : badId(path, id);
}

function badId(path: string, id: string): Diagnostic {
  const near = idLike(id);
  const reserved = id === 'none' || id === 'owner';
  return entryProblem('entry/bad-value', startOf(path), {
    message: reserved
      ? `"${id}" means something else in an entry, so none can be called it.`
      : "The file's name can't be an id.",
    found: id,
    expected: 'lower-case letters, digits and hyphens, at most 200, such as almanac-side-1',
    action: near === '' ? 'Rename it.' : `Rename it, to ${near} for example.`,
  });
}
