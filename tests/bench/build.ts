import { globSync, statSync } from 'node:fs';
import { realpath, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { generateCollection } from './generate.ts';
import { measure, type Run } from './measure.ts';
import { type BenchRow, round } from './row.ts';

const ROOT = join(import.meta.dirname, '..', '..');
const TODAY = '2026-04-01';

/** Builds and checks a generated collection, cold, each held against its floor in the same run. */
export async function benchCollection(folder: string, reels: number): Promise<readonly BenchRow[]> {
  const collection = join(folder, `collection-${reels}`);
  await rm(collection, { recursive: true, force: true });
  await generateCollection(collection, reels);

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
  const { pages, bytes } = await weigh(out);
  const buildFloor = await script(
    'floor/build.ts',
    collection,
    join(folder, `floor-${reels}`),
    String(pages),
    String(Math.round(bytes / pages)),
  );
  return [row('check', reels, check, checkFloor, 1.5), row('build, cold', reels, build, buildFloor, 1.3)];
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
});

/** The pages of a site, and their bytes. */
async function weigh(out: string): Promise<{ pages: number; bytes: number }> {
  const folder = await realpath(out);
  const pages = globSync('**/*.html', { cwd: folder });
  const bytes = pages.reduce((sum, page) => sum + statSync(join(folder, page)).size, 0);
  return { pages: pages.length, bytes };
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
