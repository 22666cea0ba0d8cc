import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { asText, freshKey, seal as sealed } from '#publish/sealed.ts';
import { UsageError } from '../../src/commands/io.ts';
import { seal } from '../../src/commands/seal.ts';
import { listener } from '../given/listener.ts';
import { writeCollection } from '../given/written-collection.ts';

let folder: string;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'seal-command-'));
  await writeCollection(
    join(folder, 'collection'),
    {
      'reels/low-water': 'title: Low Water\nplace: { shelf: C2 }',
      collection: 'title: Mine\nprivate: [client]',
      'shares/good': 'title: Good\nfor: friend\nreels: [low-water]\nuntil: "2026-12"',
      'shares/ended': 'title: Ended\nfor: friend\nreels: [low-water]\nuntil: "2026-03"',
      'shares/private': 'title: Private\nfor: friend\nreels: [low-water]\nshows: [place]',
      'shares/unknown': 'title: Unknown\nfor: friend\nreels: [low-water]\nshows: [shelff]',
      'shares/gone': 'title: Gone\nfor: friend\nreels: [low-water, no-such-reel]',
      'shares/empty': 'title: Empty\nfor: friend\nreels: []',
    },
    async () => new Uint8Array(),
  );
});
afterAll(() => rm(folder, { recursive: true, force: true }));

async function run(args: readonly string[], env: Record<string, string> = {}) {
  const { said, hear } = listener();
  const io = {
    ...hear,
    cwd: folder,
    now: new Date('2026-04-01T12:00:00'),
    env,
    terminal: false,
  };
  const exit = await seal([...args, '--cache', join(folder, 'cache')], io);
  return { exit, ...said };
}

describe('seal', () => {
  test('says with --dry-run what goes along and what stays out, and writes nothing', async () => {
    const { exit, out } = await run(['good', '--dry-run']);
    expect(exit).toBe(0);
    expect(out).toMatch(/Goes along\n {2}which reel it is/);
    expect(out).toMatch(/Stays out[\s\S]* {2}where it is kept/);
    const { out: json } = await run(['good', '--dry-run', '--format', 'json']);
    expect(JSON.parse(json)).toMatchObject({ share: 'good', audience: 'friend', photographs: 0, ended: false });
  });

  test.each([
    ['ended', 'ended on 2026-03'],
    ['private', 'what is private: place'],
    ['unknown', 'no fact of an entry: shelff'],
    ['gone', 'aren’t there: no-such-reel'],
    ['empty', 'nothing to seal'],
  ])('refuses the share that is %s, and says why', async (id, reason) => {
    const { exit, err } = await run([id, '--out', 'x.html'], { SEAL_PASSPHRASE: 'tavok limen rudas pobet' });
    expect(exit).toBe(1);
    expect(err).toContain(reason);
    await expect(readFile(join(folder, 'x.html'))).rejects.toThrow('ENOENT');
  });

  test.each([
    ['of the share itself can’t be read', 'shares/good.md', 'until: "2026-12"', 'until: 31/12/26', 'shares/good.md'],
    ['calls private what is no fact', 'reels/low-water.md', 'place: {', 'private: [custdy]\nplace: {', 'custody'],
    ['of the collection can’t be read', 'collection.md', 'private: [client]', 'private: [client', 'collection.md'],
  ])('refuses to seal while a line %s', async (_, file, as, broken, says) => {
    const path = join(folder, 'collection', file);
    const whole = await readFile(path, 'utf8');
    expect(whole).toContain(as);
    await writeFile(path, whole.replace(as, broken));
    const { exit, err } = await run(['good', '--out', 'x.html'], { SEAL_PASSPHRASE: 'tavok limen rudas pobet' });
    await writeFile(path, whole);
    expect([exit, err]).toEqual([1, expect.stringContaining(says)]);
    await expect(readFile(join(folder, 'x.html'))).rejects.toThrow('ENOENT');
  });

  test('refuses weak words from the environment and from a file', async () => {
    await expect(run(['good', '--out', 'x.html'], { SEAL_PASSPHRASE: 'low water' })).rejects.toThrow(
      /too weak.*characters/,
    );
    await writeFile(join(folder, 'words.txt'), 'marram\n');
    await expect(run(['good', '--out', 'x.html', '--passphrase-file', 'words.txt'])).rejects.toThrow(UsageError);
  });

  test('is used wrongly without a share, without a place to write, or with a share that there is none of', async () => {
    await expect(run([])).rejects.toThrow(UsageError);
    await expect(run(['good'])).rejects.toThrow('--out');
    await expect(run(['nobody', '--out', 'x.html'])).rejects.toThrow(
      'There are: empty, ended, gone, good, private, unknown',
    );
    await expect(run(['--site'], { SEAL_PASSPHRASE: 'tavok limen rudas pobet' })).rejects.toThrow('--out DIR');
  });
});

describe('seal --open', () => {
  test('opens by key or by words, from a page or from a bare file, and says when it can’t', async () => {
    const key = await freshKey();
    const bytes = await sealed('what was sent', { key });
    await writeFile(join(folder, 'bare.age'), bytes);
    await writeFile(join(folder, 'page.html'), `<p>\n${asText(bytes)}</p>`);
    for (const file of ['bare.age', 'page.html']) {
      expect((await run(['--open', file, '--out', 'open.html'], { SEAL_PASSPHRASE: key })).exit).toBe(0);
      expect(await readFile(join(folder, 'open.html'), 'utf8')).toBe('what was sent');
    }
    expect(await run(['--open', 'bare.age', '--out', 'no.html'], { SEAL_PASSPHRASE: await freshKey() })).toMatchObject({
      exit: 1,
      err: expect.stringContaining('don’t open it'),
    });
    const changed = bytes.slice();
    changed[changed.length - 1] = (changed.at(-1) ?? 0) ^ 1;
    await writeFile(join(folder, 'changed.age'), changed);
    expect(await run(['--open', 'changed.age', '--out', 'no.html'], { SEAL_PASSPHRASE: key })).toMatchObject({
      exit: 1,
      err: expect.stringContaining('damaged'),
    });
    await expect(readFile(join(folder, 'no.html'))).rejects.toThrow('ENOENT');
  });
});
