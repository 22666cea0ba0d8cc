import { execFile, execFileSync } from 'node:child_process';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { beforeAll, expect, test } from 'vitest';

/** A program that may mount a disk which only it sees: root's, or on some systems anybody's in a space of their own. */
const MOUNTING = [
  ['unshare', '-m'],
  ['unshare', '-rm'],
].find(([program = '', ...words]) => {
  try {
    execFileSync(program, [...words, 'mount', '-t', 'tmpfs', 'tmpfs', '/mnt'], { stdio: 'ignore' });
    return true;
  } catch {
    return false;
  }
});

interface Told {
  readonly exit: number;
  readonly err: string;
  readonly entriesStay: boolean;
}
let told: Record<string, unknown>;
const of = (name: string) => told[name] as Told;

beforeAll(async () => {
  const program = join(import.meta.dirname, 'on-a-full-disk.ts');
  const [start = '', ...words] = [
    ...(MOUNTING ?? []),
    process.execPath,
    program,
    MOUNTING === undefined ? 'imagined' : 'mounted',
  ];
  const { stdout } = await promisify(execFile)(start, words, { cwd: join(import.meta.dirname, '..', '..') });
  told = JSON.parse(stdout) as Record<string, unknown>;
});

test.each(['build', 'bag', 'csv', 'seal', 'new'])(
  '%s on a full disk says so and what to do, and exits 2',
  (command) => {
    expect(of(command)).toMatchObject({ exit: 2, entriesStay: true });
    expect(of(command).err).toMatch(
      /is on a disk that is full\. Make room on it, .*What was there before is as it was\.\n$/,
    );
    expect(of(command).err).not.toMatch(/fault|\n\s+at /);
  },
);

test('the last site and the last export stand as they were', () => {
  expect(told).toMatchObject({ site: 'the last site', export: 'the last export' });
});

test('nothing half-made is left', () => {
  const left = told['left'] as string[];
  expect(left.filter((name) => !/^\.tailout-dist-[0-9a-f]{12}$/.test(name))).toEqual([
    'dist',
    'reels.csv',
    'tapes',
    'temporary',
  ]);
  expect(left).toHaveLength(5);
  expect(told['temporary']).toEqual([]);
});

test.runIf(MOUNTING !== undefined)('the maker of the text index is not waited for when the disk ends it', () => {
  expect(told['index']).toMatch(/indexed is on a disk that is full/);
});
