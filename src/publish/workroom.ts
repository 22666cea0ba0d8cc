import { mkdir, mkdtemp, readdir, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { isCode } from './atomic.ts';

const NAME = /^tailout-(\d+)-/;

/** Does some work in a folder of its own, which only its owner may look into and which is gone afterwards. What a program
 * that was killed left behind is removed by the next one: it may hold pages that nobody else is to read.
 *
 * @param parent  where the folder stands: on the disk of what is made from it, or the machine's own place for such. */
export async function inWorkroom<T>(work: (folder: string) => Promise<T>, parent = tmpdir()): Promise<T> {
  const folder = await openWorkroom(parent);
  try {
    return await work(folder);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

/** Such a folder for a program that stays, which removes it at its end. */
export async function openWorkroom(parent = tmpdir()): Promise<string> {
  await mkdir(parent, { recursive: true });
  for (const name of await readdir(parent)) {
    const pid = NAME.exec(name)?.[1];
    // Another person's can't be removed, and is that person's.
    if (pid !== undefined && !runs(Number(pid)))
      await rm(join(parent, name), { recursive: true, force: true }).catch(() => undefined);
  }
  return await mkdtemp(join(parent, `tailout-${process.pid}-`));
}

function runs(pid: number): boolean {
  try {
    return process.kill(pid, 0);
  } catch (error) {
    // It runs, and belongs to someone else.
    return isCode(error, 'EPERM');
  }
}
