import { mkdir, writeFile } from 'node:fs/promises';
import { expect, test } from 'vitest';
import { diskTrouble } from '#publish/disk-trouble.ts';

const failed = (work: Promise<unknown>) => work.then(() => undefined, diskTrouble);

test('a full disk is said as one, with what to do', async () => {
  // Linux keeps a file that is always full.
  const said = await failed(writeFile('/dev/full', 'x'));
  if (process.platform === 'linux') expect(said).toMatch(/disk that is full\. Make room/);
});
test('a folder below a file is said with its path', async () => {
  expect(await failed(mkdir(`${import.meta.filename}/site`))).toMatch(/disk-trouble\.test\.ts\/site can’t be there/);
});
test.each([
  ['EACCES', /may not be opened or written by you/],
  ['EROFS', /can only be read/],
])('%s is said without a path when none is known', (code, sentence) => {
  expect(diskTrouble(Object.assign(new Error(code), { code }))).toMatch(sentence);
});
test('a copy to a full disk names where it was to go, not where it came from', () => {
  const copy = Object.assign(new Error('no space'), { code: 'ENOSPC', path: '/from/page.html', dest: '/to/page.html' });
  expect(diskTrouble(copy)).toMatch(/^\/to\/page\.html is on a disk that is full/);
});
test('what another tool says in words only is understood by the system’s number in it', () => {
  expect(diskTrouble(new Error('Failed to write\n\nCaused by:\n    No space left on device (os error 28)'))).toMatch(
    /disk that is full/,
  );
  expect(diskTrouble(new Error('os error 28'))).toBeUndefined();
});
test('an error of the program is none of the disk’s', () => {
  expect(diskTrouble(new TypeError('x is not a function'))).toBeUndefined();
  expect(diskTrouble(Object.assign(new Error('gone'), { code: 'ERR_MODULE_NOT_FOUND' }))).toBeUndefined();
  expect(diskTrouble('text')).toBeUndefined();
});
