import { globSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import exifr from 'exifr';
import sharp from 'sharp';
import { describe, expect } from 'vitest';
import { test } from './harness.ts';

const COLLECTION = resolve(import.meta.dirname, '../../collection');
const originals = globSync('**/*.{jpg,jpeg,png,webp}', { cwd: COLLECTION }).sort();

describe('the photographs of the demo', () => {
  test('were taken by a camera that knew where it was', async () => {
    expect(originals.length).toBeGreaterThan(5);
    const found = await Promise.all(originals.map((path) => exifr.gps(join(COLLECTION, path)).catch(() => undefined)));
    expect(found.filter((position) => position !== undefined).length).toBeGreaterThan(0);
  });

  test('are published without EXIF, position, XMP, IPTC, thumbnail or colour profile', async ({ demo }) => {
    const files = globSync('**/*.{jpg,webp,png,avif}', { cwd: demo.folder });
    expect(files.length).toBeGreaterThan(originals.length * 6);
    for (const path of files) {
      const bytes = await readFile(join(demo.folder, path));
      const { exif, xmp, iptc, icc, tifftagPhotoshop, comments } = await sharp(bytes).metadata();
      expect({ exif, xmp, iptc, icc, tifftagPhotoshop, comments }, path).toEqual({});
      if (!path.endsWith('.jpg')) continue;
      expect(await exifr.gps(bytes), path).toBeUndefined();
      expect(await exifr.thumbnail(bytes), path).toBeUndefined();
    }
  });

  test('aren’t there as they came, under their names or others', async ({ demo }) => {
    const names = new Set(originals.map((path) => path.split('/').at(-1)));
    const published = globSync('**/*', { cwd: demo.folder, withFileTypes: true }).filter((file) => file.isFile());
    expect(published.filter((file) => names.has(file.name)).map((file) => file.name)).toEqual([]);
    const bytes = new Set(
      await Promise.all(
        published.map(async (file) => (await readFile(join(file.parentPath, file.name))).toString('base64')),
      ),
    );
    for (const path of originals)
      expect(bytes.has((await readFile(join(COLLECTION, path))).toString('base64')), path).toBe(false);
  });

  test('hold their place on the page before they come, and each is shown', async ({ demo, open }) => {
    const pages = globSync('reels/*/index.html', { cwd: demo.folder }).sort();
    const withPhotographs: string[] = [];
    for (const path of pages)
      if ((await readFile(join(demo.folder, path), 'utf8')).includes('/photographs/')) withPhotographs.push(path);
    expect(withPhotographs.length).toBeGreaterThan(3);
    for (const path of withPhotographs.slice(0, 4)) {
      const page = await open(path.replace(/index\.html$/, ''));
      const pictures = page.locator('img');
      for (let at = 0; at < (await pictures.count()); at += 1) {
        const picture = pictures.nth(at);
        if (!(await picture.isVisible())) continue;
        await picture.scrollIntoViewIfNeeded();
        await expect.poll(() => picture.evaluate((img) => (img as HTMLImageElement).naturalWidth)).toBeGreaterThan(0);
        expect(await picture.getAttribute('width'), path).toMatch(/^\d+$/);
        expect(await picture.getAttribute('height'), path).toMatch(/^\d+$/);
        expect(await picture.getAttribute('alt'), path).not.toBeNull();
      }
    }
  });
});
