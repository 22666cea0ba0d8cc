import { rm } from 'node:fs/promises';
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect } from 'vitest';
import { type GivenDesk, givenDesk } from '../desk/given-desk.ts';
import { openBrowser } from './browser.ts';

/** A photograph, or a check, may take its time where other tests run beside. */
export const SOON = { timeout: 20_000 };

/** A desk over a small collection, anew for each test of a file, and pages of a real browser that sit at it. A test fails
 * when anything goes wrong in its pages: a script's error, a message on the console, a request to anywhere else. */
export function atTheDesk() {
  let browser: Browser;
  let desk: GivenDesk;
  let troubles: string[];
  let allowed: RegExp[];

  beforeAll(async () => {
    browser = await openBrowser();
  });
  afterAll(() => browser.close());
  beforeEach(async () => {
    desk = await givenDesk();
    troubles = [];
    // A browser reports a 409 itself; the page tells it in its own words.
    allowed = [/409/];
  });
  afterEach(async () => {
    await Promise.all(browser.contexts().map((context) => context.close()));
    await desk.serving.close();
    await rm(desk.folder, { recursive: true });
    const left = troubles.filter((trouble) => !allowed.some((one) => one.test(trouble)));
    expect(left, 'what went wrong in the page').toEqual([]);
  });

  const sit = async (at = '', options: BrowserContextOptions = {}): Promise<Page> => {
    const context = await browser.newContext({ viewport: { width: 1280, height: 900 }, ...options });
    const page = await context.newPage();
    const own = new URL('/', desk.serving.address).href;
    page.on('pageerror', (error) => troubles.push(String(error)));
    page.on('console', (message) => message.type() === 'error' && troubles.push(message.text()));
    page.on('request', (request) => {
      if (!request.url().startsWith(own)) troubles.push(`asks for ${request.url()}`);
    });
    await page.goto(desk.serving.address);
    await page.waitForSelector('h1');
    if (at !== '') await visit(page, desk, at);
    return page;
  };
  return { desk: () => desk, sit, troubles: { allow: (trouble: RegExp) => void allowed.push(trouble) } };
}

export async function visit(page: Page, desk: GivenDesk, at: string): Promise<void> {
  await page.goto(new URL(`/#/${at}`, desk.serving.address).href);
  await page.waitForSelector('.bar-desk');
}

export const said = (page: Page, text: string | RegExp) =>
  page.locator('.bar-desk [role=status]').filter({ hasText: text }).waitFor();
export const field = (page: Page, path: string) => page.locator(`[data-path="${path}"]`);

/** The lines of the new text that the old one doesn't have, and the other way round. */
export function changedLines(before: string, after: string) {
  const old = before.split('\n');
  const now = after.split('\n');
  return { gone: old.filter((line) => !now.includes(line)), come: now.filter((line) => !old.includes(line)) };
}
