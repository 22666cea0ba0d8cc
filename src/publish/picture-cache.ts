import { createHash, randomBytes } from 'node:crypto';
import { mkdir, readdir, readFile, rename, rm, stat, writeFile } from 'node:fs/promises';
import { dirname, join, relative, sep } from 'node:path';

/** Files that were made once and are kept, with what is to be known of them. */
export interface Kept<T> {
  readonly folder: string;
  readonly facts: T;
  /** Paths in `folder`, with `/`; sorted. */
  readonly files: readonly KeptFile[];
}
interface KeptFile {
  readonly path: string;
  readonly bytes: number;
  readonly sha256: string;
}

/** A kept file that isn't what was put there. */
export class DamagedCache extends Error {}

const LIST = 'kept.json';

/** What is kept in a folder; undefined when it isn't there, its list is damaged, or a file's size isn't the listed one.
 * What is in the files is proved by `copyKept`, which reads them anyway. */
export async function readKept<T>(folder: string): Promise<Kept<T> | undefined> {
  try {
    const list = unseal<Omit<Kept<T>, 'folder'>>(await readFile(join(folder, LIST), 'utf8'));
    if (list === undefined) return undefined;
    for (const file of list.files) if ((await stat(join(folder, file.path))).size !== file.bytes) return undefined;
    return { folder, ...list };
  } catch {
    // Whatever is wrong with it, it is made again.
    return undefined;
  }
}

/** Makes files in a temporary folder and keeps them: the folder appears whole or not at all. Two programs that make the
 * same thing at once do no harm: one of the two is kept. */
export async function keep<T>(folder: string, make: (into: string) => Promise<T>): Promise<Kept<T>> {
  const making = `${folder}.${randomBytes(6).toString('hex')}.tmp`;
  await mkdir(making, { recursive: true });
  try {
    const facts = await make(making);
    const files = await listFiles(making);
    await writeFile(join(making, LIST), seal({ facts, files }));
    await rm(folder, { recursive: true, force: true });
    await rename(making, folder).catch(async (error: unknown) => {
      if ((await readKept<T>(folder)) === undefined) throw error;
    });
    return { folder, facts, files };
  } finally {
    await rm(making, { recursive: true, force: true });
  }
}

/** Copies kept files into a folder, each after its content was proved.
 *
 * @throws {DamagedCache} when a file isn't what was put there; make it again. */
export async function copyKept(kept: Kept<unknown>, into: string): Promise<void> {
  for (const file of kept.files) {
    const bytes = await readFile(join(kept.folder, file.path)).catch(() => undefined);
    if (bytes === undefined || sha256(bytes) !== file.sha256) throw new DamagedCache(join(kept.folder, file.path));
    const target = join(into, file.path);
    await mkdir(dirname(target), { recursive: true });
    await writeFile(target, bytes);
  }
}

/** Text that proves itself: its own checksum stands in front. */
export function seal(value: unknown): string {
  const text = JSON.stringify(value);
  return `${sha256(text)} ${text}`;
}

export function unseal<T>(sealed: string): T | undefined {
  const text = sealed.slice(65);
  return sealed.slice(0, 65) === `${sha256(text)} ` ? (JSON.parse(text) as T) : undefined;
}

export const sha256 = (bytes: Uint8Array | string): string => createHash('sha256').update(bytes).digest('hex');

async function listFiles(folder: string): Promise<KeptFile[]> {
  const found = (await readdir(folder, { recursive: true, withFileTypes: true })).filter((entry) => entry.isFile());
  const paths = found.map((entry) => relative(folder, join(entry.parentPath, entry.name)).split(sep).join('/'));
  const files: KeptFile[] = [];
  for (const path of paths.sort()) {
    const bytes = await readFile(join(folder, path));
    files.push({ path, bytes: bytes.length, sha256: sha256(bytes) });
  }
  return files;
}
