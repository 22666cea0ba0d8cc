import { mkdir, mkdtemp, readdir, readFile, rm, truncate, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import exifr from 'exifr';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type PublishedPhotograph, regionKey } from '#model/published-photograph.ts';
import type { Region } from '#model/region.ts';
import { cropBox } from '#publish/crop-box.ts';
import { measurePhotographs, publishPhotographs } from '#publish/photographs.ts';
import { cameraPhotograph, HIDDEN } from './made-photograph.ts';

const WIDE = { widthPx: 2200, heightPx: 1500 };
const LABEL: Region = { xPercent: 12.5, yPercent: 40, widthPercent: 30, heightPercent: 8 };
const OVER: Region = { xPercent: 80, yPercent: 40, widthPercent: 30, heightPercent: 8 };

let folder: string;
let camera: Buffer;
let into: string;
let published: PublishedPhotograph;

const file = (path: string) => ({ path, file: join(folder, path) });

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'photographs-'));
  into = join(folder, 'site');
  camera = await cameraPhotograph(WIDE.widthPx, WIDE.heightPx);
  await writeFile(join(folder, 'box-front.jpg'), camera);
  const result = await publish('box-front.jpg', [LABEL]);
  const found = result.photographs.get('box-front.jpg');
  if (found === undefined) throw new Error(JSON.stringify([...result.faults]));
  published = found;
}, 180_000);

afterAll(() => rm(folder, { recursive: true }));

const publish = (path: string, regions: readonly Region[], cache = 'cache', to = into) =>
  publishPhotographs([{ ...file(path), regions }], to, { cache: join(folder, cache) });

const measure = async (path: string, cache = 'cache') =>
  (await measurePhotographs([file(path)], { cache: join(folder, cache) })).get(path);

async function filesOf(root: string): Promise<string[]> {
  const found = await readdir(root, { recursive: true, withFileTypes: true });
  return found.flatMap((entry) => (entry.isFile() ? [join(entry.parentPath, entry.name)] : [])).sort();
}

describe('what is published of a photograph', () => {
  test('the original, as the camera left it, has everything that must go', async () => {
    const found = await exifr.parse(camera, { tiff: true, gps: true, xmp: true, iptc: true, icc: true });
    expect(found).toMatchObject({ ImageDescription: HIDDEN[0], Make: HIDDEN[1], Caption: HIDDEN[3] });
    expect(found.latitude).toBeCloseTo(51.5);
    expect(found.ProfileDescription).toBeDefined();
    for (const word of HIDDEN) expect(camera.includes(word)).toBe(true);
  });

  test('no published file has metadata, a thumbnail, a colour profile or a word of it', async () => {
    const files = await filesOf(into);
    expect(files.length).toBeGreaterThan(10);
    expect(files.filter((path) => !/\.(?:jpg|webp)$/.test(path))).toEqual([]);
    for (const path of files) {
      const bytes = await readFile(path);
      const { exif, xmp, iptc, icc, tifftagPhotoshop, orientation, comments } = await sharp(bytes).metadata();
      expect({ exif, xmp, iptc, icc, tifftagPhotoshop, orientation, comments }, path).toEqual({});
      if (path.endsWith('.jpg')) expect(await exifr.parse(bytes, true), path).not.toMatchObject({ Make: HIDDEN[1] });
      if (path.endsWith('.jpg')) expect(await exifr.thumbnail(bytes), path).toBeUndefined();
      for (const word of [...HIDDEN, 'Exif', 'Photoshop', 'GPS', 'ICC_PROFILE', 'xmpmeta']) {
        expect(bytes.includes(word), `${word} in ${path}`).toBe(false);
      }
    }
  });

  test('the same photograph beside four entries is made once, on a fresh cache too', async () => {
    const names = ['one.jpg', 'two.jpg', 'three.jpg', 'four.jpg'];
    for (const name of names) await writeFile(join(folder, name), camera);
    const wanted = names.map((name) => ({ ...file(name), regions: [LABEL] }));
    const result = await publishPhotographs(wanted, join(folder, 'twins'), { cache: join(folder, 'cache-of-twins') });
    expect([...result.photographs.keys()]).toEqual(names);
    expect(result.work).toMatchObject({ opened: 1, made: 2, reused: 6 });
  });

  test('no name says what the original was called', async () => {
    for (const path of await filesOf(into)) expect(path.slice(into.length)).not.toMatch(/box|front/);
    expect(published.sizes.map((size) => size.webp)).toEqual(
      Array.from({ length: 3 }, () => expect.stringMatching(/^photographs\/[0-9a-f]{20}\.webp$/)),
    );
  });

  test('it stands upright, in a few widths, and what its page is told is so', async () => {
    expect(published).toMatchObject(WIDE);
    expect(published.sizes.map((size) => size.widthPx)).toEqual([320, 640, 1280]);
    for (const size of published.sizes) {
      for (const path of [size.webp, size.jpeg]) {
        const { data, info } = await sharp(join(into, path)).raw().toBuffer({ resolveWithObject: true });
        expect([info.width, info.height]).toEqual([size.widthPx, size.heightPx]);
        const [red = 0, green = 0] = data;
        expect(red, 'the red corner is at the upper left').toBeGreaterThan(green + 100);
      }
    }
  });

  test('colours of a wide profile are turned into sRGB, not just stripped of it', async () => {
    // As the pattern was made, before the camera's profile: sRGB (220, 20, 20) in the corner.
    const [red = 0, green = 0, blue = 0] = await sharp(join(into, published.sizes[2]?.jpeg ?? ''))
      .raw()
      .toBuffer();
    for (const [value, made] of [
      [red, 220],
      [green, 20],
      [blue, 20],
    ] as const)
      expect(Math.abs(value - made)).toBeLessThan(5);
    // The same corner as the file has it, its profile not looked at.
    const [codedRed = 0, codedGreen = 0] = await sharp(camera, { ignoreIcc: true }).autoOrient().raw().toBuffer();
    expect(220 - codedRed).toBeGreaterThan(10);
    expect(codedGreen - 20).toBeGreaterThan(10);
  });

  test('a crop shows the pixels of its region, and no others', async () => {
    const crop = published.crops.get(regionKey(LABEL));
    const box = cropBox(LABEL, WIDE.widthPx, WIDE.heightPx);
    if (crop === undefined || box === undefined) throw new Error('no crop');
    expect([crop.widthPx, crop.heightPx]).toEqual([box.width, box.height]);
    const upright = sharp(camera).autoOrient().extract(box).toColourspace('srgb');
    const expected = await upright.raw().toBuffer();
    for (const path of [crop.webp, crop.jpeg]) {
      const shown = await sharp(join(into, path)).raw().toBuffer();
      expect(shown.length).toBe(expected.length);
      const worst = shown.reduce((most, value, at) => Math.max(most, Math.abs(value - (expected[at] ?? 0))), 0);
      // A pixel aside changes the pattern by less than this, so the mean is asked as well.
      expect(worst).toBeLessThan(24);
      const mean = shown.reduce((sum, value, at) => sum + Math.abs(value - (expected[at] ?? 0)), 0) / shown.length;
      expect(mean).toBeLessThan(2);
    }
  });

  test('its tiles put together are the photograph', async () => {
    const zoom = published.zoom;
    if (zoom === undefined) throw new Error('no tiles');
    const { tilePx, root } = zoom;
    const tile = (x: number, y: number) => {
      const [w, h] = [Math.min(tilePx, WIDE.widthPx - x), Math.min(tilePx, WIDE.heightPx - y)];
      return { input: join(into, root, `${x},${y},${w},${h}`, `${w},${h}`, '0', 'default.jpg'), left: x, top: y };
    };
    const [across, down] = [Math.ceil(WIDE.widthPx / tilePx), Math.ceil(WIDE.heightPx / tilePx)];
    const tiles = Array.from({ length: across * down }, (_, at) =>
      tile((at % across) * tilePx, Math.floor(at / across) * tilePx),
    );
    const size = { width: WIDE.widthPx, height: WIDE.heightPx };
    const joined = await sharp({ create: { ...size, channels: 3, background: '#000000' } })
      .composite(tiles)
      .removeAlpha()
      .raw()
      .toBuffer();
    const expected = await sharp(camera).autoOrient().toColourspace('srgb').raw().toBuffer();
    expect(joined.length).toBe(expected.length);
    const mean = joined.reduce((sum, value, at) => sum + Math.abs(value - (expected[at] ?? 0)), 0) / joined.length;
    expect(mean).toBeLessThan(2);
    const { widthPx, heightPx } = zoom.smallest;
    const small = await sharp(join(into, root, 'full', `${widthPx},${heightPx}`, '0', 'default.jpg')).metadata();
    expect([small.width, small.height]).toEqual([widthPx, heightPx]);
    const largest = await sharp(join(into, root, 'full', 'max', '0', 'default.jpg')).metadata();
    expect(largest.width).toBe(1280);
  });

  test('a photograph that its page shows whole has no tiles, and isn’t blown up', async () => {
    await sharp({ create: { width: 500, height: 300, channels: 3, background: '#557755' } })
      .png()
      .toFile(join(folder, 'small.png'));
    const small = (await publish('small.png', [])).photographs.get('small.png');
    expect(small?.zoom).toBeUndefined();
    expect(small?.sizes.map((size) => size.widthPx)).toEqual([320, 500]);
  });

  test.each(['webp', 'avif', 'tiff', 'png'] as const)('%s is taken too, grey or see-through', async (format) => {
    const path = `form.${format}`;
    const background = { r: 200, g: 30, b: 30, alpha: 0 };
    await sharp({ create: { width: 400, height: 200, channels: 4, background } })
      .toFormat(format, format === 'tiff' ? { compression: 'lzw' } : {})
      .toFile(join(folder, path));
    const jpeg = (await publish(path, [])).photographs.get(path)?.sizes[0]?.jpeg ?? '';
    // See-through becomes white paper, not black.
    expect((await sharp(join(into, jpeg)).raw().toBuffer())[0]).toBeGreaterThan(250);
  });
});

describe('a region', () => {
  test('that reaches outside is reported, and the rest is still made', async () => {
    const { outside, photographs } = await publish('box-front.jpg', [LABEL, OVER]);
    expect(outside).toEqual([{ path: 'box-front.jpg', region: OVER }]);
    expect([...(photographs.get('box-front.jpg')?.crops.keys() ?? [])]).toEqual([regionKey(LABEL)]);
  });
  test.each([
    // Worked by hand: each edge at its nearest pixel of 1000 × 500.
    [
      { xPercent: 12, yPercent: 40, widthPercent: 30, heightPercent: 8 },
      { left: 120, top: 200, width: 300, height: 40 },
    ],
    [
      { xPercent: 0, yPercent: 0, widthPercent: 100, heightPercent: 100 },
      { left: 0, top: 0, width: 1000, height: 500 },
    ],
    [
      { xPercent: 33.33, yPercent: 0, widthPercent: 66.67, heightPercent: 1 },
      { left: 333, top: 0, width: 667, height: 5 },
    ],
    [
      { xPercent: 99.99, yPercent: 50, widthPercent: 0.01, heightPercent: 0.01 },
      { left: 999, top: 250, width: 1, height: 1 },
    ],
  ])('%j covers whole pixels, at least one', (region, box) => {
    expect(cropBox(region, 1000, 500)).toEqual(box);
  });
});

describe('a photograph that can’t be used is said, and the others go on', () => {
  const bad: [string, () => Promise<Buffer>, RegExp, RegExp][] = [
    ['empty.jpg', async () => Buffer.alloc(0), /empty/, /again/],
    ['cut.jpg', async () => camera.subarray(0, camera.length / 2), /breaks off/, /again/],
    ['cut-short.jpg', async () => camera.subarray(0, camera.length - 60), /breaks off/, /again/],
    ['cut.png', async () => (await sharp(camera).png().toBuffer()).subarray(0, 4000), /breaks off/, /again/],
    ['text.jpg', async () => Buffer.from('Low Water, side 1'), /isn’t a JPEG/, /save it as JPEG/],
    [
      'drawing.jpg',
      async () => Buffer.from('<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"/>'),
      /isn’t a JPEG/,
      /JPEG/,
    ],
    ['phone.jpg', async () => Buffer.from('\0\0\0\x18ftypheic\0\0\0\0heicmif1', 'latin1'), /HEIC/, /export it as JPEG/],
    [
      'huge.png',
      async () => hugePng(30_000, 20_000),
      /30000 × 20000 pixels, over the limit of 400 million/,
      /smaller copy/,
    ],
    ['bent.png', async () => hugePng(100, 100), /breaks off/, /again/],
  ];
  test.each(bad)('%s', async (path, make, problem, action) => {
    await writeFile(join(folder, path), await make());
    expect(await measure(path)).toEqual({
      path,
      opens: false,
      problem: expect.stringMatching(problem),
      action: expect.stringMatching(action),
    });
    const both = await publishPhotographs(
      [file(path), file('box-front.jpg')].map((one) => ({ ...one, regions: [] })),
      into,
      {
        cache: join(folder, 'cache'),
      },
    );
    expect([...both.faults.keys()]).toEqual([path]);
    expect([...both.photographs.keys()]).toEqual(['box-front.jpg']);
  });
  test('one over 200 MB isn’t read', async () => {
    await writeFile(join(folder, 'large.jpg'), '');
    await truncate(join(folder, 'large.jpg'), 201 * 1024 * 1024);
    expect(await measure('large.jpg')).toMatchObject({
      opens: false,
      problem: 'It is 201 MB, over the limit of 200 MB.',
    });
  });
  test('one that isn’t there, and a folder, are said', async () => {
    await mkdir(join(folder, 'folder.jpg'));
    expect(await measure('folder.jpg')).toMatchObject({ opens: false, problem: expect.stringContaining('plain file') });
    expect(await measure('gone.jpg')).toMatchObject({ opens: false, problem: expect.stringContaining('ENOENT') });
  });
  test('a sound one is measured the right way up', async () => {
    expect(await measure('box-front.jpg')).toEqual({ path: 'box-front.jpg', opens: true, ...WIDE });
  });
});

/** A PNG whose header says a size and whose pixels are missing. Sizes and checksums as PNG (3rd ed.) 5.3 has them. */
async function hugePng(width: number, height: number): Promise<Buffer> {
  const { crc32, deflateSync } = await import('node:zlib');
  const chunk = (type: string, content: Buffer) => {
    const body = Buffer.concat([Buffer.from(type, 'latin1'), content]);
    const [size, check] = [Buffer.alloc(4), Buffer.alloc(4)];
    size.writeUInt32BE(content.length);
    check.writeUInt32BE(crc32(body));
    return Buffer.concat([size, body, check]);
  };
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  header.set([8, 2, 0, 0, 0], 8);
  const start = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  return Buffer.concat([
    start,
    chunk('IHDR', header),
    chunk('IDAT', deflateSync(Buffer.alloc(10))),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}
