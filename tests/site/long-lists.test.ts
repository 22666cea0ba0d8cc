import { existsSync, globSync, readFileSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { publishSite } from '#publish/site.ts';
import { loadCatalogue } from '../../src/commands/load.ts';
import { generateCollection } from '../bench/generate.ts';

/** Enough that the schedule and the lists of editions, families and labels go on over further pages. */
const REELS = 700;
/** A page without photographs weighs no more than this, gzipped. */
const MOST_KB = 60;

let folder = '';
let site = '';

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'tailout-test-lists-'));
  const collection = join(folder, 'collection');
  site = join(folder, 'site');
  await generateCollection(collection, REELS);
  const silent = { err: () => undefined, terminal: false };
  const cache = join(folder, 'cache');
  const { catalogue } = await loadCatalogue({ collection, today: '2026-04-01' as never }, silent, cache);
  await publishSite(catalogue, { out: site, collection, cache, base: '/', textIndex: false });
}, 120_000);
afterAll(async () => {
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

test('no page is too heavy for a telephone', () => {
  for (const page of pagesOf('**/index.html')) {
    expect(gzipSync(readFileSync(join(site, page))).length / 1000, page).toBeLessThanOrEqual(MOST_KB);
  }
});

test('the sums of the schedule stand on its last page, and its signatures', () => {
  const [first = '', ...others] = pagesOf('schedule/index.html', 'schedule/*/index.html').sort().reverse();
  expect(first).toBe('schedule/index.html');
  expect(read(first)).not.toContain('<tfoot');
  expect(read(first)).toContain('In all:');
  expect(others.map((page) => read(page).includes('<tfoot'))).toEqual([true]);
});
