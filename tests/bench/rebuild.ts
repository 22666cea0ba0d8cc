import { globSync, readFileSync } from 'node:fs';
import { readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { measure } from './measure.ts';
import type { PublishedOnce } from './publish-once.ts';
import { type BenchRow, round } from './row.ts';

const ROOT = join(import.meta.dirname, '..', '..');

/** What was built before the change. */
interface Unchanged {
  readonly collection: string;
  /** The folder that the unchanged collection's site stands in. */
  readonly site: string;
  /** What that build left. */
  readonly cache: string;
  readonly today: string;
}

/** A build after one entry was changed, held against one of the same entries from nothing, with the text index and
 * without it; both must write the same bytes. */
export async function benchRebuild(
  folder: string,
  reels: number,
  { collection, site, cache, today }: Unchanged,
): Promise<readonly BenchRow[]> {
  const files = globSync('reels/*.md', { cwd: collection }).sort();
  const file = join(collection, files[Math.floor(files.length / 2)] ?? '');
  await writeFile(file, (await readFile(file, 'utf8')).replace(/^title: .*$/m, 'title: Quandrel, side 1'));
  const warm = await publishOnce(collection, site, cache, today);
  const fresh = join(folder, `cold-cache-${reels}`);
  await rm(fresh, { recursive: true, force: true });
  const cold = await publishOnce(collection, join(folder, `rebuilt-cold-${reels}`), fresh, today);
  expectSame(site, join(folder, `rebuilt-cold-${reels}`));
  const row = (work: string, seconds: number, floor: number, goal: number): BenchRow => ({
    work,
    size: reels,
    seconds: round(seconds),
    floor: round(floor),
    ratio: round(seconds / floor),
    goal,
    peak_MiB: warm.peakMiB,
  });
  return [
    {
      ...row('rebuild, one entry changed, no text index', warm.withoutIndexS, cold.withoutIndexS, 0.25),
      cpu_ratio: round(warm.cpuWithoutIndexS / cold.cpuWithoutIndexS),
    },
    row('rebuild, one entry changed', warm.withIndexS, cold.withIndexS, 0.55),
  ];
}

async function publishOnce(...args: readonly [string, string, string, string]) {
  const run = await measure(process.execPath, [join(import.meta.dirname, 'publish-once.ts'), ...args], ROOT);
  if (run.exit !== 0) throw new Error(`a build of the changed collection failed:\n${run.err}`);
  return { ...(JSON.parse(run.out) as PublishedOnce), peakMiB: run.peakMiB };
}

/** The text index may name its own parts by chance, so that it is left out. */
function expectSame(site: string, other: string): void {
  const files = (of: string) =>
    globSync('**/*', { cwd: of, withFileTypes: true, exclude: ['pagefind'] })
      .filter((found) => found.isFile())
      .map((found) => join(found.parentPath, found.name).slice(of.length))
      .sort();
  const [own, wanted] = [files(site), files(other)];
  if (own.join('\n') !== wanted.join('\n'))
    throw new Error('a build after a change has other files than one from nothing');
  for (const name of own) {
    if (!readFileSync(join(site, name)).equals(readFileSync(join(other, name))))
      throw new Error(`${name} isn’t the one of a build from nothing`);
  }
}
