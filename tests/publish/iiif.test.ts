import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { IIIF } from '@allmaps/iiif-parser';
import { presentation3StrictUpgrade } from '@iiif/parser/strict';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type PublishedPhotograph, regionKey } from '#model/published-photograph.ts';
import { baseAddress, iiifFiles } from '#publish/iiif.ts';
import { publishPhotographs } from '#publish/photographs.ts';
import { entriesOf, known, reel } from '../given/entries.ts';
import type { ReadManifest } from '../given/read-manifest.ts';
import { cameraPhotograph } from './made-photograph.ts';

const BASE = 'https://tapes.example/shown/';
const place = { file: 'reels/low-water.md', line: 1, column: 1, field: '' };
const region = { xPercent: 12.5, yPercent: 40, widthPercent: 30.3, heightPercent: 8 };
const outside = { ...region, xPercent: 90 };
const reading = { place, of: known('numbers.matrix'), photo: known('box-front.jpg'), written: known('HLX 22O7-A') };
const lowWater = reel('low-water', {
  title: known('<b>Low Water</b>, side 1'),
  kind: known('copy master'),
  set: known('<i>overseas</i>'),
  numbers: { matrix: known([known('HLX 2207-A')]) },
  photos: known([
    { place, file: known('box-front.jpg'), shows: known('box front') },
    { place, file: known('small.jpg') },
    { place, file: known('gone.jpg') },
  ]),
  readings: known([
    { ...reading, region: known(region), sure: known('likely') },
    { ...reading, region: known(outside) },
    { ...reading, of: known('title') },
  ]),
  rights: known('not the owner’s'),
});
const entries = entriesOf({ reels: [lowWater, reel('bare')] });

let folder: string;
let photographs: ReadonlyMap<string, PublishedPhotograph>;
let files: ReadonlyMap<string, string>;
let written: string;
let manifest: ReadManifest;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'iiif-'));
  await writeFile(join(folder, 'box-front.jpg'), await cameraPhotograph(1500, 1100));
  await writeFile(join(folder, 'small.jpg'), await cameraPhotograph(600, 400));
  const wanted = [
    { path: 'reels/box-front.jpg', file: join(folder, 'box-front.jpg'), regions: [region] },
    { path: 'reels/small.jpg', file: join(folder, 'small.jpg'), regions: [] },
  ];
  ({ photographs } = await publishPhotographs(wanted, folder, { cache: join(folder, 'cache') }));
  files = iiifFiles(entries, photographs, BASE);
  written = files.get('reels/low-water/manifest.json') ?? '';
  manifest = JSON.parse(written);
});
afterAll(() => rm(folder, { recursive: true }));

const zoom = () => {
  const found = photographs.get('reels/box-front.jpg')?.zoom;
  if (found === undefined) throw new Error('no tiles');
  return found;
};

describe('a manifest', () => {
  test('is taken by a strict reader of the standard without a warning', () => {
    const said = { warnings: [] as string[] };
    presentation3StrictUpgrade(JSON.parse(written), said);
    expect(said.warnings).toEqual([]);
  });
  test('that breaks the standard is not, so that the reader above means something', () => {
    const said = { warnings: [] as string[] };
    const broken = JSON.parse(written);
    broken.label = 'Low Water';
    broken.items[0].width = 12.5;
    presentation3StrictUpgrade(broken, said);
    expect(said.warnings).toHaveLength(2);
  });
  test('is taken by a second reader, which asks for tiles at each canvas', () => {
    const tiled = { ...manifest, items: manifest.items.slice(0, 1) };
    const parsed = IIIF.parse(tiled);
    expect([parsed.type, parsed.uri]).toEqual(['manifest', `${BASE}reels/low-water/manifest.json`]);
    expect(() => IIIF.parse({ ...tiled, items: [{ ...tiled.items[0], width: '1500' }] })).toThrow();
  });
  test('has what must be there (IIIF Presentation API 3.0, sections 3 and 5)', () => {
    // Rows C-152, C-517 to C-523 of the published values: required keys, canvas sizes, painting targets, plain labels.
    expect(manifest).toMatchObject({
      '@context': 'http://iiif.io/api/presentation/3/context.json',
      type: 'Manifest',
      label: { none: ['<b>Low Water</b>, side 1'] },
    });
    expect(manifest.id).toMatch(/^https?:\/\//);
    expect(manifest.items).toHaveLength(2);
    for (const canvas of manifest.items) {
      expect(canvas).toMatchObject({ type: 'Canvas', label: expect.anything() });
      expect(Number.isInteger(canvas.width) && canvas.width > 0 && Number.isInteger(canvas.height)).toBe(true);
      expect(canvas.id).not.toContain('#');
      expect(canvas.items[0].items[0]).toMatchObject({ motivation: 'painting', target: canvas.id });
    }
    expect(manifest.rights).toBeUndefined();
    expect(manifest.requiredStatement.value.en[0]).toMatch(/^not the owner’s\. Owning a tape is not owning the rights/);
  });
  test('gives each id once', () => {
    const ids = [
      ...JSON.stringify(manifest).matchAll(/"id":"([^"]+)","type":"(?:Manifest|Canvas|Annotation|AnnotationPage)"/g),
    ];
    expect(ids.length).toBeGreaterThan(8);
    expect(new Set(ids.map((id) => id[1])).size).toBe(ids.length);
  });
  test('shows a value that looks like HTML as the text that it is', () => {
    expect(JSON.stringify(manifest.metadata)).toContain('<span>&lt;i&gt;overseas&lt;/i&gt;</span>');
  });
  test('isn’t made for a reel without a photograph that opens', () => {
    expect([...files.keys()]).toEqual(['reels/low-water/manifest.json', `${zoom().root}/info.json`]);
  });
});

describe('a reading', () => {
  test('is an annotation whose region is the pixels of its crop', async () => {
    const [first, whole] = manifest.items[0].annotations[0].items;
    const [x, y, w, h] = /#xywh=(\d+),(\d+),(\d+),(\d+)$/.exec(first.target)?.slice(1).map(Number) ?? [];
    const crop = photographs.get('reels/box-front.jpg')?.crops.get(regionKey(region));
    expect([w, h]).toEqual([crop?.widthPx, crop?.heightPx]);
    const box = { left: x ?? -1, top: y ?? -1, width: w ?? 0, height: h ?? 0 };
    const expected = await sharp(join(folder, 'box-front.jpg'))
      .autoOrient()
      .extract(box)
      .toColourspace('srgb')
      .raw()
      .toBuffer();
    const shown = await sharp(join(folder, crop?.jpeg ?? ''))
      .raw()
      .toBuffer();
    const mean = shown.reduce((sum, value, at) => sum + Math.abs(value - (expected[at] ?? 0)), 0) / shown.length;
    expect(shown.length).toBe(expected.length);
    expect(mean).toBeLessThan(2);
    expect(whole.target).toBe(manifest.items[0].id);
  });
  test('says what is written, what it is of and how sure, and one whose region reaches outside is left out', () => {
    const { items } = manifest.items[0].annotations[0];
    expect(items).toHaveLength(2);
    expect(items[0].body.map((body) => body.value)).toEqual(['HLX 22O7-A', 'numbers.matrix: likely']);
    expect(items[1].body[1]?.value).toBe('title: how sure is not recorded');
    expect(manifest.items[1].annotations).toBeUndefined();
  });
});

describe('what a viewer is told of tiles', () => {
  test('is taken by a reader of the standard, and asks for files that are there', async () => {
    const information = JSON.parse(files.get(`${zoom().root}/info.json`) ?? '');
    // Rows C-526, C-524, C-525 and C-153: required keys; /full/max/0/default.jpg and each size listed must work.
    expect(information).toMatchObject({
      '@context': 'http://iiif.io/api/image/3/context.json',
      id: BASE + zoom().root,
      type: 'ImageService3',
      protocol: 'http://iiif.io/api/image',
      profile: 'level0',
      width: 1500,
      height: 1100,
    });
    const image = IIIF.parse(information);
    if (image.type !== 'image') throw new Error('not an image');
    const asked = image.tileZoomLevels.flatMap((level) =>
      Array.from({ length: level.columns * level.rows }, (_, at) =>
        image.getImageUrl(image.getTileImageRequest(level, at % level.columns, Math.floor(at / level.columns))),
      ),
    );
    const listed = information.sizes.map(
      ({ width, height }: { width: number; height: number }) =>
        `${information.id}/full/${width},${height}/0/default.jpg`,
    );
    const all = [...asked, ...listed, `${information.id}/full/max/0/default.jpg`];
    expect(all.length).toBeGreaterThan(5);
    for (const url of all) await sharp(join(folder, url.slice(BASE.length))).metadata();
    // `max` is the whole at the largest size within the limits (IIIF Image API 3.0, 4.2).
    const max = await sharp(join(folder, zoom().root, 'full', 'max', '0', 'default.jpg')).metadata();
    const scale = Math.min(information.maxWidth / 1500, information.maxHeight / 1100);
    expect([max.width, max.height]).toEqual([Math.round(1500 * scale), Math.round(1100 * scale)]);
  });
});

describe('the address that ids begin with', () => {
  test.each([
    ['https://tapes.example', 'https://tapes.example/'],
    ['http://tapes.example/shown', 'http://tapes.example/shown/'],
  ])('%s is one', (text, base) => expect(baseAddress(text)).toBe(base));
  test.each(['', '/shown/', 'file:///home/tapes/', 'ftp://tapes.example/', 'https://tapes.example/?a=1', 'tapes'])(
    '%j is none',
    (text) => expect(baseAddress(text)).toBeUndefined(),
  );
});
