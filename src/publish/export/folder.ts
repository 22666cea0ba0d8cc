import { randomBytes } from 'node:crypto';
import { mkdir, readdir, rename, rm } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { isCode } from '../atomic.ts';
import { withLock } from '../build-lock.ts';
import { namesFor, removeOthers } from '../finished-folder.ts';

/** That something stands where a folder should go. */
export class AlreadyThere extends Error {}

/** Makes a folder that isn't there yet, whole or not at all: it is made under another name beside it, and renamed. A plain
 * folder and no link, as it may be carried to another disk.
 * @param waiting  called when another program makes it just now, with a sentence.
 * @throws {AlreadyThere} when something with files in it, or a file, has its name. */
export async function makeFolder(
  out: string,
  make: (into: string) => Promise<void>,
  waiting: (sentence: string) => void = () => undefined,
): Promise<void> {
  await refuseTaken(out);
  await mkdir(dirname(out), { recursive: true });
  const beside = namesFor(out);
  const names = { ...beside, start: `${beside.start}making-` };
  await withLock(names.lock, waiting, async () => {
    await refuseTaken(out);
    await removeOthers(out, names, undefined);
    const making = join(dirname(out), `${names.start}${randomBytes(6).toString('hex')}`);
    try {
      await mkdir(making);
      await make(making);
      await refuseTaken(out);
      await rename(making, out);
    } catch (error) {
      await rm(making, { recursive: true, force: true });
      throw error;
    }
  });
}

async function refuseTaken(out: string): Promise<void> {
  const inside = await readdir(out).catch((error: unknown) => {
    if (isCode(error, 'ENOENT')) return [];
    if (isCode(error, 'ENOTDIR')) return [basename(out)];
    throw error;
  });
  if (inside.length > 0)
    throw new AlreadyThere(`${out} is there already, and stays as it is. Choose another name with --out.`);
}
