import { posix } from 'node:path';
import type { EntryKind } from '#model/words.ts';
import type { CollectionFiles } from '#read/collection.ts';
import { CannotEdit, type Change, editBody, editEntry } from '#read/entry-edit.ts';
import { splitEntry } from '#read/front-matter.ts';
import { writtenOf } from '#read/written-value.ts';
import { withLinksMoved } from './account-links.ts';
import { type EntryFiles, type FoundEntry, hashOf } from './entry-files.ts';
import { FIELDS, keyOrder } from './fields/kinds.ts';
import { lineDiff } from './line-diff.ts';
import { textsIn } from './mentions.ts';

interface Rewritten {
  readonly entry: FoundEntry;
  readonly text: string;
}

/** What renaming an entry would change. */
export interface Renaming {
  readonly rewritten: readonly Rewritten[];
  /** The entry's own file, before and after; and its folder of files, which may be the same as the file's. */
  readonly path: { readonly from: string; readonly to: string };
  /** Files that can't be changed, with the reason: nothing is renamed while there is one. */
  readonly cannot: readonly { readonly file: string; readonly why: string }[];
  /** Accounts that have the id in plain words: these stay as they are. */
  readonly inWords: readonly string[];
  /** Of everything above: another one means that something changed since it was shown. */
  readonly hash: string;
}

/** Works out a new id for an entry: its file and folder move, and whatever refers to it follows. Nothing is written. */
export function renaming(files: CollectionFiles, own: EntryFiles, entry: FoundEntry, to: string): Renaming {
  const kind = entry.kind as EntryKind;
  const move = mover(kind, entry.id, to);
  const rewritten: Rewritten[] = [];
  const cannot: { file: string; why: string }[] = [];
  const inWords: string[] = [];
  const word = new RegExp(`(?<![\\p{L}\\p{N}-])${entry.id}(?![\\p{L}\\p{N}-])`, 'u');
  for (const { address, path, entry: read } of files.entries) {
    if (read === undefined || address === undefined) {
      const { text } = own.at(kind, '', path);
      if (word.test(text)) cannot.push({ file: path, why: 'It can’t be read as it stands, and it has this id in it.' });
      continue;
    }
    const found = own.at(address.folder, address.id, path);
    try {
      const text = renamedIn(found, kind, entry.id, to, move);
      if (text !== found.text) rewritten.push({ entry: found, text });
      if (word.test(splitEntry({ path, text }).entry?.body ?? '')) inWords.push(path);
    } catch (error) {
      if (!(error instanceof CannotEdit)) throw error;
      cannot.push({ file: path, why: error.message });
    }
  }
  const texts = rewritten.map(({ entry: { path, hash }, text }) => [path, hash, text]);
  return {
    rewritten,
    path: { from: entry.path, to: move(entry.path) },
    cannot,
    inWords,
    hash: hashOf(JSON.stringify([entry.path, entry.hash, to, texts, cannot])),
  };
}

/** The lines that renaming changes in each file. */
export const renamedLines = ({ rewritten }: Renaming) =>
  rewritten.map(({ entry, text }) => ({ file: entry.path, lines: lineDiff(entry.text, text) }));

/** Where a file of the collection is when an entry has another id. */
function mover(kind: EntryKind, from: string, to: string): (path: string) => string {
  const folder = `${kind}/${from}`;
  return (path) => {
    if (path === `${folder}.md`) return `${kind}/${to}.md`;
    return path === folder || path.startsWith(`${folder}/`) ? `${kind}/${to}${path.slice(folder.length)}` : path;
  };
}

function renamedIn(
  found: FoundEntry,
  kind: EntryKind,
  from: string,
  to: string,
  move: (path: string) => string,
): string {
  const { entry } = splitEntry({ path: found.path, text: found.text });
  if (entry === undefined) return found.text;
  const facts = writtenOf(entry.root);
  const fields = FIELDS[found.kind];
  const references = textsIn(fields, facts, ({ refers }, text) => refers === kind && text === from);
  const changes: Change[] = references.map(({ path }) => ({ path, to }));
  const own = found.kind === kind && found.id === from;
  if (own && !found.path.endsWith('/index.md')) {
    // A single file names what lies in the folder beside it with the folder's name.
    const names = textsIn(fields, facts, ({ file }, text) => file === true && text.startsWith(`${from}/`));
    changes.push(...names.map(({ path, text }) => ({ path, to: to + text.slice(from.length) })));
  }
  const text = changes.length === 0 ? found.text : editEntry(found.text, changes, keyOrder(found.kind));
  const body = withLinksMoved(entry.body, found.path, own ? move(found.path) : found.path, move);
  return body === entry.body ? text : editBody(text, body);
}

/** What refers to an entry, a line each: the file and the fact, or the file alone for a link in an account. */
export function referringTo(files: CollectionFiles, { kind, id, path }: FoundEntry): readonly string[] {
  return files.entries.flatMap(({ address, entry, path: file }) => {
    if (entry === undefined || address === undefined || file === path) return [];
    const references = textsIn(FIELDS[address.folder], writtenOf(entry.root), (field, text) => {
      return field.refers === kind && text === id;
    });
    const gone = posix.join(posix.dirname(path), '.gone');
    const folder = `${kind}/${id}`;
    const linked = withLinksMoved(entry.body, file, file, (one) =>
      one === path || one.startsWith(`${folder}/`) ? gone : one,
    );
    return [
      ...references.map(({ path: at }) => `${file}: ${dotted(at)}`),
      ...(linked === entry.body ? [] : [`${file}: a link in its account`]),
    ];
  });
}

const dotted = (path: readonly (string | number)[]) =>
  path.map((step, at) => (typeof step === 'number' ? `[${step}]` : at === 0 ? step : `.${step}`)).join('');
