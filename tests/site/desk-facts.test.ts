import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { splitEntry } from '#read/front-matter.ts';
import { isListWritten, isMapWritten, pathOf, type Written, writtenOf } from '#read/written-value.ts';
import type { Field } from '../../src/desk/fields/field.ts';
import { type DeskKind, FIELDS } from '../../src/desk/fields/kinds.ts';
import { SCHEMAS } from '../desk/schemas.ts';
import { atTheDesk, field, said } from './at-the-desk.ts';

const { desk, sit, troubles } = atTheDesk();
const KINDS = Object.keys(FIELDS) as DeskKind[];

/** Facts of which the page has other controls than one that is typed in. */
const REGION = 'readings.region';

/** A line of every list, so that what is in it can be seen; every text is there to be changed. */
function begun(fields: readonly Field[]): Record<string, Written> {
  const facts: Record<string, Written> = {};
  for (const one of fields) {
    if (one.is === 'one' || one.is === 'many') facts[one.key] = one.words?.[0] ?? 'a';
    else if (one.is === 'free') facts[one.key] = { own: 'a' };
    else facts[one.key] = one.is === 'list' ? [begun(one.fields)] : begun(one.fields);
  }
  return facts;
}

function written(facts: Written): string {
  if (typeof facts === 'string') return JSON.stringify(facts);
  if (isListWritten(facts)) return `[${facts.map(written).join(', ')}]`;
  return `{ ${Object.entries(facts)
    .map(([key, value]) => `${key}: ${written(value as Written)}`)
    .join(', ')} }`;
}

/** Every text in an entry, by the key that its schema knows it by and where it stands. */
function texts(value: Written, key = '', path = ''): { key: string; path: string }[] {
  if (typeof value === 'string') return [{ key, path }];
  if (isListWritten(value)) return value.flatMap((item, at) => texts(item, key, `${path}[${at}]`));
  return Object.entries(value).flatMap(([inner, item]) =>
    texts(item as Written, key === '' ? inner : `${key}.${inner}`, path === '' ? inner : `${path}.${inner}`),
  );
}

async function enter(page: Page, path: string, index: number): Promise<string> {
  const control = field(page, pathOf(path).join('.')).or(field(page, `${pathOf(path).join('.')}.0`));
  const options = await control.locator('option').all();
  if (options.length > 0) {
    const values = await Promise.all(options.map((option) => option.getAttribute('value')));
    const other = values.filter((value) => value !== '' && value !== 'none').at(-1) ?? '';
    await control.selectOption(other);
    return other;
  }
  await control.fill(`changed ${index}`);
  return `changed ${index}`;
}

test.each(KINDS)('every fact of %s has its place on the page, and is changed there', async (kind) => {
  const file = kind === 'collection' ? 'collection.md' : `${kind}/one.md`;
  const facts = begun(FIELDS[kind].filter(({ key }) => key !== 'readings'));
  if (kind === 'reels')
    facts['readings'] = [
      {
        of: 'set',
        photo: 'box.jpg',
        region: 'xywh=percent:1,2,30,40',
        written: 'a',
        sure: 'likely',
        by: 'a',
        note: 'a',
      },
    ];
  const head = Object.entries(facts).map(([key, value]) => `${key}: ${written(value)}\n`);
  const path = join(desk().root, file);
  await mkdir(join(path, '..'), { recursive: true });
  await writeFile(path, `---\n${head.join('')}---\nText.\n`);
  // The photographs that it names aren't there.
  troubles.allow(/404/);
  const page = await sit(kind === 'collection' ? 'collection' : `${kind}/one`);
  if (kind === 'reels') await page.locator('details.reading summary').click();
  const all = texts(facts);
  const keys = new Set(
    all.flatMap(({ key }) => key.split('.').map((_, at, parts) => parts.slice(0, at + 1).join('.'))),
  );
  expect(
    [...SCHEMAS[kind].keysBelow].filter((key) => !keys.has(key)),
    'without a control',
  ).toEqual([]);
  const expected = new Map<string, string>();
  for (const [index, one] of all.entries()) {
    if (one.key.startsWith('readings.')) continue;
    expected.set(one.path, await enter(page, one.path, index));
  }
  if (kind === 'reels') {
    const reading = page.locator('details.reading');
    await reading.getByLabel('What it says').fill('B');
    await reading.getByLabel('Which fact it is').selectOption('copy-log[0].number');
    await reading.getByLabel('How sure').selectOption('guess');
    await reading.getByLabel('Read by').fill('owner');
    await reading.getByLabel('Note').fill('blurred');
    await reading.getByLabel('Region 1, width in percent').fill('31');
    await reading.getByLabel('Region 1, width in percent').blur();
  }
  await page.getByLabel('Your own account').fill('Another.\n');
  await page.keyboard.press('Control+s');
  await said(page, 'Saved.');
  const text = await readFile(path, 'utf8');
  const { entry } = splitEntry({ path: file, text });
  if (entry === undefined) throw new Error(text);
  const now = writtenOf(entry.root);
  for (const [at, value] of expected) {
    let found: Written | undefined = now;
    for (const step of pathOf(at)) {
      if (typeof step === 'number') found = isListWritten(found) ? found[step] : found;
      else found = isMapWritten(found) ? found[step] : undefined;
    }
    expect(found, at).toBe(value);
  }
  expect(entry.body).toBe('Another.\n');
  if (kind === 'reels') {
    expect(isMapWritten(now) ? now['readings'] : undefined).toEqual([
      {
        of: 'copy-log[0].number',
        photo: 'box.jpg',
        region: 'xywh=percent:1,2,31,40',
        written: 'B',
        sure: 'guess',
        by: 'owner',
        note: 'blurred',
      },
    ]);
    expect([...keys]).toContain(REGION);
  }
});

describe('facts under keys of one’s own', () => {
  test('a text, several texts and facts under facts are entered, changed and taken away', async () => {
    const page = await sit('reels/low-water-1');
    const name = page.getByLabel('A new key: Also');
    const begin = async (key: string, how: string) => {
      await name.fill(key);
      await page.getByRole('button', { name: `${how}: Also` }).click();
    };
    await begin('smell', 'Add a text');
    await page.keyboard.type('wax');
    await begin('stickers', 'Add several texts');
    await page.keyboard.type('a red dot');
    await page.getByRole('button', { name: 'Add another: stickers' }).click();
    await page.keyboard.type('a star');
    await begin('hub', 'Add facts under it');
    await page.getByLabel('A new key: hub').fill('colour');
    await page.getByRole('button', { name: 'Add a text: hub' }).click();
    await page.keyboard.type('grey');
    await page.keyboard.press('Control+s');
    await said(page, 'Saved.');
    expect(await desk().textOf('reels/low-water-1.md')).toContain(
      'also:\n  smell: wax\n  stickers: [a red dot, a star]\n  hub: { colour: grey }\n',
    );
    await page.getByRole('button', { name: 'Take away stickers, 1' }).click();
    await field(page, 'also.hub.colour').fill('black');
    await page.getByRole('button', { name: 'Take away smell' }).click();
    await page.keyboard.press('Control+s');
    await said(page, 'Saved.');
    expect(await desk().textOf('reels/low-water-1.md')).toContain(
      'also:\n  stickers: [a star]\n  hub: { colour: black }\n',
    );
    await page.getByRole('button', { name: 'Undo' }).click();
    expect(await field(page, 'also.smell').inputValue()).toBe('wax');
  });
});

describe('known to be none', () => {
  test('is said of a choice, of several, of a group and of a list', async () => {
    const page = await sit('reels/low-water-1');
    await field(page, 'format.direction').selectOption('none');
    for (const name of ['Copied from', 'Run-out sound', 'Lacquers cut from it'])
      await page.getByRole('button', { name: `${name}: known to be none` }).click();
    await page.keyboard.press('Control+s');
    await said(page, 'Saved.');
    const text = await desk().textOf('reels/low-water-1.md');
    for (const line of ['run-out-sound: none', 'copied-from: none', 'cuts: none', '  direction: none'])
      expect(text.split('\n')).toContain(line);
  });
});

describe('readings of lines', () => {
  test('fill in a new line of a list, and follow it when another is taken away', async () => {
    const page = await sit('reels/low-water-1');
    const read = async (words: string, fact: string) => {
      await page.getByRole('button', { name: 'A reading with no photograph' }).click();
      await page.keyboard.type(words);
      await page.locator('details[open]').getByLabel('Which fact it is').selectOption(fact);
    };
    await read('9.2.78', 'copy-log[0].on');
    await page.getByRole('button', { name: 'Fill in Copy log on this box, a new line: On: 9.2.78' }).click();
    await field(page, 'copy-log.0.note').fill('typed meanwhile');
    await page.getByRole('button', { name: 'Add a line: Copy log on this box' }).click();
    expect(await field(page, 'copy-log.0.note').inputValue()).toBe('typed meanwhile');
    await read('Hollin', 'copy-log[1].for');
    await page.getByRole('button', { name: 'Fill in Copy log on this box, line 2: For: Hollin' }).click();
    await page.locator('[data-group="copy-log"]').getByRole('button', { name: 'Take away line 1' }).click();
    await page.keyboard.press('Control+s');
    await said(page, 'Saved.');
    const text = await desk().textOf('reels/low-water-1.md');
    expect(text).toContain('copy-log:\n  - { for: Hollin }\n');
    expect(text).toContain('{ of: copy-log, written: "9.2.78", sure: certain }');
    expect(text).toContain('{ of: "copy-log[0].for", written: Hollin, sure: certain }');
  });
});
