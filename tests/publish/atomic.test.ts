import { chmod, lstat, mkdtemp, readdir, readFile, rm, stat, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { writeNew, writeWhole } from '#publish/atomic.ts';

let folder: string;
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'atomic-'));
});
afterEach(() => rm(folder, { recursive: true }));

describe('writing a file whole', () => {
  test('replaces it, keeps its permissions, and leaves nothing beside it', async () => {
    const path = join(folder, 'low-water.md');
    await writeFile(path, 'old');
    await chmod(path, 0o640);
    await writeWhole(path, 'new');
    expect(await readFile(path, 'utf8')).toBe('new');
    expect((await stat(path)).mode & 0o777).toBe(0o640);
    expect(await readdir(folder)).toEqual(['low-water.md']);
  });
  test('goes through a link to the file behind it', async () => {
    await writeFile(join(folder, 'real.md'), 'old');
    await symlink('real.md', join(folder, 'link.md'));
    await writeWhole(join(folder, 'link.md'), 'new');
    expect((await lstat(join(folder, 'link.md'))).isSymbolicLink()).toBe(true);
    expect(await readFile(join(folder, 'real.md'), 'utf8')).toBe('new');
  });
  test('into a folder that isn’t there fails, and a name of 255 bytes works', async () => {
    await expect(writeWhole(join(folder, 'none', 'x.md'), 'new')).rejects.toThrow('ENOENT');
    const long = join(folder, `${'é'.repeat(126)}.md`);
    await writeWhole(long, 'new');
    expect(await readFile(long, 'utf8')).toBe('new');
  });
});

describe('writing a new file', () => {
  test('never touches one that is there', async () => {
    const path = join(folder, 'low-water.md');
    expect(await writeNew(path, 'first')).toBe(true);
    expect(await writeNew(path, 'second')).toBe(false);
    expect(await readFile(path, 'utf8')).toBe('first');
    expect(await readdir(folder)).toEqual(['low-water.md']);
  });
  test('of many at once exactly one is written', async () => {
    const path = join(folder, 'low-water.md');
    const written = await Promise.all(Array.from({ length: 20 }, (_, at) => writeNew(path, `${at}`)));
    expect(written.filter(Boolean)).toHaveLength(1);
    expect(await readFile(path, 'utf8')).toBe(String(written.indexOf(true)));
  });
});
