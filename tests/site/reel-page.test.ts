import { describe, expect } from 'vitest';
import { test } from './harness.ts';

const REEL = 'reels/caderno-side-1/';

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
