import { lutimes, mkdir, mkdtemp, readdir, readFile, realpath, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { checkBag } from '#publish/export/bag-check.ts';
import { fromText, unseal } from '#publish/sealed.ts';
import { startingEntry } from '../../src/commands/new/starts.ts';
import { chance } from '../bench/chance.ts';
import { writeCollection } from '../given/written-collection.ts';
import { cameraPhotograph } from '../publish/made-photograph.ts';
import { contentOf, run, start } from './command.ts';

/** A longer run: TAILOUT_KILLS=100 npx vitest run --config tests/vitest.config.ts tests/faults/killed */
const given = process.env['TAILOUT_KILLS'];
const kills = (few: number) => Number(given ?? few);
const LONG = { timeout: 3_600_000 };

const WORDS = 'tavok limen rudas pobet';
const ROOMS = join(import.meta.dirname, '..', '..', '.cache', 'building');
const next = chance(20);
const killed: number[] = [];
/** How long a build takes here; measured with the first. */
let usualMs = 5000;
let folder: string;
let temporary: string;

const at = (...names: string[]) => join(folder, ...names);
const shared = () => ['--collection', at('tapes'), '--today', '2026-04-01', '--cache', at('cache')];
const around = () => ({ cwd: folder, temporary, env: { SEAL_PASSPHRASE: WORDS } });
const whole = async (args: readonly string[]) => {
  const ended = await run(args, around());
  if (ended.exit !== 0) throw new Error(ended.err);
};

beforeAll(async () => {
  folder = await realpath(await mkdtemp(join(tmpdir(), 'killed-')));
  temporary = at('temporary');
  await mkdir(temporary);
  await writeCollection(
    at('tapes'),
    {
      'reels/low-water': 'title: Low Water\nphotos: [front.jpg]\nlength: "18:00"',
      'reels/high-water': 'title: High Water\nset: water',
      'shares/for-one': 'title: Shown to one\nfor: valuer\nreels: [low-water]',
      'reels/low-water/front.jpg': '',
    },
    () => cameraPhotograph(400, 300),
  );
});
afterAll(() => rm(folder, { recursive: true, force: true }));

/** Runs a command and kills it: every second time at any moment of its usual time, every other one in the midst of its
 * writing, which is when something that begins with a dot stands beside what it makes. */
async function killOne(args: readonly string[], mostMs: number, count: number): Promise<void> {
  const entries = await contentOf(at('tapes'));
  const { child, ended } = start(args, around());
  let over = false;
  const end = ended.then(() => {
    over = true;
  });
  const half = async () => (await readdir(at('made'))).some((name) => name.startsWith('.'));
  if (count % 2 === 1) while (!over && !(await half())) await pause(2);
  const ms = count % 2 === 1 ? next() * mostMs * 0.6 : next() * mostMs;
  await Promise.race([pause(ms), end]);
  child.kill('SIGKILL');
  await end;
  if (child.pid !== undefined) killed.push(child.pid);
  if (args[0] !== 'new') expect(await contentOf(at('tapes')), 'no entry was touched').toBe(entries);
}

const unsealed = (file: string) =>
  unseal(fromText(/-----BEGIN AGE[\s\S]+-----END AGE ENCRYPTED FILE-----/.exec(file)?.[0] ?? ''), { words: WORDS });

/** A whole run after the kills leaves only what it makes. */
async function expectNothingLeft(made: readonly string[]): Promise<void> {
  expect(await readdir(temporary), 'private folders of killed programs').toEqual([]);
  expect((await readdir(at('made'))).sort()).toEqual([...made].sort());
  const rooms = (await readdir(ROOMS)).map((name) => Number(/^tailout-(\d+)-/.exec(name)?.[1]));
  expect(rooms.filter((pid) => killed.includes(pid))).toEqual([]);
}

/** As if a minute had passed: a temporary file that is younger may still be another program's. */
async function age(where: string): Promise<void> {
  const left = (await readdir(where, { recursive: true })).filter((name) => name.endsWith('.tmp'));
  for (const name of left) await lutimes(join(where, name), 0, 0);
}

async function begin(): Promise<void> {
  await rm(at('made'), { recursive: true, force: true });
  await mkdir(at('made'));
}

describe('killed at any moment', () => {
  test('a build leaves the last whole site or the new one', LONG, async () => {
    await begin();
    const build = ['build', ...shared(), '--out', at('made', 'dist')];
    const entry = at('tapes', 'reels', 'high-water.md');
    const texts = [await readFile(entry, 'utf8'), '---\ntitle: Spring Tide\nstatus: held\nset: water\n---\n'];
    const began = performance.now();
    await whole(build);
    usualMs = performance.now() - began;
    const sites = [await contentOf(await realpath(at('made', 'dist')))];
    let wanted = 1;
    const seen = new Set<string>();
    for (let count = 0; count < kills(5); count += 1) {
      await writeFile(entry, texts[wanted] ?? '');
      await killOne(build, usualMs, count);
      const stands = await contentOf(await realpath(at('made', 'dist')));
      seen.add(stands);
      // When the new one stands already, the next is to be the other again.
      if (stands !== sites[1 - wanted]) {
        sites[wanted] ??= stands;
        wanted = 1 - wanted;
      }
    }
    await writeFile(entry, texts[1] ?? '');
    await age(at('made'));
    await whole(build);
    const last = await contentOf(await realpath(at('made', 'dist')));
    expect(last).not.toBe(sites[0]);
    expect([...seen].filter((site) => site !== sites[0] && site !== last)).toEqual([]);
    const names = await readdir(at('made'));
    expect(names.filter((name) => name.startsWith('.'))).toHaveLength(1);
    await expectNothingLeft(names);
  });

  test('a sealing leaves the last file or a whole new one', LONG, async () => {
    await begin();
    const seal = ['seal', 'for-one', ...shared(), '--out', at('made', 'one.html')];
    await writeFile(at('made', 'one.html'), 'as it was');
    for (let count = 1; count <= kills(1); count += 1) {
      await killOne(seal, usualMs, count);
      const now = await readFile(at('made', 'one.html'), 'utf8');
      if (now !== 'as it was') await expect(unsealed(now)).resolves.toBeDefined();
    }
    await age(at('made'));
    await whole(seal);
    await expect(unsealed(await readFile(at('made', 'one.html'), 'utf8'))).resolves.toBeDefined();
    await expectNothingLeft(['one.html']);
  });

  test('an export to a file leaves the last one or the whole new one', LONG, async () => {
    await begin();
    const csv = ['export', ...shared(), '--as', 'csv', '--out', at('made', 'reels.csv')];
    await writeFile(at('made', 'reels.csv'), 'as it was');
    const seen = new Set<string>();
    for (let count = 1; count <= kills(2); count += 1) {
      await killOne(csv, usualMs / 3, count);
      seen.add(await readFile(at('made', 'reels.csv'), 'utf8'));
    }
    await age(at('made'));
    await whole(csv);
    const made = await readFile(at('made', 'reels.csv'), 'utf8');
    expect([...seen].filter((text) => text !== 'as it was' && text !== made)).toEqual([]);
    await expectNothingLeft(['reels.csv']);
  });

  test('a bag is whole under its name or isn’t there', LONG, async () => {
    await begin();
    const bag = ['export', ...shared(), '--as', 'bag', '--out', at('made', 'bag')];
    for (let count = 1; count <= kills(1); count += 1) {
      await killOne(bag, usualMs, count);
      const there = (await readdir(at('made'))).includes('bag');
      if (there) expect(await checkBag(at('made', 'bag'))).toMatchObject({ valid: true });
      await rm(at('made', 'bag'), { recursive: true, force: true });
    }
    await age(at('made'));
    await whole(bag);
    await expectNothingLeft(['bag']);
    expect(await checkBag(at('made', 'bag'))).toMatchObject({ valid: true });
  });

  test('a new entry is whole under its name or isn’t there', LONG, async () => {
    const reel = (id: string) => ['new', '--collection', at('tapes'), 'reel', id];
    const began = performance.now();
    await whole(reel('first-of-all'));
    const usual = performance.now() - began;
    for (let count = 1; count <= kills(3); count += 1) {
      await killOne(reel(`reel-${count}`), usual, 0);
      const text = await readFile(at('tapes', 'reels', `reel-${count}.md`), 'utf8').catch(() => undefined);
      expect([undefined, startingEntry('reels', `Reel ${count}`)]).toContain(text);
    }
    await age(at('tapes', 'reels'));
    await whole(reel('last-of-all'));
    expect((await readdir(at('tapes', 'reels'))).filter((name) => name.startsWith('.'))).toEqual([]);
  });
});
