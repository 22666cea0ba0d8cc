import { randomBytes } from 'node:crypto';
import { lstat, mkdir, readdir, rename, rm, rmdir, stat, utimes, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';

const DAY_MS = 24 * 60 * 60 * 1000;
/** What no build of any collection has asked for in so long is thrown away. It would only have to be made again. */
const UNUSED_MS = 30 * DAY_MS;
/** When the kept pictures were last gone through: once a day is enough. */
const LAST = 'gone-through';
const UNDER = 'photographs';

/** Where what is made of one photograph is kept. */
export const shelfOf = (cache: string, sha256: string, settings: string): string =>
  join(cache, UNDER, sha256.slice(0, 2), sha256, settings);

/** Notes that what is kept there is in use; to the day, so that a build writes little. */
export async function noteUse(shelf: string): Promise<void> {
  const found = await stat(shelf).catch(() => undefined);
  if (found === undefined || Date.now() - found.mtimeMs < DAY_MS) return;
  const now = new Date();
  // Another program may have thrown it away just now; then it is made again.
  await utimes(shelf, now, now).catch(() => undefined);
}

/** Throws away what is kept of photographs that no build has asked for in thirty days, whatever collection they are of,
 * and what killed programs left half-made. A build that runs at the same time has noted its use first.
 *
 * @returns how many photographs' pictures were thrown away. */
export async function dropUnused(cache: string): Promise<number> {
  const root = join(cache, UNDER);
  const last = await stat(join(root, LAST)).catch(() => undefined);
  if (last !== undefined && Date.now() - last.mtimeMs < DAY_MS) return 0;
  await mkdir(root, { recursive: true });
  await writeFile(join(root, LAST), '');
  let dropped = 0;
  for (const shelf of await foldersBelow(root, 3)) {
    if (await isOlder(shelf, UNUSED_MS)) {
      await drop(shelf);
      dropped += 1;
      // The photograph's own folder, when nothing made by other settings is left in it.
      await rmdir(dirname(shelf)).catch(() => undefined);
      continue;
    }
    await dropHalfMade(shelf);
  }
  // Pages are kept beside the pictures, and are put away by whoever keeps them.
  await dropHalfMade(join(cache, 'pages'));
  return dropped;
}

async function dropHalfMade(folder: string): Promise<void> {
  for (const name of await namesIn(folder))
    if (name.endsWith('.tmp') && (await isOlder(join(folder, name), DAY_MS))) await drop(join(folder, name));
}

/** It is gone at once under its own name, so that nobody finds half of it. */
async function drop(folder: string): Promise<void> {
  const aside = `${folder}.${randomBytes(6).toString('hex')}.tmp`;
  await rename(folder, aside);
  await rm(aside, { recursive: true, force: true });
}

async function isOlder(path: string, ms: number): Promise<boolean> {
  const found = await lstat(path).catch(() => undefined);
  return found !== undefined && Date.now() - found.mtimeMs > ms;
}

const namesIn = (folder: string): Promise<string[]> => readdir(folder).catch(() => []);

async function foldersBelow(folder: string, depth: number): Promise<string[]> {
  if (depth === 0) return [folder];
  const found = await readdir(folder, { withFileTypes: true }).catch(() => []);
  const below = found.filter((entry) => entry.isDirectory()).map((entry) => join(folder, entry.name));
  return (await Promise.all(below.map((one) => foldersBelow(one, depth - 1)))).flat();
}
