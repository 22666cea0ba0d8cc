import { createHash } from 'node:crypto';
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { AUDIENCES } from '#model/words.ts';
import { Damaged, fromText, unseal, WrongWords } from '#publish/sealed.ts';
import { seal } from '../../src/commands/seal.ts';
import { listener } from '../given/listener.ts';
import { MAY_BE_TOLD, TOLD_EVERYTHING, wordsToldIn } from '../given/told-everything.ts';
import { writeCollection } from '../given/written-collection.ts';
import { openBrowser } from './browser.ts';
import { axeFindings } from './harness.ts';

const WORDS = 'tavok limen rudas pobet';
const HOSTILE = `<img src=x onerror="window.ran=1"><script>window.ran=1</script> <style>body{display:none}</style> [link](javascript:window.ran=1) <svg onload="window.ran=1"> \u202Ertl`;
let folder: string;
let browser: Browser;
const troubles: string[] = [];

/** Seals a share of the test's collection, and gives the file's text and what the command said. */
async function sealed(
  id: string,
  more: readonly string[] = [],
): Promise<{ file: string; text: string; out: string; err: string; exit: number }> {
  const file = join(folder, `${id}-${more.join('').replace(/\W/g, '')}.html`);
  const { said, hear } = listener();
  const io = {
    ...hear,
    cwd: folder,
    now: new Date('2026-04-01T12:00:00'),
    env: { SEAL_PASSPHRASE: WORDS },
    terminal: false,
  };
  const exit = await seal(
    [
      id,
      '--collection',
      join(folder, 'collection'),
      '--cache',
      join(folder, 'cache'),
      '--today',
      '2026-04-01',
      '--out',
      file,
      ...more,
    ],
    io,
  );
  const text = exit === 0 && !more.includes('--dry-run') ? await readFile(file, 'utf8') : '';
  return { file, text, ...said, exit };
}

const payloadOf = (text: string) => /-----BEGIN AGE[\s\S]+?-----END AGE ENCRYPTED FILE-----/.exec(text)?.[0] ?? '';
/** The same but for one letter, in mid-payload. */
function oneLetterOther(payload: string): string {
  const middle = payload.indexOf('\n', payload.length / 2) + 20;
  return `${payload.slice(0, middle)}${payload[middle] === 'A' ? 'B' : 'A'}${payload.slice(middle + 1)}`;
}
/** The key at the end of a link, as the command printed it. */
const keyIn = (out: string) => out.split('#')[1]?.trim();
const opened = async (text: string, key: string | undefined) =>
  new TextDecoder().decode(await unseal(fromText(payloadOf(text)), key === undefined ? { words: WORDS } : { key }));

async function pageOf(url: string, options: object = {}): Promise<Page> {
  const context = await browser.newContext({
    viewport: { width: 1280, height: 900 },
    offline: url.startsWith('file:'),
    ...options,
  });
  const page = await context.newPage();
  page.on('console', (message) => {
    if (['error', 'warning'].includes(message.type())) troubles.push(message.text());
  });
  page.on('pageerror', (error) => troubles.push(String(error)));
  page.on('request', (request) => {
    if (!/^(file:|data:|blob:|http:\/\/127\.0\.0\.1)/.test(request.url())) troubles.push(`asks for ${request.url()}`);
  });
  await page.goto(url);
  return page;
}

/** The dossier of a share that is opened by a link, opened. */
async function openedPage(id: string, options: object = {}): Promise<Page> {
  const { file, key } = fileOf(id);
  const page = await pageOf(`${pathToFileURL(file).href}#${key}`, options);
  await page.waitForSelector('#who');
  return page;
}

async function type(page: Page, words: string): Promise<void> {
  await page.fill('#words', words);
  await page.click('#lock button');
}
const stateOf = (page: Page, state: string) => page.waitForSelector(`[data-state=${state}]`, { state: 'visible' });

/** A photograph with a word in each kind of what a camera writes into it. */
const toldPicture = (at: number) =>
  sharp({ create: { width: 1800, height: 1200, channels: 3, background: at === 0 ? '#a08060' : '#60a080' } })
    .composite([{ input: Buffer.from('<svg width="1200" height="700"><circle cx="700" cy="300" r="250"/></svg>') }])
    .jpeg()
    .withExif({ IFD0: { ImageDescription: 'QQ-EXIF', Artist: 'QQ-EXIF' } })
    .withXmp(
      '<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#"><rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/"><dc:title>QQ-XMP</dc:title></rdf:Description></rdf:RDF></x:xmpmeta>',
    )
    .toBuffer();

const files: Record<string, { file: string; text: string; page: string; key: string | undefined }> = {};

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'sealed-test-'));
  const pictures = await Promise.all([toldPicture(0), toldPicture(1)]);
  for (const picture of pictures) for (const word of ['QQ-EXIF', 'QQ-XMP']) expect(picture.includes(word)).toBe(true);
  await writeCollection(
    join(folder, 'collection'),
    {
      ...TOLD_EVERYTHING,
      'reels/hostile': `title: ${JSON.stringify(`Hostile ${HOSTILE}`)}\nset: ${JSON.stringify(HOSTILE)}\nrights: ${JSON.stringify(HOSTILE)}\nclient: ${JSON.stringify(`X ${HOSTILE}`)}\ncontents: [{ title: ${JSON.stringify(HOSTILE)} }]\nalso: { ${JSON.stringify(HOSTILE)}: ${JSON.stringify(HOSTILE)} }\n---\n${HOSTILE}`,
      'shares/hostile': `title: ${JSON.stringify(HOSTILE)}\nto: ${JSON.stringify(HOSTILE)}\nfront: ${JSON.stringify(HOSTILE)}\nfor: valuer\nreels: [hostile]\nshows-private: [body, also]\nopened-by: link`,
      'shares/linked': 'title: Linked\nfor: engineer\nreels: [qq04-shown]\nopened-by: link\nuntil: "2020"',
      'shares/by-link': 'title: By link\nfor: engineer\nreels: [qq04-shown]\nopened-by: link',
      'shares/words': 'title: By words\nfor: friend\nreels: [qq04-shown]',
      'shares/short': 'title: Short\nfor: friend\nreels: [qq04-shown]\nuntil: "2026-04-01"',
    },
    async (at) => pictures[at % 2] ?? new Uint8Array(),
  );
  browser = await openBrowser();
  for (const id of [...AUDIENCES.map((audience) => `qr13-${audience}`), 'hostile', 'words', 'short']) {
    const { file, text, out, err } = await sealed(id);
    if (text === '') throw new Error(err);
    const key = keyIn(out);
    files[id] = { file, text, page: await opened(text, key), key };
  }
}, 600_000);

afterAll(async () => {
  await browser?.close();
  await rm(folder, { recursive: true, force: true });
  expect(troubles).toEqual([]);
});

const fileOf = (id: string) => {
  const found = files[id];
  if (found === undefined) throw new Error(`${id} wasn’t sealed`);
  return found;
};

describe('what is inside', () => {
  test.each(AUDIENCES)('holds for the %s no word that it may not', (audience) => {
    const allowed = new Set(MAY_BE_TOLD[audience]);
    const { page } = fileOf(`qr13-${audience}`);
    const text = page.replace(/data:[a-z/0-9+-]+;base64,[A-Za-z0-9+/=]+/g, '');
    expect(wordsToldIn(text).filter((word) => !allowed.has(word))).toEqual([]);
    expect(wordsToldIn(text).length).toBeGreaterThan(8);
    expect(text).not.toMatch(/q[qr]\d\d|\.(?:jpg|csv|wav)|index\.md|reels\//);
  });

  test.each(AUDIENCES)('has pictures for the %s with nothing in them but pixels', async (audience) => {
    const { page } = fileOf(`qr13-${audience}`);
    const pictures = [...page.matchAll(/data:image\/webp;base64,([A-Za-z0-9+/=]+)/g)].map((match) =>
      Buffer.from(match[1] ?? '', 'base64'),
    );
    expect(pictures.length).toBeGreaterThan(2);
    for (const picture of pictures) {
      expect(picture.includes('QQ-')).toBe(false);
      const { exif, xmp, iptc, icc } = await sharp(picture).metadata();
      expect([exif, xmp, iptc, icc]).toEqual([undefined, undefined, undefined, undefined]);
    }
  });

  test('leads nowhere outside itself, and has no style but its one block', () => {
    for (const { page } of Object.values(files)) {
      const bare = page.replace(/<style>[\s\S]*?<\/style>/, '');
      expect(bare).not.toMatch(/\s(src|srcset|href)="(?!#|data:|https?:\/\/|mailto:)/);
      expect(bare).not.toMatch(/<[a-z][^>]*\sstyle="/);
      expect(bare).not.toContain('<script');
      const ids = [...bare.matchAll(/\sid="([^"]+)"/g)].map((match) => match[1]);
      expect(ids.filter((id, at) => ids.indexOf(id) !== at)).toEqual([]);
    }
  });
});

test('each typeface has a general one of the reader’s own behind it, for letters that it lacks', () => {
  const { page } = fileOf('qr13-valuer');
  const faces = [...page.matchAll(/--face-[a-z]+:([^;}]+)/g)].map((match) => match[1]?.split(',').at(-1));
  expect(new Set(faces)).toEqual(new Set(['sans-serif', 'monospace', 'serif']));
});

describe('the closed file', () => {
  test('says nothing of what is inside', () => {
    for (const [id, { text }] of Object.entries(files)) {
      const outside = text.replace(payloadOf(text), '');
      expect(wordsToldIn(outside), id).toEqual([]);
      expect(outside).not.toMatch(/Shown to one|valuer|insurer|engineer|researcher|copy master|qr13/);
      expect(outside).toContain('<title>Sealed dossier</title>');
    }
  });

  test('is found by sed as the recipe in it says, and by nothing else', () => {
    const { text } = fileOf('short');
    const lines = text.split('\n');
    const begins = lines.filter((line) => line.includes('BEGIN AGE'));
    const ends = lines.filter((line) => line.includes('END AGE'));
    expect([begins, ends]).toEqual([['-----BEGIN AGE ENCRYPTED FILE-----'], ['-----END AGE ENCRYPTED FILE-----']]);
  });

  test('carries the checksum of what is sealed', () => {
    const { text } = fileOf('short');
    const sum = createHash('sha256')
      .update(fromText(payloadOf(text)))
      .digest('hex');
    expect(text).toContain(`data-sha256="${sum}"`);
  });
});

describe('in a browser, from file: and without a network', () => {
  test('opens with the words, after others that don’t open it', async () => {
    const page = await pageOf(pathToFileURL(fileOf('words').file).href);
    expect(await axeFindings(page)).toEqual([]);
    await type(page, 'not these words');
    await stateOf(page, 'wrong');
    expect(await page.textContent('body')).not.toContain('QQ05');
    await type(page, WORDS);
    await page.waitForSelector('#who');
    expect(await page.title()).toBe('By words');
    expect(await page.textContent('body')).toContain('QQ05');
    await page.context().close();
  });

  test.each(['light', 'dark'] as const)(
    'shows all of it in %s, without a fault that axe finds',
    async (colorScheme) => {
      const page = await openedPage('qr13-engineer', { colorScheme });
      expect(await page.title()).toBe('Shown to one');
      expect(await page.textContent('body')).toContain('QR14 reader');
      expect(await axeFindings(page)).toEqual([]);
      expect(
        await page.evaluate(() => [...document.images].every((image) => image.complete && image.naturalWidth > 0)),
      ).toBe(true);
      await page.context().close();
    },
  );

  test('prints on A4: its plan and each reel on sheets of their own, under a head that names both', async () => {
    // What lies between the margins of A4, 184 mm.
    const page = await openedPage('qr13-engineer', { viewport: { width: 695, height: 1010 } });
    await page.emulateMedia({ media: 'print' });
    const sheets = await page.$$eval('.reelsheet', (found) =>
      found.map((one) => [one.id, getComputedStyle(one).breakBefore, one.querySelector('.paper-head')?.textContent]),
    );
    expect(sheets).toEqual([
      ['plan', 'page', expect.stringContaining('Playing plan')],
      ['reel-1', 'page', expect.stringContaining('QQ05 shown')],
    ]);
    const width = await page.evaluate(() => [document.documentElement.scrollWidth, window.innerWidth]);
    expect(width[0]).toBeLessThanOrEqual(width[1] ?? 0);
    const paper = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
    expect(paper).toMatch(/\/MediaBox \[0 0 59[45][\d.]* 84[12]/);
    expect(paper.match(/\/Type \/Page\b/g)?.length).toBeGreaterThan(2);
    await page.context().close();
  });

  test('brings a photograph nearer by wheel, drag and keys, and gives the focus back', async () => {
    const page = await openedPage('qr13-friend');
    const button = page.locator('button.closer').first();
    await button.focus();
    await page.keyboard.press('Enter');
    const canvas = page.locator('dialog.zoom canvas');
    await canvas.waitFor();
    expect(await axeFindings(page)).toEqual([]);
    let before = '';
    const looksOther = async (what: string) => {
      await expect
        .poll(async () => (await canvas.screenshot()).toString('base64') !== before, { message: what })
        .toBe(true);
      before = (await canvas.screenshot()).toString('base64');
    };
    // The photograph is there as soon as it is decoded: until then the canvas is one colour.
    await expect.poll(async () => (await canvas.screenshot()).length).toBeGreaterThan(9_000);
    before = (await canvas.screenshot()).toString('base64');
    const whole = before;
    await page.mouse.move(700, 300);
    await page.mouse.wheel(0, -300);
    await looksOther('the wheel');
    await page.mouse.down();
    await page.mouse.move(500, 400, { steps: 3 });
    await page.mouse.up();
    await looksOther('the drag');
    for (const key of ['+', 'ArrowLeft', 'ArrowUp', '-']) {
      await page.keyboard.press(key);
      await looksOther(key);
    }
    await page.keyboard.press('0');
    await expect.poll(async () => (await canvas.screenshot()).toString('base64') === whole).toBe(true);
    await page.keyboard.press('Escape');
    await expect.poll(() => page.locator('dialog.zoom').count()).toBe(0);
    expect(await button.evaluate((one) => one === document.activeElement)).toBe(true);
    expect(await page.locator('main [style], dialog [style]').count()).toBe(0);
    await page.context().close();
  });

  test('brings a photograph nearer by two fingers on a telephone', async () => {
    const page = await openedPage('qr13-friend', {
      viewport: { width: 360, height: 740 },
      hasTouch: true,
      isMobile: true,
    });
    await page.locator('button.closer').first().tap();
    const canvas = page.locator('dialog.zoom canvas');
    await expect.poll(async () => (await canvas.screenshot()).length).toBeGreaterThan(2_000);
    const before = (await canvas.screenshot()).toString('base64');
    const fingers = await page.context().newCDPSession(page);
    const at = (apart: number) => [
      { x: 180 - apart, y: 300, id: 1 },
      { x: 180 + apart, y: 300, id: 2 },
    ];
    await fingers.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: at(30) });
    for (const apart of [50, 80, 110])
      await fingers.send('Input.dispatchTouchEvent', { type: 'touchMove', touchPoints: at(apart) });
    await fingers.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
    await expect.poll(async () => (await canvas.screenshot()).toString('base64') !== before).toBe(true);
    await page.context().close();
  });

  test('stands on 360 px, closed and open', async () => {
    const viewport = { width: 360, height: 740 };
    const closed = await pageOf(pathToFileURL(fileOf('words').file).href, { viewport });
    expect(await closed.evaluate(() => document.documentElement.scrollWidth)).toBe(360);
    await closed.context().close();
    const page = await openedPage('qr13-engineer', { viewport });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(360);
    expect(await axeFindings(page)).toEqual([]);
    await page.context().close();
  });

  test.each([
    ['one bit is flipped', (text: string) => text.replace(payloadOf(text), oneLetterOther(payloadOf(text)))],
    [
      'it breaks off',
      (text: string) =>
        text.replace(payloadOf(text), `${payloadOf(text).slice(0, 4000)}\n-----END AGE ENCRYPTED FILE-----`),
    ],
    ['its end is missing', (text: string) => text.replace(payloadOf(text), payloadOf(text).slice(0, 4003))],
  ])('when %s, it is said to be damaged before any words are asked', async (name, damage) => {
    const { text } = fileOf('short');
    const damaged = damage(text);
    expect(damaged).not.toBe(text);
    const file = join(folder, `${name.replaceAll(' ', '-')}.html`);
    await writeFile(file, damaged);
    const page = await pageOf(pathToFileURL(file).href);
    await stateOf(page, 'damaged');
    await type(page, WORDS);
    expect(await page.$('#who')).toBeNull();
    await page.context().close();
  });

  test('a file damaged on purpose, with a checksum to match, shows nothing either', async () => {
    const { text, key = '' } = fileOf('qr13-friend');
    const bytes = fromText(payloadOf(text)).slice();
    bytes[bytes.length - 40] = (bytes[bytes.length - 40] ?? 0) ^ 1;
    await expect(unseal(bytes, { key })).rejects.toThrow(Damaged);
  });

  test('past its date it asks first', async () => {
    const page = await pageOf(pathToFileURL(fileOf('short').file).href);
    await page.clock.setFixedTime(new Date('2026-04-02T10:00:00'));
    await type(page, WORDS);
    await stateOf(page, 'past');
    expect(await page.textContent('body')).not.toContain('QQ05');
    await page.click('#show-anyway');
    await page.waitForSelector('#who');
    await page.context().close();
  });

  test('hostile text is shown as text, and nothing of it runs', async () => {
    const closed = await pageOf(pathToFileURL(fileOf('hostile').file).href);
    expect(await closed.textContent('.free')).toContain('<script>');
    expect(await closed.evaluate(() => 'ran' in window)).toBe(false);
    await closed.context().close();
    const page = await openedPage('hostile');
    expect(await page.textContent('body')).toContain('onerror="window.ran=1"');
    expect(await page.evaluate(() => 'ran' in window)).toBe(false);
    expect(await page.$$('[onerror], [onload], a[href^="javascript"], main script, main style')).toEqual([]);
    await page.context().close();
  });
});

describe('by a link', () => {
  test('the key opens it and is gone from the address', async () => {
    const { file, out } = await sealed('by-link', ['--base', 'https://tapes.example/private/']);
    expect(out).toMatch(/^https:\/\/tapes\.example\/private\/by-link[\w-]*\.html#AGE-SECRET-KEY-1[0-9A-Z]+\n$/);
    const key = keyIn(out) ?? '';
    const bytes = await readFile(file);
    expect(bytes.includes(key)).toBe(false);
    const asked: string[] = [];
    const server = createServer((request, response) => {
      asked.push(`${request.url} ${request.headers.referer ?? ''}`);
      response.setHeader('content-type', 'text/html; charset=utf-8').end(bytes);
    });
    await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
    const address = `http://127.0.0.1:${(server.address() as AddressInfo).port}/x.html`;
    const page = await pageOf(`${address}#${key}`);
    await page.waitForSelector('#who');
    expect(page.url()).toBe(address);
    expect(await page.content()).not.toContain(key);
    expect(asked.join()).not.toContain('AGE-SECRET');
    const other = await pageOf(`${address}#${key.slice(0, -6)}QQQQQQ`);
    await stateOf(other, 'no-key');
    server.close();
    await page.context().close();
    await other.context().close();
  });

  test.each([
    ['as text', () => payloadOf(fileOf('qr13-friend').text)],
    ['in its short form', () => fromText(payloadOf(fileOf('qr13-friend').text))],
    ['inside another dossier', () => fileOf('qr13-friend').text],
  ])('an .age file that the reader chooses opens in the page, %s', async (name, content) => {
    const other = join(folder, `${name.replaceAll(' ', '-')}.age`);
    await writeFile(other, content());
    const page = await pageOf(pathToFileURL(fileOf('short').file).href);
    await page.click('summary');
    await page.setInputFiles('#file', join(folder, 'collection', 'collection.md'));
    await stateOf(page, 'not-sealed');
    await page.setInputFiles('#file', other);
    await type(page, fileOf('qr13-friend').key ?? '');
    await page.waitForSelector('#who');
    expect(await page.textContent('body')).toContain('QR14 reader');
    await page.context().close();
  });
});

describe('the command', () => {
  test('refuses a share that has ended, and still says what would go along', async () => {
    expect(await sealed('linked')).toMatchObject({ exit: 1, text: '' });
    const dry = await sealed('linked', ['--dry-run']);
    expect(dry.exit).toBe(0);
    expect(dry.out).toMatch(/Goes along[\s\S]+Stays out[\s\S]+valuations/);
  });

  test('opens what it sealed, and not with other words', async () => {
    await expect(unseal(fromText(payloadOf(fileOf('short').text)), { words: 'others' })).rejects.toThrow(WrongWords);
  });
});
