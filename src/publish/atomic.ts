import { randomBytes } from 'node:crypto';
import { link, lstat, open, realpath, rename, rm, stat } from 'node:fs/promises';
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
  // Short, whatever the target's name: a name may be 255 bytes long already.
  const temporary = join(dirname(target), `.${basename(target).slice(0, 20)}.${randomBytes(6).toString('hex')}.tmp`);
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

/** Whether an error is the system's with this code, such as `ENOENT`. */
export const isCode = (error: unknown, code: string): boolean =>
  error instanceof Error && 'code' in error && error.code === code;
