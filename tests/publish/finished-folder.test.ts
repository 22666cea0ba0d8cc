import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { lstat, lutimes, mkdir, mkdtemp, readdir, readFile, readlink, rm, symlink, writeFile } from 'node:fs/promises';
import { hostname, tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { HeldElsewhere } from '#publish/build-lock.ts';
import { NotOurs, replaceWhole } from '#publish/finished-folder.ts';

let folder: string;
let out: string;
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'finished-'));
  out = join(folder, 'dist');
});
afterEach(() => rm(folder, { recursive: true }));

const page = (text: string) => (into: string) => writeFile(join(into, 'index.html'), text);
const shown = () => readFile(join(out, 'index.html'), 'utf8');
const lockOf = (pid: number, host = hostname(), began = '') => JSON.stringify({ pid, host, began });

describe('a finished folder', () => {
  test('is a link to a folder beside it, and the old one goes when the new one stands', async () => {
    await replaceWhole(out, page('first'));
    const first = await readlink(out);
    expect(await shown()).toBe('first');
    await replaceWhole(out, page('second'));
    expect(await shown()).toBe('second');
    expect(await readlink(out)).not.toBe(first);
    expect((await readdir(folder)).sort()).toEqual([await readlink(out), 'dist']);
  });
  test('stays as it was when making the new one fails, with nothing left over', async () => {
    await replaceWhole(out, page('good'));
    const full = replaceWhole(out, async (into) => {
      await page('half')(into);
      throw Object.assign(new Error('ENOSPC: no space left on device'), { code: 'ENOSPC' });
    });
    await expect(full).rejects.toThrow('ENOSPC');
    expect(await shown()).toBe('good');
    expect(await readdir(folder)).toHaveLength(2);
  });
  test('is made in a folder that isn’t there yet, under a name as long as a name can be', async () => {
    out = join(folder, 'a', 'b', 'd'.repeat(255));
    await replaceWhole(out, page('long'));
    await replaceWhole(out, page('longer'));
    expect(await shown()).toBe('longer');
  });
  test('leaves a neighbour with a like name alone', async () => {
    const neighbour = join(folder, 'dist-2');
    await replaceWhole(neighbour, page('neighbour'));
    await replaceWhole(out, page('mine'));
    expect(await readFile(join(neighbour, 'index.html'), 'utf8')).toBe('neighbour');
  });
  test('takes the place of an empty folder', async () => {
    await mkdir(out);
    await replaceWhole(out, page('new'));
    expect(await shown()).toBe('new');
  });
  test.each([
    [
      'a folder with someone’s files in it',
      async () => {
        await mkdir(out);
        await writeFile(join(out, 'mine.txt'), 'mine');
      },
    ],
    ['a file', () => writeFile(out, 'mine')],
    [
      'a link to a folder of someone’s',
      async () => {
        await mkdir(join(folder, 'mine'));
        await symlink('mine', out);
      },
    ],
    ['a link that leads nowhere', () => symlink('nowhere', out)],
  ])('is refused over %s, which stays', async (_what, prepare) => {
    await prepare();
    const before = [await readdir(folder, { recursive: true }), (await lstat(out)).mtimeMs];
    let made = false;
    const refused = replaceWhole(out, async () => {
      made = true;
    });
    await expect(refused).rejects.toThrow(NotOurs);
    await expect(refused).rejects.toThrow(/wasn't made by this program.*--out/);
    expect([await readdir(folder, { recursive: true }), (await lstat(out)).mtimeMs]).toEqual(before);
    expect(made).toBe(false);
  });
  test('where links can’t be replaced, is a real folder, still whole or not at all', async () => {
    await replaceWhole(out, page('first'), { byLink: false });
    await replaceWhole(out, page('second'), { byLink: false });
    expect((await lstat(out)).isDirectory()).toBe(true);
    expect(await shown()).toBe('second');
    const failing = replaceWhole(out, () => Promise.reject(new Error('stopped')), { byLink: false });
    await expect(failing).rejects.toThrow('stopped');
    expect(await shown()).toBe('second');
    expect(await readdir(folder)).toEqual(['dist']);
  });
});

describe('two builds at once', () => {
  test('the second waits, says for whom, and then makes its own', async () => {
    const said: string[] = [];
    const order: string[] = [];
    const slow = replaceWhole(out, async (into) => {
      await pause(300);
      await page('first')(into);
      order.push('first');
    });
    await pause(100);
    const waiting = (sentence: string) => said.push(sentence);
    const second = replaceWhole(
      out,
      async (into) => {
        await page('second')(into);
        order.push('second');
      },
      { waiting },
    );
    await Promise.all([slow, second]);
    expect(order).toEqual(['first', 'second']);
    expect(said).toEqual([`Another program is writing there (process ${process.pid}). Waiting until it is done.`]);
    expect(await shown()).toBe('second');
  });
  test('ten at once give one of them, whole', async () => {
    await Promise.all(Array.from({ length: 10 }, (_, at) => replaceWhole(out, page(`${at}`))));
    expect(await shown()).toMatch(/^\d$/);
    expect(await readdir(folder)).toHaveLength(2);
  });
  test.each([
    ['of a program that is gone', () => lockOf(2 ** 22 + 1)],
    ['of an earlier program that had this one’s number', () => lockOf(process.pid, hostname(), 'another start 1')],
    ['that was cut short', () => '{"pid": 1'],
  ])('a lock %s is taken over', async (_whose, lock) => {
    await writeFile(join(folder, '.tailout-dist.lock'), lock());
    await replaceWhole(out, page('mine'));
    expect(await shown()).toBe('mine');
    expect(await readdir(folder)).toHaveLength(2);
  });
  test('one from another machine is refused, naming the file to delete', async () => {
    await writeFile(join(folder, '.tailout-dist.lock'), lockOf(1, 'another-machine'));
    const refused = replaceWhole(out, page('mine'));
    await expect(refused).rejects.toThrow(HeldElsewhere);
    await expect(refused).rejects.toThrow(/another-machine.*delete .*\.tailout-dist\.lock/);
  });
});

test('a program killed at any moment leaves the last whole folder or the new one', async () => {
  const program = fileURLToPath(new URL('./endless-writer.ts', import.meta.url));
  const moments = fc.sample(fc.integer({ min: 0, max: 60 }), { numRuns: 25, seed: 7 });
  let next = 0;
  for (const moment of moments) {
    const child = spawn(process.execPath, [program, out, String(next)], { stdio: ['ignore', 'pipe', 'inherit'] });
    let printed = '';
    child.stdout.on('data', (text) => {
      printed += String(text);
    });
    // Killed while it is at work: the first is done, and the moment falls into one of the next.
    await once(child.stdout, 'data');
    await pause(moment);
    child.kill('SIGKILL');
    await once(child, 'close');
    const done = Number(printed.trim().split('\n').at(-1));
    const pages = await Promise.all(
      (await readdir(out)).map((name) => readFile(join(out, name, 'index.html'), 'utf8')),
    );
    expect(pages).toHaveLength(40);
    expect(new Set(pages).size).toBe(1);
    // The number is printed after the link was replaced: the one that stands may be one further.
    expect([done, done + 1]).toContain(Number(pages[0]));
    next = done + 10;
  }
  // What the killed ones left goes with the next build, parts of a lock only when they are surely nobody's.
  for (const name of await readdir(folder)) if (name.endsWith('.tmp')) await lutimes(join(folder, name), 0, 0);
  await replaceWhole(out, page('after'));
  expect((await readdir(folder)).sort()).toEqual([await readlink(out), 'dist']);
}, 180_000);
