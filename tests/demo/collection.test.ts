import { globSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import { CANARY } from './camera.ts';

const COLLECTION = join(import.meta.dirname, '../../collection');
const PHOTOGRAPHS = globSync('reels/*/*.jpg', { cwd: COLLECTION }).sort();
const at = (path: string) => join(COLLECTION, path);

/** The value's offset or inline value of a tag in the first directory. Source: TIFF 6.0, section 2; Exif 2.3, 4.6.3. */
function tagOf(exif: Buffer, wanted: number): number | undefined {
  const tiff = exif.subarray(6);
  const little = tiff.toString('latin1', 0, 2) === 'II';
  const short = (i: number) => (little ? tiff.readUInt16LE(i) : tiff.readUInt16BE(i));
  const long = (i: number) => (little ? tiff.readUInt32LE(i) : tiff.readUInt32BE(i));
  const directory = long(4);
  for (let i = 0; i < short(directory); i += 1) {
    const entry = directory + 2 + i * 12;
    if (short(entry) === wanted) return long(entry + 8);
  }
  return undefined;
}
const GPS = 0x8825;

describe('the demo photographs', () => {
  test('are there, and small enough to be cloned with the project', () => {
    expect(PHOTOGRAPHS.length).toBeGreaterThan(30);
    const files = globSync('**/*.*', { cwd: COLLECTION });
    expect(files.reduce((sum, path) => sum + statSync(at(path)).size, 0)).toBeLessThan(12_000_000);
  });

  test.each(PHOTOGRAPHS)('%s carries what a telephone writes: a position, a maker, and the canary', async (path) => {
    const { exif } = await sharp(at(path)).metadata();
    expect(exif?.includes('Lumeira')).toBe(true);
    expect(exif?.includes(CANARY)).toBe(true);
    expect(tagOf(exif ?? Buffer.alloc(20), GPS)).toBeGreaterThan(0);
  });

  test('have among them one with XMP and IPTC, one in another colour space, one on its side, one to zoom into', async () => {
    const front = await sharp(at('reels/caderno-side-1/box-front.jpg')).metadata();
    expect(front.xmp?.includes(CANARY)).toBe(true);
    expect(front.iptc?.includes(CANARY)).toBe(true);
    expect(front.icc?.includes('s\0P\x003')).toBe(true); // its name, in UTF-16
    expect(front.width).toBeGreaterThanOrEqual(4000);
    const turned = await sharp(at('reels/lanterna-side-a/box-front.jpg')).metadata();
    expect([turned.orientation, turned.width < turned.height]).toEqual([6, true]);
  });
});

test('the climate logs are a year long and under 600 kB', () => {
  for (const [path, rows] of [
    ['places/spare-room/spare-room.csv', 8760],
    ['places/loft/loft.csv', 17_057],
  ] as const) {
    expect(readFileSync(at(path), 'utf8').trimEnd().split('\n').length - 1).toBe(rows);
    expect(statSync(at(path)).size).toBeLessThan(600_000);
  }
});
