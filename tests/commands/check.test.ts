import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { check } from '../../src/commands/check.ts';
import { foldedText } from '../../src/commands/folded-text.ts';
import { UsageError } from '../../src/commands/io.ts';
import { listener } from '../given/listener.ts';

let dir: string;
beforeEach(async () => {
  dir = await mkdtemp(join(tmpdir(), 'checked-'));
});
afterEach(() => rm(dir, { recursive: true, force: true }));

async function checked(args: readonly string[], width?: number) {
  const { said, hear } = listener();
  const io = {
    ...hear,
    cwd: dir,
    now: new Date('2026-04-01'),
    env: {},
    terminal: false,
    ...(width === undefined ? {} : { width }),
  };
  const exit = await check(['--cache', join(dir, 'cache'), ...args], io);
  return { exit, ...said };
}

/** A stock that sheds gives a note with long advice. */
async function writeTrouble(): Promise<void> {
  await mkdir(join(dir, 'collection/reels'), { recursive: true });
  await writeFile(
    join(dir, 'collection/reels/low-water.md'),
    '---\ntitle: Low Water\nstatus: held\ncondition: [{ on: "2026-03-02", found: [sticky, mould] }]\nlenght: "3:00"\n---\n',
  );
}

describe('the list in a terminal', () => {
  test.each([60, 80, 200])(
    'of %i characters is folded, and the place of each problem stays on one line',
    async (width) => {
      await writeTrouble();
      const whole = await checked([]);
      const { out } = await checked([], width);
      const places = (text: string) => text.split('\n').filter((line) => /^[^ ].*:\d+:\d+ {2}/.test(line));
      expect(places(out)).toEqual(places(whole.out));
      expect(places(out).length).toBeGreaterThan(1);
      const others = out.split('\n').filter((line) => line.startsWith(' '));
      expect(Math.max(...others.map((line) => line.length))).toBeLessThanOrEqual(Math.min(width, 100));
      expect(out.replaceAll(/\n +/g, ' ').replaceAll(/ +/g, ' ')).toBe(
        whole.out.replaceAll(/\n +/g, ' ').replaceAll(/ +/g, ' '),
      );
    },
  );

  test('goes to a file or another program unfolded: a line each', async () => {
    await writeTrouble();
    const { out, exit } = await checked([]);
    expect(exit).toBe(1);
    expect(out).toMatch(/^ {2}do {8}.{120,}$/m);
    for (const problem of out.trim().split('\n\n'))
      expect(problem).toMatch(
        /^\S+:\d+:\d+ {2}(?:error|warning|note) {2}\S+\n {2}\S.*\n {2}found .*\n {2}expected .*\n {2}do .*/,
      );
  });

  test('no word is lost or broken, and no figure is parted from its unit', () => {
    const word = fc.stringMatching(/^[a-z0-9%]{1,30}$/);
    fc.assert(
      fc.property(fc.array(word, { minLength: 1, maxLength: 40 }), fc.integer({ min: 1, max: 200 }), (words, width) => {
        expect(foldedText(words.join(' '), width, 2).split(/\s+/)).toEqual(words);
      }),
    );
    const at = (width: number) => foldedText(`${'x'.repeat(30)} ${'y'.repeat(5)} 52 µm thick`, width, 2);
    expect(at(40)).toBe(`${'x'.repeat(30)} ${'y'.repeat(5)}\n  52 µm thick`);
  });
});

describe('where there is nothing', () => {
  test('an empty folder is told apart from a sound one, and how to begin is said', async () => {
    await mkdir(join(dir, 'tapes'));
    const { exit, out, err } = await checked(['--collection', 'tapes']);
    expect([exit, out]).toEqual([0, '']);
    expect(err).toContain('There is no entry in');
    expect(err).toContain('npm run new -- reel ID --collection tapes');
  });

  test('a folder with a sound entry is not', async () => {
    await mkdir(join(dir, 'collection/people'), { recursive: true });
    await writeFile(join(dir, 'collection/people/a.md'), '---\ntitle: A\n---\n');
    expect((await checked([])).err).toBe('0 errors, 0 warnings, 0 notes.\n');
  });

  test('a folder that is missing is a wrong command line, and how to make one is said', async () => {
    await expect(checked(['--collection', 'nowhere'])).rejects.toThrow(UsageError);
    await expect(checked(['--collection', 'nowhere'])).rejects.toThrow(/npm run new -- reel ID --collection DIR/);
  });
});
