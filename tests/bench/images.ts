import { mkdir, rm } from 'node:fs/promises';
import { join } from 'node:path';
import sharp from 'sharp';
import type { Region } from '#model/region.ts';
import { cropBox } from '#publish/crop-box.ts';
import { measure, type Run } from './measure.ts';

/** As a phone takes them, twelve million pixels, lying on their side. */
const SIZE = { width: 4000, height: 3000 };
const REGIONS: readonly Region[] = [
  { xPercent: 12, yPercent: 40, widthPercent: 30, heightPercent: 8 },
  { xPercent: 50, yPercent: 10, widthPercent: 20, heightPercent: 5 },
  { xPercent: 5, yPercent: 70, widthPercent: 60, heightPercent: 20 },
];

/** A line of the table of ratios; the contract names its keys. */
export interface ImageRow {
  readonly work: string;
  readonly size: string;
  readonly seconds: number;
  readonly floor: number;
  readonly ratio: number;
  readonly goal: number;
  readonly peak_MiB: number;
}

/** Photographs cold, as a ratio to a bare script that makes the same pictures, and warm, as the number of photographs
 * that were opened. Both are run in turn, twice, and the better of each counts: other programs' work comes and goes.
 *
 * @param folder  for photographs and results; emptied. */
export async function benchImages(folder: string, count: number): Promise<readonly ImageRow[]> {
  await rm(folder, { recursive: true, force: true });
  const photographs = join(folder, 'photographs');
  await mkdir(photographs, { recursive: true });
  for (let at = 0; at < count; at += 1) await photograph(join(photographs, `box-${at}.jpg`), at);

  const crops = REGIONS.map((region) => cropBox(region, SIZE.height, SIZE.width)).flatMap((box) => box ?? []);
  const boxes = crops.map(({ left, top, width, height }) => [left, top, width, height].join(','));
  const bare = (run: number) => runScript('bare-sharp.ts', photographs, join(folder, `bare-${run}`), ...boxes);
  const ours = (run: string, cache: string) =>
    runScript(
      'our-photographs.ts',
      photographs,
      join(folder, `ours-${run}`),
      join(folder, cache),
      JSON.stringify(REGIONS),
    );

  const floors = [await bare(1)];
  const colds = [await ours('1', 'cache-1'), await ours('2', 'cache-2')];
  floors.push(await bare(2));
  const warm = await ours('warm', 'cache-2');
  const floor = best(floors);
  const cold = best(colds);
  const { opened } = JSON.parse(warm.out) as { opened: number };
  const size = `${count} photographs`;
  return [
    row('photographs, cold', size, cold, floor, 1.15),
    // Not a ratio: how many of them were opened.
    { ...row('photographs, warm: opened', size, warm, floor, 0), ratio: opened },
  ];
}

async function runScript(name: string, ...args: readonly string[]): Promise<Run> {
  const run = await measure(process.execPath, [join(import.meta.dirname, name), ...args], process.cwd());
  if (run.exit !== 0) throw new Error(`${name} failed:\n${run.err}`);
  return run;
}

const best = (runs: readonly Run[]) => runs.reduce((one, other) => (other.seconds < one.seconds ? other : one));

const row = (work: string, size: string, run: Run, floor: Run, goal: number): ImageRow => ({
  work,
  size,
  seconds: run.seconds,
  floor: floor.seconds,
  ratio: run.seconds / floor.seconds,
  goal,
  peak_MiB: run.peakMiB,
});

/** Grain, like paper's, over a slope of light: neither as easy nor as hard to code as a plain noise. */
async function photograph(path: string, at: number): Promise<void> {
  const noise = { type: 'gaussian', mean: 128, sigma: 18 } as const;
  const background = { r: 90 + at, g: 110, b: 120 };
  const grain = sharp({ create: { ...SIZE, channels: 3, background, noise } });
  await grain.blur(1.2).withMetadata({ orientation: 6 }).jpeg({ quality: 88 }).toFile(path);
}
