import { mkdtemp, readdir, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { sealSiteFiles } from '#publish/sealed-site.ts';
import { type Serving, serve } from '#publish/serve.ts';
import { openBrowser } from './browser.ts';
import { demoSite } from './harness.ts';

const WORDS = 'tavok limen rudas pobet';
let folder: string;
let browser: Browser;
let serving: Serving;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'sealed-site-'));
  await sealSiteFiles(await demoSite(), folder, '/', WORDS);
  serving = await serve({ root: folder, port: 0 });
  browser = await openBrowser();
}, 600_000);

afterAll(async () => {
  await browser?.close();
  await serving?.close();
  await rm(folder, { recursive: true, force: true });
});

/** A page of its own, with every address that the host was asked for. */
async function enter(address: string, words = WORDS): Promise<{ page: Page; asked: string[] }> {
  const context = await browser.newContext();
  const asked: string[] = [];
  // What the worker itself answers isn't asked of the host.
  context.on('request', (request) => {
    if (request.serviceWorker() !== null) asked.push(request.url());
  });
  const page = await context.newPage();
  await page.goto(serving.address + address);
  await page.fill('#words', words);
  await page.click('#lock button');
  return { page, asked };
}

describe('a sealed site on its host', () => {
  test('is sealed files under names that say nothing, an opening page and its worker', async () => {
    const names = await readdir(folder);
    const sealed = names.filter(
      (name) => !['index.html', '404.html', 'worker.js', 'open.js', 'open.css'].includes(name),
    );
    expect(sealed.length).toBeGreaterThan(100);
    expect(sealed.filter((name) => !/^[0-9a-f]{32}$/.test(name))).toEqual([]);
    for (const name of sealed) {
      const bytes = await readFile(join(folder, name));
      expect(bytes.subarray(0, 21).toString('latin1')).toBe('age-encryption.org/v1');
    }
    const ids = (await readdir('collection/reels')).map((name) => name.replace(/\.md$/, ''));
    const all = await Promise.all(
      names.map(async (name) => `${name} ${(await readFile(join(folder, name))).toString('latin1')}`),
    );
    for (const word of [...ids, 'Caderno', 'Nevoeiro', 'WQX 4471', 'Toller'])
      expect(
        all.some((text) => text.includes(word)),
        word,
      ).toBe(false);
  });

  test('wrong words say so and show nothing', async () => {
    const { page } = await enter('', 'not these words');
    await page.waitForSelector('[data-state=wrong]', { state: 'visible' });
    expect(await page.textContent('body')).not.toContain('Nevoeiro');
    await page.context().close();
  });

  test('opens, and a link behind # leads to a page whose address the host never hears', async () => {
    const { page, asked } = await enter('#/reels/caderno-side-1/');
    await page.waitForSelector('h1:has-text("Caderno de Nevoeiro")');
    expect(new URL(page.url()).pathname).toBe('/reels/caderno-side-1/');
    await page.waitForFunction(() =>
      [...document.images]
        .filter((image) => image.loading !== 'lazy')
        .every((image) => image.complete && image.naturalWidth > 0),
    );
    expect(asked.filter((url) => url.includes('caderno'))).toEqual([]);
    // Again by its own address, as a bookmark does.
    await page.goto(`${serving.address}reels/caderno-side-2/`);
    await page.waitForSelector('h1:has-text("side 2")');
    await page.context().close();
  });

  test('finds by text and by number after the words', async () => {
    const { page } = await enter('#/look-up/?n=WQX%204471');
    await page.waitForSelector('main a[href*="reels/caderno-side-1/"]');
    // An address in the bar, with its search: the page is decrypted here, and the host isn't asked for it.
    await page.goto(`${serving.address}look-up/?n=Nevoeiro`);
    await page.waitForSelector('main a[href*="caderno"]');
    const texts: number = await page.evaluate(
      "import('/pagefind/pagefind.js').then((index) => index.search('Nevoeiro')).then(({ results }) => results.length)",
    );
    expect(texts).toBeGreaterThan(0);
    await page.context().close();
  });

  test('shows a photograph in tiles', async () => {
    const { page } = await enter('#/reels/caderno-side-1/');
    await page.waitForSelector('[data-tiles]');
    const status = await page.evaluate(async () => {
      const root = document.querySelector('[data-tiles]')?.getAttribute('data-tiles') ?? '';
      const answer = await fetch(`${root}/full/max/0/default.jpg`);
      return [answer.status, answer.headers.get('content-type')];
    });
    expect(status).toEqual([200, 'image/jpeg']);
    await page.context().close();
  });
});
