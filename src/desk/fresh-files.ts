import { readdirSync, statSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { type CollectionFiles, readCollection } from '#read/collection.ts';
import { type SplitEntry, splitEntry } from '#read/front-matter.ts';
import { readSource } from '#read/read-source.ts';

/** A collection's files as they are on disk now. What hasn't changed since the last time isn't read again, so that the
 * checks can answer while someone types. */
export class FreshFiles {
  readonly #root: string;
  #files: CollectionFiles | undefined;
  #stamps: ReadonlyMap<string, string> = new Map();

  constructor(root: string) {
    this.#root = root;
  }

  now(): CollectionFiles {
    const stamps = stampsOf(this.#root);
    const files = this.#files === undefined ? undefined : this.#mended(this.#files, stamps);
    this.#files = files ?? readCollection(this.#root);
    this.#stamps = stamps;
    return this.#files;
  }

  /** The files of before with those entries anew that changed; undefined when more than entries' texts changed. */
  #mended(files: CollectionFiles, stamps: ReadonlyMap<string, string>): CollectionFiles | undefined {
    if (stamps.size !== this.#stamps.size) return undefined;
    const changed = [...stamps.keys()].filter((path) => stamps.get(path) !== this.#stamps.get(path));
    const anew = new Map<string, SplitEntry>();
    for (const path of changed) {
      if (!this.#stamps.has(path) || !files.entries.some((entry) => entry.path === path)) return undefined;
      const source = readSource(this.#root, path);
      if ('code' in source) return undefined;
      anew.set(path, splitEntry(source));
    }
    if (anew.size === 0) return files;
    const problems = files.problems.filter(({ place }) => !anew.has(place.file));
    return {
      ...files,
      entries: files.entries.map((entry) => anew.get(entry.path) ?? entry),
      problems: [...problems, ...[...anew.values()].flatMap((entry) => entry.problems)],
    };
  }
}

/** What tells a file from what it was before, without reading it. */
function stampsOf(root: string): ReadonlyMap<string, string> {
  const stamps = new Map<string, string>();
  for (const found of readdirSync(root, { recursive: true, withFileTypes: true })) {
    if (found.isDirectory()) continue;
    const file = join(found.parentPath, found.name);
    const path = relative(root, file).split(sep).join('/');
    if (path.split('/').some((name) => name.startsWith('.'))) continue;
    const stat = statSync(file, { bigint: true, throwIfNoEntry: false });
    stamps.set(path, stat === undefined ? '' : [stat.size, stat.mtimeNs, stat.ctimeNs, stat.ino].join(' '));
  }
  return stamps;
}
