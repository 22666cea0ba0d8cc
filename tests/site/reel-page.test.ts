import { describe, expect } from 'vitest';
import { test } from './harness.ts';

const REEL = 'reels/caderno-side-1/';
const PHONE_SIZE = { width: 360, height: 740 };

describe('the sheet of a reel', () => {
  test('leads from a fact to its reading, and from the reading to the region on the photograph', async ({ open }) => {
    const page = await open(REEL);
    const matrix = page.locator('.form > div', { hasText: 'Matrix' });
    await matrix.locator('a.reg').click();
    const reading = page.locator('.ev > li:target');
    expect(await reading.locator('.as-written').first().textContent()).toContain('WQX 4471');
    expect(await reading.locator('.sure').textContent()).toContain('certain');
    await reading.locator('a.reg').click();
    expect(await page.locator('.rg:target').count()).toBe(1);
  });

  test('shows beside a reading the crop that says what is written', async ({ open }) => {
    const page = await open(REEL);
    const crop = page.locator('.ev > li', { hasText: 'WQX 4471' }).first().locator('img.crop');
    await crop.scrollIntoViewIfNeeded();
    expect(await crop.getAttribute('alt')).toBe('Says: WQX 4471');
    await expect.poll(() => crop.evaluate((image: HTMLImageElement) => image.naturalWidth)).toBeGreaterThan(20);
  });

  test('lights the region when its reading is reached by keyboard, and the reading when the region is', async ({
    open,
  }) => {
    const page = await open(REEL);
    await page.locator('#e4 a.reg').focus();
    expect(await page.locator('#r4').getAttribute('class')).toContain('lit');
    await page.locator('#r4').focus();
    expect(await page.locator('#e4').getAttribute('class')).toContain('lit');
  });

  test('opens a worked figure to its inputs with their lines, its formula and its source', async ({ open }) => {
    const page = await open(REEL);
    const worked = page.locator('details.wk', { hasText: 'Length of the tape' }).first();
    await worked.locator('summary').press('Enter');
    const told = await worked.locator('.wk-in').textContent();
    expect(told).toContain('19:26');
    expect(told).toMatch(/reels\/caderno-side-1\/index\.md, line \d+/);
    expect(told).toContain('L = v·t');
    expect(told).toContain('Source');
  });

  test('opens a photograph large by keyboard, zooms, and gives the focus back', async ({ open }) => {
    const page = await open(REEL);
    const opener = page.locator('a.larger').first();
    await opener.focus();
    await page.keyboard.press('Enter');
    const canvas = page.locator('dialog.zoom canvas');
    await canvas.waitFor();
    // Something other than nothing is painted, and more of it after coming nearer.
    const painted = () =>
      canvas.evaluate((drawn: HTMLCanvasElement) => {
        const sample = document.createElement('canvas');
        [sample.width, sample.height] = [40, 40];
        const context = sample.getContext('2d', { willReadFrequently: true });
        context?.drawImage(drawn, 0, 0, 40, 40);
        const { data } = context?.getImageData(0, 0, 40, 40) ?? { data: [] };
        let opaque = 0;
        for (let at = 3; at < data.length; at += 4) if (data[at] !== 0) opaque += 1;
        return opaque / (40 * 40);
      });
    await expect.poll(painted, { timeout: 8000 }).toBeGreaterThan(0.2);
    const before = await painted();
    await page.keyboard.press('+');
    await page.keyboard.press('+');
    await expect.poll(painted, { timeout: 8000 }).toBeGreaterThan(before);
    await page.keyboard.press('Escape');
    await expect.poll(() => page.locator('dialog.zoom').count()).toBe(0);
    expect(await opener.evaluate((link) => link === document.activeElement)).toBe(true);
  });

  test('leads by the Tab key alone through every photograph, its regions and the way to see it large', async ({
    open,
  }) => {
    const page = await open(REEL);
    const large = await page.locator('a.larger').count();
    expect(large).toBeGreaterThan(4);
    const first = page.locator('a.rg').first();
    await first.focus();
    const reached = new Set([await first.getAttribute('id')]);
    let opened = 0;
    for (let presses = 0; presses < 150 && opened < large; presses += 1) {
      await page.keyboard.press('Tab');
      const [id = '', isLarge] = await page.evaluate(() => {
        const focused = document.activeElement;
        return [focused?.id, focused?.classList.contains('larger')] as const;
      });
      if (/^r\d+$/.test(id)) reached.add(id);
      if (isLarge === true) opened += 1;
    }
    expect(opened).toBe(large);
    expect(reached.size).toBe(await page.locator('a.rg').count());
    await page.locator('#r4').focus();
    await page.keyboard.press('Enter');
    expect(await page.locator('.ev > li:target').getAttribute('id')).toBe('e4');
  });

  test('leads to the large picture where scripts are off', async ({ open, demo }) => {
    const page = await open(REEL, { javaScriptEnabled: false });
    const to = await page.locator('a.larger').first().getAttribute('href');
    const reply = await page.request.get(new URL(to ?? '', demo.address).href);
    expect(reply.headers()['content-type']).toBe('image/jpeg');
  });

  test('keeps still while its photographs come', async ({ open }) => {
    const page = await open(REEL, { viewport: { width: 360, height: 740 } });
    const shift = await page.evaluate(
      () =>
        new Promise<number>((resolve) => {
          let sum = 0;
          new PerformanceObserver((list) => {
            for (const entry of list.getEntries()) sum += (entry as PerformanceEntry & { value: number }).value;
          }).observe({ type: 'layout-shift', buffered: true });
          for (const image of document.querySelectorAll('img')) image.loading = 'eager';
          setTimeout(() => resolve(sum), 1500);
        }),
    );
    expect(shift).toBeLessThan(0.02);
  });

  test('never says to play a tape whose condition leaves a question open', async ({ open }) => {
    const page = await open('reels/white-box/');
    expect(await page.locator('#playing').textContent()).toContain('not before section 7 is settled');
  });
});

describe('what is long', () => {
  const PHONE = { viewport: PHONE_SIZE };

  test('is one line on a telephone, and opens by keyboard', async ({ open }) => {
    const page = await open(REEL, PHONE);
    const fold = page.locator('#contents details.unfold').first();
    const figure = fold.locator('details.wk').first();
    expect(await figure.isVisible()).toBe(false);
    await fold.locator('summary').first().press('Enter');
    expect(await figure.isVisible()).toBe(true);
  });

  test('is simply there on a wide screen, without a script too, and on paper', async ({ open }) => {
    const shown = (page: Awaited<ReturnType<typeof open>>) =>
      page
        .locator('details.unfold')
        .evaluateAll((folds) =>
          folds.map((fold) => [
            (fold.querySelector('summary')?.getBoundingClientRect().height ?? 1) === 0,
            (fold.querySelector(':scope > div')?.getBoundingClientRect().height ?? 0) > 10,
          ]),
        );
    const wide = await open(REEL, {});
    const folds = await shown(wide);
    expect(folds.length).toBeGreaterThan(6);
    expect(folds.flat()).not.toContain(false);
    const paper = await open(REEL, PHONE);
    await paper.emulateMedia({ media: 'print' });
    expect((await shown(paper)).flat()).not.toContain(false);
    const still = await open(REEL, { javaScriptEnabled: false });
    expect(await still.locator('#contents details.wk').first().isVisible()).toBe(true);
  });

  test('opens when a link leads into it', async ({ open }) => {
    const page = await open(REEL, PHONE);
    const source = page.locator('#source-7');
    expect(await source.isVisible()).toBe(false);
    await page.locator('#condition a[href="#source-7"]').first().click();
    await expect.poll(() => source.isVisible()).toBe(true);
  });

  test('leaves no more than ten thousand pixels on a telephone', async ({ open }) => {
    const page = await open(REEL, PHONE);
    expect(await page.evaluate(() => document.documentElement.scrollHeight)).toBeLessThan(10_000);
  });
});

describe('the wrong equalisation', () => {
  test('is drawn with a title and a description, with the same figures in a table beside it', async ({ open }) => {
    const page = await open(REEL);
    const part = page.locator('#playing .heard');
    const svg = part.locator('svg.curve');
    expect(await svg.locator('title').textContent()).toBe(
      'A tape recorded on AES at 30 in/s, replayed on other curves',
    );
    const said = await svg.locator('desc').textContent();
    const row = await part.locator('tbody tr').first().locator('td').allTextContents();
    expect(row).toHaveLength(7);
    for (const level of row) expect(said).toContain(`${level} dB at`);
    const line = part.locator('svg path.a');
    expect(await line.count()).toBe(await part.locator('tbody tr').count());
  });

  test('says where its figures come from', async ({ open }) => {
    const page = await open(REEL);
    const told = await page.locator('#playing .heard details.wk').textContent();
    expect(told).toMatch(/reels\/caderno-side-1\/index\.md, line \d+/);
    expect(told).toContain('IEC 60094-1');
  });
});

describe('the pack', () => {
  test('says which speeds it allows, the stated one first, and how sure that is', async ({ open }) => {
    const page = await open(REEL);
    const told = await page.locator('#contents').textContent();
    expect(told).toContain('Which speed the pack allows');
    expect(told).toMatch(/As stated, 30 in\/s needs [\d.]+ m: it agrees with the pack/);
    expect(told).toContain('only 30 in/s agrees');
  });
});

describe('the photographs on paper', () => {
  test('are all there, also those that nobody scrolled to', async ({ open }) => {
    const page = await open(REEL, { viewport: { width: 1440, height: 500 } });
    await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
    const all = page.locator('.plate img, img.crop');
    expect(await all.count()).toBeGreaterThan(20);
    await expect
      .poll(() => all.evaluateAll((images) => images.every((image) => (image as HTMLImageElement).naturalWidth > 0)), {
        timeout: 20_000,
      })
      .toBe(true);
  });
});

describe('the numbers on a photograph', () => {
  test('cover none of what was read, wherever the label leaves room', async ({ open }) => {
    for (const viewport of [{ width: 1440, height: 900 }, PHONE_SIZE]) {
      const page = await open(REEL, { viewport });
      const covered = await page.locator('svg.regions').evaluateAll((drawings) =>
        drawings.flatMap((drawing) => {
          const boxes = (selector: string) =>
            [...drawing.querySelectorAll(selector)].map((part) => part.getBoundingClientRect());
          // What the frame's line covers isn't read.
          const line = 5;
          return boxes('.tg').flatMap((tag, number) =>
            boxes('.rg > .fr')
              .filter(
                (frame) =>
                  tag.right > frame.left + line &&
                  frame.right > tag.left + line &&
                  tag.bottom > frame.top + line &&
                  frame.bottom > tag.top + line,
              )
              .map(() => number + 1),
          );
        }),
      );
      expect(covered).toEqual([]);
    }
  });
});
