import { existsSync, globSync, readFileSync, writeFileSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { searchRecords } from '#publish/search-records.ts';
import { type Serving, serve } from '#publish/serve.ts';
import { publishSite } from '#publish/site.ts';
import { loadCatalogue, loadEntries } from '../../src/commands/load.ts';
import { generateCollection } from '../bench/generate.ts';
import { openBrowser } from './browser.ts';
import { axeFindings } from './harness.ts';

/** Enough that the schedule and the lists of editions, families and labels go on over further pages. */
const REELS = 700;
/** A page without photographs weighs no more than this, gzipped. */
const MOST_KB = 60;

let folder = '';
let site = '';
/** A site of a collection in which everything hangs on one thing, and every reel needs something. */
let laden = '';
let serving: Serving | undefined;
let browser: Browser | undefined;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'tailout-test-lists-'));
  site = join(folder, 'site');
  laden = join(folder, 'laden-site');
  const collection = join(folder, 'collection');
  await generateCollection(collection, REELS);
  await publish(collection, site);
  for (const file of globSync('reels/*.md', { cwd: collection })) {
    const text = readFileSync(join(collection, file), 'utf8');
    writeFileSync(join(collection, file), burdened(text));
  }
  await publish(collection, laden);
  serving = await serve({ root: site, port: 0 });
  browser = await openBrowser();
}, 240_000);

/** The reel held and in the one place, with a stated length, an inspection and a speed that each ask for something, and
 * an accepted problem for every second one. */
function burdened(text: string): string {
  const side = text.includes('side: "2"');
  return text
    .replace(/^status: .*$/m, 'status: held')
    .replace(/^length: .*$/m, 'length: "1:03:00"')
    .replace(/speed: 30 in\/s$/m, 'speed: 3.75 in/s')
    .replace(/found: \[none\]/, 'found: [mould]')
    .replace(
      /^rights: /m,
      `${side ? 'accepted: [{ code: time/contents-sum, why: seen so on the label }]\n' : ''}rights: `,
    );
}

async function publish(collection: string, out: string) {
  const silent = { err: () => undefined, terminal: false };
  const cache = join(folder, 'cache');
  const { catalogue } = await loadCatalogue({ collection, today: '2026-04-01' as never }, silent, cache);
  await publishSite(catalogue, { out, collection, cache, base: '/', textIndex: false });
}

afterAll(async () => {
  await browser?.close();
  await serving?.close();
  await rm(folder, { recursive: true, force: true });
});

const pagesOf = (...patterns: readonly string[]) => globSync(patterns, { cwd: site }).sort();
const read = (page: string) => readFileSync(join(site, page), 'utf8');
const linksIn = (page: string) => [...read(page).matchAll(/ href="(\/[^"#?]*)/g)].map((found) => found[1] ?? '');

test.each([
  ['editions', ['editions/index.html', 'editions/page/*/index.html'], 'editions'],
  ['lineage', ['lineage/index.html', 'lineage/page/*/index.html'], 'lineage'],
  ['schedule', ['schedule/index.html', 'schedule/*/index.html'], 'reels'],
])('%s goes on over several pages, which lead to one another and to every entry once', (list, patterns, kind) => {
  const pages = pagesOf(...patterns);
  expect(pages.length).toBeGreaterThan(1);
  const main = pages.flatMap((page) => [...new Set(linksIn(page))]);
  const entries = main.filter((link) => new RegExp(`^/${kind}/(?!page/)[^/]+/$`).test(link));
  expect(new Set(entries).size).toBe(entries.length);
  const made = pagesOf(`${kind}/*/index.html`).map((page) => `/${page.replace('index.html', '')}`);
  // The schedule is of those that are held or lent.
  const wanted = kind === 'reels' ? entries : made;
  expect([...entries].sort()).toEqual([...wanted].sort());
  for (const page of pages) {
    const others = pages.filter((one) => one !== page).map((one) => `/${one.replace('index.html', '')}`);
    expect(linksIn(page), `${list}: ${page}`).toEqual(expect.arrayContaining(others));
  }
});

test('every link on every page of a list leads somewhere', () => {
  const lists = pagesOf('*/index.html', '*/page/*/index.html', 'labels/*/index.html', 'numbers/*/index.html');
  for (const page of [...lists, ...pagesOf('schedule/*/index.html', 'shelf/*/index.html')]) {
    for (const link of linksIn(page)) {
      const file = join(site, link.endsWith('/') ? `${link}index.html` : link);
      expect(existsSync(file), `${link} on ${page}`).toBe(true);
    }
  }
});

test.each(['a sound collection', 'one where every reel needs something'])(
  'no page of %s is too heavy for a telephone',
  (which) => {
    const cwd = which === 'a sound collection' ? site : laden;
    for (const page of globSync('**/index.html', { cwd })) {
      expect(gzipSync(readFileSync(join(cwd, page))).length / 1000, page).toBeLessThanOrEqual(MOST_KB);
    }
  },
);

test.each([
  ['stocks/stock-one', 1],
  ['places/shelf-room', 1],
  ['people/copy-engineer', 1],
  ['machines/studio-machine', 1],
  // Contradictions, and what was accepted.
  ['to-mend', 2],
])('%s, on which more hangs than a page holds, says how much more there is', (page, lists) => {
  const told = readFileSync(join(laden, page, 'index.html'), 'utf8').match(/<p[^>]*>\d+ more[;:.]/g) ?? [];
  expect(told.length).toBeGreaterThanOrEqual(lists);
});

test('the sums of the schedule stand on its last page, and its signatures', () => {
  const [first = '', ...others] = pagesOf('schedule/index.html', 'schedule/*/index.html').sort().reverse();
  expect(first).toBe('schedule/index.html');
  expect(read(first)).not.toContain('<tfoot');
  expect(read(first)).toContain('In all:');
  expect(others.map((page) => read(page).includes('<tfoot'))).toEqual([true]);
  // Every sheet of paper says which part it belongs to, the first part's too.
  expect(read(first)).toContain('schedule, page 1 of 2');
});

const opened = async (path: string, options: Parameters<Browser['newPage']>[0]) => {
  if (browser === undefined || serving === undefined) throw new Error('nothing is served');
  const page = await browser.newPage(options);
  await page.goto(serving.address + path);
  return page;
};

test.each(['editions/', 'editions/page/2/', 'lineage/page/2/', 'schedule/', 'schedule/2/', 'labels/2/'])(
  '%s is open to everyone, and never scrolls sideways',
  async (path) => {
    for (const width of [1440, 320]) {
      const page = await opened(path, { viewport: { width, height: 900 } });
      expect(await axeFindings(page)).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
      await page.close();
    }
  },
  60_000,
);

test('the keyboard alone leads from page to page, without any script', async () => {
  const page = await opened('editions/', { javaScriptEnabled: false });
  const ways = page.getByRole('navigation', { name: 'Pages of editions' });
  await ways.getByRole('link').nth(1).focus();
  await page.keyboard.press('Enter');
  await page.waitForURL('**/editions/page/2/');
  expect(await page.getByRole('heading', { level: 1 }).textContent()).toMatch(/^Editions, page 2 of \d+$/);
  expect(await ways.locator('[aria-current=page]').count()).toBe(1);
  await page.locator('a[rel=prev]').focus();
  await page.keyboard.press('Enter');
  await page.waitForURL(/\/editions\/$/);
  await page.close();
});

test('on paper a page of a list says which part it is, and its links to the others stay away', async () => {
  const page = await opened('schedule/', {});
  await page.emulateMedia({ media: 'print' });
  const part = page.getByText(/^Page 1 of \d+: items 1 to 500 of \d+\.$/);
  expect(await part.isVisible()).toBe(true);
  expect(await page.locator('nav.pages a').first().isVisible()).toBe(false);
  await page.close();
});

test('the text index sorts reels by set and edition only where there are few enough to choose from', async () => {
  const filtersOf = async (reels: number) => {
    const collection = join(folder, `sorted-${reels}`);
    await generateCollection(collection, reels);
    const { entries } = loadEntries(collection);
    return new Set(searchRecords(entries).flatMap(({ filters }) => Object.keys(filters)));
  };
  const few = await filtersOf(200);
  expect(few).toContain('set');
  const many = await filtersOf(REELS);
  expect(many).not.toContain('set');
  expect([...many, 'set', 'edition'].sort()).toEqual([...new Set([...few, 'edition'])].sort());
});
