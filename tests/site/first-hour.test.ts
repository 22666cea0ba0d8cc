import { type ChildProcess, spawn } from 'node:child_process';
import { cp, mkdir, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type Serving, serve } from '#publish/serve.ts';
import { openBrowser } from './browser.ts';

const ROOT = resolve(import.meta.dirname, '../..');
/** Generous for a machine that others use; an hour is what the page promises. */
const MOST_MS = 240_000;

let folder: string;
let browser: Browser;
const started: ChildProcess[] = [];
const closing: Serving[] = [];

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'first-hour-'));
  browser = await openBrowser();
});
afterAll(async () => {
  for (const child of started) child.kill();
  await Promise.all(closing.map((one) => one.close()));
  await browser.close();
  await rm(folder, { recursive: true });
});

/** A command as README gives it, without npm's own words before it. */
function run(...args: readonly string[]): ChildProcess {
  // npm tells its programs where it was called from: here, from the collector's folder.
  const env = { ...process.env, INIT_CWD: folder };
  const child = spawn(process.execPath, [join(ROOT, 'src/start.mjs'), ...args], { cwd: folder, env });
  started.push(child);
  return child;
}

/** What a command says when it has ended, or when it says `until`. */
async function saidBy(child: ChildProcess, until?: RegExp): Promise<string> {
  let said = '';
  return await new Promise((done, failed) => {
    const hear = (words: Buffer) => {
      said += String(words);
      if (until?.test(said) === true) done(said);
    };
    child.stdout?.on('data', hear);
    child.stderr?.on('data', hear);
    child.on('close', (code) => (code === 0 && until === undefined ? done(said) : failed(new Error(said))));
  });
}

/** A sheet as a collector keeps it: two sides a record, lengths with a colon, a column that nobody can place. */
function sheetOf300(): string {
  const first = ['Ninth', 'Harbour', 'Cold', 'Salt', 'Paper', 'Glass', 'Ember', 'North', 'Quiet', 'Long'];
  const second = ['Ferry', 'Lantern', 'Orchard', 'Signal', 'Winter', 'Meadow', 'Tide', 'Garden', 'Station', 'Field'];
  const rows = Array.from({ length: 300 }, (_, at) => {
    const record = Math.floor(at / 2);
    const side = (at % 2) + 1;
    const name = `${first[record % 10]} ${second[Math.floor(record / 10) % 10]}${record < 100 ? '' : ' II'}`;
    const number = `KVT ${3000 + record}`;
    const length = `${16 + (record % 5)}:${String((record * 7 + side * 11) % 60).padStart(2, '0')}`;
    return [
      name,
      side,
      number,
      `${number}-${side === 1 ? 'A' : 'B'}`,
      'copy master',
      length,
      '15 ips',
      'IEC',
      `box ${at}`,
    ];
  });
  const head = ['Title', 'Side', 'Cat no.', 'Matrix', 'Type', 'Length', 'Speed', 'EQ', 'Sticker'];
  return [head, ...rows].map((row) => `${row.join(',')}\r\n`).join('');
}

async function twentyPhotographs(): Promise<string[]> {
  const demo = join(ROOT, 'collection/reels');
  const found = (await readdir(demo, { recursive: true })).filter((name) => name.endsWith('.jpg')).sort();
  await mkdir(join(folder, 'phone'));
  return await Promise.all(
    found.slice(0, 20).map(async (name, at) => {
      const copy = join(folder, 'phone', `IMG_${4000 + at}.jpg`);
      await cp(join(demo, name), copy);
      return copy;
    }),
  );
}

/** How many reels the shelf has, over all its pages. */
async function reelsListed(page: Page, address: string): Promise<number> {
  const reels = new Set<string>();
  for (let at = 1; ; at++) {
    const reply = await page.goto(at === 1 ? address : `${address}shelf/${at}/`);
    if (reply?.status() !== 200) return reels.size;
    for (const link of await page.locator('main a[href^="/reels/"]').all())
      reels.add((await link.getAttribute('href')) ?? '');
  }
}

const saved = (page: Page) => page.locator('.bar-desk [role=status]').filter({ hasText: 'Saved.' }).waitFor();

test(
  '300 rows and 20 photographs become a checked collection that is browsed, without a text editor',
  async () => {
    const tapes = join(folder, 'tapes');
    await writeFile(join(folder, 'tapes.csv'), sheetOf300());
    const photographs = await twentyPhotographs();

    // The sheet: looked at first, then written.
    const looked = await saidBy(run('import', 'tapes.csv', '--collection', tapes));
    expect(looked).toContain('Would write 300 new reels');
    expect(looked).toContain('0 that say nothing');
    expect(await readdir(folder)).not.toContain('tapes');
    await saidBy(run('import', 'tapes.csv', '--collection', tapes, '--write'));
    expect(await readdir(join(tapes, 'reels'))).toHaveLength(300);

    // The photographs, at the desk: four to each of four reels, and a reel of its own from the last four.
    const desk = run('desk', '--collection', tapes);
    const [address = ''] = /http:\S+/u.exec(await saidBy(desk, /http:\S+\s/u)) ?? [];
    const page = await (await browser.newContext({ viewport: { width: 1280, height: 900 } })).newPage();
    const troubles: string[] = [];
    page.on('pageerror', (error) => troubles.push(String(error)));
    await page.goto(address);
    for (const [at, title] of ['Ninth Ferry', 'Harbour Ferry', 'Cold Ferry', 'Salt Ferry'].entries()) {
      await page.getByLabel('Find an entry by its title or id').fill(title);
      await page.locator('.list-desk a').first().click();
      await page.getByLabel(/Add photographs/).setInputFiles(photographs.slice(at * 4, at * 4 + 4));
      await page.locator('.stage img').nth(3).waitFor();
      await page.keyboard.press('Control+s');
      await saved(page);
      if (at === 0) {
        await page
          .getByRole('button', { name: /New region by keys/ })
          .first()
          .press('Enter');
        await page.getByLabel('What it says, letter by letter').fill('KVT 3001-A');
        await page.getByLabel('Which fact it is').selectOption('numbers.matrix');
        await page.getByLabel('How sure').selectOption('likely');
        // The label and the sheet differ by one character, and so do the two sides then.
        const slip = page.locator('[data-code^="number/"]').first();
        await slip.waitFor();
        expect(await slip.textContent()).toContain('KVT 300');
        await page.getByLabel('What it says, letter by letter').fill('KVT 3000-A');
        await page.getByText('Numbers, Matrix number says the same.').waitFor();
        await slip.waitFor({ state: 'detached' });
        await page.keyboard.press('Control+s');
        await saved(page);
      }
      await page.getByRole('link', { name: 'All entries' }).click();
    }
    await page.getByLabel(/A new reel from photographs/).setInputFiles(photographs.slice(16));
    await page.getByLabel('Title', { exact: true }).first().fill('White box, no label');
    await page.getByRole('button', { name: 'Make the reel with 4 photographs' }).click();
    await page.locator('.stage img').nth(3).waitFor();
    desk.kill();
    const text = await readFile(join(tapes, 'reels/ninth-ferry-side-1.md'), 'utf8');
    expect(text).toContain('{ of: numbers.matrix, photo: ninth-ferry-side-1/img-4000.jpg,');

    // Checked, built, browsed.
    expect(await saidBy(run('check', '--collection', tapes))).toContain('0 errors');
    await saidBy(run('build', '--collection', tapes, '--out', 'site'));
    const serving = await serve({ root: join(folder, 'site'), port: 0 });
    closing.push(serving);
    await page.goto(`${serving.address}reels/ninth-ferry-side-1/`);
    expect(await page.locator('h1').textContent()).toContain('Ninth Ferry');
    const pictures = page.locator('main img');
    expect(await pictures.count()).toBeGreaterThanOrEqual(4);
    await expect
      .poll(() => pictures.first().evaluate('document.querySelector("main img").naturalWidth'))
      .toBeGreaterThan(0);
    expect(await page.locator('main').textContent()).toContain('KVT 3000-A');
    expect(await reelsListed(page, serving.address)).toBe(301);
    await page.goto(`${serving.address}reels/white-box-no-label/`);
    expect(await page.locator('h1').textContent()).toContain('White box, no label');
    expect(troubles).toEqual([]);
  },
  MOST_MS,
);
