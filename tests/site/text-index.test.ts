import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { askedOfIndex, wordsOfNumber } from '#compute/identifiers/search-words.ts';
import { type SearchRecord, writeSearch } from '#publish/search.ts';
import { type Serving, serve } from '#publish/serve.ts';
import { openBrowser } from './browser.ts';

/** The same number as seven labels write it, and one that begins like it. */
const NUMBERS = [
  'QZX 4471-2',
  'QZX4471A',
  'QZX 4471',
  'QZX-4471-2',
  'QZX4471-2',
  'Q.Z.X. 4471/2',
  'qzx4471',
  'QZX 9900',
];
const records: SearchRecord[] = NUMBERS.map((number, at) => ({
  url: `/reels/reel-${at}/`,
  content: [`Salt Ledger, part ${at}`, number, ...wordsOfNumber(number)].join('. '),
  meta: { title: number },
  filters: { what: ['Reel'], kind: [at % 2 === 0 ? 'copy master' : 'safety copy'] },
}));

let folder: string;
let serving: Serving;
let browser: Browser;
let page: Page;
const messages: string[] = [];

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'text-index-'));
  await writeFile(join(folder, 'index.html'), '<!doctype html><title>Index</title>');
  await writeSearch(records, 'en', folder);
  serving = await serve({ root: folder, port: 0 });
  browser = await openBrowser();
  page = await browser.newPage();
  page.on('console', (message) => messages.push(message.text()));
  page.on('pageerror', (error) => messages.push(String(error)));
  await page.goto(serving.address);
}, 120_000);
afterAll(async () => {
  await browser.close();
  await serving.close();
  await rm(folder, { recursive: true });
});

/** The titles found for a text as a page asks for it, best first. */
async function found(asked: string, filters: Record<string, string> = {}): Promise<string[]> {
  // As text: the test runner rewrites an import() that it sees.
  return await page.evaluate(`(async () => {
    const index = await import('/pagefind/pagefind.js');
    const { results } = await index.search(${JSON.stringify(asked)}, { filters: ${JSON.stringify(filters)} });
    return (await Promise.all(results.map((result) => result.data()))).map((one) => one.meta.title);
  })()`);
}

describe('a number typed in any spelling', () => {
  test.each(['QZX 4471-2', 'qzx-4471.2', 'Q Z X 4471 2', 'QZX44712'])(
    '%s finds it in all of its own',
    async (typed) => {
      const [number = ''] = askedOfIndex(typed);
      expect((await found(number)).sort()).toEqual(['Q.Z.X. 4471/2', 'QZX 4471-2', 'QZX-4471-2', 'QZX4471-2']);
    },
  );
  test('its beginning finds all that begin so, and no other', async () => {
    const [number = ''] = askedOfIndex('QZX4471');
    expect((await found(number)).sort()).toEqual(NUMBERS.filter((one) => !one.includes('9900')).sort());
  });
  test('with its letter finds that one only', async () => {
    expect(await found(askedOfIndex('QZX 4471A')[0] ?? '')).toEqual(['QZX4471A']);
  });
  test('its figures alone find it, from their beginning on', async () => {
    expect(await found(askedOfIndex('9900')[0] ?? '')).toEqual(['QZX 9900']);
  });
});

describe('what is asked for', () => {
  test.each([
    ['Salt Ledger', ['Salt Ledger']],
    ['salt ledger QZX 4471', ['salt ledger n0qzx4471', 'salt ledger QZX 4471']],
    ['side 1', ['side n01', 'side 1']],
    ['HLX 2207 A', ['n0hlx2207a', 'HLX 2207 A']],
    ['', ['']],
  ])('%j', (typed, asked) => {
    expect(askedOfIndex(typed)).toEqual(asked);
  });
});

describe('the index', () => {
  test('works under the page’s own policy, without a word of complaint', async () => {
    expect(await found('ledger')).toHaveLength(8);
    expect(messages).toEqual([]);
  });
  test('is cut down by a filter', async () => {
    expect(await found('ledger', { kind: 'safety copy' })).toHaveLength(4);
  });
  test('holds none of the ready-made pages', async () => {
    expect((await readdir(join(folder, 'pagefind'))).filter((name) => /ui|highlight/.test(name))).toEqual([]);
  });
  test('is the same, byte for byte, when made again from the same pages in another order', async () => {
    const again = join(folder, 'again');
    await writeSearch(records.toReversed(), 'en', again);
    const names = async (root: string) => (await readdir(join(root, 'pagefind'), { recursive: true })).sort();
    expect(await names(again)).toEqual(await names(folder));
    for (const name of (await names(folder)).filter((one) => /\.\w+$/.test(one))) {
      const both = await Promise.all([folder, again].map((root) => readFile(join(root, 'pagefind', name))));
      expect(both[0]?.equals(both[1] ?? Buffer.alloc(0)), name).toBe(true);
    }
  });
  test('a record that can’t be taken is a fault, not a gap', async () => {
    const bad = { ...records[0], url: undefined } as unknown as SearchRecord;
    await expect(writeSearch([bad], 'en', join(folder, 'bad'))).rejects.toThrow(/`url`/);
  });
});
