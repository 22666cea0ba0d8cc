import { readFile, realpath, stat } from 'node:fs/promises';
import { join, sep } from 'node:path';
import type { Diagnostic } from '#model/diagnostic.ts';

/** No entry is larger; a file that is has a problem of its own, and isn't quoted. */
const LARGEST_BYTES = 1_000_000;

/** The lines of every entry that has a problem, by file, for the page that shows them beside it. A file that can't be
 * read, or that a link leads out of the collection for, has none. */
export async function problemLines(
  problems: readonly Diagnostic[],
  collection: string,
): Promise<ReadonlyMap<string, readonly string[]>> {
  const files = [...new Set(problems.map((problem) => problem.place.file))].filter((file) => file.endsWith('.md'));
  const read = await Promise.all(files.map(async (file) => [file, await linesOf(collection, file)] as const));
  return new Map(read.flatMap(([file, lines]) => (lines === undefined ? [] : [[file, lines] as const])));
}

async function linesOf(collection: string, file: string): Promise<readonly string[] | undefined> {
  try {
    const path = await realpath(join(collection, file));
    if (!path.startsWith((await realpath(collection)) + sep)) return undefined;
    const about = await stat(path);
    if (!about.isFile() || about.size > LARGEST_BYTES) return undefined;
    return (await readFile(path, 'utf8')).replace(/^\uFEFF/, '').split(/\r\n|\r|\n/);
  } catch {
    return undefined;
  }
}
