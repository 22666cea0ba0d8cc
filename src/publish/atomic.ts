import { randomBytes } from 'node:crypto';
import { link, lstat, open, readdir, realpath, rename, rm, stat } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';

/** Writes a file whole or not at all: to a temporary name beside it, flushed to the disk, then renamed over it. A link
 * is written through, and an existing file's permissions stay.
 *
 * @throws the system's error when the folder is missing, full or not writable; the file is then as it was. */
export async function writeWhole(path: string, data: string | Uint8Array): Promise<void> {
  const target = await realpath(path).catch(() => path);
  const mode = await stat(target).then(
    (found) => found.mode & 0o7777,
    () => undefined,
  );
  const temporary = await writeTemporary(target, data, mode);
  try {
    await rename(temporary, target);
  } catch (error) {
    await rm(temporary, { force: true });
    throw error;
  }
}

/** What a disk says that can't give one file two names (FAT and some network disks). */
const NO_SECOND_NAMES = ['EPERM', 'ENOTSUP', 'EOPNOTSUPP', 'ENOSYS'];

/** Writes a file that must not be there yet, whole or not at all. Answers false, and writes nothing, when it is there. */
export async function writeNew(path: string, data: string | Uint8Array): Promise<boolean> {
  const temporary = await writeTemporary(path, data, undefined);
  try {
    // A rename would replace a file that appeared meanwhile; a second name for the same file refuses to.
    await link(temporary, path);
    return true;
  } catch (error) {
    if (isCode(error, 'EEXIST')) return false;
    if (!NO_SECOND_NAMES.some((code) => isCode(error, code))) throw error;
    if (await lstat(path).then(Boolean, () => false)) return false;
    await rename(temporary, path);
    return true;
  } finally {
    await rm(temporary, { force: true });
  }
}

async function writeTemporary(target: string, data: string | Uint8Array, mode: number | undefined): Promise<string> {
  await clearOnce(dirname(target));
  const temporary = temporaryName(target);
  const file = await open(temporary, 'wx', mode ?? 0o666);
  try {
    await file.writeFile(data);
    if (mode !== undefined) await file.chmod(mode);
    await file.sync();
  } catch (error) {
    await file.close();
    await rm(temporary, { force: true });
    throw error;
  }
  await file.close();
  return temporary;
}

/** A name beside a file to write it under first; short, since a name may be 255 bytes long already. */
export const temporaryName = (target: string): string =>
  join(dirname(target), `.${basename(target).slice(0, 20)}.${randomBytes(6).toString('hex')}.tmp`);

/** A temporary file is written and renamed within moments: one as old as this was left by a program that was killed. */
const LEFT_MS = 60_000;
const TEMPORARY = /^\..{0,20}\.[0-9a-f]{12}\.tmp$/su;
const cleared = new Set<string>();

/** Removes what killed programs left half-written in a folder, the first time that something is written into it. */
async function clearOnce(folder: string): Promise<void> {
  if (cleared.has(folder)) return;
  cleared.add(folder);
  for (const name of await readdir(folder).catch(() => [])) {
    if (!TEMPORARY.test(name)) continue;
    const found = await lstat(join(folder, name)).catch(() => undefined);
    if (found?.isFile() !== true || Date.now() - found.mtimeMs < LEFT_MS) continue;
    await rm(join(folder, name), { force: true }).catch(() => undefined);
  }
}

/** Whether an error is the system's with this code, such as `ENOENT`. */
export const isCode = (error: unknown, code: string): boolean =>
  error instanceof Error && 'code' in error && error.code === code;
