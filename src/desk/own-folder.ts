import { mkdir, realpath, stat } from 'node:fs/promises';
import { dirname, sep } from 'node:path';
import { DeskRefusal } from './refusal.ts';

/** Makes a folder of the collection, if it isn't there yet.
 *
 * @throws {DeskRefusal} when the way to it leads out of the collection. */
export async function makeInside(root: string, folder: string): Promise<void> {
  let there = folder;
  while (!(await isThere(there))) there = dirname(there);
  if (there !== root) await refuseOutside(root, there);
  await mkdir(folder, { recursive: true });
  if (folder !== root) await refuseOutside(root, folder);
}

/** A link that leads out of the collection is never written through.
 *
 * @throws {DeskRefusal} when a path that is there is, or lies behind, such a link. */
export async function refuseOutside(root: string, path: string): Promise<void> {
  const real = await realpath(path);
  if (!real.startsWith((await realpath(root)) + sep))
    throw new DeskRefusal(
      409,
      'This entry’s folder is a link that leads out of the collection; nothing is written through it.',
    );
}

export const isThere = (path: string): Promise<boolean> => stat(path).then(Boolean, () => false);
