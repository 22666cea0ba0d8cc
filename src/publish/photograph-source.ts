import { existsSync } from 'node:fs';
import { mkdir, readFile, stat } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { writeWhole } from './atomic.ts';
import type { PictureFault } from './images.ts';
import { seal, sha256, unseal } from './picture-cache.ts';

/** The largest photograph that is opened. */
const MOST_BYTES = 200 * 1024 * 1024;
/** A file changed this shortly before it was read may change again within the same tick of its clock. */
const SETTLED_MS = 2000;

export interface SourceFile {
  readonly sha256: string;
  /** Read when asked for: a photograph that was seen before needn't be. */
  readonly bytes: () => Promise<Uint8Array>;
}

/** What each photograph held when it was last read, so that a warm build needn't read it again. Size, both times and the
 * file's own number must be the same; the change time can't be set back by a program. */
export class SeenFiles {
  readonly #list: string;
  readonly #seen: Map<string, Seen>;
  readonly #asked = new Set<string>();

  private constructor(list: string, seen: Map<string, Seen>) {
    this.#list = list;
    this.#seen = seen;
  }

  static async open(cache: string): Promise<SeenFiles> {
    const list = join(cache, 'seen.json');
    const text = await readFile(list, 'utf8').catch(() => '');
    return new SeenFiles(list, new Map(unseal<[string, Seen][]>(text)));
  }

  async source(file: string): Promise<SourceFile | PictureFault> {
    this.#asked.add(file);
    try {
      const before = await stat(file, { bigint: true });
      if (!before.isFile()) return unreadable('it isn’t a plain file');
      if (before.size > MOST_BYTES) return tooLarge(Number(before.size));
      const signature = [before.size, before.mtimeNs, before.ctimeNs, before.ino].join(' ');
      const seen = this.#seen.get(file);
      if (seen?.signature === signature) return { sha256: seen.sha256, bytes: () => readSame(file, seen.sha256) };
      const bytes = await readFile(file);
      const hash = sha256(bytes);
      const after = await stat(file, { bigint: true });
      const settled = Date.now() - Number(after.ctimeNs / 1_000_000n) > SETTLED_MS;
      if (settled && after.ctimeNs === before.ctimeNs) this.#seen.set(file, { signature, sha256: hash });
      else this.#seen.delete(file);
      return { sha256: hash, bytes: async () => bytes };
    } catch (error) {
      return unreadable(error instanceof Error ? error.message : String(error));
    }
  }

  /** Keeps the list for the next time; what isn't where it was is no longer on it. */
  async save(): Promise<void> {
    await mkdir(dirname(this.#list), { recursive: true });
    for (const file of this.#seen.keys()) if (!this.#asked.has(file) && !existsSync(file)) this.#seen.delete(file);
    await writeWhole(this.#list, seal([...this.#seen]));
  }
}

async function readSame(file: string, hash: string): Promise<Uint8Array> {
  const bytes = await readFile(file);
  if (sha256(bytes) !== hash) throw new Error('it changed while it was being read');
  return bytes;
}

interface Seen {
  readonly signature: string;
  readonly sha256: string;
}

const unreadable = (why: string): PictureFault => ({
  problem: `It can’t be read (${why}).`,
  action: 'See that the file is there and that you may read it, or name another.',
});

const tooLarge = (bytes: number): PictureFault => ({
  problem: `It is ${Math.round(bytes / 1024 / 1024)} MB, over the limit of ${MOST_BYTES / 1024 / 1024} MB.`,
  action: 'Save a smaller copy of it, a JPEG of good quality, and name that file here.',
});
