import { globSync } from 'node:fs';
import { mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { build } from '../../src/commands/build.ts';
import { UsageError } from '../../src/commands/io.ts';
import { cameraPhotograph } from './made-photograph.ts';

const ENTRY = `---
title: Low Water, side 1
status: held
photos: [{ file: box.jpg, shows: box front }]
readings: [{ of: title, photo: box.jpg, region: "xywh=percent:10,10,40,10", written: LOW WATER, sure: certain }]
---
`;

describe('a site for viewers elsewhere', () => {
  let folder: string;
  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), 'tailout-iiif-'));
    await mkdir(join(folder, 'tapes', 'reels', 'low-water'), { recursive: true });
    await writeFile(join(folder, 'tapes', 'reels', 'low-water', 'index.md'), ENTRY);
    await writeFile(join(folder, 'tapes', 'reels', 'low-water', 'box.jpg'), await cameraPhotograph(2200, 1500));
  });
  afterAll(() => rm(folder, { recursive: true, force: true }));

  const built = async (out: string, ...more: readonly string[]) => {
    const io = {
      out: () => undefined,
      err: () => undefined,
      cwd: resolve(import.meta.dirname, '../..'),
      now: new Date(),
      env: {},
      terminal: false,
    };
    const at = ['--collection', join(folder, 'tapes'), '--out', join(folder, out), '--cache', join(folder, 'cache')];
    expect(await build([...at, '--today', '2026-03-20', ...more], io)).toBe(0);
    return join(folder, out);
  };

  test('has an info.json beside each set of tiles, and a manifest a reel, whose ids are where they stand', async () => {
    const site = await built('whole', '--base', 'https://tapes.example/mine/');
    const [path = '', ...others] = globSync('photographs/*/info.json', { cwd: site });
    expect(others).toEqual([]);
    const information = JSON.parse(await readFile(join(site, path), 'utf8')) as { id: string; profile: string };
    expect(information).toMatchObject({
      id: `https://tapes.example/mine/${path.replace('/info.json', '')}`,
      profile: 'level0',
      width: 2200,
      height: 1500,
    });
    const manifest = await readFile(join(site, 'reels/low-water/manifest.json'), 'utf8');
    expect(JSON.parse(manifest)).toMatchObject({ id: 'https://tapes.example/mine/reels/low-water/manifest.json' });
    // What it asks for lies there.
    const asked = [...manifest.matchAll(/"(https:\/\/tapes\.example\/mine\/photographs\/[^"#]+\.jpg)"/g)];
    expect(asked.length).toBeGreaterThan(0);
    for (const [, address = ''] of asked)
      expect(globSync(address.replace('https://tapes.example/mine/', ''), { cwd: site }), address).toHaveLength(1);
    // Its pages stand under the same part of the address.
    expect(await readFile(join(site, 'index.html'), 'utf8')).toContain('href="/mine/reels/low-water/"');
  });

  test('is a site without them where its address isn’t known', async () => {
    const site = await built('plain', '--base', '/mine/');
    expect(globSync('**/{info,manifest}.json', { cwd: site })).toEqual([]);
    expect(globSync('photographs/*/full', { cwd: site })).toHaveLength(1);
  });

  test('refuses an address that is neither', async () => {
    await expect(built('none', '--base', 'ftp://tapes.example/')).rejects.toThrow(UsageError);
  });
});
