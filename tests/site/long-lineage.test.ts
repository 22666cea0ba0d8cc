import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Serving, serve } from '#publish/serve.ts';
import { build } from '../../src/commands/build.ts';
import { openBrowser } from './browser.ts';

const ROOT = resolve(import.meta.dirname, '../..');

/** One master, production masters, a copy master a territory, and safety copies of those: `count` reels in all. */
function copiesOf(name: string, count: number): readonly { path: string; text: string }[] {
  const parentOf = (at: number) => {
    if (at <= 3) return 0;
    return at < count / 2 ? 1 + (at % 3) : 4 + (at % (Math.floor(count / 2) - 4));
  };
  return Array.from({ length: count }, (_, at) => {
    const from = at === 0 ? 'none' : `[${name}-${parentOf(at)}]`;
    const status = at % 3 === 0 ? 'elsewhere' : 'held';
    return {
      path: `reels/${name}-${at}.md`,
      text: `---\ntitle: ${name} tape ${at}\nstatus: ${status}\nnumbers: { matrix: [${name.toUpperCase()} ${7000 + at}-A] }\ncopied-from: ${from}\n---\n`,
    };
  });
}

describe('a lineage of many reels', () => {
  let folder: string;
  let serving: Serving;
  let browser: Browser;
  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), 'tailout-lineage-'));
    await mkdir(join(folder, 'tapes', 'reels'), { recursive: true });
    for (const { path, text } of [...copiesOf('qar', 60), ...copiesOf('vez', 400)])
      await writeFile(join(folder, 'tapes', path), text);
    let said = '';
    const io = {
      out: () => undefined,
      err: (text: string) => {
        said += text;
      },
      cwd: ROOT,
      now: new Date(),
      env: {},
      terminal: false,
    };
    const args = [
      '--collection',
      join(folder, 'tapes'),
      '--out',
      join(folder, 'site'),
      '--cache',
      join(folder, 'cache'),
    ];
    const exit = await build([...args, '--today', '2026-03-20'], io);
    expect(exit, said).toBe(0);
    serving = await serve({ root: join(folder, 'site'), port: 0 });
    browser = await openBrowser();
  });
  afterAll(async () => {
    await browser?.close();
    await serving?.close();
    await rm(folder, { recursive: true, force: true });
  });

  const opened = async (path: string, width: number) => {
    const page = await browser.newPage({ viewport: { width, height: 900 } });
    await page.goto(serving.address + path);
    return page;
  };

  test.for([60, 400])('%i reels stand in a list, each once, that nothing cuts off at any width', async (count) => {
    const name = count === 60 ? 'qar' : 'vez';
    for (const width of [1440, 820, 360]) {
      const page = await opened(`lineage/${name}-0/`, width);
      const boxes = page.locator('.tree a.node');
      expect(await boxes.count()).toBe(count);
      const cut = await boxes.evaluateAll((all, most) => {
        const outside = (box: Element) => {
          const { left, right, height } = box.getBoundingClientRect();
          return left < 0 || right > most || height === 0;
        };
        return all.filter(outside).map((box) => box.textContent);
      }, width);
      expect(cut, `${width} px`).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
      await page.close();
    }
  });

  test('the drawing is there to be opened, with a box a reel', async () => {
    const page = await opened('lineage/vez-0/', 1440);
    const drawing = page.locator('details.drawn');
    expect(await drawing.locator('svg').isVisible()).toBe(false);
    await drawing.locator('summary').press('Enter');
    expect(await drawing.locator('svg rect.box').count()).toBe(400);
    expect(await drawing.locator('svg').isVisible()).toBe(true);
  });

  test.for(['VEZ 7311-A', 'vez tape 311'])(
    'any of the 400 is found by its number, and by its title: %s',
    async (typed) => {
      const page = await opened(`look-up/?n=${encodeURIComponent(typed)}`, 1440);
      await expect.poll(() => page.locator('main').textContent(), { timeout: 15_000 }).toMatch(/vez tape 311(?!\d)/);
    },
  );

  test('60 reels print on five sheets at the most', async () => {
    const page = await opened('lineage/qar-0/', 1440);
    await page.emulateMedia({ media: 'print' });
    const pdf = await page.pdf({ format: 'A4', margin: { top: '13mm', bottom: '15mm', left: '13mm', right: '13mm' } });
    // The tree on two, and the table of its reels on as many.
    expect(pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)?.length).toBeLessThanOrEqual(5);
  });
});
