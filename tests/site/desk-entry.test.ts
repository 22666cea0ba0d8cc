import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { keptTexts, SIDE_1, twoPhotographs } from '../desk/given-desk.ts';
import { atTheDesk, changedLines, field, said, visit } from './at-the-desk.ts';
import { axeFindings } from './harness.ts';

const { desk, sit } = atTheDesk();
const SHARE = '---\ntitle: For a friend\nfor: friend\nreels:\n  - low-water-1   # the first\n  - low-water-2\n---\n';

async function givenShare(): Promise<void> {
  await mkdir(join(desk().root, 'shares'));
  await writeFile(join(desk().root, 'shares/friend.md'), SHARE);
}

describe('an entry', () => {
  test('is renamed after its owner has seen what changes, with the keyboard alone', async () => {
    await givenShare();
    const page = await sit('reels/low-water-1');
    await page.getByLabel('Its id, which other entries name it by').fill('ebb-1');
    await page.getByRole('button', { name: 'Give it this id' }).press('Enter');
    const plan = page.getByRole('region', { name: 'What renaming to ebb-1 changes' });
    await plan.waitFor();
    expect(await plan.textContent()).toContain('reels/low-water-1.md becomes reels/ebb-1.md.');
    expect(await plan.locator('pre').textContent()).toBe('−   - low-water-1   # the first\n+   - ebb-1   # the first');
    expect(await readdir(join(desk().root, 'reels'))).not.toContain('ebb-1.md');
    await page.getByRole('button', { name: 'Rename it to ebb-1' }).press('Enter');
    await page.getByText('reel · ebb-1').waitFor();
    expect(await desk().textOf('reels/ebb-1.md')).toBe(SIDE_1);
    expect(await desk().textOf('shares/friend.md')).toBe(SHARE.replace('low-water-1', 'ebb-1'));
    expect(await keptTexts(desk(), 'shares/friend')).toEqual([SHARE]);
  });

  test('is deleted after what refers to it was listed, and brought back', async () => {
    await givenShare();
    const page = await sit('reels/low-water-1');
    await page.getByRole('button', { name: 'Delete the entry' }).click();
    await page.getByText('shares/friend.md: reels[0]').waitFor();
    expect(await axeFindings(page)).toEqual([]);
    await page.getByRole('button', { name: 'Leave it as it is' }).click();
    expect(await desk().textOf('reels/low-water-1.md')).toBe(SIDE_1);
    await page.getByRole('button', { name: 'Delete the entry' }).click();
    await page.getByRole('button', { name: 'Delete low-water-1' }).click();
    const back = page.getByRole('button', { name: 'Bring it back: reels/low-water-1' });
    await back.waitFor();
    expect(await readdir(join(desk().root, 'reels'))).toEqual(['low-water-2.md']);
    await back.click();
    await page.getByRole('link', { name: 'Low Water, side 1' }).waitFor();
    expect(await desk().textOf('reels/low-water-1.md')).toBe(SIDE_1);
  });

  test('with something typed is neither renamed nor deleted', async () => {
    const page = await sit('reels/low-water-1');
    await field(page, 'set').fill('typed');
    await page.getByRole('button', { name: 'Delete the entry' }).click();
    await page.getByText('Save or undo what you typed first.').waitFor();
  });

  test('becomes again what it was, after the lines were shown', async () => {
    const page = await sit('reels/low-water-1');
    for (const set of ['first', 'second']) {
      await field(page, 'set').fill(set);
      await page.keyboard.press('Control+s');
      await said(page, 'Saved.');
    }
    await page.getByRole('button', { name: 'Earlier versions' }).click();
    const versions = page.getByRole('button', { name: /As it was until/ });
    await versions.nth(1).waitFor();
    await versions.nth(1).click();
    const lines = page.locator('.list-desk pre.lines');
    await lines.waitFor();
    expect(await lines.textContent()).toBe('− set: second\n+ set: low-water');
    await page.getByRole('button', { name: 'Make it so again' }).click();
    await page.locator('[data-path="set"]').and(page.locator('input')).waitFor();
    await expect.poll(() => field(page, 'set').inputValue()).toBe('low-water');
    expect(await desk().textOf('reels/low-water-1.md')).toBe(SIDE_1);
    expect(await keptTexts(desk(), 'reels/low-water-1')).toHaveLength(3);
  });
});

test('a problem is accepted with a reason that is typed, shown as accepted, and taken back', async () => {
  await writeFile(
    join(desk().root, 'reels/low-water-2.md'),
    SIDE_1.replace('side 1', 'side 2').replace('"1"', '"2"').replace('HLX 2207-A', 'HLX 2201-B'),
  );
  const before = await desk().textOf('reels/low-water-2.md');
  const page = await sit('reels/low-water-2');
  const slip = page.locator('[data-code="number/sides-differ"]');
  await slip.getByRole('button', { name: /^Accept, with a reason/ }).press('Enter');
  await page.keyboard.press('Enter');
  await slip.getByText('Write why it is right all the same.').waitFor();
  await page.keyboard.type('seen under raking light');
  await page.keyboard.press('Enter');
  await slip.waitFor({ state: 'detached' });
  const accepted = page.locator('[data-accepted="number/sides-differ"]');
  expect(await accepted.textContent()).toContain('seen under raking light');
  await page.keyboard.press('Control+s');
  await said(page, 'Saved.');
  const { gone, come } = changedLines(before, await desk().textOf('reels/low-water-2.md'));
  expect(gone).toEqual([]);
  expect(come[1]).toMatch(
    /^ {2}- \{ code: number\/sides-differ, why: seen under raking light, "on": "\d{4}-\d\d-\d\d" \}$/,
  );
  await accepted.getByRole('button', { name: 'No longer accept it' }).click();
  await slip.waitFor();
});

test('a climate log is put beside a place, with what its columns are proposed to be', async () => {
  const page = await sit();
  await page.getByLabel('Or an empty entry for one').selectOption('places');
  await page.getByLabel('Title', { exact: true }).last().fill('Spare room');
  await page.getByRole('button', { name: 'Make the entry' }).click();
  await page.waitForSelector('.bar-desk');
  const log = Buffer.from('stamp_UTC+2;T_air;RH\n2026-01-01 00:00;18,0;45,0\n');
  await page.getByLabel(/Add a climate log/).setInputFiles({ name: 'Logger 7.csv', mimeType: 'text/csv', buffer: log });
  await page.getByText(/humidity_percent is taken to be “RH”/).waitFor();
  expect(await field(page, 'climate.0.columns.time').inputValue()).toBe('stamp_UTC+2');
  await page.keyboard.press('Control+s');
  await said(page, 'Saved.');
  expect(await desk().textOf('places/spare-room/index.md')).toBe(
    '---\ntitle: Spare room\nclimate:\n  - { file: logger-7.csv, columns: { time: stamp_UTC+2, temperature_C: T_air, humidity_percent: RH }, zone: "+02:00" }\n---\n',
  );
  expect(await readFile(join(desk().root, 'places/spare-room/logger-7.csv'))).toEqual(log);
});

test('a single file gets photographs in a folder of its own, and shows no other’s', async () => {
  const page = await sit();
  await page.getByLabel(/A new reel from photographs/).setInputFiles(await twoPhotographs(desk().folder));
  await page.getByRole('button', { name: /Make the reel/ }).click();
  await page.locator('.stage img').nth(1).waitFor();
  await visit(page, desk(), 'reels/low-water-1');
  await page.getByText('Low Water, side 1').first().waitFor();
  expect(await page.locator('.stage img').count()).toBe(0);
  const [photograph = ''] = await twoPhotographs(desk().folder);
  await page.getByLabel(/Add photographs/).setInputFiles(photograph);
  await page.locator('.stage img').waitFor();
  await page.keyboard.press('Control+s');
  await said(page, 'Saved.');
  expect(changedLines(SIDE_1, await desk().textOf('reels/low-water-1.md'))).toEqual({
    gone: [],
    come: ['photos:', '  - { file: low-water-1/white-box.jpg }'],
  });
  expect(await readdir(join(desk().root, 'reels/low-water-1'))).toEqual(['white-box.jpg']);
});

test('what the collection says of itself is entered too', async () => {
  const page = await sit();
  await page.getByRole('link', { name: 'Its title, owner, currency and units' }).click();
  await page.waitForSelector('.bar-desk');
  await field(page, 'owner').fill('A. Collector');
  await field(page, 'units').selectOption('imperial');
  await page.keyboard.press('Control+s');
  await said(page, 'Saved.');
  expect(await desk().textOf('collection.md')).toBe('---\nowner: A. Collector\nunits: imperial\nformat: 1\n---\n');
});

test('undo goes back over lines that were taken away and lines that were added, one at a time', async () => {
  const page = await sit('reels/low-water-1');
  const lines = () => page.locator('[data-group="contents"] > fieldset').count();
  for (const title of ['One', 'Two']) {
    await page.getByRole('button', { name: 'Add a line: Contents' }).click();
    await page.keyboard.type(title);
  }
  await page.locator('[data-group="contents"]').getByRole('button', { name: 'Take away line 1' }).click();
  expect(await field(page, 'contents.0.title').inputValue()).toBe('Two');
  const undo = page.getByRole('button', { name: 'Undo' });
  await undo.click();
  expect(await field(page, 'contents.0.title').inputValue()).toBe('One');
  await undo.click();
  await undo.click();
  expect(await lines()).toBe(1);
  await undo.click();
  await undo.click();
  expect(await lines()).toBe(0);
  expect(await undo.isDisabled()).toBe(true);
});
