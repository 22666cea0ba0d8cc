import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { beforeEach, describe, expect, test } from 'vitest';
import { type GivenDesk, keptTexts, SIDE_1, twoPhotographs } from '../desk/given-desk.ts';
import { atTheDesk, changedLines, field, SOON, said, visit } from './at-the-desk.ts';
import { axeFindings } from './harness.ts';

const { desk: deskNow, sit, troubles } = atTheDesk();
let desk: GivenDesk;
beforeEach(() => {
  desk = deskNow();
});

test('the secret leaves the address bar', async () => {
  const page = await sit();
  expect(page.url()).toBe(new URL('/', desk.serving.address).href);
});

test('two photographs become a reel, whose label is read with the mouse and with keys', async () => {
  const page = await sit();
  const photographs = await twoPhotographs(desk.folder);
  await page.getByLabel(/A new reel from photographs/).setInputFiles(photographs);
  expect(await page.getByLabel('Title').first().inputValue()).toBe('White box');
  expect(await page.getByLabel('Id, for other').first().inputValue()).toBe('white-box');
  await page.getByRole('button', { name: 'Make the reel with 2 photographs' }).click();
  await page.locator('.stage img').nth(1).waitFor();
  const [first = ''] = photographs;
  expect(await readFile(join(desk.root, 'reels/white-box/white-box.jpg'))).toEqual(await readFile(first));

  // With the mouse, a tenth of the way in, and as wide as a third.
  const stage = page.locator('.stage img').first();
  await expect.poll(async () => (await stage.boundingBox())?.height ?? 0, SOON).toBeGreaterThan(50);
  await stage.scrollIntoViewIfNeeded();
  const box = await stage.boundingBox();
  if (box === null) throw new Error('the photograph isn’t shown');
  await page.mouse.move(box.x + box.width * 0.1, box.y + box.height * 0.2);
  await page.mouse.down();
  await page.mouse.move(box.x + box.width * 0.43, box.y + box.height * 0.35, { steps: 4 });
  await page.mouse.up();
  const written = page.getByLabel('What it says, letter by letter');
  // Typing goes on where the region was drawn.
  await page.keyboard.type('HLX 22');
  await page.getByRole('button', { name: /one of these/ }).click();
  await page.keyboard.type('7-A');
  expect(await written.inputValue()).toBe('HLX 22{1|7}7-A');
  await page.getByText('The seventh character is 1 or 7.').waitFor();

  await written.fill('HLX 2207-A');
  await page.getByLabel('Which fact it is').selectOption('numbers.matrix');
  await page.getByLabel('How sure').selectOption('likely');
  await page.getByRole('button', { name: 'Fill in Numbers, Matrix number: HLX 2207-A' }).click();
  await page.getByText('Numbers, Matrix number says the same.').waitFor();
  expect(await field(page, 'numbers.matrix.0').inputValue()).toBe('HLX 2207-A');

  // With keys alone: a region, two steps right, one lower, three wider.
  await page.getByRole('button', { name: /New region by keys on img/ }).press('Enter');
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('ArrowDown');
  for (let step = 0; step < 3; step++) await page.keyboard.press('Shift+ArrowRight');

  await page.keyboard.press('Control+s');
  await said(page, 'Saved.');
  const text = await desk.textOf('reels/white-box/index.md');
  expect(text).toContain('region: "xywh=percent:32,41,43,10"');
  const drawn = /photo: white-box\.jpg, region: "xywh=percent:([\d.,]+)"/.exec(text)?.[1]?.split(',').map(Number) ?? [];
  // A mouse points at whole pixels, of which the photograph has under 500 across.
  for (const [at, percent] of [10, 20, 33, 15].entries())
    expect(Math.abs((drawn[at] ?? 0) - percent)).toBeLessThan(0.3);
  expect(text).toContain('numbers:\n  matrix: [HLX 2207-A]\n');
});

test('the checks answer as one types, with the reading that would agree, and nothing is written until asked', async () => {
  const page = await sit('reels/low-water-2');
  await field(page, 'numbers.matrix.0').fill('HLX 2201-B');
  const slip = page.locator('[data-code="number/sides-differ"]');
  await slip.waitFor();
  expect(await slip.textContent()).toContain('HLX 2207-B');
  expect(await page.locator('pre.lines').textContent()).toContain('+ numbers: { matrix: [HLX 2201-B] }');
  expect(await desk.textOf('reels/low-water-2.md')).toContain('HLX 2207-B');
  await page.getByRole('button', { name: 'Undo' }).click();
  await slip.waitFor({ state: 'detached' });
  expect(await field(page, 'numbers.matrix.0').inputValue()).toBe('HLX 2207-B');
});

test('one change at the desk is one changed line', async () => {
  const page = await sit('reels/low-water-1');
  await field(page, 'length').fill('19:02');
  await page.getByRole('button', { name: 'Save' }).click();
  await said(page, 'Saved.');
  expect(changedLines(SIDE_1, await desk.textOf('reels/low-water-1.md'))).toEqual({
    gone: ['length: "18:52"   # as stated'],
    come: ['length: "19:02"   # as stated'],
  });
  expect(await keptTexts(desk, 'reels/low-water-1')).toEqual([SIDE_1]);
});

test('a value that can’t be read is told beside its field’s name, and can be saved all the same', async () => {
  const page = await sit('reels/low-water-1');
  await field(page, 'pack.outside-diameter').fill('250');
  const slip = page.locator('[data-code="entry/bad-value"]');
  await slip.waitFor();
  expect(await slip.textContent()).toContain('pack.outside-diameter');
});

test('a list grows by a line, and is known to be none', async () => {
  const page = await sit('reels/low-water-1');
  await page.getByRole('button', { name: 'Add a line: Contents' }).click();
  await page.keyboard.type('Marram, the long one');
  await page.getByRole('button', { name: 'Splices: known to be none' }).click();
  await page.getByRole('button', { name: 'Save' }).click();
  await said(page, 'Saved.');
  expect(changedLines(SIDE_1, await desk.textOf('reels/low-water-1.md'))).toEqual({
    gone: [],
    come: ['contents:', '  - { title: "Marram, the long one" }', 'splices: none'],
  });
});

test('photographs are dropped, and one that is none is told without losing the others', async () => {
  const page = await sit();
  const [first = ''] = await twoPhotographs(desk.folder);
  const bytes = (await readFile(first)).toString('base64');
  const files = await page.evaluateHandle((base64) => {
    const dropped = new DataTransfer();
    const photograph = Uint8Array.from(atob(base64), (sign) => sign.charCodeAt(0));
    dropped.items.add(new File([photograph], 'Marram tape.jpg', { type: 'image/jpeg' }));
    dropped.items.add(new File(['no picture'], 'notes.jpg', { type: 'image/jpeg' }));
    return dropped;
  }, bytes);
  await page.locator('.drop').first().dispatchEvent('drop', { dataTransfer: files });
  await page.getByRole('button', { name: 'Make the reel with 2 photographs' }).click();
  await page.getByText('The reel marram-tape is made, without: notes.jpg').waitFor();
  expect(await desk.textOf('reels/marram-tape/index.md')).toContain('- { file: marram-tape.jpg }');
  troubles.allow(/415/);
});

test('a reference to an entry that isn’t there can be begun on the spot', async () => {
  const page = await sit('reels/low-water-1');
  await field(page, 'stock').fill('norda-verde');
  await page.keyboard.press('Tab');
  await page.getByRole('button', { name: 'Begin the stock norda-verde' }).click();
  await page.getByText('stocks/norda-verde is begun').waitFor();
  expect(await desk.textOf('stocks/norda-verde.md')).toBe('---\ntitle: norda verde\n---\n');
});

describe('two windows', () => {
  test('the later one is told, is shown both, and can put its own on top', async () => {
    const first = await sit('reels/low-water-1');
    const second = await sit('reels/low-water-1');
    await field(first, 'set').fill('first');
    await field(second, 'client').fill('a friend of mine');
    await first.getByRole('button', { name: 'Save' }).click();
    await said(first, 'Saved.');
    await second.getByRole('button', { name: 'Save' }).click();
    const alert = second.getByRole('alert');
    await alert.waitFor();
    const words = await alert.textContent();
    expect(words).toContain('set: first');
    expect(words).toContain('a friend of mine');
    expect(await desk.textOf('reels/low-water-1.md')).not.toContain('a friend');
    await second.getByRole('button', { name: 'Put mine on top of it' }).click();
    await alert.waitFor({ state: 'detached' });
    const text = await desk.textOf('reels/low-water-1.md');
    expect(text).toContain('set: first');
    expect(text).toContain('client: a friend of mine');
  });
  test('an editor that changed the file meanwhile counts as the first', async () => {
    const page = await sit('reels/low-water-1');
    await writeFile(join(desk.root, 'reels/low-water-1.md'), SIDE_1.replace('held', 'lent'));
    await field(page, 'set').fill('mine');
    await page.getByRole('button', { name: 'Save' }).click();
    await page.getByRole('alert').waitFor();
    expect(await desk.textOf('reels/low-water-1.md')).toBe(SIDE_1.replace('held', 'lent'));
  });
});

test('with the keyboard alone an entry is found, changed and saved', async () => {
  const page = await sit();
  const tabTo = async (wanted: string) => {
    for (let presses = 0; presses < 80; presses++) {
      await page.keyboard.press('Tab');
      if (await page.evaluate(`document.activeElement?.matches(${JSON.stringify(wanted)})`)) return;
    }
    throw new Error(`Tab never came to ${wanted}`);
  };
  await tabTo('input[type=search]');
  await page.keyboard.type('side 2');
  await tabTo('.list-desk a');
  await page.keyboard.press('Enter');
  await page.waitForSelector('.bar-desk');
  await tabTo('[data-path="length"]');
  await page.keyboard.press('Control+a');
  await page.keyboard.type('20:00');
  await page.keyboard.press('Control+s');
  await said(page, 'Saved.');
  expect(await desk.textOf('reels/low-water-2.md')).toContain('length: "20:00"   # as stated');
});

describe('on a phone, 360 px wide', () => {
  const phone = { viewport: { width: 360, height: 740 }, hasTouch: true } as const;
  test('nothing runs over the side', async () => {
    const page = await sit('', phone);
    const wide = () => page.evaluate('document.documentElement.scrollWidth');
    expect(await wide()).toBe(360);
    await visit(page, desk, 'reels/low-water-1');
    expect(await wide()).toBe(360);
  });
  test('a region is drawn with a finger once drawing is on', async () => {
    const page = await sit('', phone);
    await page.getByLabel(/A new reel from photographs/).setInputFiles(await twoPhotographs(desk.folder));
    await page.getByRole('button', { name: /Make the reel/ }).click();
    const image = page.locator('.stage img').first();
    await expect.poll(async () => (await image.boundingBox())?.height ?? 0, SOON).toBeGreaterThan(50);
    const draw = async () => {
      await image.scrollIntoViewIfNeeded();
      const box = await image.boundingBox();
      if (box === null) throw new Error('the photograph isn’t shown');
      const finger = await page.context().newCDPSession(page);
      const at = (x: number, y: number) => [{ x: box.x + box.width * x, y: box.y + box.height * y }];
      await finger.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: at(0.1, 0.1) });
      await finger.send('Input.dispatchTouchEvent', { type: 'touchMove', touchPoints: at(0.3, 0.2) });
      await finger.send('Input.dispatchTouchEvent', { type: 'touchMove', touchPoints: at(0.6, 0.3) });
      await finger.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
    };
    await draw();
    expect(await page.getByLabel('What it says, letter by letter').count()).toBe(0);
    await page.getByLabel('Draw with a finger').first().check();
    await draw();
    await page.getByLabel('What it says, letter by letter').waitFor();
  });
  test('a region too low for a finger is told', async () => {
    const page = await sit('', phone);
    await page.getByLabel(/A new reel from photographs/).setInputFiles(await twoPhotographs(desk.folder));
    await page.getByRole('button', { name: /Make the reel/ }).click();
    await page.locator('.stage img').first().waitFor();
    await page.getByRole('button', { name: /New region by keys on white/ }).click();
    for (let step = 0; step < 7; step++) await page.keyboard.press('Shift+ArrowUp');
    await page.getByText('Region 1 is lower than a finger can hit on a phone').waitFor();
  });
});

test.each(['light', 'dark'] as const)('axe finds nothing, %s', async (colorScheme) => {
  const page = await sit('', { colorScheme });
  expect(await axeFindings(page)).toEqual([]);
  await page.getByLabel(/A new reel from photographs/).setInputFiles(await twoPhotographs(desk.folder));
  await page.getByRole('button', { name: /Make the reel/ }).click();
  await page.locator('.stage img').first().waitFor();
  await page.getByRole('button', { name: /New region by keys on white/ }).click();
  await page.getByRole('button', { name: 'Add a line: Contents' }).click();
  await field(page, 'length').fill('19.44');
  await page.locator('.slip').first().waitFor();
  expect(await axeFindings(page)).toEqual([]);
});
