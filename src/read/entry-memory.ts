import { type BigIntStats, statSync } from 'node:fs';
import { join, sep } from 'node:path';
import { type SplitEntry, splitEntry } from './front-matter.ts';
import type { SourceFile } from './source-file.ts';

/** A file system may keep times to two seconds only (FAT): a file that changed so shortly before it was read may have
 * changed once more since, with the same time. */
const COARSE_NS = 2_000_000_000n;

interface Remembered {
  readonly about: BigIntStats | undefined;
  /** Whether the same size and times prove the same text. */
  readonly settled: boolean;
  readonly text: string;
  readonly entry: SplitEntry;
}

/** Entries as they were cut the last time, so that of a collection that is read again and again only what changed is
 * parsed. What is given back is the same object for the same text, and so may be compared by identity. */
export class EntryMemory {
  readonly #known = new Map<string, Remembered>();

  /** The entry of a file that is as it was; undefined when it has to be read. */
  unchanged(root: string, path: string): SplitEntry | undefined {
    const known = this.#known.get(path);
    if (known?.settled !== true) return undefined;
    try {
      return isSame(statSync(`${root}${sep}${path}`, { bigint: true }), known.about) ? known.entry : undefined;
    } catch {
      return undefined;
    }
  }

  /** The entry of a text; parsed only where it isn't the text of the last time. */
  entryOf(file: SourceFile, root: string, before: BigIntStats | undefined): SplitEntry {
    const known = this.#known.get(file.path);
    const entry = known?.text === file.text ? known.entry : splitEntry(file);
    const after = statOf(root, file.path);
    const same = after !== undefined && isSame(after, before);
    this.#known.set(file.path, {
      about: after,
      settled: same && isSettled(after),
      text: file.text,
      entry,
    });
    return entry;
  }

  /** Forgets files that are no longer there. */
  keepOnly(paths: ReadonlySet<string>): void {
    for (const path of this.#known.keys()) if (!paths.has(path)) this.#known.delete(path);
  }
}

export function statOf(root: string, path: string): BigIntStats | undefined {
  return statSync(join(root, path), { bigint: true, throwIfNoEntry: false });
}

const isSame = (a: BigIntStats, b: BigIntStats | undefined) =>
  b !== undefined &&
  a.mtimeNs === b.mtimeNs &&
  a.ctimeNs === b.ctimeNs &&
  a.size === b.size &&
  a.ino === b.ino &&
  a.dev === b.dev;

function isSettled({ mtimeNs, ctimeNs }: BigIntStats): boolean {
  const now = BigInt(Date.now()) * 1_000_000n;
  return now - (mtimeNs > ctimeNs ? mtimeNs : ctimeNs) > COARSE_NS;
}
