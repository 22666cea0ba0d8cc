import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { NoCollection, readCollection, splitFiles } from '#read/collection.ts';
import { readSource } from '#read/read-source.ts';

const SOUND = '---\ntitle: Low Water\nstatus: held\n---\n';
const unix = process.platform !== 'win32';
let root = '';

beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'reading-'));
});
afterEach(() => rmSync(root, { recursive: true, force: true }));

function put(path: string, content: string | Buffer = SOUND): string {
  const full = join(root, path);
  mkdirSync(dirname(full), { recursive: true });
  writeFileSync(full, content);
  return full;
}

const told = () => readCollection(root).problems.map(({ code, place }) => `${place.file} ${code}`);
const read = () => readCollection(root).entries.map(({ path }) => path);

describe('reading a folder', () => {
  test('every kind of entry is found, as a file or as a folder of its own, in order of path', () => {
    for (const path of ['reels/b.md', 'reels/a/index.md', 'people/z.md', 'collection.md', 'notes/n.md']) put(path);
    expect(read()).toEqual(['collection.md', 'notes/n.md', 'people/z.md', 'reels/a/index.md', 'reels/b.md']);
    expect(told()).toEqual([]);
  });

  test('photographs and climate logs beside entries are listed, not opened', () => {
    put('reels/a/index.md');
    put('reels/a/box.JPG', 'no picture');
    put('reels/a/details/spine.webp', 'no picture');
    put('places/loft/log.csv', 'x');
    put('cover.jpg', 'the owner’s own');
    expect(readCollection(root)).toMatchObject({
      images: ['reels/a/box.JPG', 'reels/a/details/spine.webp'],
      logs: ['places/loft/log.csv'],
    });
  });

  test('hidden files, a README at the top and a folder without entries are the owner’s own affair', () => {
    put('.git/config', 'x');
    put('reels/.draft.md', 'x');
    put('README.md', 'x');
    put('letters/scan.pdf', 'x');
    expect(told()).toEqual([]);
    expect(read()).toEqual([]);
  });

  test('entries in a folder that is no kind’s are not dropped in silence', () => {
    put('reel/a.md');
    expect(told()).toEqual(['reel entry/out-of-place']);
  });

  test('a folder that isn’t there is the command line’s fault', () => {
    expect(() => readCollection(join(root, 'nowhere'))).toThrow(NoCollection);
    expect(() => readCollection(put('a-file', 'x'))).toThrow(NoCollection);
  });

  test('texts at hand, in any order, read as from disk', () => {
    put('reels/a.md');
    put('reels/b.md');
    const files = ['reels/b.md', 'reels/a.md'].map((path) => ({ path, text: SOUND }));
    expect(splitFiles(files).entries).toEqual(readCollection(root).entries);
  });
});

describe('files that are not read', () => {
  test.runIf(unix)('a link that leads out is not opened, and does not say where it leads', () => {
    put('reels/a.md');
    symlinkSync('/etc/hostname', join(root, 'reels/out.md'));
    symlinkSync('/etc', join(root, 'reels/etc'));
    symlinkSync(tmpdir(), join(root, 'people'));
    expect(told()).toEqual(['people entry/not-a-file', 'reels/etc entry/not-a-file', 'reels/out.md entry/not-a-file']);
    expect(JSON.stringify(readCollection(root).problems)).not.toContain('/etc/');
    expect(read()).toEqual(['reels/a.md']);
  });

  test.runIf(unix)(
    'a link to an entry in the collection is read; a link to a folder, even round in a ring, is not followed',
    () => {
      put('reels/a.md');
      symlinkSync('a.md', join(root, 'reels/b.md'));
      symlinkSync('..', join(root, 'reels/ring'));
      symlinkSync('nothing', join(root, 'reels/broken.md'));
      expect(read()).toEqual(['reels/a.md', 'reels/b.md']);
      expect(told()).toEqual(['reels/broken.md entry/not-a-file', 'reels/ring entry/not-a-file']);
    },
  );

  test.runIf(unix)('a pipe is not opened, so nothing waits for it', () => {
    put('reels/a.md');
    execFileSync('mkfifo', [join(root, 'reels/pipe.md')]);
    expect(told()).toEqual(['reels/pipe.md entry/not-a-file']);
    expect(read()).toEqual(['reels/a.md']);
  });

  test('an entry of 10 MB is refused unread', () => {
    put('reels/a.md', Buffer.alloc(10 * 1024 * 1024, 'x'));
    put('reels/b.md');
    expect(told()).toEqual(['reels/a.md entry/code-refused']);
    expect(read()).toEqual(['reels/b.md']);
  });

  test('an entry of just under 1 MB is read', () => {
    put('reels/a.md', `${SOUND}${'x'.repeat(1024 * 1024 - SOUND.length)}`);
    expect(told()).toEqual([]);
  });

  test('a file that vanishes between listing and reading is a problem of its own', () => {
    expect(readSource(root, 'reels/gone.md')).toMatchObject({ code: 'entry/unreadable', found: 'ENOENT' });
  });

  test('a folder in an entry’s place is no file', () => {
    mkdirSync(join(root, 'reels/a.md'), { recursive: true });
    expect(readSource(root, 'reels/a.md')).toMatchObject({ code: 'entry/not-a-file' });
  });

  test('a file that isn’t UTF-8 is told at its first odd letter', () => {
    put(
      'reels/a.md',
      Buffer.concat([Buffer.from('---\ntitle: Mar'), Buffer.from([0xe9]), Buffer.from('e\nstatus: held\n---\n')]),
    );
    expect(readCollection(root).problems).toMatchObject([{ code: 'entry/unreadable', place: { line: 2, column: 11 } }]);
  });

  test('a name of 255 bytes and names that differ only in their capitals are told apart', () => {
    put(`reels/${'n'.repeat(252)}.md`);
    put('reels/low.md');
    put('reels/LOW.md');
    // On a disk that ignores capitals the two are one file, under the name it was made with.
    const files = readCollection(root);
    expect(files.problems.every(({ code }) => code === 'entry/bad-value')).toBe(true);
    expect(files.entries.filter(({ address }) => address !== undefined).map(({ path }) => path)).toEqual([
      'reels/low.md',
    ]);
  });
});
