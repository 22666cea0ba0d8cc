import { execFile } from 'node:child_process';
import { createHash, randomBytes } from 'node:crypto';
import { lstat, mkdir, readdir, readlink, rename, rm, rmdir, symlink, writeFile } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';
import { promisify } from 'node:util';
import { isCode } from './atomic.ts';
import { withLock } from './build-lock.ts';

/** That something stands where the folder should go which this program didn't make. */
export class NotOurs extends Error {}

/** In a real folder that this program made, where links can't be replaced: it may be replaced. */
const MARK = '.made-whole';
const OLD_MS = 60_000;

export interface ReplaceOptions {
  /** Called when another build is waited for, with a sentence. */
  readonly waiting?: (sentence: string) => void;
  /** False where a link can't be replaced in one step (Windows): two renames then, and a moment without the folder. */
  readonly byLink?: boolean;
}

/** Makes a folder whole or not at all. It is written beside the old one under a name of its own; when all of it is
 * there and on the disk, `out`, a link, is replaced by a link to it. Whoever reads `out` sees the old one or the new.
 *
 * @param make  writes everything into the empty folder that it is given; when it throws, `out` stays as it was.
 * @throws {NotOurs} before anything is made, when `out` is a file, a foreign link or a folder with files in it. */
export async function replaceWhole<T>(
  out: string,
  make: (into: string) => Promise<T>,
  { waiting = () => undefined, byLink = process.platform !== 'win32' }: ReplaceOptions = {},
): Promise<T> {
  const names = namesFor(out);
  await refuseForeign(out, names);
  await mkdir(dirname(out), { recursive: true });
  return await withLock(names.lock, waiting, async () => {
    // Again: another build may have been at work meanwhile. What a killed build left behind goes first, for its space.
    await refuseForeign(out, names);
    if (byLink) await removeOthers(out, names, await linkedName(out));
    const making = join(dirname(out), `${names.start}${randomBytes(6).toString('hex')}`);
    try {
      await mkdir(making);
      const made = await make(making);
      await flush(making);
      await (byLink ? replaceLink(out, making) : replaceFolder(out, making));
      await removeOthers(out, names, byLink ? basename(making) : undefined);
      return made;
    } catch (error) {
      if ((await linkedName(out)) !== basename(making)) await rm(making, { recursive: true, force: true });
      throw error;
    }
  });
}

/** What stands beside a folder while it is being made: a lock, and what is made under names that begin so. */
export interface Names {
  readonly lock: string;
  readonly start: string;
}

/** A name may be 255 bytes long: a long one is stood for by its checksum. */
export function namesFor(out: string): Names {
  const name = basename(resolve(out));
  const short = Buffer.byteLength(name) <= 180 ? name : createHash('sha256').update(name).digest('hex');
  return { lock: join(dirname(out), `.tailout-${short}.lock`), start: `.tailout-${short}-` };
}

const isOurName = (name: string, { start }: Names) =>
  name.startsWith(start) && /^[0-9a-f]{12}$/.test(name.slice(start.length));

/** The name of the folder that `out` is a link to. */
const linkedName = async (out: string) => basename(await readlink(out).catch(() => '')) || undefined;

async function refuseForeign(out: string, names: Names): Promise<void> {
  const found = await lstat(out).catch((error: unknown) => {
    if (isCode(error, 'ENOENT')) return undefined;
    throw error;
  });
  if (found === undefined) return;
  if (found.isSymbolicLink()) {
    if (isOurName((await readlink(out)).replace(/[\\/]$/, ''), names)) return;
  } else if (found.isDirectory()) {
    const inside = await readdir(out);
    if (inside.length === 0 || inside.includes(MARK)) return;
  }
  throw new NotOurs(
    `${out} is there already and wasn't made by this program, so it isn't replaced. Move it away, or choose another folder with --out.`,
  );
}

async function replaceLink(out: string, making: string): Promise<void> {
  const link = `${making}.tmp`;
  // From beside the link, so that both can be moved or copied to another place together.
  await symlink(basename(making), link, 'dir');
  try {
    // A link can't replace a folder: an empty one, all that refuseForeign lets by, goes first.
    await rmdir(out).catch(() => undefined);
    await rename(link, out);
  } finally {
    await rm(link, { force: true });
  }
  await flush(dirname(out));
}

async function replaceFolder(out: string, making: string): Promise<void> {
  await writeFile(join(making, MARK), '');
  const aside = `${making}.old`;
  const was = await rename(out, aside).then(
    () => true,
    () => false,
  );
  try {
    await rename(making, out);
  } catch (error) {
    if (was) await rename(aside, out);
    throw error;
  }
  await rm(aside, { recursive: true, force: true });
}

/** Removes what killed programs left beside `out`, and what stood there before; the lock must be held.
 *
 * @param current  the name of what stands there now, which stays. */
export async function removeOthers(out: string, names: Names, current: string | undefined): Promise<void> {
  for (const name of await readdir(dirname(out))) {
    const path = join(dirname(out), name);
    const ours = isOurName(name.replace(/\.(?:tmp|old)$/, ''), names) && name !== current;
    if (ours || (await isOldLockPart(path, names))) await rm(path, { recursive: true, force: true });
  }
}

/** A program killed while it took the lock leaves a part of it; one at work needs its own for some milliseconds. */
async function isOldLockPart(path: string, names: Names): Promise<boolean> {
  const isPart = basename(path).startsWith('..tailout-') || (path.startsWith(names.lock) && path.endsWith('.tmp'));
  if (!isPart) return false;
  const found = await lstat(path).catch(() => undefined);
  return found?.isFile() === true && Date.now() - found.mtimeMs > OLD_MS;
}

/** Brings the files to the disk before the link points at them: after a power cut a name may otherwise be there without
 * its content. Where the system has no `sync` for one file system, the kill of a program is still safe. */
const flush = async (folder: string) => {
  if (process.platform !== 'win32') await promisify(execFile)('sync', ['-f', folder]).catch(() => undefined);
};
