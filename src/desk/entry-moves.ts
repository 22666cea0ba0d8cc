import { rename } from 'node:fs/promises';
import { join } from 'node:path';
import type { EntryKind } from '#model/words.ts';
import { splitEntry } from '#read/front-matter.ts';
import { type EntryFiles, type FoundEntry, hashOf } from './entry-files.ts';
import type { DeskKind } from './fields/kinds.ts';
import type { FreshFiles } from './fresh-files.ts';
import type { KeptAway, KeptBefore, KeptVersion } from './kept-before.ts';
import { lineDiff } from './line-diff.ts';
import { isThere, refuseOutside } from './own-folder.ts';
import { DeskRefusal } from './refusal.ts';
import { type Renaming, referringTo, renamedLines, renaming } from './renaming.ts';
import type { Turns } from './turns.ts';

/** What renaming would do, for the owner to look at. */
export interface RenamingShown extends Pick<Renaming, 'path' | 'cannot' | 'inWords' | 'hash'> {
  readonly files: readonly { readonly file: string; readonly lines: readonly string[] }[];
}

/** What deleting would do. */
export interface DeletingShown {
  readonly referring: readonly string[];
  /** What is moved away, relative to the collection. */
  readonly files: readonly string[];
  readonly hash: string;
}

export interface AwayShown extends KeptAway {
  readonly title: string;
}

interface Around {
  readonly files: EntryFiles;
  readonly fresh: FreshFiles;
  readonly kept: KeptBefore;
  readonly turns: Turns;
}

/** Entries that get another id, go, come back, or become again what they were. Each is shown first, and done only to what
 * was shown. */
export class EntryMoves {
  readonly #around: Around;

  constructor(around: Around) {
    this.#around = around;
  }

  async showRenaming(kind: EntryKind, id: string, to: string): Promise<RenamingShown> {
    const { rewritten: _, ...plan } = await this.#renaming(kind, id, to);
    return plan;
  }

  /** @throws {DeskRefusal} when anything that it touches isn't as it was shown. */
  rename(kind: EntryKind, id: string, to: string, hash: string): Promise<void> {
    const { files, kept, turns } = this.#around;
    return turns.take(async () => {
      const plan = await this.#renaming(kind, id, to);
      if (plan.hash !== hash)
        throw new DeskRefusal(409, 'Something changed since you looked. Nothing is renamed: look again.');
      const [unchangeable] = plan.cannot;
      if (unchangeable !== undefined)
        throw new DeskRefusal(422, `Nothing is renamed. ${unchangeable.file}: ${unchangeable.why}`);
      for (const name of await this.#namesOf(kind, id)) await refuseOutside(files.root, join(files.root, kind, name));
      for (const { entry, text } of plan.rewritten) await files.replace(entry, text);
      // The folder first: a single file that names what lies in it moves last.
      for (const name of await this.#namesOf(kind, id))
        await rename(join(files.root, kind, name), join(files.root, kind, name === id ? to : `${to}.md`));
      await kept.moved(kind, id, to);
    });
  }

  async showDeleting(kind: EntryKind, id: string): Promise<DeletingShown> {
    const { files, fresh } = this.#around;
    const now = fresh.now();
    const found = files.find(now, kind, id);
    const names = await this.#namesOf(kind, id);
    const referring = referringTo(now, found);
    const moved = names.map((name) => `${kind}/${name}`);
    return { referring, files: moved, hash: hashOf(JSON.stringify([found.hash, referring, moved])) };
  }

  /** Moves an entry and its files to what is kept. */
  delete(kind: EntryKind, id: string, hash: string): Promise<void> {
    const { files, kept, turns } = this.#around;
    return turns.take(async () => {
      if ((await this.showDeleting(kind, id)).hash !== hash)
        throw new DeskRefusal(409, 'Something changed since you looked. Nothing is deleted: look again.');
      const names = await this.#namesOf(kind, id);
      for (const name of names) await refuseOutside(files.root, join(files.root, kind, name));
      await kept.putAway(kind, id, names);
    });
  }

  versions(kind: DeskKind, id: string): Promise<readonly KeptVersion[]> {
    this.#find(kind, id);
    return this.#around.kept.versions(kind, id);
  }

  /** The lines that change when an entry becomes again what it was. */
  async showVersion(kind: DeskKind, id: string, version: string): Promise<readonly string[]> {
    const text = await this.#around.kept.textOf(kind, id, version);
    return lineDiff(this.#find(kind, id).text, text);
  }

  /** Makes an entry again what it was; what it is now is kept like any other version.
   *
   * @param hash  Of what it is now, as the page knows it. */
  restore(kind: DeskKind, id: string, version: string, hash: string): Promise<void> {
    const { files, kept, turns } = this.#around;
    return turns.take(async () => {
      const text = await kept.textOf(kind, id, version);
      const found = this.#find(kind, id);
      if (found.hash !== hash)
        throw new DeskRefusal(409, 'The entry changed since you opened it. Nothing is restored: open it again.');
      if (text !== found.text) await files.replace(found, text);
    });
  }

  /** Entries that were deleted, or whose files went some other way, with what they were called. */
  async away(): Promise<readonly AwayShown[]> {
    const { kept, fresh } = this.#around;
    const there = new Set(fresh.now().entries.map(({ address }) => `${address?.folder}/${address?.id}`));
    const away = await kept.away((kind, id) => there.has(`${kind}/${id}`));
    return await Promise.all(
      away.map(async (one) => {
        const text = await kept.textOf(one.kind, one.id, one.last.version).catch(() => '');
        const title = splitEntry({ path: `${one.kind}/${one.id}.md`, text }).entry?.root.fields['title'];
        return { ...one, title: title?.is === 'scalar' ? title.text : one.id };
      }),
    );
  }

  bringBack(kind: EntryKind, id: string): Promise<void> {
    const { files, kept, turns } = this.#around;
    return turns.take(async () => {
      await this.#refuseInTheWay(kind, id);
      await files.refuseTaken(kind, id);
      const [last] = await kept.versions(kind, id);
      if (last === undefined) throw new DeskRefusal(404, 'Nothing is kept of that entry.');
      await kept.bringBack(kind, id, last.version);
    });
  }

  #find = (kind: DeskKind, id: string): FoundEntry => this.#around.files.find(this.#around.fresh.now(), kind, id);

  async #renaming(kind: EntryKind, id: string, to: string): Promise<Renaming & RenamingShown> {
    const { files, fresh } = this.#around;
    const now = fresh.now();
    const found = files.find(now, kind, id);
    await files.refuseTaken(kind, to);
    await this.#refuseInTheWay(kind, to);
    const plan = renaming(now, files, found, to);
    return { ...plan, files: renamedLines(plan) };
  }

  /** A folder of that name may hold files that are nobody's. */
  async #refuseInTheWay(kind: EntryKind, id: string): Promise<void> {
    if (await isThere(join(this.#around.files.root, kind, id)))
      throw new DeskRefusal(409, `There is a folder ${kind}/${id} already. Choose another id, or move that folder.`);
  }

  /** What of an entry lies in its kind's folder: its file, its folder, or both. */
  async #namesOf(kind: EntryKind, id: string): Promise<readonly string[]> {
    const { root } = this.#around.files;
    const names: string[] = [];
    for (const name of [id, `${id}.md`]) if (await isThere(join(root, kind, name))) names.push(name);
    return names;
  }
}
