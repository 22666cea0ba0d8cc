import { createHash } from 'node:crypto';
import { copyFile, mkdir, mkdtemp, readFile, rm, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { build } from '../../src/commands/build.ts';
import { takeAwayEnded } from '../../src/commands/hosted.ts';
import { UsageError } from '../../src/commands/io.ts';
import { seal } from '../../src/commands/seal.ts';
import { catalogueOf } from '../given/small-collection.ts';
import { writeCollection } from '../given/written-collection.ts';

const SHARE = 'title: Short\nfor: friend\nreels: [low-water]\nopened-by: link\nuntil: "2026-03"';
const GIVEN = { 'reels/low-water': 'title: Low Water', 'shares/short': SHARE };
let folder: string;
let hosted: string;
let said: string;

const ioOn = (day: string) => ({
  out: () => undefined,
  err: (text: string) => {
    said += text;
  },
  cwd: folder,
  now: new Date(`${day}T12:00:00`),
  env: {},
  terminal: false,
});
const cache = () => ['--cache', join(folder, 'cache')];
const isThere = (file: string) => readFile(file).then(Boolean, () => false);
/** What a build on a day does to hosted files, by the collection's entries. */
const rebuild = async (day: string, given: Record<string, string> = GIVEN, clock = day) =>
  takeAwayEnded(await catalogueOf(given, day), join(folder, 'collection'), ioOn(clock));

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'hosted-'));
  await writeCollection(join(folder, 'collection'), GIVEN, async () => new Uint8Array());
  await mkdir(join(folder, 'web'));
  hosted = join(folder, 'web', 'short.html');
  said = '';
  await seal(['short', '--out', hosted, '--base', 'https://tapes.example/', ...cache()], ioOn('2026-03-01'));
  expect(said).toContain('the first build after 2026-03');
  await copyFile(hosted, join(folder, 'kept.html'));
  await copyFile(join(folder, 'collection', '.hosted.json'), join(folder, 'kept.json'));
}, 120_000);

beforeEach(async () => {
  said = '';
  await rm(hosted, { force: true });
  await copyFile(join(folder, 'kept.html'), hosted);
  await copyFile(join(folder, 'kept.json'), join(folder, 'collection', '.hosted.json'));
});

afterAll(() => rm(folder, { recursive: true, force: true }));

describe('a rebuild takes a hosted file away', () => {
  test('when its share has ended, and says so, once', async () => {
    expect(await build(['--out', join(folder, 'site'), '--today', '2026-04-01', ...cache()], ioOn('2026-04-01'))).toBe(
      0,
    );
    expect(await isThere(hosted)).toBe(false);
    expect(said).toContain('short.html: taken away, since its share ended on 2026-03.');
    said = '';
    await rebuild('2026-04-02');
    expect(said).toBe('');
  });

  test('when its share is gone', async () => {
    await rebuild('2026-03-02', { 'reels/low-water': '' });
    expect(await isThere(hosted)).toBe(false);
    expect(said).toContain('there is no share short any more');
  });
});

describe('a rebuild leaves alone', () => {
  test('the file of a share that goes on', async () => {
    await rebuild('2026-03-31');
    expect(await isThere(hosted)).toBe(true);
    expect(said).toBe('');
  });

  test('the file of a share that can’t be read, which is there all the same', async () => {
    await rebuild('2026-03-02', { ...GIVEN, 'shares/short': 'title: Short\nfor: nobody in particular' });
    expect(await isThere(hosted)).toBe(true);
  });

  test('a file whose share has ended by the day of the build, and not by the clock', async () => {
    await rebuild('2030-01-01', GIVEN, '2026-03-02');
    expect(await isThere(hosted)).toBe(true);
  });

  test('one that was sealed to a file without a place on the web: whoever has it keeps it', async () => {
    const handed = join(folder, 'handed.html');
    await seal(['short', '--out', handed, ...cache()], ioOn('2026-03-01'));
    await rebuild('2026-04-01');
    expect([await isThere(handed), await isThere(hosted)]).toEqual([true, false]);
  });

  test.each([
    ['another file under its name', async () => writeFile(hosted, 'my own')],
    [
      'the sealed file, changed by hand',
      async () => writeFile(hosted, `${await readFile(hosted, 'utf8')}<!-- seen -->`),
    ],
    [
      'a link to it',
      async () => {
        await rm(hosted);
        await symlink(join(folder, 'kept.html'), hosted);
      },
    ],
  ])('%s, and says that it did', async (_, change) => {
    await change();
    await rebuild('2026-04-01');
    expect(await isThere(hosted)).toBe(true);
    expect(said).toContain('not taken away');
  });

  test('any file that isn’t a sealed dossier, whatever the list says of it', async () => {
    const own = join(folder, 'own.txt');
    await writeFile(own, 'mine');
    const sha256 = createHash('sha256').update('mine').digest('hex');
    await writeFile(
      join(folder, 'collection', '.hosted.json'),
      JSON.stringify({ files: [{ share: 'gone', file: own, sha256 }] }),
    );
    await rebuild('2026-04-01');
    expect(await isThere(own)).toBe(true);
  });

  test('everything, when the list can’t be read, and says so', async () => {
    await writeFile(join(folder, 'collection', '.hosted.json'), '{"files": [{"share": 3}]}');
    await rebuild('2026-04-01');
    expect(await isThere(hosted)).toBe(true);
    expect(said).toContain('not looked at');
  });
});

test('a dossier isn’t sealed into a site, which the next build replaces', async () => {
  await build(['--out', join(folder, 'site'), '--today', '2026-03-01', ...cache()], ioOn('2026-03-01'));
  await expect(
    seal(['short', '--out', join(folder, 'site', 'x.html'), ...cache()], ioOn('2026-03-01')),
  ).rejects.toThrow(UsageError);
});
