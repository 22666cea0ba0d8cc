import { globSync, readFileSync, statSync } from 'node:fs';
import { readFile, realpath, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { gunzipSync, gzipSync } from 'node:zlib';
import { generateCollection } from './generate.ts';
import { measure, type Run } from './measure.ts';
import { benchRebuild } from './rebuild.ts';
import { type BenchRow, round } from './row.ts';

const ROOT = join(import.meta.dirname, '..', '..');
const TODAY = '2026-04-01';
const PEAK_MIB = 1536;
const CHECK_PEAK_MIB = 1024;
const PAGE_KB = 60;

/** Builds and checks a generated collection, cold, each held against its floor in the same run. */
export async function benchCollection(folder: string, reels: number): Promise<readonly BenchRow[]> {
  const collection = join(folder, `collection-${reels}`);
  await rm(collection, { recursive: true, force: true });
  await generateCollection(collection, reels);
  await rm(join(folder, 'cache', 'pages'), { recursive: true, force: true });

  const check = await ours('check', '--collection', collection, '--today', TODAY, '--cache', join(folder, 'cache'));
  const checkFloor = await script('floor/check.ts', collection);
  const out = join(folder, `site-${reels}`);
  const build = await ours(
    'build',
    '--collection',
    collection,
    '--today',
    TODAY,
    '--out',
    out,
    '--cache',
    join(folder, 'cache'),
  );
  const { pages, bytes, heaviestKB } = await weigh(out);
  const indexed = join(folder, `indexed-${reels}.json`);
  await writeFile(indexed, JSON.stringify(await textsOf(out)));
  const buildFloor = await script(
    'floor/build.ts',
    collection,
    join(folder, `floor-${reels}`),
    String(pages),
    String(Math.round(bytes / pages)),
    indexed,
  );
  return [
    row('check', reels, check, checkFloor, 1.5),
    limit('check: peak memory (MiB)', reels, check.peakMiB, CHECK_PEAK_MIB, check),
    row('build, cold', reels, build, buildFloor, 1.3),
    limit('build, cold: peak memory (MiB)', reels, build.peakMiB, PEAK_MIB, build),
    limit('the heaviest page, gzipped (kB)', reels, heaviestKB, PAGE_KB, build),
    ...(await benchRebuild(folder, reels, { collection, site: out, cache: join(folder, 'cache'), today: TODAY })),
  ];
}

/** How the same work grows from a small collection to one ten times as large: ratio of seconds, and what it may be. */
export function growth(small: readonly BenchRow[], large: readonly BenchRow[]): readonly BenchRow[] {
  return small.flatMap((before) => {
    const after = large.find((one) => one.work === before.work);
    if (after === undefined) return [];
    const size = `${before.size} → ${after.size}`;
    const goal = before.work === 'check' ? 11 : 10.5;
    return {
      work: `${before.work}, growth`,
      size,
      seconds: after.seconds,
      floor: before.seconds,
      ratio: round(after.seconds / before.seconds),
      goal,
      peak_MiB: after.peak_MiB,
    };
  });
}

const row = (work: string, size: number, run: Run, floor: Run, goal: number): BenchRow => ({
  work,
  size,
  seconds: round(run.seconds),
  floor: round(floor.seconds),
  ratio: round(run.seconds / floor.seconds),
  goal,
  peak_MiB: run.peakMiB,
  ...(floor.cpuSeconds > 0 && { cpu_ratio: round(run.cpuSeconds / floor.cpuSeconds) }),
});

/** Something held against a limit: `floor` is the limit, and the goal is 1. */
const limit = (work: string, size: number, found: number, most: number, run: Run): BenchRow => ({
  work,
  size,
  seconds: round(found),
  floor: most,
  ratio: round(found / most),
  goal: 1,
  peak_MiB: run.peakMiB,
});

/** The pages of a site, their bytes, and what the heaviest of them weighs as it is sent, without its pictures. */
async function weigh(out: string): Promise<{ pages: number; bytes: number; heaviestKB: number }> {
  const folder = await realpath(out);
  const pages = globSync('**/*.html', { cwd: folder });
  const bytes = pages.reduce((sum, page) => sum + statSync(join(folder, page)).size, 0);
  const heavy = pages.map((page) => join(folder, page)).sort((a, b) => statSync(b).size - statSync(a).size);
  const zipped = heavy.slice(0, 20).map((page) => gzipSync(readFileSync(page)).length);
  return { pages: pages.length, bytes, heaviestKB: Math.max(...zipped) / 1000 };
}

/** The text that our index holds, page by page, so that the floor’s holds the same and no more. */
async function textsOf(out: string): Promise<readonly string[]> {
  const folder = join(await realpath(out), 'pagefind', 'fragment');
  const texts: string[] = [];
  for (const name of globSync('*.pf_fragment', { cwd: folder }).sort()) {
    const text = gunzipSync(await readFile(join(folder, name))).toString('utf8');
    texts.push((JSON.parse(text.slice(text.indexOf('{'))) as { content: string }).content);
  }
  return texts;
}

async function ours(...args: readonly string[]): Promise<Run> {
  const run = await measure(process.execPath, [join(ROOT, 'src', 'start.mjs'), ...args], ROOT);
  if (run.exit !== 0) throw new Error(`${args[0]} of the generated collection failed:\n${run.out}${run.err}`);
  return run;
}

async function script(name: string, ...args: readonly string[]): Promise<Run> {
  const run = await measure(process.execPath, [join(import.meta.dirname, name), ...args], ROOT);
  if (run.exit !== 0) throw new Error(`${name} failed:\n${run.err}`);
  return run;
}
