import { createHash } from 'node:crypto';
import { dirname, join } from 'node:path';
import { isId } from '#model/entry-id.ts';
import type { EntryKind } from '#model/words.ts';
import { writeNew, writeWhole } from '#publish/atomic.ts';
import type { CollectionFiles } from '#read/collection.ts';
import { editEntry } from '#read/entry-edit.ts';
import { readSource } from '#read/read-source.ts';
import { type DeskKind, keyOrder } from './fields/kinds.ts';
import type { KeptBefore } from './kept-before.ts';
import { isThere, makeInside, refuseOutside } from './own-folder.ts';
import { DeskRefusal } from './refusal.ts';

/** An entry's file and what is in it. */
export interface FoundEntry {
  readonly kind: DeskKind;
  readonly id: string;
  /** Relative to the collection, with `/`. */
  readonly path: string;
  readonly text: string;
  /** Of the text: another one means that somebody else has changed it. */
  readonly hash: string;
  /** False for `collection.md` before anything of it is written: `text` is how it begins. */
  readonly there: boolean;
}

const COLLECTION = 'collection.md';
const COLLECTION_START = '---\nformat: 1\n---\n';

export const hashOf = (text: string): string => createHash('sha256').update(text).digest('hex').slice(0, 24);

/** The files of a collection's entries, found by kind and id only: no path ever comes from the page. */
export class EntryFiles {
  readonly root: string;
  readonly #kept: KeptBefore;

  constructor(root: string, kept: KeptBefore) {
    this.root = root;
    this.#kept = kept;
  }

  /** @throws {DeskRefusal} when there is no such entry, or its file can't be read. */
  find(files: CollectionFiles, kind: DeskKind, id: string): FoundEntry {
    const found = files.entries.find(({ address }) => address?.folder === kind && address.id === id);
    if (found !== undefined) return this.at(kind, id, found.path);
    // A file of that name that can't be read is not begun anew over.
    if (kind !== 'collection' || files.problems.some(({ place }) => place.file === COLLECTION))
      throw new DeskRefusal(404, `There is no entry ${kind}/${id} any more.`);
    return { kind, id, path: COLLECTION, text: COLLECTION_START, hash: hashOf(''), there: false };
  }

  at(kind: DeskKind, id: string, path: string): FoundEntry {
    const source = readSource(this.root, path);
    if ('code' in source) throw new DeskRefusal(409, `${source.message} ${source.action}`);
    return { kind, id, path, text: source.text, hash: hashOf(source.text), there: true };
  }

  /** Keeps the entry as it was, and puts the new text in its place. */
  async replace({ kind, id, path, text: before, there }: FoundEntry, text: string): Promise<void> {
    const file = join(this.root, ...path.split('/'));
    if (!there) {
      if (await writeNew(file, text)) return;
      throw new DeskRefusal(409, `${path} was made meanwhile. Open it again.`);
    }
    await refuseOutside(this.root, file);
    await this.#kept.keep(kind, id, before);
    await writeWhole(file, text);
  }

  /** A new entry; of a kind that mostly has photographs or logs, in a folder of its own.
   *
   * @throws {DeskRefusal} when the id can't be one, or is taken. */
  async create(kind: EntryKind, id: string, title: string): Promise<void> {
    await this.refuseTaken(kind, id);
    const own = kind === 'reels' || kind === 'places';
    const file = own ? join(this.root, kind, id, 'index.md') : join(this.root, kind, `${id}.md`);
    await makeInside(this.root, dirname(file));
    const facts = kind === 'reels' ? [{ path: ['status'], to: 'held' }] : [];
    const start = editEntry('---\ntitle: A\n---\n', [{ path: ['title'], to: title }, ...facts], keyOrder(kind));
    if (!(await writeNew(file, start))) throw new DeskRefusal(409, `There is an entry ${kind}/${id} already.`);
  }

  /** @throws {DeskRefusal} when an id can't be one, or an entry has it. */
  async refuseTaken(kind: EntryKind, id: string): Promise<void> {
    if (!isId(id)) throw new DeskRefusal(400, `“${id}” can’t be an id: lower-case letters, digits and hyphens.`);
    for (const path of [join(kind, `${id}.md`), join(kind, id, 'index.md')])
      if (await isThere(join(this.root, path)))
        throw new DeskRefusal(409, `There is an entry ${kind}/${id} already. Choose another id.`);
  }
}
