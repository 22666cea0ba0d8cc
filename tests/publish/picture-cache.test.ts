import { appendFile, mkdtemp, readdir, readFile, rm, stat, truncate, utimes, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { publishPhotographs } from '#publish/photographs.ts';
import { cameraPhotograph } from './made-photograph.ts';

const region = { xPercent: 10, yPercent: 10, widthPercent: 30, heightPercent: 30 };
const camera = await cameraPhotograph(1300, 90);
const MADE_COLD = { opened: 1, made: 2, reused: 0 };
const REUSED = { opened: 0, made: 0, reused: 2 };

let folder: string;
let runs = 0;

beforeEach(async () => {
  // As if the photographs had been there for a minute, so that reading them again may be left out.
  vi.useFakeTimers({ toFake: ['Date'], now: Date.now() + 60_000 });
  folder = await mkdtemp(join(tmpdir(), 'picture-cache-'));
  await writeFile(join(folder, 'spine.jpg'), camera);
});
afterEach(async () => {
  vi.useRealTimers();
  await rm(folder, { recursive: true });
});

async function run() {
  runs += 1;
  const into = join(folder, `site-${runs}`);
  const wanted = [{ path: 'spine.jpg', file: join(folder, 'spine.jpg'), regions: [region] }];
  const result = await publishPhotographs(wanted, into, { cache: join(folder, 'cache') });
  return { ...result, bytes: await bytesOf(into) };
}

async function filesOf(root: string): Promise<string[]> {
  const found = await readdir(root, { recursive: true, withFileTypes: true });
  return found.flatMap((entry) => (entry.isFile() ? [join(entry.parentPath, entry.name)] : [])).sort();
}

async function bytesOf(root: string): Promise<Record<string, string>> {
  const files = await filesOf(root);
  return Object.fromEntries(
    await Promise.all(files.map(async (path) => [path.slice(root.length), (await readFile(path)).toString('base64')])),
  );
}

describe('a warm build', () => {
  test('opens no photograph, and gives the same bytes', async () => {
    const cold = await run();
    expect(cold.work).toEqual(MADE_COLD);
    const warm = await run();
    expect(warm.work).toEqual(REUSED);
    expect(warm.bytes).toEqual(cold.bytes);
    expect(warm.photographs).toEqual(cold.photographs);
  });
  test('isn’t fooled by a photograph replaced by one of the same size and date', async () => {
    const cold = await run();
    const path = join(folder, 'spine.jpg');
    const { atime, mtime } = await stat(path);
    const other = await cameraPhotograph(1300, 91);
    // A JPEG may be followed by anything, so that both are as long as each other.
    const length = Math.max(camera.length, other.length);
    await writeFile(path, Buffer.concat([other, Buffer.alloc(length - other.length)]));
    await utimes(path, atime, mtime);
    const warm = await run();
    expect(warm.work.opened).toBe(1);
    expect(warm.photographs).not.toEqual(cold.photographs);
  });
  test('with one more region cuts that one crop only', async () => {
    await run();
    const more = { ...region, xPercent: 50 };
    const wanted = [{ path: 'spine.jpg', file: join(folder, 'spine.jpg'), regions: [region, more] }];
    const { work } = await publishPhotographs(wanted, join(folder, 'more'), { cache: join(folder, 'cache') });
    expect(work).toEqual({ opened: 1, made: 1, reused: 2 });
  });
});

describe('a damaged cache is never believed', () => {
  const damages: [string, (path: string) => Promise<void>][] = [
    ['cut short', (path) => truncate(path, 5)],
    ['emptied, as after a power cut', (path) => truncate(path, 0)],
    ['longer', (path) => appendFile(path, 'x')],
    ['of the same size with one bit turned', (path) => turnBit(path)],
    ['gone', (path) => rm(path)],
  ];
  test.each(damages)(
    'every file %s, one at a time and all at once',
    async (_how, damage) => {
      const cold = await run();
      const all = await filesOf(join(folder, 'cache'));
      expect(all.length).toBeGreaterThan(8);
      for (const path of all) {
        await damage(path);
        const again = await run();
        expect(again.bytes, path).toEqual(cold.bytes);
        expect(again.faults.size).toBe(0);
        expect((await run()).work, `${path} is mended`).toEqual(REUSED);
      }
      for (const path of all) await damage(path).catch(() => undefined);
      expect((await run()).bytes).toEqual(cold.bytes);
    },
    120_000,
  );
  test('and may be thrown away', async () => {
    const cold = await run();
    await rm(join(folder, 'cache'), { recursive: true });
    expect((await run()).bytes).toEqual(cold.bytes);
  });
  test('nothing half made is left in it', async () => {
    await run();
    expect((await filesOf(join(folder, 'cache'))).filter((path) => path.includes('.tmp'))).toEqual([]);
  });
});

async function turnBit(path: string): Promise<void> {
  const bytes = await readFile(path);
  const middle = Math.floor(bytes.length / 2);
  bytes[middle] = (bytes[middle] ?? 0) ^ 1;
  await writeFile(path, bytes);
}
