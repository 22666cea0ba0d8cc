import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { find } from '../../src/commands/find.ts';
import { UsageError } from '../../src/commands/io.ts';

const FILES = {
  'reels/gale-1.md': [
    'title: Gale Warning, side 1',
    'status: held',
    'side: "1"',
    'edition: gale-lp',
    'numbers: { catalogue: [HLX 2207], matrix: [HLX 2207-A], job: ["4471"] }',
    'copy-log: [{ on: "1978-02-09", number: QRS 909 }]',
    'cuts: [{ number: "3" }]',
    'photos: [{ file: front.jpg, shows: box front }]',
    'readings: [{ of: numbers.matrix, photo: front.jpg, written: "HLX 2207-A", sure: likely }, { of: numbers.job, photo: front.jpg, written: "44{7|1}1", sure: guess }]',
  ],
  'editions/gale-lp.md': [
    'title: Gale Warning',
    'catalogue: HLX 2207',
    'sides: [{ side: "1", matrix: HLX 2207-A }]',
    'run-outs: [{ side: "1", written: "HLX 2207-A-3 ‖ TV" }]',
  ],
  'reels/gale-2.md': ['title: Gale Warning, side 2', 'status: missing', 'numbers: { matrix: [HLX 2207-B] }'],
};

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'find-'));
  for (const [file, lines] of Object.entries(FILES)) {
    mkdirSync(join(folder, 'collection', dirname(file)), { recursive: true });
    writeFileSync(join(folder, 'collection', file), ['---', ...lines, '---', ''].join('\n'));
  }
  writeFileSync(join(folder, 'lot.txt'), 'HLX-2207-A (no box)\nhlx2207b\nZZT 1010 master\n7 in. reel\n');
});
afterAll(() => rmSync(folder, { recursive: true }));

async function run(...args: readonly string[]) {
  const out: string[] = [];
  const err: string[] = [];
  const io = {
    out: (text: string) => void out.push(text),
    err: (text: string) => void err.push(text),
    cwd: folder,
    now: new Date('2026-03-12T12:00:00Z'),
    env: {},
    terminal: false,
  };
  const code = await find(args, io);
  return { code, out: out.join(''), err: err.join('') };
}
const json = async (...args: readonly string[]) => {
  const { code, out } = await run(...args, '--format', 'json');
  return { code, answer: JSON.parse(out) };
};
const shape = (hits: readonly Record<string, unknown>[]) =>
  hits.map(({ id, of, as, number, how }) => [id, of, as, number, how]);

describe('npm run find', () => {
  test('a number in another spelling leads to the reel and the edition’s side, then to cut and run-out', async () => {
    const { code, answer } = await json('hlx2207a');
    expect(code).toBe(0);
    expect(answer.query).toBe('hlx2207a');
    expect(shape(answer.hits)).toEqual([
      ['gale-1', 'reel', 'matrix', 'HLX 2207-A', 'other spelling'],
      ['gale-lp', 'edition', 'matrix', 'HLX 2207-A', 'other spelling'],
      ['gale-1', 'cut', 'cut', 'HLX 2207-A-3', 'part'],
      ['gale-lp', 'edition', 'run-out', 'HLX 2207-A-3 ‖ TV', 'part'],
      ['gale-1', 'reel', 'catalogue', 'HLX 2207', 'part'],
      ['gale-lp', 'edition', 'catalogue', 'HLX 2207', 'part'],
    ]);
    expect(answer.hits[0]).toMatchObject({
      title: 'Gale Warning, side 1',
      state: 'held',
      from: 'box front',
      sure: 'likely',
    });
  });

  test('a whole etching leads to the run-out, the cut, the reel', async () => {
    const { answer } = await json('HLX 2207-A-3 ‖ TV');
    expect(shape(answer.hits).slice(0, 3)).toEqual([
      ['gale-lp', 'edition', 'run-out', 'HLX 2207-A-3 ‖ TV', 'as written'],
      ['gale-1', 'cut', 'cut', 'HLX 2207-A-3', 'as written'],
      ['gale-1', 'reel', 'matrix', 'HLX 2207-A', 'part'],
    ]);
  });

  test('a number in a copy log leads to its line', async () => {
    expect(shape((await json('QRS909')).answer.hits)).toEqual([
      ['gale-1', 'log line', 'copy log', 'QRS 909', 'other spelling'],
    ]);
  });

  test('a reading that allows another character is found by it', async () => {
    expect(shape((await json('4411')).answer.hits)).toContainEqual(['gale-1', 'reel', 'job', '44{7|1}1', 'unread']);
  });

  test('words of a shell are one number', async () => {
    expect((await json('HLX', '2207-B')).answer.hits[0].id).toBe('gale-2');
  });

  test('nothing found: exit 1, near ones apart', async () => {
    const { code, answer } = await json('HLX 2239-A');
    expect([code, answer.hits]).toEqual([1, []]);
    expect(answer.near[0]).toMatchObject({ number: 'HLX 2207-A', distance: 2 });
  });

  test('a list: each line with its state', async () => {
    const { code, answer } = await json('--list', 'lot.txt');
    expect(code).toBe(0);
    expect(answer.rows.map(({ line, state, number }: Record<string, unknown>) => [line, state, number])).toEqual([
      [1, 'held', 'HLX 2207-A'],
      [2, 'known', 'HLX 2207-B'],
      [3, 'new', 'ZZT 1010'],
      [4, 'new', null],
    ]);
    expect(answer.rows[0].hits[0].id).toBe('gale-1');
  });

  test('in words: what matched, how and why on stdout', async () => {
    const { out, err } = await run('HLX 22O7-A');
    expect(out).toContain('HLX 2207-A  matrix  |  misread  |  reel: Gale Warning, side 1  |  held  |  reels/gale-1');
    expect(out).toContain('the letter O and the figure 0 have one shape');
    expect(err).toBe('');
    expect((await run('--list', 'lot.txt')).out).toContain('4 lines: 1 held, 1 known, 0 perhaps, 1 new, 1 no number.');
  });

  test('neither a number nor a list, or both, is used wrongly', async () => {
    await expect(run()).rejects.toThrow(UsageError);
    await expect(run('HLX', '--list', 'lot.txt')).rejects.toThrow(UsageError);
    await expect(run('--list', 'no-such.txt')).rejects.toThrow(/can’t be read/);
  });
});
