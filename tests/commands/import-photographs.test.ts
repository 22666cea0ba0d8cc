import { mkdir, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { importedIn } from '../given/imported-sheet.ts';

let dir: string;
beforeEach(async () => {
  dir = await mkdtemp(join(tmpdir(), 'shots-'));
});
afterEach(() => rm(dir, { recursive: true, force: true }));

test('photographs named in a row, or by number in their own name, are copied beside the entry', async () => {
  await mkdir(join(dir, 'shots/more'), { recursive: true });
  for (const name of ['IMG_1.JPG', 'HLX2207-A front.jpg', 'more/HLX 2207.png', 'HLX22071.jpg', 'notes.txt'])
    await writeFile(join(dir, 'shots', name), name);
  const sheet = 'Title,Matrix,Cat no,Photo\nLow Water,HLX 2207-A,HLX 2207,img_1.jpg; lost.jpg\n';
  const { entries } = await importedIn(dir, sheet, { more: ['--photographs', 'shots', '--write'] });
  expect(entries[0]?.photographs).toEqual(['IMG_1.JPG', 'HLX2207-A front.jpg', 'HLX 2207.png']);
  expect((await readdir(join(dir, 'c/reels/low-water'))).sort()).toEqual([
    'HLX 2207.png',
    'HLX2207-A front.jpg',
    'IMG_1.JPG',
    'index.md',
  ]);
  expect(entries[0]?.text).toContain('photos not found: lost.jpg');
});

describe('photographs of one name in several folders', () => {
  const SHEET = 'id,title,photos\nlow-water,Low Water,"file: front.jpg; shows: box front"\nmarram,Marram,front.jpg\n';
  const put = async (...paths: string[]) => {
    for (const path of paths) {
      await mkdir(join(dir, 'shots', path, '..'), { recursive: true });
      await writeFile(join(dir, 'shots', path), path);
    }
  };

  test('go each with the entry whose folder it is in', async () => {
    await put('low-water/front.jpg', 'marram/front.jpg');
    await importedIn(dir, SHEET, { more: ['--photographs', 'shots', '--write'] });
    expect(await readFile(join(dir, 'c/reels/marram/front.jpg'), 'utf8')).toBe('marram/front.jpg');
    expect(await readFile(join(dir, 'c/reels/low-water/index.md'), 'utf8')).toContain('shows: box front');
  });

  test('go where the sheet writes the way to one', async () => {
    await put('a/front.jpg', 'b/front.jpg');
    const { entries } = await importedIn(dir, 'Title,Photo\nLow Water,B/front.jpg\n', {
      more: ['--photographs', 'shots', '--write'],
    });
    expect(entries[0]?.photographs).toEqual(['front.jpg']);
    expect(await readFile(join(dir, 'c/reels/low-water/front.jpg'), 'utf8')).toBe('b/front.jpg');
  });

  test('are never guessed at: what the row says of them is kept', async () => {
    await put('a/front.jpg', 'b/front.jpg');
    const { entries } = await importedIn(dir, SHEET, { more: ['--photographs', 'shots'] });
    expect(entries[0]?.photographs).toEqual([]);
    expect(entries[0]?.text).toContain('photos of which there are several: "front.jpg, shows: box front"');
  });
});
