import { readdir, readFile, rename, rmdir } from 'node:fs/promises';
import { join } from 'node:path';
import { byText } from '#model/diagnostic.ts';
import { isId } from '#model/entry-id.ts';
import type { EntryKind } from '#model/words.ts';
import { isCode, writeNew } from '#publish/atomic.ts';
import { isEntryKind } from '#read/address.ts';
import type { DeskKind } from './fields/kinds.ts';
import { isThere, makeInside } from './own-folder.ts';
import { DeskRefusal } from './refusal.ts';

/** A hidden folder in the collection, which nothing else reads: `.before/<kind>/<id>/<when>.md`, each an entry as it was
 * before a change; `<when>/` where it was deleted, with the files that lay beside it. */
const BEFORE = '.before';

const VERSION = /^(\d{4}-\d\d-\d\dT)(\d\d)-(\d\d)-(\d\d)-(\d{3})Z(?:-\d{1,4})?$/u;
const MOST_AT_ONCE = 1000;

export interface KeptVersion {
  /** Its name, which says when. */
  readonly version: string;
  /** When it was kept, ISO 8601 in UTC: the change came then. */
  readonly at: string;
  /** That it was deleted then, and its files with it. */
  readonly deleted: boolean;
}

/** An entry that is no more, and what is kept of it. */
export interface KeptAway {
  readonly kind: EntryKind;
  readonly id: string;
  readonly last: KeptVersion;
}

/** What entries were before they were changed. Nothing is ever taken out of it but what is brought back. */
export class KeptBefore {
  readonly #root: string;
  readonly #now: () => number;

  constructor(root: string, now: () => number) {
    this.#root = root;
    this.#now = now;
  }

  async keep(kind: DeskKind, id: string, text: string): Promise<void> {
    const folder = this.#folder(kind, id);
    await makeInside(this.#root, folder);
    for (const version of this.#names()) if (await writeNew(join(folder, `${version}.md`), text)) return;
    throw new DeskRefusal(409, 'The entry as it was can’t be kept, so nothing is changed.');
  }

  /** Moves files out of the collection, all into one new folder.
   *
   * @param names  Of files and folders in the kind's folder. */
  async putAway(kind: EntryKind, id: string, names: readonly string[]): Promise<void> {
    for (const version of this.#names()) {
      const folder = join(this.#folder(kind, id), version);
      if (await isThere(folder)) continue;
      await makeInside(this.#root, folder);
      for (const name of names) await rename(join(this.#root, kind, name), join(folder, name));
      return;
    }
  }

  /** The latest first. */
  async versions(kind: DeskKind, id: string): Promise<readonly KeptVersion[]> {
    const found = await readdir(this.#folder(kind, id), { withFileTypes: true }).catch((error: unknown) => {
      if (isCode(error, 'ENOENT')) return [];
      throw error;
    });
    const versions = found.flatMap((entry): KeptVersion[] => {
      const deleted = entry.isDirectory();
      const version = deleted ? entry.name : entry.name.replace(/\.md$/u, '');
      const at = whenOf(version);
      return at === undefined || !(deleted || entry.isFile()) ? [] : [{ version, at, deleted }];
    });
    return versions.sort((a, b) => byText(b.at, a.at) || byText(b.version, a.version));
  }

  /** @throws {DeskRefusal} when there is no such version. */
  async textOf(kind: DeskKind, id: string, version: string): Promise<string> {
    const found = (await this.versions(kind, id)).find((one) => one.version === version);
    if (found === undefined) throw new DeskRefusal(404, 'That version isn’t kept, or no more.');
    const folder = this.#folder(kind, id);
    const file = found.deleted ? await entryFileIn(join(folder, version)) : join(folder, `${version}.md`);
    return await readFile(file, 'utf8');
  }

  /** What is kept of a renamed entry goes with it. */
  async moved(kind: EntryKind, from: string, to: string): Promise<void> {
    const [old, now] = [this.#folder(kind, from), this.#folder(kind, to)];
    if (!(await isThere(old))) return;
    if (!(await isThere(now))) return await rename(old, now);
    for (const name of await readdir(old))
      if (!(await isThere(join(now, name)))) await rename(join(old, name), join(now, name));
    await rmdir(old).catch(() => undefined);
  }

  /** Entries of which something is kept and that are no more.
   *
   * @param isThereNow  Whether the collection has an entry. */
  async away(isThereNow: (kind: EntryKind, id: string) => boolean): Promise<readonly KeptAway[]> {
    const away: KeptAway[] = [];
    for (const kind of await namesIn(join(this.#root, BEFORE))) {
      if (!isEntryKind(kind)) continue;
      for (const id of await namesIn(join(this.#root, BEFORE, kind))) {
        const [last] = isId(id) && !isThereNow(kind, id) ? await this.versions(kind, id) : [];
        if (last !== undefined) away.push({ kind, id, last });
      }
    }
    return away.sort((a, b) => byText(b.last.at, a.last.at) || byText(a.id, b.id));
  }

  /** Puts a deleted entry and its files back where they were; the caller has made sure that nothing is there. */
  async bringBack(kind: EntryKind, id: string, version: string): Promise<void> {
    const text = await this.textOf(kind, id, version);
    const folder = join(this.#folder(kind, id), version);
    await makeInside(this.#root, join(this.#root, kind));
    if (await isThere(join(folder, id, 'index.md'))) return await this.#back(folder, kind, [id]);
    if (await isThere(join(folder, `${id}.md`))) return await this.#back(folder, kind, [id, `${id}.md`]);
    if (!(await writeNew(join(this.#root, kind, `${id}.md`), text)))
      throw new DeskRefusal(409, `There is an entry ${kind}/${id} already.`);
  }

  async #back(folder: string, kind: EntryKind, names: readonly string[]): Promise<void> {
    for (const name of names)
      if (await isThere(join(folder, name))) await rename(join(folder, name), join(this.#root, kind, name));
    await rmdir(folder).catch(() => undefined);
  }

  #folder = (kind: DeskKind, id: string): string => join(this.#root, BEFORE, kind, id);

  /** Names for now, one of which is free. */
  *#names(): Generator<string> {
    const now = new Date(this.#now()).toISOString().replaceAll(/[:.]/gu, '-');
    yield now;
    for (let count = 2; count < MOST_AT_ONCE; count++) yield `${now}-${count}`;
  }
}

const namesIn = (folder: string): Promise<string[]> => readdir(folder).catch(() => []);

/** The entry among the files that were put away together: `x/index.md`, or `x.md`. */
async function entryFileIn(folder: string): Promise<string> {
  for (const name of await namesIn(folder)) {
    if (name.endsWith('.md')) return join(folder, name);
    if (await isThere(join(folder, name, 'index.md'))) return join(folder, name, 'index.md');
  }
  throw new DeskRefusal(404, 'That version isn’t kept whole.');
}

/** When a version was kept, from its name; undefined for any other name. */
export function whenOf(version: string): string | undefined {
  const [, day, hour, minute, second, thousandth] = VERSION.exec(version) ?? [];
  return day === undefined ? undefined : `${day}${hour}:${minute}:${second}.${thousandth}Z`;
}
