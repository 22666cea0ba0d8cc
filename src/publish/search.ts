import { readdir, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { close, createIndex } from 'pagefind';
import { byText } from '#model/diagnostic.ts';

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

/** Writes the text index of the site.
 *
 * @param language  of the words, as in `lang`.
 * @throws {Error} with all that the index's maker said was wrong; it doesn't throw by itself. */
export async function writeSearch(records: readonly SearchRecord[], language: string, into: string): Promise<void> {
  const { index } = sound(await createIndex({}));
  if (index === undefined) throw new Error('fault: no text index was made');
  try {
    // In one order, so that the same pages give the same files.
    for (const record of records.toSorted((a, b) => byText(a.url, b.url))) {
      const { url, content, meta } = record;
      const filters = Object.fromEntries(Object.entries(record.filters).map(([name, values]) => [name, [...values]]));
      sound(await index.addCustomRecord({ url, content, language, meta: { ...meta }, filters }));
    }
    sound(await index.writeFiles({ outputPath: join(into, FOLDER) }));
  } finally {
    await index.deleteIndex();
    await close();
  }
  for (const name of await readdir(join(into, FOLDER))) if (NOT_NEEDED.test(name)) await rm(join(into, FOLDER, name));
}

function sound<T extends { readonly errors: readonly string[] }>(reply: T): T {
  if (reply.errors.length > 0) throw new Error(`fault: the text index couldn't be made: ${reply.errors.join('; ')}`);
  return reply;
}
