import { mkdir, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import ical from 'ical.js';
import papaparse from 'papaparse';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { AUDIENCES, ENTRY_KINDS } from '#model/words.ts';
import { type Serving, serve } from '#publish/serve.ts';
import { build } from '../../src/commands/build.ts';
import { exportAs } from '../../src/commands/export.ts';
import { seal } from '../../src/commands/seal.ts';
import { hostileCollection, markOf, SHOWN_AFTER_MARK } from '../given/hostile-collection.ts';
import { listener } from '../given/listener.ts';
import { cameraPhotograph } from '../publish/made-photograph.ts';
import { openBrowser } from './browser.ts';

const TURNS = /[\u202a-\u202e\u2066-\u2069]/;
const GIVEN = hostileCollection();
/** What no page of this collection shows letter by letter: it is of use to the program only, stands on a file's outside,
 * belongs to a status that the reel hasn't, or is set in other letters. */
const NOT_ON_PAGES =
  /\.accepted\.|^collection\.owner$|^shares\.(?:front|photos\.note|also)$|^reels\.(?:lent\.to|set|contents\.by|recorded\.for|copy-log\.by|cuts\.side|readings\.by)$/;
let folder: string;
let browser: Browser;
let context: BrowserContext;
let serving: Serving;
const troubles: string[] = [];

const at = (...names: string[]) => join(folder, ...names);

async function done(command: typeof build, ...args: string[]): Promise<string> {
  const { said, hear } = listener();
  const io = {
    ...hear,
    cwd: folder,
    now: new Date('2026-04-01T12:00:00'),
    env: {},
    terminal: false,
  };
  const exit = await command(
    [...args, '--collection', at('tapes'), '--cache', at('cache'), '--today', '2026-04-01'],
    io,
  );
  if (exit > 1) throw new Error(said.err);
  expect(said.err, 'what a terminal is told turns nothing round').not.toMatch(TURNS);
  expect(said.err.replaceAll(/[\t\n]/g, ''), 'nor moves its cursor').not.toMatch(/\p{Cc}/u);
  return said.out;
}

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'hostile-'));
  const photograph = await cameraPhotograph(1500, 900);
  for (const [path, content] of [...GIVEN.texts, ...GIVEN.photographs.map((path) => [path, photograph] as const)]) {
    await mkdir(dirname(at('tapes', path)), { recursive: true });
    await writeFile(at('tapes', path), content);
  }
  await done(build, '--out', at('site'));
  serving = await serve({ root: at('site'), port: 0 });
  browser = await openBrowser();
  context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
  await context.addInitScript(() => {
    addEventListener('securitypolicyviolation', (event) =>
      console.error(`the policy refused ${event.violatedDirective} ${event.blockedURI} ${event.sample}`),
    );
  });
  context.on('page', (page) => {
    page.on('dialog', (dialog) => {
      troubles.push(`${page.url()}: a dialog`);
      void dialog.dismiss();
    });
    page.on('console', (message) => {
      if (['error', 'warning'].includes(message.type())) troubles.push(`${page.url()}: ${message.text()}`);
    });
    page.on('pageerror', (error) => troubles.push(`${page.url()}: ${String(error)}`));
    page.on('request', (request) => {
      if (!/^(?:file:|data:|blob:)/.test(request.url()) && !request.url().startsWith(serving.address))
        troubles.push(`${page.url()} asks for ${request.url()}`);
    });
  });
}, 600_000);

afterAll(async () => {
  await browser?.close();
  await serving?.close();
  await rm(folder, { recursive: true, force: true });
});

/** What a page has that it shouldn't have, and the numbers of the facts that are shown in it letter by letter. */
async function look(page: Page): Promise<{ readonly wrong: readonly string[]; readonly shown: readonly number[] }> {
  return await page.evaluate(
    ({ after, turns }) => {
      const wrong: string[] = [];
      if ('ran' in window) wrong.push('a text of the collection ran');
      for (const element of document.querySelectorAll('*')) {
        for (const { name, value } of element.attributes) {
          if (name.startsWith('on') || name === 'style' || name === 'srcdoc')
            wrong.push(`${element.tagName} has ${name}`);
          if (
            /^(?:href|src|action|formaction|data|xlink:href)$/.test(name) &&
            /^\s*(?:javascript|vbscript):/i.test(value)
          )
            wrong.push(`${element.tagName} ${name} leads to a script`);
          if (new RegExp(turns).test(value)) wrong.push(`${element.tagName} ${name} turns round what follows`);
        }
      }
      for (const tag of ['iframe', 'object', 'embed', 'base', 'meta[http-equiv=refresh]', 'link[href*=remote]'])
        if (document.querySelector(tag)) wrong.push(`there is a ${tag}`);
      for (const script of document.querySelectorAll('script:not([src])'))
        if (script.textContent?.includes('ran=1') && script.getAttribute('type') !== 'application/ld+json')
          wrong.push('a script has text of the collection in it');
      for (const data of document.querySelectorAll('script[type="application/ld+json"]'))
        JSON.parse(data.textContent ?? '');
      const text = document.documentElement.textContent ?? '';
      if (new RegExp(turns).test(text)) wrong.push('a text turns round what follows');
      if (getComputedStyle(document.body).display === 'none') wrong.push('the page is hidden');
      const shown = [...text.matchAll(/=Q(\d{3})/g)].filter((mark) =>
        text.startsWith(after, mark.index + mark[0].length),
      );
      return { wrong, shown: shown.map((mark) => Number(mark[1])) };
    },
    { after: SHOWN_AFTER_MARK, turns: TURNS.source },
  );
}

async function pagesOf(root: string): Promise<string[]> {
  const found = await readdir(root, { recursive: true });
  return found.filter((path) => path.endsWith('index.html')).map((path) => path.replace(/index\.html$/, ''));
}

describe('text that would be more than text', () => {
  test('is shown as text on every page of the owner’s site, and nothing of it runs', { timeout: 300_000 }, async () => {
    const shown = new Set<number>();
    const page = await context.newPage();
    const paths = await pagesOf(at('site'));
    expect(paths.length).toBeGreaterThan(40);
    for (const path of paths) {
      await page.goto(serving.address + path);
      const { wrong, shown: here } = await look(page);
      expect(wrong, path).toEqual([]);
      for (const one of here) shown.add(one);
    }
    await page.close();
    expect(troubles).toEqual([]);
    const hidden = GIVEN.facts.filter((_fact, number) => !shown.has(number));
    expect(hidden.filter((fact) => !NOT_ON_PAGES.test(fact))).toEqual([]);
  });

  test('is shown as text in what is searched for', { timeout: 300_000 }, async () => {
    const page = await context.newPage();
    for (const asked of ['Q004', 'constructor', SHOWN_AFTER_MARK, 'Plain reels']) {
      await page.goto(`${serving.address}look-up/?n=${encodeURIComponent(asked)}`);
      await page.locator('main h1').filter({ hasText: asked }).waitFor();
      await page.waitForLoadState('networkidle');
      expect((await look(page)).wrong, asked).toEqual([]);
    }
    await page.goto(serving.address);
    await page.keyboard.press('/');
    await page.keyboard.type('Q004');
    await page.locator('form.numbox [role=option]').first().waitFor();
    expect((await look(page)).wrong).toEqual([]);
    await page.goto(`${serving.address}plan/?reels=hostile,${encodeURIComponent(SHOWN_AFTER_MARK)}`);
    await page.waitForLoadState('networkidle');
    expect((await look(page)).wrong).toEqual([]);
    await page.close();
    expect(troubles).toEqual([]);
  });

  test('is shown as text where a share is refused for it, and not sealed', { timeout: 120_000 }, async () => {
    const refused = done(seal, 'to-valuer', '--out', at('refused.html'));
    await expect(refused).resolves.toBe('');
    expect(await readdir(folder)).not.toContain('refused.html');
    // Their private facts can't be known: nothing can be sealed while they stand.
    for (const kind of ENTRY_KINDS) await rm(at('tapes', kind, 'refused.md'));
  });

  test.each(AUDIENCES)('is shown as text in the dossier for the %s', { timeout: 300_000 }, async (audience) => {
    const file = at(`to-${audience}.html`);
    const link = await done(seal, `to-${audience}`, '--out', file);
    expect(link).not.toBe('');
    const page = await context.newPage();
    await page.goto(`${pathToFileURL(file).href}#${link.trim().split('#')[1]}`);
    await page.waitForSelector('#who');
    const { wrong, shown } = await look(page);
    expect(wrong).toEqual([]);
    expect(shown.length).toBeGreaterThan(5);
    expect(troubles).toEqual([]);
    await page.close();
  });
});

describe('in files for other programs', () => {
  test('the calendar holds no line of anybody else’s', async () => {
    const text = await readFile(at('site', 'calendar.ics'), 'utf8');
    const parsed = new ical.Component(ical.parse(text));
    expect(parsed.getAllSubcomponents('vevent').length).toBeGreaterThan(0);
    for (const event of parsed.getAllSubcomponents('vevent')) expect(event.getAllSubcomponents()).toEqual([]);
    expect(text).not.toMatch(/^X: y/m);
    expect(text).not.toMatch(TURNS);
  });
  test('a spreadsheet gets no formula, and every cell in its column', async () => {
    await done(exportAs, '--as', 'csv', '--out', at('reels.csv'));
    const { data, errors } = papaparse.parse<string[]>(await readFile(at('reels.csv'), 'utf8'), {
      skipEmptyLines: true,
    });
    expect(errors).toEqual([]);
    expect(new Set(data.map((row) => row.length)).size).toBe(1);
    expect(data.flat().filter((cell) => /^[=+@-]/.test(cell))).toEqual([]);
    expect(data.flat().some((cell) => cell.startsWith(`'${markOf(3)}`))).toBe(true);
  });
  test.each([
    ['jsonld', 'reels.jsonld', []],
    ['iiif', 'iiif', ['--base', 'https://tapes.example/']],
    ['pbcore', 'pbcore.xml', []],
    ['schedule', 'schedule', []],
  ] as const)('%s is whole, and the browser reads it as data', async (form, name, more) => {
    await done(exportAs, '--as', form, '--out', at('out', name), ...more);
    const found = (await readdir(at('out'), { recursive: true, withFileTypes: true })).filter((one) => one.isFile());
    const page = await context.newPage();
    for (const { parentPath, name: file } of found) {
      const text = await readFile(join(parentPath, file), 'utf8');
      if (/\.(?:json|jsonld)$/.test(file)) expect(() => JSON.parse(text), file).not.toThrow();
      if (file.endsWith('.xml'))
        expect(
          await page.evaluate(
            (xml) =>
              new DOMParser().parseFromString(xml, 'application/xml').querySelectorAll('parsererror, script, img')
                .length,
            text,
          ),
        ).toBe(0);
      if (file.endsWith('.html')) {
        await page.goto(pathToFileURL(join(parentPath, file)).href);
        expect((await look(page)).wrong).toEqual([]);
      }
    }
    await rm(at('out'), { recursive: true, force: true });
    expect(troubles).toEqual([]);
  });
});
