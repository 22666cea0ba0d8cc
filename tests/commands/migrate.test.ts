import { cp, mkdtemp, readdir, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { type MigrationStep, migrateFiles, STEPS } from '#compute/migration/steps.ts';
import { FORMAT } from '#model/format.ts';
import { splitFiles } from '#read/collection.ts';
import { validateAll } from '#validate/entries.ts';
import { loadEntries } from '../../src/commands/load.ts';
import { migrate, migrateBy } from '../../src/commands/migrate.ts';
import { listener } from '../given/listener.ts';

const KEPT = join(import.meta.dirname, '../collections/format-1');

/** Two steps that only the test knows: a key is renamed, then a word. */
const RENAMED: MigrationStep = {
  from: 1,
  to: 2,
  about: '"set" is now called "family".',
  move: ({ path, text }) => (path.startsWith('reels/') ? text.replace(/^set:/m, 'family:') : text),
};
const REWORDED: MigrationStep = {
  from: 2,
  to: 3,
  about: '"lent" is now "away".',
  move: ({ text }) => text.replace(/^status: lent$/m, 'status: away'),
};

let dir: string;
beforeEach(async () => {
  dir = await mkdtemp(join(tmpdir(), 'kept-'));
  await cp(KEPT, dir, { recursive: true });
});
afterEach(() => rm(dir, { recursive: true, force: true }));

async function run(steps: readonly MigrationStep[] | undefined, ...args: string[]) {
  const { said, hear } = listener();
  const io = {
    ...hear,
    cwd: dir,
    now: new Date('2026-04-01'),
    env: {},
    terminal: false,
  };
  const given = ['--collection', dir, ...args];
  const exit = steps === undefined ? await migrate(given, io) : await migrateBy(steps, 3, given, io);
  return { exit, ...said };
}

const textsIn = async () => {
  const files = (await readdir(dir, { recursive: true })).filter((name) => name.endsWith('.md')).sort();
  return Object.fromEntries(
    await Promise.all(files.map(async (name) => [name, await readFile(join(dir, name), 'utf8')] as const)),
  );
};

describe('a collection of the first form', () => {
  test('is read whole by this program, after every step there is', async () => {
    const files = Object.entries(await textsIn()).map(([path, text]) => ({ path, text }));
    const { changed, to } = migrateFiles(files, 1);
    expect(to).toBe(FORMAT);
    const moved = files.map((file) => changed.find(({ path }) => path === file.path) ?? file);
    expect(validateAll(splitFiles(moved)).problems).toEqual([]);
  });

  test('has nothing to move while there is one form only, and is told so', async () => {
    const before = await textsIn();
    const { exit, err } = await run(undefined, '--write');
    expect([exit, err]).toEqual([0, 'The entries are in form 1, the only one there is. There is nothing to move.\n']);
    expect(await textsIn()).toEqual(before);
    expect(STEPS).toEqual([]);
  });

  test('of a later form than the program knows is not read as if it were known', async () => {
    const problems = validateAll(splitFiles([{ path: 'collection.md', text: '---\nformat: 9\n---\n' }])).problems;
    expect(problems.map(({ code, found }) => [code, found])).toEqual([['entry/bad-value', '9']]);
  });
});

describe('moving it forward', () => {
  test('shows each line that changes, and writes nothing until asked', async () => {
    const before = await textsIn();
    const { out, err } = await run([RENAMED, REWORDED]);
    expect(out).toContain('  - set: low-water\n');
    expect(out).toContain('  + family: low-water\n');
    expect(err).toContain('1 file would change, from form 1 to 3. Nothing is written yet');
    expect(await textsIn()).toEqual(before);
  });

  test('takes the steps in their order, changes only what they change, and notes the new form', async () => {
    const before = await textsIn();
    await run([REWORDED, RENAMED], '--write');
    const after = await textsIn();
    const reel = 'reels/low-water-side-1/index.md';
    expect(after[reel]).toBe(before[reel]?.replace('\nset:', '\nfamily:').replace('status: lent', 'status: away'));
    expect(after['collection.md']).toBe(
      before['collection.md']?.replace('private: [client]\n---', 'private: [client]\nformat: 3\n---'),
    );
    expect(Object.keys(after).filter((name) => after[name] !== before[name])).toEqual(['collection.md', reel]);
  });

  test('begun again after it was cut off, it ends the same', async () => {
    await run([RENAMED], '--write');
    const once = await textsIn();
    const text = once['collection.md']?.replace('format: 2\n', '') ?? '';
    const again = migrateFiles(
      [
        { path: 'collection.md', text },
        ...Object.entries(once)
          .filter(([path]) => path !== 'collection.md')
          .map(([path, inside]) => ({ path, text: inside })),
      ],
      1,
      [RENAMED],
    );
    expect(again.changed).toEqual([]);
    expect(loadEntries(dir).entries.reels).toHaveLength(1);
  });
});
