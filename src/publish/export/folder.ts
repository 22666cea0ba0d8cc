import { mkdir, mkdtemp, readdir, rename, rm } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { isCode } from '../atomic.ts';

/** That something stands where a folder should go. */
export class AlreadyThere extends Error {}

/** Makes a folder that isn't there yet, whole or not at all: it is made under another name beside it, and renamed. A plain
 * folder and no link, as it may be carried to another disk.
 * @throws {AlreadyThere} when something with files in it, or a file, has its name. */
export async function makeFolder(out: string, make: (into: string) => Promise<void>): Promise<void> {
  await refuseTaken(out);
  await mkdir(dirname(out), { recursive: true });
  const making = await mkdtemp(join(dirname(out), `.${basename(out).slice(0, 40)}-`));
  try {
    await make(making);
    await refuseTaken(out);
    await rename(making, out);
  } catch (error) {
    await rm(making, { recursive: true, force: true });
    throw error;
  }
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
