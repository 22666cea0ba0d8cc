import { type Dirent, readdirSync, realpathSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type { Diagnostic } from '#model/diagnostic.ts';
import { byText } from '#model/diagnostic.ts';
import { isEntryKind } from './address.ts';
import { linkProblem, notPlain, strayFolder, unlistable } from './collection-problems.ts';
import { type EntryMemory, statOf } from './entry-memory.ts';
import { type SplitEntry, splitEntry } from './front-matter.ts';
import { withPlainEnvironment } from './plain-environment.ts';
import { readSource } from './read-source.ts';
import type { SourceFile } from './source-file.ts';

/** A collection as it lies on disk: the text of its entries, read once, and the paths of what lies beside them. */
export interface CollectionFiles {
  /** One a file, sorted by path. */
  readonly entries: readonly SplitEntry[];
  /** Photographs, relative to the collection, sorted; not opened. */
  readonly images: readonly string[];
  /** Climate logs (.csv), likewise. */
  readonly logs: readonly string[];
  readonly problems: readonly Diagnostic[];
}

/** The folder asked for isn't there. The command line is wrong, not an entry. */
export class NoCollection extends Error {}

const IMAGE = /\.(?:jpe?g|png|webp|tiff?|avif|heic|heif|gif)$/iu;
/** Folders within an entry's own folder are looked into; a chain of them longer than this is no collection's. */
const DEEPEST = 6;

/** Reads every entry under a folder. Links that lead out, special files, files over the limit and files that vanish
 * while it reads become problems; none of them hides another file.
 *
 * @param memory  what was read the last time: only what changed since is parsed.
 * @throws {NoCollection} when there is no such folder. */
export function readCollection(dir: string, memory?: EntryMemory): CollectionFiles {
  const reader = new Reader(realFolder(dir), memory);
  withPlainEnvironment(() => reader.folder('', 0));
  const { entries, images, logs, problems } = reader;
  memory?.keepOnly(new Set(entries.map(({ path }) => path)));
  return collectionOf(entries, images, logs, problems);
}

/** A collection from texts that are at hand already, in any order. */
export function splitFiles(files: readonly SourceFile[], images: readonly string[] = []): CollectionFiles {
  return collectionOf(files.map(splitEntry), images, [], []);
}

function collectionOf(
  found: readonly SplitEntry[],
  images: readonly string[],
  logs: readonly string[],
  problems: readonly Diagnostic[],
): CollectionFiles {
  const entries = [...found].sort((a, b) => byText(a.path, b.path));
  return {
    entries,
    images: [...images].sort(byText),
    logs: [...logs].sort(byText),
    problems: [...problems, ...entries.flatMap((entry) => entry.problems)],
  };
}

function realFolder(dir: string): string {
  try {
    if (statSync(dir).isDirectory()) return realpathSync(dir);
  } catch {
    // Answered below: whatever kept it from being looked at, there is no folder to read.
  }
  throw new NoCollection(`There is no folder ${dir} to read a collection from.`);
}

class Reader {
  readonly entries: SplitEntry[] = [];
  readonly images: string[] = [];
  readonly logs: string[] = [];
  readonly problems: Diagnostic[] = [];
  readonly root: string;
  readonly memory: EntryMemory | undefined;

  constructor(root: string, memory: EntryMemory | undefined) {
    this.root = root;
    this.memory = memory;
  }

  folder(path: string, depth: number): void {
    let names: Dirent[];
    try {
      names = readdirSync(join(this.root, path), { withFileTypes: true });
    } catch (error) {
      this.problems.push(unlistable(path, error));
      return;
    }
    for (const name of names.sort((a, b) => byText(a.name, b.name))) {
      // Editors, version control and operating systems keep hidden files of their own.
      if (!name.name.startsWith('.')) this.one(path === '' ? name.name : `${path}/${name.name}`, name, depth);
    }
  }

  one(path: string, entry: Dirent, depth: number): void {
    if (entry.isSymbolicLink()) this.link(path, depth);
    else if (entry.isDirectory()) this.inner(path, depth);
    else if (entry.isFile()) this.file(path, depth);
    else this.problems.push(notPlain(path));
  }

  inner(path: string, depth: number): void {
    if (depth === 0 && !isEntryKind(path)) this.problems.push(...strayFolder(this.root, path));
    else if (depth < DEEPEST) this.folder(path, depth + 1);
  }

  link(path: string, depth: number): void {
    const problem = linkProblem(this.root, path);
    if (problem === undefined) this.file(path, depth);
    else this.problems.push(problem);
  }

  /** A file at the top that is no entry (a README, say) is the owner's own affair; inside a kind's folder an .md is an entry. */
  file(path: string, depth: number): void {
    if (IMAGE.test(path)) {
      if (depth > 0) this.images.push(path);
    } else if (/\.csv$/iu.test(path)) {
      if (depth > 0) this.logs.push(path);
    } else if (path === 'collection.md' || (depth > 0 && /\.(?:md|markdown)$/iu.test(path))) {
      this.entry(path);
    }
  }

  entry(path: string): void {
    const known = this.memory?.unchanged(this.root, path);
    if (known !== undefined) {
      this.entries.push(known);
      return;
    }
    const before = this.memory && statOf(this.root, path);
    const source = readSource(this.root, path);
    if ('code' in source) this.problems.push(source);
    else this.entries.push(this.memory?.entryOf(source, this.root, before) ?? splitEntry(source));
  }
}
