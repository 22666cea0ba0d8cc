import { createHash } from 'node:crypto';
import { globSync, readFileSync, readlinkSync } from 'node:fs';
import { mkdir } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { expect, test as plain } from 'vitest';
import { withLock } from '#publish/build-lock.ts';
import { type Serving, serve } from '#publish/serve.ts';
import { build } from '../../src/commands/build.ts';
import { openBrowser } from './browser.ts';

const ROOT = resolve(import.meta.dirname, '../..');
/** The day on which the demo collection is looked at in every test of its pages. */
export const TODAY = '2026-03-20';
const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

export interface DemoSite {
  /** The folder that it was built into. */
  readonly folder: string;
  /** `http://127.0.0.1:…/` */
  readonly address: string;
}

/** A page that fails its test when anything went wrong in it: a message on the console, a script's error, a request to
 * anywhere but the site, or one that the policy refused. */
export type WatchedPage = Page;

/** A test with the demo collection's site built and served, and pages of a real browser. The site is built once for all
 * test files, and again only when the program or the collection changed.
 * @param today  the day on which the demo is looked at. */
export const siteTest = (today: string) =>
  plain
    // What each fixture needs stands in its pattern, which the test runner reads: these two begin the chain.
    .extend('launch', { scope: 'file' }, () => openBrowser)
    .extend('day', { scope: 'file' }, () => today)
    .extend('browser', { scope: 'file' }, async ({ launch }, { onCleanup }) => {
      const browser: Browser = await launch();
      onCleanup(() => browser.close());
      return browser;
    })
    .extend('demo', { scope: 'file' }, async ({ day }, { onCleanup }): Promise<DemoSite> => {
      const folder = await demoSite(day);
      const serving: Serving = await serve({ root: folder, port: 0 });
      onCleanup(() => serving.close());
      return { folder, address: serving.address };
    })
    .extend('open', async ({ browser, demo }, { onCleanup }) => {
      const troubles: string[] = [];
      const contexts: { close(): Promise<void> }[] = [];
      onCleanup(async () => {
        await Promise.all(contexts.map((context) => context.close()));
        expect(troubles, 'what went wrong in the page').toEqual([]);
      });
      /** Opens the page at an address below the site's, such as `reels/almanac-side-1/`. */
      return async (path: string, options: BrowserContextOptions = {}): Promise<WatchedPage> => {
        const context = await browser.newContext({ viewport: { width: 1440, height: 900 }, ...options });
        contexts.push(context);
        const page = await context.newPage();
        watch(page, demo.address, troubles);
        const reply = await page.goto(demo.address + path);
        expect(reply?.status(), path).toBe(200);
        return page;
      };
    });

export const test = siteTest(TODAY);

function watch(page: Page, address: string, troubles: string[]): void {
  page.on('console', (message) => {
    if (['error', 'warning'].includes(message.type())) troubles.push(`${page.url()}: ${message.text()}`);
  });
  page.on('pageerror', (error) => troubles.push(`${page.url()}: ${String(error)}`));
  page.on('request', (request) => {
    if (!request.url().startsWith(address)) troubles.push(`${page.url()} asks for ${request.url()}`);
  });
}

/** What axe finds against WCAG 2.2 A and AA, one line a finding. Run as the browser's own, since the page's policy
 * lets no script in. */
export async function axeFindings(page: Page): Promise<string[]> {
  await page.evaluate(AXE);
  return await page.evaluate(`axe.run(document, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'] })
    .then(({ violations }) => violations.flatMap(({ id, nodes }) => nodes.map(({ target, failureSummary }) => {
      return id + ' at ' + target.join(' ') + ': ' + failureSummary;
    })))`);
}

/** Builds the demo collection's site, or finds it built from the very same files. */
export async function demoSite(today = TODAY): Promise<string> {
  const folder = join(tmpdir(), `tailout-demo-${process.getuid?.() ?? 0}`);
  await mkdir(folder, { recursive: true });
  const out = join(folder, `site-${today}-${contentOf(['src', 'collection', 'package-lock.json'])}`);
  // Test files run side by side: the first of them builds.
  await withLock(
    join(folder, 'building.lock'),
    () => undefined,
    async () => {
      if (isBuilt(out)) return;
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
      const exit = await build(['--collection', 'collection', '--today', today, '--out', out], io);
      if (exit > 1) throw new Error(`The demo site wasn't built:\n${said}`);
    },
  );
  return out;
}

/** Only a finished site has a link to it. */
function isBuilt(out: string): boolean {
  try {
    return readlinkSync(out) !== '';
  } catch {
    return false;
  }
}

function contentOf(places: readonly string[]): string {
  const hash = createHash('sha256');
  const files = places.flatMap((place) => globSync([place, `${place}/**`], { cwd: ROOT, withFileTypes: true }));
  for (const path of files
    .filter((file) => file.isFile())
    .map((file) => join(file.parentPath, file.name))
    .sort()) {
    hash.update(path).update(readFileSync(path));
  }
  return hash.digest('hex').slice(0, 16);
}
