import { createHash } from 'node:crypto';
import { mkdir, realpath, rename, stat } from 'node:fs/promises';
import { dirname, join, sep } from 'node:path';
import { idLike, isId } from '#model/entry-id.ts';
import type { EntryKind } from '#model/words.ts';
import { writeNew, writeWhole } from '#publish/atomic.ts';
import { pictureKind } from '#publish/picture-kind.ts';
import type { CollectionFiles } from '#read/collection.ts';
import { editEntry } from '#read/entry-edit.ts';
import { readSource } from '#read/read-source.ts';
import { keyOrder } from './fields/kinds.ts';

/** That something asked for can't be done as the files are; the sentence is for the owner. */
export class DeskRefusal extends Error {
  readonly status: number;
  constructor(status: number, sentence: string) {
    super(sentence);
    this.status = status;
  }
}

/** A hidden folder in the collection, which nothing reads: each entry as it was before the last change. */
const BEFORE = '.before';

/** An entry's file and what is in it. */
export interface FoundEntry {
  /** Relative to the collection, with `/`. */
  readonly path: string;
  readonly text: string;
  /** Of the text: another one means that somebody else has changed it. */
  readonly hash: string;
}

const hashOf = (text: string): string => createHash('sha256').update(text).digest('hex').slice(0, 24);

/** The files of a collection's entries, found by kind and id only: no path ever comes from the page. */
export class EntryFiles {
  readonly root: string;

  constructor(root: string) {
    this.root = root;
  }

  /** @throws {DeskRefusal} when there is no such entry, or its file can't be read. */
  find(files: CollectionFiles, kind: EntryKind, id: string): FoundEntry {
    const found = files.entries.find(({ address }) => address?.folder === kind && address.id === id);
    if (found === undefined) throw new DeskRefusal(404, `There is no entry ${kind}/${id} any more.`);
    const source = readSource(this.root, found.path);
    if ('code' in source) throw new DeskRefusal(409, `${source.message} ${source.action}`);
    return { path: found.path, text: source.text, hash: hashOf(source.text) };
  }

  /** Keeps the entry as it was, and puts the new text in its place. */
  async replace(found: FoundEntry, text: string): Promise<void> {
    const kept = join(this.root, BEFORE, ...found.path.split('/'));
    await this.#folder(dirname(kept));
    await writeWhole(kept, found.text);
    await this.#inside(join(this.root, ...found.path.split('/')));
    await writeWhole(join(this.root, ...found.path.split('/')), text);
  }

  /** A new entry, in a folder of its own so that photographs have a place.
   *
   * @throws {DeskRefusal} when the id can't be one, or is taken. */
  async create(kind: EntryKind, id: string, title: string): Promise<void> {
    if (!isId(id)) throw new DeskRefusal(400, `“${id}” can’t be an id: lower-case letters, digits and hyphens.`);
    const flat = join(this.root, kind, `${id}.md`);
    const there = await stat(flat).then(Boolean, () => false);
    const file = kind === 'reels' || kind === 'places' ? join(this.root, kind, id, 'index.md') : flat;
    const taken = there || (await stat(join(this.root, kind, id, 'index.md')).then(Boolean, () => false));
    if (taken) throw new DeskRefusal(409, `There is an entry ${kind}/${id} already. Choose another id.`);
    await this.#folder(dirname(file));
    const facts = kind === 'reels' ? [{ path: ['status'], to: 'held' }] : [];
    const start = editEntry('---\ntitle: A\n---\n', [{ path: ['title'], to: title }, ...facts], keyOrder(kind));
    if (!(await writeNew(file, start))) throw new DeskRefusal(409, `There is an entry ${kind}/${id} already.`);
  }

  /** A photograph beside its entry, byte for byte, under a safe name made from its own; answers that name. An entry that
   * is a single file moves into a folder first, so that it can have files beside it. */
  async addPhotograph(found: FoundEntry, wishedName: string, bytes: Uint8Array): Promise<string> {
    const kind = pictureKind(bytes);
    if (kind === undefined)
      throw new DeskRefusal(415, 'This file is no photograph that can be opened: JPEG, PNG, WebP, AVIF or TIFF.');
    if (kind === 'HEIC')
      throw new DeskRefusal(415, 'This photograph is HEIC, which can’t be opened here. Save it as JPEG and drop that.');
    const folder = dirname(join(this.root, ...(await this.#ownFolder(found)).split('/')));
    await this.#inside(folder);
    const stem = idLike(wishedName.replace(/\.[^.]*$/u, '')) || 'photograph';
    const ending = kind === 'JPEG' ? 'jpg' : kind.toLowerCase();
    for (let count = 1; count < 1000; count++) {
      const name = count === 1 ? `${stem}.${ending}` : `${stem}-${count}.${ending}`;
      if (await writeNew(join(folder, name), bytes)) return name;
    }
    throw new DeskRefusal(409, 'There are a thousand photographs of this name already.');
  }

  async #ownFolder({ path, text }: FoundEntry): Promise<string> {
    if (path.endsWith('/index.md')) return path;
    // Photographs that it names already lie beside the single file, and would be left behind.
    if (/^photos:/mu.test(text)) return path;
    const moved = path.replace(/\.md$/u, '/index.md');
    await this.#folder(dirname(join(this.root, moved)));
    await rename(join(this.root, path), join(this.root, moved));
    return moved;
  }

  async #folder(folder: string): Promise<void> {
    let there = folder;
    while (!(await stat(there).then(Boolean, () => false))) there = dirname(there);
    if (there !== this.root) await this.#inside(there);
    await mkdir(folder, { recursive: true });
    await this.#inside(folder);
  }

  /** A link that leads out of the collection is never written through. */
  async #inside(path: string): Promise<void> {
    const real = await realpath(path);
    if (!real.startsWith((await realpath(this.root)) + sep))
      throw new DeskRefusal(
        409,
        'This entry’s folder is a link that leads out of the collection; nothing is written through it.',
      );
  }
}
