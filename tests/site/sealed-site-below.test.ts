import { mkdtemp, readdir, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Serving, serve } from '#publish/serve.ts';
import { seal } from '../../src/commands/seal.ts';
import { TOLD_EVERYTHING, wordsToldIn } from '../given/told-everything.ts';
import { writeCollection } from '../given/written-collection.ts';
import { openBrowser } from './browser.ts';

const WORDS = 'tavok limen rudas pobet';
const BASE = '/some/tapes/';
let folder: string;
let browser: Browser;
let serving: Serving;
let page: Page;
/** Addresses that the host was asked for, by the worker. */
const asked: string[] = [];
const troubles: string[] = [];

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'sealed-below-'));
  const picture = await sharp({ create: { width: 1800, height: 1200, channels: 3, background: '#a08060' } })
    .jpeg()
    .withExif({ IFD0: { ImageDescription: 'QQ-EXIF' } })
    .toBuffer();
  await writeCollection(join(folder, 'collection'), TOLD_EVERYTHING, async () => picture);
  const io = {
    out: () => undefined,
    err: () => undefined,
    cwd: folder,
    now: new Date('2026-04-01T12:00:00'),
    env: { SEAL_PASSPHRASE: WORDS },
    terminal: false,
  };
  const exit = await seal(
    ['--site', '--out', join(folder, 'sealed'), '--base', BASE, '--cache', join(folder, 'cache')],
    io,
  );
  expect(exit).toBe(0);
  serving = await serve({ root: join(folder, 'sealed'), port: 0, base: BASE });
  browser = await openBrowser();
  const context = await browser.newContext();
  context.on('request', (request) => {
    if (request.serviceWorker() !== null) asked.push(request.url());
  });
  page = await context.newPage();
  page.on('pageerror', (error) => troubles.push(String(error)));
  page.on('console', (message) => {
    if (message.type() === 'error') troubles.push(message.text());
  });
  await page.goto(`${serving.address}#/reels/qq04-shown/`);
  await page.fill('#words', WORDS);
  await page.click('#lock button');
  await page.waitForSelector('h1:has-text("QQ05 shown")', { timeout: 60_000 });
}, 600_000);

afterAll(async () => {
  await browser?.close();
  await serving?.close();
  await rm(folder, { recursive: true, force: true });
  expect(troubles).toEqual([]);
});

describe('a sealed site below the top of its host', () => {
  test('holds no fact and no id of any entry, in names or in bytes', async () => {
    const names = await readdir(join(folder, 'sealed'), { recursive: true });
    expect(names.length).toBeGreaterThan(40);
    for (const name of names) {
      const text = (await readFile(join(folder, 'sealed', name))).toString('latin1');
      // By chance, ciphertext and names of chance hold such letters: a fact is looked for with what follows it.
      for (const word of ['QQ05 shown', 'QQ-EXIF', 'qq04-shown', 'QR03 street', 'QQ68 reel body'])
        expect(`${name} ${text}`.includes(word), `${word} in ${name}`).toBe(false);
      if (/^(?:index|404)\.html$|\.(?:js|css)$/.test(name)) expect(wordsToldIn(text), name).toEqual([]);
    }
  });

  test('leads from a link behind # to the page, whose address the host never hears', async () => {
    expect(new URL(page.url()).pathname).toBe(`${BASE}reels/qq04-shown/`);
    expect(asked.filter((url) => /qq|reels/i.test(url))).toEqual([]);
  });

  test('brings a photograph nearer, from sealed tiles', async () => {
    const tiles: number[] = [];
    page.on('response', (response) => {
      if (response.url().endsWith('/default.jpg')) tiles.push(response.status());
    });
    // Until its script is there, the link leads to the large picture.
    await page.waitForLoadState();
    await page.locator('a.larger').first().click();
    await page.locator('dialog.zoom canvas').waitFor();
    for (const _ of [1, 2, 3, 4]) await page.keyboard.press('+');
    await expect.poll(() => tiles.length, { timeout: 20_000 }).toBeGreaterThan(0);
    await page.keyboard.press('Escape');
    expect(tiles.filter((status) => status !== 200)).toEqual([]);
  });

  test('finds by number, in another spelling than the label’s', async () => {
    await page.goto(`${serving.address}look-up/?n=qq-11`);
    await page.waitForSelector('#fit-list a[href*="reels/qq04-shown/"]');
  });

  test('finds by words', async () => {
    await page.goto(`${serving.address}look-up/?n=player`);
    await page.waitForSelector(`#text-list a[href^="${BASE}"]`);
    await page.locator('#text-list a').first().click();
    await page.waitForSelector('h1:has-text("QQ05 shown")');
  });
});
