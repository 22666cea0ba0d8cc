import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { ENTRY_KINDS } from '#model/words.ts';
import { UsageError } from '../../src/commands/io.ts';
import { loadEntries } from '../../src/commands/load.ts';
import { newEntry } from '../../src/commands/new.ts';

let dir: string;
beforeEach(async () => {
  dir = await mkdtemp(join(tmpdir(), 'new-'));
});
afterEach(() => rm(dir, { recursive: true, force: true }));

/** @param typed  What is typed at the terminal, in order; without it nobody sits there. */
async function made(args: readonly string[], typed?: readonly string[]) {
  const answers = [...(typed ?? [])];
  const asked: string[] = [];
  const ask = async (question: string) => {
    asked.push(question);
    return answers.shift() ?? '';
  };
  const io = {
    out: () => undefined,
    err: () => undefined,
    cwd: dir,
    now: new Date('2026-04-01'),
    env: {},
    terminal: typed !== undefined,
    ...(typed === undefined ? {} : { ask }),
  };
  await newEntry([...args, '--collection', 'c'], io);
  return { asked, unused: answers };
}

const text = (path: string) => readFile(join(dir, 'c', path), 'utf8');

const KINDS = [
  ['reel', 'reels'],
  ['edition', 'editions'],
  ['machine', 'machines'],
  ['stock', 'stocks'],
  ['place', 'places'],
  ['person', 'people'],
  ['share', 'shares'],
  ['note', 'notes'],
] as const;

describe.each(KINDS)('a new %s', (word, folder) => {
  test('is asked for by hand, from what it is to what it can’t be without', async () => {
    const { asked } = await made([], [word, 'Low Water: “none”', '']);
    expect(asked[0]).toContain('What is it?');
    expect(asked[1]).toBe('What is it called? ');
    expect(asked[2]).toContain('(Enter for low-water-none)');
    expect(await text(`${folder}/low-water-none.md`)).toContain('title: "Low Water: “none”"');
    expect(loadEntries(join(dir, 'c')).problems.filter(({ severity }) => severity === 'error')).toEqual([]);
  });

  test('is written without a question when all is said', async () => {
    expect((await made([word, 'low-water'], [])).asked).toEqual([]);
    await made([word, 'marram']);
    expect(await text(`${folder}/marram.md`)).toContain('title: Marram\n');
    expect(loadEntries(join(dir, 'c')).problems.filter(({ severity }) => severity === 'error')).toEqual([]);
  });

  test('is never written over one that is there', async () => {
    await made([word, 'low-water']);
    const before = await text(`${folder}/low-water.md`);
    await expect(made([word], ['Low Water', ''])).rejects.toThrow('is there already');
    await expect(made([word, 'low-water', '--folder'])).rejects.toThrow('is there already');
    expect(await text(`${folder}/low-water.md`)).toBe(before);
  });
});

test('every kind of entry can be begun', () => {
  expect(KINDS.map(([, folder]) => folder)).toEqual([...ENTRY_KINDS]);
});

describe('asked by hand', () => {
  test('a reel’s state is one of the words, and every line behind it stays', async () => {
    const { asked } = await made(['reel'], ['Low Water', '', 'sold', 'missing']);
    expect(asked.at(-1)).toContain('"sold" is none of these');
    const now = await text('reels/low-water.md');
    await made(['reel', 'other']);
    const usual = await text('reels/other.md');
    expect(now.split('\n').slice(2)).toEqual([
      'status: missing         # held | lent | elsewhere | missing | gone | destroyed',
      ...usual.split('\n').slice(3),
    ]);
  });

  test('a share is told whom it is for and which reels', async () => {
    await made(
      ['share'],
      ['For the appointment', 'january', 'engineer', 'Low Water', 'low-water-side-1, low-water-side-2'],
    );
    expect(await text('shares/january.md')).toContain('\nfor: engineer ');
    expect(await text('shares/january.md')).toContain('\nreels: [low-water-side-1, low-water-side-2] ');
  });

  test('an id that can’t be one is asked for again', async () => {
    const { asked } = await made(['note'], ['Low Water', 'Low Water', 'low']);
    expect(asked).toHaveLength(3);
    expect(await text('notes/low.md')).toContain('title: Low Water\n');
  });

  test('what is no kind after three answers is refused, and nothing is written', async () => {
    await expect(made([], ['tape', 'box', 'thing'])).rejects.toBeInstanceOf(UsageError);
  });
});

test('where nobody can be asked, what is missing is said', async () => {
  await expect(made([])).rejects.toThrow('Say what it is');
  await expect(made(['reel'])).rejects.toThrow('Say its id too');
});
