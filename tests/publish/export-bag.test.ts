import { execFileSync } from 'node:child_process';
import { appendFile, mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { decodedPath, encodedPath, sealBag } from '#publish/export/bag.ts';
import { checkBag } from '#publish/export/bag-check.ts';
import { AlreadyThere, makeFolder } from '#publish/export/folder.ts';

let bag: string;
beforeEach(async () => {
  bag = await mkdtemp(join(tmpdir(), 'bag-'));
  await mkdir(join(bag, 'data/reels'), { recursive: true });
  await writeFile(join(bag, 'data/reels/low-water.md'), '---\ntitle: Low Water\nstatus: held\n---\n');
  await writeFile(join(bag, 'data/100% sure.txt'), 'sure');
  await sealBag(bag, { title: 'Tapes', date: '2026-04-01', about: 'A catalogue of 1 reel' });
});
afterEach(() => rm(bag, { recursive: true, force: true }));

const text = (name: string) => readFile(join(bag, name), 'utf8');

describe('a bag', () => {
  test('C-155, C-535: has bagit.txt, data/ and a manifest of every payload file (RFC 8493, 2.1)', async () => {
    const manifest = await text('manifest-sha512.txt');
    expect(manifest.trim().split('\n')).toHaveLength(2);
    expect(manifest).toMatch(/^[0-9a-f]{128} {2}data\/100%25 sure\.txt$/m);
    expect(await checkBag(bag)).toEqual({ complete: true, valid: true, faults: [], files: 2 });
  });

  test('C-536: bagit.txt is exactly two lines, without a byte order mark (RFC 8493, 2.1.1)', async () => {
    expect(await text('bagit.txt')).toBe('BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n');
    await writeFile(join(bag, 'bagit.txt'), '\ufeffBagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n');
    expect((await checkBag(bag)).complete).toBe(false);
  });

  test('C-537: with a payload file that the manifest lacks it is neither complete nor valid', async () => {
    await writeFile(join(bag, 'data/new.txt'), 'new');
    expect(await checkBag(bag)).toMatchObject({ complete: false, valid: false });
  });

  test('C-538: with a payload file missing it is neither complete nor valid', async () => {
    await rm(join(bag, 'data/reels/low-water.md'));
    expect(await checkBag(bag)).toMatchObject({ complete: false, valid: false });
  });

  test('C-539: with a wrong checksum it is complete and not valid', async () => {
    const file = join(bag, 'data/reels/low-water.md');
    const was = await readFile(file);
    was[5] = (was[5] ?? 0) ^ 1;
    await writeFile(file, was);
    const verdict = await checkBag(bag);
    expect(verdict).toMatchObject({ complete: true, valid: false });
    expect(verdict.faults.join()).toContain('data/reels/low-water.md');
  });

  test('C-540: its manifests are of SHA-512, named in lower case (RFC 8493, 2.4)', async () => {
    const manifest = await text('tagmanifest-sha512.txt');
    expect(manifest).toContain('  bagit.txt\n');
    expect(manifest).toContain('  manifest-sha512.txt\n');
  });

  test('C-541: line feed, carriage return and percent in a name are encoded (RFC 8493, 2.1.3)', () => {
    expect(encodedPath('data/a\nb\rc%d')).toBe('data/a%0Ab%0Dc%25d');
    expect(decodedPath(encodedPath('data/a\nb\rc%0Ad'))).toBe('data/a\nb\rc%0Ad');
  });

  test('C-542: Payload-Oxum is octets and files (RFC 8493, 2.2.2)', async () => {
    // 4 + 17 + 13 + 4 octets of the entry, and 4 of the other file.
    expect(await text('bag-info.txt')).toMatch(/^Payload-Oxum: 42\.2$/m);
    await writeFile(join(bag, 'bag-info.txt'), 'Payload-Oxum: 47.2\n');
    expect((await checkBag(bag)).faults.join()).toContain('47.2');
  });

  test('coreutils agree with the manifest', () => {
    const said = execFileSync('sh', ['-c', 'grep -v % manifest-sha512.txt | sha512sum -c'], {
      cwd: bag,
      encoding: 'utf8',
    });
    expect(said).toContain('data/reels/low-water.md: OK');
  });

  test('a line that leads out of the bag is a fault, and isn’t opened', async () => {
    await appendFile(join(bag, 'manifest-sha512.txt'), `${'0'.repeat(128)}  data/../../etc/passwd\n`);
    expect((await checkBag(bag)).faults.join()).toContain('names no file of the bag');
  });
});

describe('a folder that is made whole', () => {
  test('leaves nothing behind when it can’t be finished', async () => {
    const out = join(bag, 'out');
    await expect(makeFolder(out, () => Promise.reject(new Error('full')))).rejects.toThrow('full');
    expect((await checkBag(bag)).faults).toEqual([]);
  });

  test('never replaces what is there', async () => {
    await expect(makeFolder(join(bag, 'data'), () => Promise.resolve())).rejects.toBeInstanceOf(AlreadyThere);
  });
});
