import { mkdtemp, readdir, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { AUDIENCES } from '#model/words.ts';
import { exportAs } from '../../src/commands/export.ts';
import { importSheet } from '../../src/commands/import.ts';
import { UsageError } from '../../src/commands/io.ts';
import { loadEntries } from '../../src/commands/load.ts';
import { saidOf } from '../given/said-of.ts';
import { MAY_BE_TOLD, TOLD_EVERYTHING, wordsToldIn } from '../given/told-everything.ts';
import { writeCollection } from '../given/written-collection.ts';

const DEMO = join(import.meta.dirname, '../../collection');
const IN_THE_CAMERA = 'QR99';

let dir: string;
beforeAll(async () => {
  dir = await mkdtemp(join(tmpdir(), 'exported-'));
  await writeCollection(join(dir, 'told'), TOLD_EVERYTHING, (at) =>
    sharp({ create: { width: 640, height: 400 + at, channels: 3, background: '#a08060' } })
      .jpeg()
      .withExif({ IFD0: { ImageDescription: IN_THE_CAMERA, Artist: IN_THE_CAMERA } })
      .toBuffer(),
  );
});
afterAll(() => rm(dir, { recursive: true, force: true }));

const ioOf = () => {
  let err = '';
  return {
    out: () => undefined,
    err: (text: string) => {
      err += text;
    },
    said: () => err,
    cwd: dir,
    now: new Date('2026-04-01T12:00:00'),
    env: {},
    terminal: false,
  };
};

async function exported(form: string, out: string, ...more: readonly string[]) {
  const io = ioOf();
  const args = [
    '--as',
    form,
    '--out',
    out,
    '--base',
    'https://example.org/tapes/',
    '--cache',
    join(dir, 'cache'),
    ...more,
  ];
  const exit = await exportAs(['--collection', 'told', '--today', '2026-04-01', ...args], io);
  expect([exit, io.said()]).toEqual([0, io.said()]);
  return io.said();
}

/** Every byte of what was written, and every name, as one text. */
async function everythingIn(path: string): Promise<string> {
  const names = await readdir(path, { recursive: true, withFileTypes: true }).catch(() => undefined);
  if (names === undefined) return await readFile(path, 'latin1');
  const texts = names.map(async (name) => {
    const file = join(name.parentPath, name.name);
    return `${file.slice(path.length)}\n${name.isFile() ? await readFile(file, 'latin1') : ''}`;
  });
  return (await Promise.all(texts)).join('\n');
}

const FORMS = ['csv', 'schedule', 'pbcore', 'iiif', 'jsonld'];

describe.each(FORMS)('%s', (form) => {
  test.each(AUDIENCES)(
    'for a share with a %s holds what that share allows, in every byte and name',
    async (audience) => {
      const out = join(dir, `${form}-${audience}`);
      const said = await exported(form, out, '--for', `qr13-${audience}`);
      const everything = await everythingIn(out);
      const allowed = [...(MAY_BE_TOLD[audience] ?? [])];
      // The ids of the files of the reels that are shown are the reels' own.
      expect(wordsToldIn(everything).filter((word) => !allowed.includes(word))).toEqual([]);
      expect(everything.toUpperCase()).not.toContain(IN_THE_CAMERA);
      expect(everything).toMatch(/qq05|QQ05/i);
      expect(said).toContain('Facts that the share doesn’t show aren’t in it at all.');
    },
  );

  test('says what it can’t carry, and without a share what else the owner should know', async () => {
    const said = await exported(form, join(dir, `${form}-whole`));
    expect(said).toMatch(/It can't carry:\n(?: {2}- \S.*\n)+/);
    // The words that a share keeps out are there to be found.
    const told = wordsToldIn(await everythingIn(join(dir, `${form}-whole`)));
    expect(told.filter((word) => !(MAY_BE_TOLD['friend'] ?? []).includes(word))).not.toEqual([]);
  });
});

test('a bag is refused for a share: it is always the whole', async () => {
  await expect(exported('bag', join(dir, 'bag'), '--for', 'qr13-valuer')).rejects.toBeInstanceOf(UsageError);
});

test('a share that isn’t there is refused, and those that are there are named', async () => {
  await expect(exported('csv', join(dir, 'x.csv'), '--for', 'nobody')).rejects.toThrow('qr13-friend');
});

test('the demo goes out as CSV and comes in again, with the photographs of each reel', async () => {
  const io = ioOf();
  await exportAs(['--as', 'csv', '--out', 'reels.csv', '--collection', DEMO, '--cache', join(dir, 'cache')], io);
  await importSheet(['reels.csv', '--collection', 'again', '--photographs', DEMO, '--write'], ioOf());
  const [before, after] = [loadEntries(DEMO).entries.reels, loadEntries(join(dir, 'again')).entries.reels];
  expect(saidOf(after)).toEqual(saidOf(before));
  const photographs = (await readdir(join(DEMO, 'reels'), { recursive: true })).filter((name) => name.endsWith('.jpg'));
  for (const name of photographs)
    expect((await readFile(join(dir, 'again/reels', name))).equals(await readFile(join(DEMO, 'reels', name)))).toBe(
      true,
    );
});
