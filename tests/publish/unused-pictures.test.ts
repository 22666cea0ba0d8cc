import { mkdir, mkdtemp, readdir, readFile, rm, utimes, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { measurePhotographs, publishPhotographs } from '#publish/photographs.ts';
import { dropUnused } from '#publish/unused-pictures.ts';
import { cameraPhotograph } from './made-photograph.ts';

const DAY_MS = 24 * 60 * 60 * 1000;
const NAMES = ['kept.jpg', 'dropped.jpg'];
let folder: string;
let cache: string;

beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'unused-'));
  cache = join(folder, 'cache');
  for (const [at, name] of NAMES.entries()) await writeFile(join(folder, name), await cameraPhotograph(100 + at, 80));
});
afterEach(async () => {
  vi.useRealTimers();
  await rm(folder, { recursive: true });
});

const file = (path: string) => ({ path, file: join(folder, path) });
/** Builds with some of the photographs, some days from now, as a build of the site does. */
async function buildWith(names: readonly string[], days: number) {
  vi.useFakeTimers({ toFake: ['Date'], now: Date.now() + days * DAY_MS });
  await measurePhotographs(names.map(file), { cache });
  const wanted = names.map((path) => ({ ...file(path), regions: [] }));
  const { work } = await publishPhotographs(wanted, join(folder, 'site'), { cache });
  const dropped = await dropUnused(cache);
  vi.useRealTimers();
  return { ...work, dropped };
}
const kept = async () => (await readdir(join(cache, 'photographs'), { recursive: true })).filter(isShelf).length;
const isShelf = (path: string) => path.split('/').length === 3;

test('pictures that no build asked for in thirty days are dropped, and made again when they are wanted', async () => {
  expect(await buildWith(NAMES, 0)).toMatchObject({ made: 2, dropped: 0 });
  for (const days of [10, 20, 29]) expect(await buildWith(['kept.jpg'], days)).toMatchObject({ made: 0, dropped: 0 });
  expect(await kept()).toBe(2);
  expect(await buildWith(['kept.jpg'], 32)).toMatchObject({ made: 0, dropped: 1 });
  expect(await kept()).toBe(1);
  // What is made now bears the real day, whatever the day is taken to be.
  expect(await buildWith(NAMES, 0)).toMatchObject({ made: 1, reused: 1, dropped: 0 });
});

test('pictures of another collection in the same cache stay while it is built now and then', async () => {
  await buildWith(['kept.jpg'], 0);
  await buildWith(['dropped.jpg'], 0);
  for (const days of [25, 50, 75, 100]) {
    await buildWith(['kept.jpg'], days);
    expect(await buildWith(['dropped.jpg'], days + 2)).toMatchObject({ made: 0, dropped: 0 });
  }
});

test('what a killed program left half-made goes after a day, and nothing that is younger', async () => {
  await buildWith(NAMES, 0);
  const [shelf = ''] = (await readdir(join(cache, 'photographs'), { recursive: true })).filter(isShelf);
  for (const [name, days] of [['whole.0123456789ab.tmp', 3] as const, ['crop.0123456789ab.tmp', 0] as const]) {
    const left = join(cache, 'photographs', shelf, name);
    await mkdir(left);
    await utimes(left, Date.now() / 1000 - days * 86_400, Date.now() / 1000 - days * 86_400);
  }
  await mkdir(join(cache, 'pages'));
  const pages = join(cache, 'pages', '.of-a-collection.0123456789ab.tmp');
  await writeFile(pages, 'half');
  await utimes(pages, Date.now() / 1000 - 3 * 86_400, Date.now() / 1000 - 3 * 86_400);
  await rm(join(cache, 'photographs', 'gone-through'));
  await dropUnused(cache);
  expect(await readdir(join(cache, 'pages'))).toEqual([]);
  expect((await readdir(join(cache, 'photographs', shelf))).filter((name) => name.endsWith('.tmp'))).toEqual([
    'crop.0123456789ab.tmp',
  ]);
});

test('the list of photographs that were seen forgets one that is gone', async () => {
  vi.useFakeTimers({ toFake: ['Date'], now: Date.now() + 60_000 });
  await measurePhotographs(NAMES.map(file), { cache });
  expect(await readFile(join(cache, 'seen.json'), 'utf8')).toContain('dropped.jpg');
  await rm(join(folder, 'dropped.jpg'));
  await measurePhotographs([file('kept.jpg')], { cache });
  expect(await readFile(join(cache, 'seen.json'), 'utf8')).not.toContain('dropped.jpg');
});
