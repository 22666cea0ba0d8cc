/** Makes the pictures in the README from the demo collection, anew:
 *
 *     npm run pictures */
import { execFileSync } from 'node:child_process';
import { mkdir, writeFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import sharp from 'sharp';
import { serve } from '#publish/serve.ts';
import { openBrowser } from '../site/browser.ts';

const ROOT = resolve(import.meta.dirname, '..', '..');
const SITE = join(ROOT, '.cache', 'pictures-site');
const TODAY = '2026-11-25';

interface Picture {
  readonly name: string;
  readonly page: string;
  readonly width: number;
  readonly height: number;
  /** Scrolled so that this stands at the top. */
  readonly from?: string;
}

const PICTURES: readonly Picture[] = [
  { name: 'reels', page: '', width: 1280, height: 900 },
  { name: 'reel', page: 'reels/caderno-side-1/', width: 1280, height: 1000, from: '#label' },
  { name: 'look-up', page: 'look-up/?n=WQX+44%3F2', width: 1280, height: 640 },
  { name: 'phone', page: 'reels/caderno-side-1/', width: 390, height: 800 },
];

await mkdir(SITE, { recursive: true }).catch(() => undefined);
execFileSync(
  process.execPath,
  [join(ROOT, 'src', 'start.mjs'), 'build', '--out', join(SITE, 'dist'), '--today', TODAY],
  { cwd: ROOT, stdio: 'inherit' },
);
const serving = await serve({ root: join(SITE, 'dist'), port: 0 });
const browser = await openBrowser();
try {
  for (const { name, page: path, width, height, from } of PICTURES) {
    const page = await browser.newPage({ viewport: { width, height } });
    await page.goto(serving.address + path, { waitUntil: 'networkidle' });
    if (from !== undefined) await page.locator(from).evaluate((element) => element.scrollIntoView());
    const shot = await page.screenshot();
    // Few colours: a page of type and line work needs no more, and the file stays small.
    const small = await sharp(shot).png({ palette: true, colours: 64, effort: 10 }).toBuffer();
    await writeFile(join(import.meta.dirname, `${name}.png`), small);
    process.stderr.write(`${name}.png, ${Math.round(small.length / 1000)} kB\n`);
    await page.close();
  }
} finally {
  await browser.close();
  await serving.close();
}
