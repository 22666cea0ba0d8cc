import { beforeAll, describe, expect, test } from 'vitest';
import type { PublishedPhotograph } from '#model/published-photograph.ts';
import { cropBox } from '#publish/crop-box.ts';
import { baseAddress, iiifFiles } from '#publish/iiif.ts';
import { exportAs } from '../../src/commands/export.ts';
import { UsageError } from '../../src/commands/io.ts';
import { entriesOf, known, reel } from '../given/entries.ts';
import type { ReadManifest } from '../given/read-manifest.ts';

const place = { file: 'reels/low-water.md', line: 1, column: 1, field: '' };
const picture: PublishedPhotograph = {
  widthPx: 4000,
  heightPx: 3000,
  sizes: [{ widthPx: 1280, heightPx: 960, webp: 'p/a.webp', jpeg: 'p/a.jpg' }],
  crops: new Map(),
};
const lowWater = reel('low-water', {
  title: known('Low Water'),
  photos: known([{ place, file: known('front.jpg') }]),
  readings: known([
    {
      place,
      of: known('title'),
      photo: known('front.jpg'),
      written: known('LOW WATER'),
      region: known({ xPercent: 12.5, yPercent: 40.3, widthPercent: 30, heightPercent: 8 }),
    },
  ]),
  rights: known('free words'),
});

let manifest: ReadManifest;
beforeAll(() => {
  const files = iiifFiles(
    entriesOf({ reels: [lowWater] }),
    new Map([['reels/front.jpg', picture]]),
    'https://tapes.example/',
  );
  manifest = JSON.parse(files.get('reels/low-water/manifest.json') ?? '');
});

describe('what the standards for viewers ask', () => {
  test('C-518: a label in no recorded language is under "none"', () =>
    expect(manifest.label).toEqual({ none: ['Low Water'] }));

  test('C-519, C-521: ids are http addresses, a canvas has no fragment and is whole pixels, no list is empty', () => {
    const [canvas] = manifest.items;
    expect(manifest.id).toMatch(/^https:\/\//);
    expect(canvas).toMatchObject({ type: 'Canvas', width: 4000, height: 3000 });
    expect(canvas.id).not.toContain('#');
    expect(manifest.items.length * manifest.label.none.length).toBeGreaterThan(0);
  });

  test('C-520: the painting annotation has its canvas for its target', () => {
    const [canvas] = manifest.items;
    expect(canvas.items[0].items[0]).toMatchObject({ type: 'Annotation', motivation: 'painting', target: canvas.id });
  });

  test('C-522: free words about rights are a required statement, never "rights"', () => {
    expect(manifest.rights).toBeUndefined();
    expect(manifest.requiredStatement.value.en[0]).toContain('free words');
  });

  test('C-527: without the owner’s address nothing is written, and it is asked for', async () => {
    expect(baseAddress('file:///home/tapes')).toBeUndefined();
    const io = {
      out: () => {},
      err: () => {},
      cwd: process.cwd(),
      now: new Date('2026-04-01'),
      env: {},
      terminal: false,
    };
    const asked = exportAs(
      ['--as', 'iiif', '--out', '/nowhere/x', '--collection', 'tests/collections/everything-sound'],
      io,
    );
    await expect(asked).rejects.toBeInstanceOf(UsageError);
    await expect(asked).rejects.toThrow('--base https://');
  });

  test('C-532: 12,40,30,8 percent of 4000 × 3000 is 480,1200,1200,240 pixels', () => {
    const region = { xPercent: 12, yPercent: 40, widthPercent: 30, heightPercent: 8 };
    expect(cropBox(region, 4000, 3000)).toEqual({ left: 480, top: 1200, width: 1200, height: 240 });
  });

  test('C-533: an annotation has an id, its type and a target', () => {
    const [annotation] = manifest.items[0].annotations[0].items;
    expect(annotation).toMatchObject({
      id: expect.stringMatching(/^https:/),
      type: 'Annotation',
      target: expect.any(String),
    });
  });

  test('C-154: a published region is whole numbers, by the grammar of Media Fragments (4.2.2)', () => {
    // Entries count percent with decimals; what is published counts whole pixels, so that nothing is rounded to percents.
    const [annotation] = manifest.items[0].annotations[0].items;
    expect(annotation.target).toMatch(/#xywh=\d+,\d+,\d+,\d+$/);
  });

  test('C-534: a region that is a selector would have to name its syntax; ours is a fragment of the canvas’s id', () => {
    expect(JSON.stringify(manifest)).not.toContain('FragmentSelector');
  });
});
