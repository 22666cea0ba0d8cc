import { randomBytes } from 'node:crypto';
import { link, readFile, rename, rm } from 'node:fs/promises';
import { hostname } from 'node:os';
import { setTimeout as pause } from 'node:timers/promises';
import { writeNew } from './atomic.ts';

/** Who writes to a folder. */
interface Owner {
  readonly pid: number;
  readonly host: string;
  /** Tells a process from a later one that got the same number; empty where the system doesn't say. */
  readonly began: string;
}

/** That another program holds the lock and it can't be known whether it still runs. */
export class HeldElsewhere extends Error {}

const ASK_AGAIN_MS = 200;

/** Does some work while holding a lock file, so that two builds never write to one place at once. A second build waits
 * for the first; the lock of a program that was killed is taken over.
 *
 * @param waiting  called once when it has to wait, with a sentence that says for whom.
 * @throws {HeldElsewhere} when the lock was made on another machine, whose programs can't be seen from here. */
export async function withLock<T>(
  path: string,
  waiting: (sentence: string) => void,
  work: () => Promise<T>,
): Promise<T> {
  const own = JSON.stringify({ pid: process.pid, host: hostname(), began: await beganAt(process.pid) } satisfies Owner);
  for (let said = false; !(await writeNew(path, own)); ) {
    const held = await readFile(path, 'utf8').catch(() => undefined);
    if (held === undefined) continue;
    const owner = ownerOf(held);
    if (owner !== undefined && owner.host !== hostname()) throw new HeldElsewhere(elsewhere(path, owner));
    if (owner === undefined || !(await stillRuns(owner))) {
      await takeAway(path, held);
      continue;
    }
    if (!said) waiting(`Another program is writing there (process ${owner.pid}). Waiting until it is done.`);
    said = true;
    await pause(ASK_AGAIN_MS);
  }
  try {
    return await work();
  } finally {
    await rm(path, { force: true });
  }
}

function ownerOf(text: string): Owner | undefined {
  try {
    const { pid, host, began } = JSON.parse(text) as Partial<Owner>;
    if (typeof pid !== 'number' || typeof host !== 'string' || typeof began !== 'string') return undefined;
    return { pid, host, began };
  } catch {
    return undefined;
  }
}

async function stillRuns(owner: Owner): Promise<boolean> {
  try {
    process.kill(owner.pid, 0);
  } catch (error) {
    // EPERM: it runs, and belongs to someone else.
    if (!(error instanceof Error && 'code' in error && error.code === 'EPERM')) return false;
  }
  return owner.began === (await beganAt(owner.pid));
}

/** On Linux: which start of the machine, and when in it the process began (proc(5), field 22 of /proc/pid/stat). */
async function beganAt(pid: number): Promise<string> {
  try {
    const boot = (await readFile('/proc/sys/kernel/random/boot_id', 'utf8')).trim();
    const stat = await readFile(`/proc/${pid}/stat`, 'utf8');
    // The program's name, in brackets, may hold anything: count from behind it.
    return `${boot} ${stat.slice(stat.lastIndexOf(')') + 2).split(' ')[19] ?? ''}`;
  } catch {
    return '';
  }
}

/** Removes a dead program's lock; when another program did so first and holds the lock now, gives it back. */
async function takeAway(path: string, dead: string): Promise<void> {
  const aside = `${path}.${randomBytes(6).toString('hex')}.tmp`;
  try {
    await rename(path, aside);
  } catch {
    return;
  }
  if ((await readFile(aside, 'utf8')) !== dead) await link(aside, path).catch(() => undefined);
  await rm(aside, { force: true });
}

const elsewhere = (path: string, { host, pid }: Owner) =>
  `A program on another machine (${host}, process ${pid}) is writing there, or was stopped there. If it isn't running any more, delete ${path} and begin again.`;
