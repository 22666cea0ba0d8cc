import { describe, expect } from 'vitest';
import { test } from './harness.ts';

/** Pages of a PDF, by the objects in it that are pages. */
const pagesIn = (pdf: Buffer) => pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)?.length ?? 0;
const A4_PX = 695;

describe('on paper', () => {
  test.for([
    { path: 'reels/caderno-side-1/', most: 12 },
    { path: 'reels/ilha-side-2/', most: 5 },
    { path: 'lineage/vny-231/', most: 2 },
    { path: 'machines/corridor-machine/', most: 2 },
    { path: 'to-mend/', most: 12 },
  ])('$path comes out on at most $most pages of A4 and of Letter', async ({ path, most }, { open }) => {
    const page = await open(path);
    for (const format of ['A4', 'Letter'] as const) {
      const pages = pagesIn(
        await page.pdf({ format, margin: { top: '13mm', bottom: '15mm', left: '13mm', right: '13mm' } }),
      );
      expect(pages).toBeGreaterThan(0);
      expect(pages, format).toBeLessThanOrEqual(most);
    }
  });

  test('a household’s schedule is one sheet of A4 or of Letter, by its own margins', async ({ open }) => {
    const page = await open('schedule/');
    for (const format of ['A4', 'Letter'] as const) expect(pagesIn(await page.pdf({ format })), format).toBe(1);
  });

  test('no table, drawing or line of an entry is wider than the paper', async ({ open }) => {
    for (const path of ['reels/caderno-side-1/', 'lineage/mzc-102/', 'to-mend/', 'places/spare-room/']) {
      const page = await open(path, { viewport: { width: A4_PX, height: 1000 } });
      await page.emulateMedia({ media: 'print' });
      const wide = await page.evaluate((most) => {
        const parts = [...document.querySelectorAll('table, svg[role], .form, pre, .tree')];
        return parts
          .filter((part) => part.getBoundingClientRect().right > most + 1)
          .map((part) => part.outerHTML.slice(0, 80));
      }, A4_PX);
      expect(wide, path).toEqual([]);
    }
  });

  test('a sheet is headed with the id and the day, and its worked figures stand open', async ({ open }) => {
    const page = await open('reels/caderno-side-1/');
    await page.emulateMedia({ media: 'print' });
    expect(await page.locator('.paper-head').textContent()).toMatch(/reel caderno-side-1[\s\S]*20 Mar 2026/);
    expect(
      await page
        .locator('details.wk .wk-in')
        .first()
        .evaluate((part) => part.getBoundingClientRect().height),
    ).toBeGreaterThan(10);
    expect(await page.locator('header.top nav').isVisible()).toBe(false);
    expect(await page.locator('.tree').first().isVisible()).toBe(true);
  });
});
