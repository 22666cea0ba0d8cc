import type { ChildProcess } from 'node:child_process';
import { subscribe, unsubscribe } from 'node:diagnostics_channel';
import { readdir, rm, statfs } from 'node:fs/promises';
import { join } from 'node:path';
import { close, createIndex } from 'pagefind';
import { byText } from '#model/diagnostic.ts';
import { withoutTurns } from '#model/turned-text.ts';

/** One page in the text index. */
export interface SearchRecord {
  /** From the site's root, such as `/reels/low-water/`. */
  readonly url: string;
  readonly content: string;
  /** Shown with a result: `title` and others. */
  readonly meta: Readonly<Record<string, string>>;
  readonly filters: Readonly<Record<string, readonly string[]>>;
}

/** Where the index stands in the site. */
const FOLDER = 'pagefind';
/** Ready-made parts for sites without pages of their own; ours has its own. */
const NOT_NEEDED = /^pagefind-(?:ui|modular-ui|component-ui|highlight)\b/;

/** Records on their way to the index's maker, which takes them one by one and in order. */
const AT_ONCE = 64;

/** Writes the text index of the site.
 *
 * @param language  of the words, as in `lang`.
 * @param signal  ends it early, which throws its reason.
 * @throws {Error} with all that the index's maker said was wrong; it doesn't throw by itself. */
export async function writeSearch(
  records: readonly SearchRecord[],
  language: string,
  into: string,
  signal?: AbortSignal,
): Promise<void> {
  const maker = startMaker();
  const said = async <T extends Reply>(reply: Promise<T>) => sound(await Promise.race([reply, maker.ended]));
  try {
    const { index } = await said(maker.index);
    if (index === undefined) throw new Error('fault: no text index was made');
    // In one order, so that the same pages give the same files.
    const inOrder = records.toSorted((a, b) => byText(a.url, b.url));
    for (let start = 0; start < inOrder.length; start += AT_ONCE) {
      signal?.throwIfAborted();
      const some = inOrder.slice(start, start + AT_ONCE).map(async (record) => {
        const { url, content, meta, filters } = JSON.parse(withoutTurns(JSON.stringify(record))) as Writable;
        await said(index.addCustomRecord({ url, content, language, meta, filters }));
      });
      await Promise.all(some);
    }
    signal?.throwIfAborted();
    await said(index.writeFiles({ outputPath: join(into, FOLDER) }));
  } catch (error) {
    signal?.throwIfAborted();
    throw (await isFull(into)) ? Object.assign(new Error(String(error)), { code: 'ENOSPC', path: into }) : error;
  } finally {
    await close();
  }
  for (const name of await readdir(join(into, FOLDER))) if (NOT_NEEDED.test(name)) await rm(join(into, FOLDER, name));
}

interface Writable extends Pick<SearchRecord, 'url' | 'content'> {
  readonly meta: Record<string, string>;
  readonly filters: Record<string, string[]>;
}

interface Reply {
  readonly errors: readonly string[];
}

function sound<T extends Reply>(reply: T): T {
  if (reply.errors.length > 0) throw new Error(`fault: the text index couldn't be made: ${reply.errors.join('; ')}`);
  return reply;
}

/** The index's maker is a program of its own. When it ends before its time, as on a full disk, nobody else tells those
 * who wait for its answer. */
function startMaker() {
  let child: ChildProcess | undefined;
  const seen = (message: unknown) => {
    child = (message as { readonly process: ChildProcess }).process;
  };
  subscribe('child_process', seen);
  const index = createIndex({});
  unsubscribe('child_process', seen);
  const { promise: ended, reject } = Promise.withResolvers<never>();
  // Of an end that comes when all is done nobody asks.
  ended.catch(() => undefined);
  const stopped = () => reject(new Error('fault: the maker of the text index stopped before it was done'));
  if (child === undefined) stopped();
  else child.once('exit', stopped);
  return { index, ended };
}

/** Room for less than a small site is none. */
const FULL_BYTES = 1_000_000;

async function isFull(folder: string): Promise<boolean> {
  const room = await statfs(folder).catch(() => undefined);
  return room !== undefined && room.bavail * room.bsize < FULL_BYTES;
}
