import { expect, test } from 'vitest';
import { openBrowser } from './browser.ts';

test('a browser starts, and its text has a width', async () => {
  const browser = await openBrowser();
  const page = await browser.newPage();
  await page.setContent('<p><span id="word">Marram</span></p>');
  expect(await page.locator('#word').evaluate((word) => (word as HTMLElement).offsetWidth)).toBeGreaterThan(20);
  await browser.close();
}, 120_000);

test('a browser that isn’t there fails, and says what to install', async () => {
  const before = process.env['CHROME_PATH'];
  process.env['CHROME_PATH'] = '/nowhere/chromium';
  await expect(openBrowser()).rejects.toThrow(/Install Chromium or Chrome, or set CHROME_PATH/);
  if (before === undefined) delete process.env['CHROME_PATH'];
  else process.env['CHROME_PATH'] = before;
});
