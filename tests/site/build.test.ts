import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { chmod, cp, mkdir, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { cameraPhotograph } from '../publish/made-photograph.ts';

const DOOR = resolve(import.meta.dirname, '../../src/start.mjs');
const camera = await cameraPhotograph(1400, 1000);

let folder: string;
let collection: string;
let out: string;

beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'build-'));
  collection = join(folder, 'collection');
  out = join(folder, 'site');
  await mkdir(join(collection, 'reels', 'low-water'), { recursive: true });
  await writeFile(join(collection, 'reels', 'low-water', 'box-front.jpg'), camera);
  await entry('Low Water, take 0');
});
afterEach(() => rm(folder, { recursive: true, force: true }));

const entry = (title: string) =>
  writeFile(
    join(collection, 'reels', 'low-water', 'index.md'),
    `---\ntitle: ${title}\nstatus: held\nphotos:\n  - { file: box-front.jpg, shows: box front }\nreadings:\n  - { of: title, photo: box-front.jpg, region: "xywh=percent:10,10,30,20", written: LOW WATER, sure: likely }\n---\n\nFound behind the stairs.\n`,
  );

const start = (...more: string[]) =>
  spawn(
    process.execPath,
    [
      DOOR,
      'build',
      '--collection',
      collection,
      '--out',
      out,
      '--today',
      '2026-03-20',
      '--cache',
      join(folder, 'cache'),
      ...more,
    ],
    {
      stdio: ['ignore', 'ignore', 'pipe'],
      env: { ...process.env, INIT_CWD: folder },
    },
  );

async function build(...more: string[]): Promise<{ exit: number; said: string }> {
  const child = start(...more);
  let said = '';
  child.stderr.on('data', (text) => {
    said += String(text);
  });
  const [exit] = await once(child, 'close');
  // A fault is shown as the program told it: nothing below could be right.
  if (exit === 3) throw new Error(said);
  return { exit, said };
}

async function bytesOf(root: string): Promise<ReadonlyMap<string, string>> {
  const found = await readdir(root, { recursive: true, withFileTypes: true });
  const files = found.filter((one) => one.isFile()).map((one) => join(one.parentPath, one.name));
  const bytes = await Promise.all(
    files.sort().map(async (path) => [path.slice(root.length), (await readFile(path)).toString('base64')] as const),
  );
  return new Map(bytes);
}

describe('the same collection on the same day', () => {
  test('gives the same bytes, cold or warm, in one place or another', async () => {
    expect((await build()).exit).toBe(0);
    const cold = await bytesOf(out);
    expect(cold.size).toBeGreaterThan(40);
    await build();
    expect(await bytesOf(out)).toEqual(cold);
    await cp(collection, join(folder, 'moved', 'copied'), { recursive: true });
    await build(
      '--collection',
      join(folder, 'moved', 'copied'),
      '--cache',
      join(folder, 'another-cache'),
      '--out',
      join(folder, 'b'),
    );
    expect(await bytesOf(join(folder, 'b'))).toEqual(cold);
  });
});

describe('whatever happens to a build', () => {
  test('two at once: the second says that it waits, and the site is one of the two, whole', {
    timeout: 300_000,
  }, async () => {
    await build();
    const both = await Promise.all([build(), build()]);
    expect(both.map(({ exit }) => exit)).toEqual([0, 0]);
    expect(both.map(({ said }) => said).join('')).toMatch(/Another program is writing there \(process \d+\)\. Waiting/);
    expect(await readFile(join(out, 'catalogue.json'), 'utf8')).toContain('Low Water');
  });

  test('someone’s own folder in its place is refused, with exit 2, and stays', async () => {
    await mkdir(out);
    await writeFile(join(out, 'mine.txt'), 'mine');
    const { exit, said } = await build();
    expect(exit).toBe(2);
    expect(said).toMatch(/wasn't made by this program/);
    expect(await readdir(out)).toEqual(['mine.txt']);
  });

  test('a place that can’t be written is said, with exit 2 and no stack', async () => {
    await writeFile(join(folder, 'file'), 'mine');
    const { exit, said } = await build('--out', join(folder, 'file', 'site'));
    expect(exit).toBe(2);
    expect(said).toMatch(/a part of its path is a file.*Choose another folder|a file of that name is/);
    expect(said).not.toMatch(/^\s+at /m);
  });

  test('a broken photograph is a problem in its entry, and the site is built', async () => {
    await writeFile(join(collection, 'reels', 'low-water', 'box-front.jpg'), camera.subarray(0, 3000));
    const { exit } = await build();
    const catalogue = await readFile(join(out, 'catalogue.json'), 'utf8');
    expect(catalogue).toContain('photo/unreadable');
    expect(exit).toBe(1);
  });

  test('a collection that can’t be written to is built all the same', async () => {
    const places = [collection, join(collection, 'reels'), join(collection, 'reels', 'low-water')];
    for (const place of places) await chmod(place, 0o555);
    const { exit } = await build();
    for (const place of places) await chmod(place, 0o755);
    expect(exit).toBe(0);
  });
});
