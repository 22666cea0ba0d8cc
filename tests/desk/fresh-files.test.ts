import { mkdir, mkdtemp, rm, unlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { readCollection } from '#read/collection.ts';
import { FreshFiles } from '../../src/desk/fresh-files.ts';

test('whatever happens to a collection’s files, they are as if all were read anew', async () => {
  const root = await mkdtemp(join(tmpdir(), 'fresh-'));
  const at = (path: string) => join(root, path);
  const entry = (title: string) => `---\ntitle: ${title}\nstatus: held\n---\n`;
  const fresh = new FreshFiles(root);
  const happenings: (() => Promise<unknown>)[] = [
    () => mkdir(at('reels')),
    () => writeFile(at('reels/a.md'), entry('A')),
    () => writeFile(at('reels/b.md'), entry('B')),
    () => writeFile(at('reels/a.md'), entry('C')),
    () => writeFile(at('reels/a.md'), '---\ntitle: [open\n---\n'),
    () => writeFile(at('reels/a.md'), entry('D')),
    () => mkdir(at('reels/d')),
    () => writeFile(at('reels/d/box.jpg'), 'picture'),
    () => writeFile(at('reels/d/index.md'), entry('E')),
    () => unlink(at('reels/b.md')),
    () => writeFile(at('reels/f.md'), entry('F')),
    () => writeFile(at('reels/d/box.jpg'), 'another'),
    () => writeFile(at('reels/f.md'), Buffer.from([0xff, 0xfe])),
    () => writeFile(at('reels/f.md'), entry('G')),
  ];
  try {
    for (const happen of happenings) {
      await happen();
      expect(fresh.now()).toEqual(readCollection(root));
      expect(fresh.now()).toBe(fresh.now());
    }
  } finally {
    await rm(root, { recursive: true });
  }
});
