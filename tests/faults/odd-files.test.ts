import { chmod, mkdir, mkdtemp, readdir, readFile, realpath, rm, stat, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { copyTree, Vanished } from '#publish/export/bag.ts';
import { measurePhotographs, publishPhotographs } from '#publish/photographs.ts';
import { cameraPhotograph } from '../publish/made-photograph.ts';
import { contentOf, run, start } from './command.ts';

/** A longer run: TAILOUT_PHOTOGRAPHS=10000 npx vitest run --config tests/vitest.config.ts tests/faults/odd-files */
const PHOTOGRAPHS = Number(process.env['TAILOUT_PHOTOGRAPHS'] ?? 100);

/** Root may write anywhere: a program started so may not, and is asked in root's stead. */
const BY =
  process.getuid?.() === 0
    ? [
        'setpriv',
        '--bounding-set=-dac_override,-dac_read_search,-fowner',
        '--inh-caps=-dac_override,-dac_read_search,-fowner',
      ]
    : [];

const COMPOSED = 'caf\u00e9.jpg';
const DECOMPOSED = 'cafe\u0301.jpg';
const LONG = `${'é'.repeat(125)}.jpg`;
const SIGNS = `50% #1 & "two" 'three' {4} [5] *.jpg`;
const LONG_ID = 'n'.repeat(200);
const list = (names: readonly string[]) => JSON.stringify(names);
const entry = (title: string, more = '') => `---\ntitle: ${title}\nstatus: held\n${more}---\nOwn words.\n`;

const TEXTS: Readonly<Record<string, string | Uint8Array>> = {
  'collection.md': '\ufeff---\r\ntitle: The odd ones\r\ncurrency: GBP\r\n---\r\nOwn words.\r\n',
  'reels/windows.md': `\ufeff${entry('From Windows', 'contents:\n  - { title: Low Water }\n').replaceAll('\n', '\r\n')}`,
  'reels/old-mac.md': entry('From an old Mac').replaceAll('\n', '\r'),
  [`reels/${LONG_ID}.md`]: entry('With a long name'),
  'reels/LOW.md': entry('In capitals'),
  'reels/low.md': entry('In small letters'),
  'reels/twice.md': entry('Twice'),
  'reels/twice/index.md': entry('Twice'),
  'reels/vast.md': Buffer.alloc(10 * 1024 * 1024, 'x'),
  'reels/closed.md': entry('That may not be read'),
  'reels/forms/index.md': entry('Both forms', `photos: ${list([COMPOSED, DECOMPOSED])}\n`),
  'reels/other-form/index.md': entry('The other form', `photos: ${list([COMPOSED])}\n`),
  'reels/names/index.md': entry('Odd names', `photos: ${list(['Box.jpg', 'box.jpg', LONG, SIGNS])}\n`),
  'reels/capitals/index.md': entry('Wrong capitals', `photos: ${list(['front.jpg'])}\n`),
  'reels/shut/index.md': entry('A photograph that may not be read', `photos: ${list(['shut.jpg'])}\n`),
  'notes/goes.md': '---\ntitle: Goes while it is built\n---\n',
};
const PICTURES = [
  `reels/forms/${COMPOSED}`,
  `reels/forms/${DECOMPOSED}`,
  `reels/other-form/${DECOMPOSED}`,
  ...['Box.jpg', 'box.jpg', LONG, SIGNS].map((name) => `reels/names/${name}`),
  'reels/capitals/Front.JPG',
  'reels/shut/shut.jpg',
];

let folder: string;
const at = (...names: string[]) => join(folder, ...names);
const shared = () => ['--collection', at('tapes'), '--today', '2026-04-01', '--cache', at('cache')];
const around = () => ({ cwd: folder, by: BY });

beforeAll(async () => {
  folder = await realpath(await mkdtemp(join(tmpdir(), 'odd-')));
  const pictures = await Promise.all(
    PICTURES.map(async (path, count) => [path, await cameraPhotograph(300 + count, 200)] as const),
  );
  for (const [path, content] of [...Object.entries(TEXTS), ...pictures]) {
    await mkdir(dirname(at('tapes', path)), { recursive: true });
    await writeFile(at('tapes', path), content);
  }
  await mkdir(at('closed'));
  await mkdir(at('made'));
});
afterAll(async () => {
  await allFolders(0o755);
  await rm(folder, { recursive: true, force: true });
});

async function allFolders(mode: number): Promise<void> {
  const found = await readdir(at('tapes'), { recursive: true, withFileTypes: true });
  for (const one of found.filter((each) => each.isDirectory())) await chmod(join(one.parentPath, one.name), mode);
  await chmod(at('tapes'), mode);
}

// Names that differ in their capitals or in their Unicode form only are one name on other systems' disks.
describe.runIf(process.platform === 'linux')('a collection of odd files that may not be written', () => {
  let told: { readonly exit: number | null; readonly err: string };
  let problems: readonly { code: string; place: { file: string }; action: string }[];
  const codesOf = (file: string) => problems.filter((one) => one.place.file === file).map(({ code }) => code);
  const page = (path: string) => readFile(at('made', 'site', path, 'index.html'), 'utf8');

  beforeAll(async () => {
    for (const path of ['reels/closed.md', 'reels/shut/shut.jpg']) await chmod(at('tapes', path), 0);
    const before = await contentOf(at('tapes'));
    await allFolders(0o555);
    await chmod(at('tapes', 'notes'), 0o755);
    const { child, ended } = start(['build', ...shared(), '--out', at('made', 'site')], around());
    // It has read the entries when it begins to write.
    while (child.exitCode === null && !(await readdir(at('made'))).some((name) => /^\.tailout-site-/.test(name)))
      await pause(5);
    await rm(at('tapes', 'notes', 'goes.md'));
    told = await ended;
    await writeFile(at('tapes', 'notes', 'goes.md'), TEXTS['notes/goes.md'] ?? '');
    expect(await contentOf(at('tapes'))).toBe(before);
    const check = await run(['check', ...shared(), '--format', 'json'], around());
    problems = (JSON.parse(check.out) as { readonly problems: typeof problems }).problems;
  });

  test('is published, with exit 1 for the entries that have errors', () => {
    expect(told).toMatchObject({ exit: 1 });
    expect(told.err).not.toMatch(/fault|\n\s+at /);
  });
  test('an entry that goes while the site is built stands as it was when it began', async () => {
    expect(await page('notes/goes')).toContain('Goes while it is built');
  });
  test('Windows’ line ends and byte order mark, and an old Mac’s, are read like any', async () => {
    expect(codesOf('reels/windows.md').concat(codesOf('reels/old-mac.md'), codesOf('collection.md'))).toEqual([]);
    expect(await page('reels/windows')).toContain('Low Water');
    expect(await page('reels/old-mac')).toContain('From an old Mac');
    expect(await page('')).toContain('The odd ones');
  });
  test('an id as long as one may be has its page, and an entry of 10 MB its problem', async () => {
    expect(await page(`reels/${LONG_ID}`)).toContain('With a long name');
    expect(codesOf('reels/vast.md')).toEqual(['entry/code-refused']);
  });
  test('names that differ in capitals only are two: one of them can’t be an id', async () => {
    expect(codesOf('reels/LOW.md')).toEqual(['entry/bad-value']);
    expect(await page('reels/low')).toContain('In small letters');
    expect(codesOf('reels/twice.md').concat(codesOf('reels/twice/index.md'))).toContain('entry/repeated-id');
  });
  test('photographs whose names differ in capitals or Unicode form only are each themselves', async () => {
    expect(codesOf('reels/forms/index.md').concat(codesOf('reels/names/index.md'))).toEqual([]);
    const shown = new Set((await page('reels/forms')).match(/photographs\/[0-9a-f]{20}\.jpg/g));
    expect(shown.size).toBe(2);
    expect(new Set((await page('reels/names')).match(/photographs\/[0-9a-f]{20}\.jpg/g)).size).toBe(4);
  });
  test('a photograph named in the other Unicode form or in other capitals is missing, and the near one is told', () => {
    expect(codesOf('reels/other-form/index.md')).toContain('photo/missing');
    expect(codesOf('reels/capitals/index.md')).toContain('photo/missing');
    const actions = problems.filter(({ code }) => code === 'photo/missing').map(({ action }) => action);
    expect(actions).toEqual([
      expect.stringContaining('Front.JPG'),
      'A file of this name is there, with its accents in another Unicode form: rename it.',
    ]);
  });
  test('what may not be read is told at its own file', () => {
    expect(codesOf('reels/closed.md')).toEqual(['entry/unreadable']);
    expect(codesOf('reels/shut/index.md')).toEqual(['photo/unreadable']);
  });
  test('no published name is near the length where a disk refuses it', async () => {
    const names = await readdir(await realpath(at('made', 'site')), { recursive: true });
    expect(Math.max(...names.flatMap((path) => path.split('/')).map((name) => Buffer.byteLength(name)))).toBe(200);
  });
  test.each([
    [
      'a new entry in it',
      () => ['new', '--collection', at('tapes'), 'reel', 'another'],
      /reels.* may not be opened or/,
    ],
    ['a site where nothing may be written', () => ['build', ...shared(), '--out', at('closed', 'site')], /closed/],
    ['a bag of it', () => ['export', ...shared(), '--as', 'bag', '--out', at('made', 'bag')], /closed\.md may not be/],
    ['a sheet with a name as long as can be', () => ['import', at('made', `${'s'.repeat(251)}.csv`)], /too long/],
  ])('%s is refused with a sentence, and nothing is left', async (_what, args, sentence) => {
    await writeFile(at('made', `${'s'.repeat(251)}.csv`), 'title,length\nLow Water,18:52\n');
    await chmod(at('closed'), 0o555);
    const before = await readdir(at('made'));
    const { exit, err } = await run(args(), around());
    expect([exit, err]).toEqual([2, expect.stringMatching(sentence)]);
    expect(err).not.toMatch(/fault|\n\s+at /);
    expect([await readdir(at('made')), await readdir(at('closed'))]).toEqual([before, []]);
  });
});

describe('photographs', () => {
  test('one of 100 MB is shown', async () => {
    const file = at('vast.tif');
    const background = '#806040';
    await sharp({ create: { width: 6000, height: 5600, channels: 3, background } })
      .tiff({ compression: 'none' })
      .toFile(file);
    expect((await stat(file)).size).toBeGreaterThan(100_000_000);
    const wanted = [{ path: 'vast.tif', file, regions: [] }];
    const { photographs } = await publishPhotographs(wanted, at('vast'), { cache: at('vast-cache') });
    expect(photographs.get('vast.tif')).toMatchObject({ widthPx: 6000, heightPx: 5600, zoom: expect.anything() });
    await rm(file);
  });

  test(`${PHOTOGRAPHS} of them are each shown, and the next build opens none`, { timeout: 3_600_000 }, async () => {
    const names = Array.from({ length: PHOTOGRAPHS }, (_, count) => `many/${count}.png`);
    await mkdir(at('many'));
    for (const [count, path] of names.entries()) {
      const background = { r: count & 255, g: (count >> 8) & 255, b: 80 };
      await sharp({ create: { width: 8, height: 8, channels: 3, background } })
        .png()
        .toFile(at(path));
    }
    const wanted = names.map((path) => ({ path, file: at(path), regions: [] }));
    const cold = await publishPhotographs(wanted, at('many-site'), { cache: at('many-cache') });
    expect([cold.photographs.size, cold.faults.size, cold.work.made]).toEqual([PHOTOGRAPHS, 0, PHOTOGRAPHS]);
    const warm = await publishPhotographs(wanted, at('many-site-2'), { cache: at('many-cache') });
    expect([warm.photographs.size, warm.work.opened]).toEqual([PHOTOGRAPHS, 0]);
  });

  test('one that goes between being measured and shown is told, and the others are shown', async () => {
    const files = ['stays.jpg', 'goes.jpg'].map((path) => ({ path, file: at(path) }));
    for (const [count, { file }] of files.entries()) await writeFile(file, await cameraPhotograph(310 + count, 200));
    const measured = await measurePhotographs(files, { cache: at('going-cache') });
    expect([...measured.values()].map(({ opens }) => opens)).toEqual([true, true]);
    await rm(at('goes.jpg'));
    const wanted = files.map((one) => ({ ...one, regions: [] }));
    const { photographs, faults } = await publishPhotographs(wanted, at('going'), { cache: at('going-cache') });
    expect([...photographs.keys()]).toEqual(['stays.jpg']);
    expect(faults.get('goes.jpg')?.problem).toMatch(/ENOENT/);
  });
});

test('a bag is not made without a file that goes while it is copied', async () => {
  // A link is listed as what it is, and not copied: a file is listed, and then gone.
  await mkdir(at('from', 'reels'), { recursive: true });
  for (let count = 0; count < 200; count += 1) await writeFile(at('from', 'reels', `${count}.md`), 'x');
  await symlink('0.md', at('from', 'reels', 'link.md'));
  const copying = copyTree(at('from'), at('to'));
  const outcome = copying.then(
    () => 'copied',
    (error: unknown) => error,
  );
  while ((await readdir(at('to', 'reels')).catch(() => [])).length === 0) await pause(1);
  await rm(at('from', 'reels', '99.md'));
  const error = await outcome;
  expect(error).toBeInstanceOf(Vanished);
  expect(String(error)).toMatch(/reels\/99\.md was there when the folder was listed, and gone/);
});
