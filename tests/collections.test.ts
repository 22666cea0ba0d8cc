import { existsSync, globSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import type { Catalogue } from '#model/catalogue.ts';
import { day } from '#model/dates.ts';
import type { Diagnostic } from '#model/diagnostic.ts';
import { loadCatalogue } from '../src/commands/load.ts';

/** Small collections, each a story, read from disk as a user's are: all that the program says of them, and the facts
 * that the story is about. What is expected was written from the story, not taken from the program. */
interface Expected {
  readonly story: string;
  readonly today: string;
  /** Every problem, in any order, and no other. */
  readonly problems: readonly { code: string; severity: string; file: string; says?: readonly string[] }[];
  /** Reel → shortest and longest known path. */
  readonly generation?: Readonly<Record<string, readonly [number | null, number | null]>>;
  /** Reel → rule → outcome. */
  readonly findings?: Readonly<Record<string, Readonly<Record<string, string>>>>;
  /** Reel → machine → verdict. */
  readonly playing?: Readonly<Record<string, Readonly<Record<string, string>>>>;
  /** Some of the links. */
  readonly edges?: readonly string[];
  /** What needs attention, all of it: code and reel. */
  readonly attention?: readonly string[];
}

const ROOT = join(import.meta.dirname, 'collections');
const CACHE = mkdtempSync(join(tmpdir(), 'stories-'));
afterAll(() => rmSync(CACHE, { recursive: true, force: true }));

const STORIES = globSync('*/expected.json', { cwd: ROOT })
  .sort()
  .map((file) => ({
    name: file.split('/')[0] ?? '',
    expected: JSON.parse(readFileSync(join(ROOT, file), 'utf8')) as Expected,
  }))
  // Others have a test of their own.
  .filter(({ expected }) => expected.story !== undefined);

const SOUND = ['everything-sound', 'mono-era', 'cassette', 'compilation', 'automatic-coupling', 'reissue'];

const told = ({ code, severity, place }: Diagnostic) => `${code} ${severity} ${place.file}`;

describe.each(STORIES)('$name: $expected.story', async ({ name, expected }) => {
  const catalogue = await load(name, expected.today);
  const reels = new Map(catalogue.reels.map((sheet) => [sheet.reel.id, sheet]));

  test('the problems are these, and no others', () => {
    const wanted = expected.problems.map(({ code, severity, file }) => `${code} ${severity} ${file}`);
    expect(catalogue.problems.map(told).sort()).toEqual(wanted.sort());
    for (const { code, file, says = [] } of expected.problems) {
      const text = catalogue.problems
        .filter((problem) => problem.code === code && problem.place.file === file)
        .map(({ message, found, expected: wants, action }) => `${message} ${found} ${wants} ${action}`)
        .join('\n');
      for (const words of says) expect(text).toContain(words);
    }
  });

  test('the facts of the story are as told', () => {
    for (const [id, [shortest, longest]] of Object.entries(expected.generation ?? {})) {
      expect({ id, ...reels.get(id)?.lineage.generation }).toMatchObject({ id, shortest, longest });
    }
    for (const [id, rules] of Object.entries(expected.findings ?? {})) {
      const found = Object.fromEntries((reels.get(id)?.findings ?? []).map(({ rule, outcome }) => [rule, outcome]));
      expect(found).toMatchObject(rules);
    }
    for (const [id, machines] of Object.entries(expected.playing ?? {})) {
      const verdicts = Object.fromEntries(
        (reels.get(id)?.playing.verdicts ?? []).map((one) => [one.machine, one.verdict]),
      );
      expect(verdicts).toMatchObject(machines);
    }
    const edges = catalogue.lineage.edges.map(({ from, to }) => `${from} > ${to}`);
    for (const edge of expected.edges ?? []) expect(edges).toContain(edge);
    if (expected.attention !== undefined) {
      expect(catalogue.attention.map(({ code, reel }) => `${code} ${reel}`)).toEqual(expected.attention);
    }
  });
});

test.each(SOUND)('%s is sound: no error and no warning', async (name) => {
  expect(existsSync(join(ROOT, name, 'expected.json'))).toBe(true);
  const { problems } = await load(name, '2026-04-01');
  expect(problems.filter((problem) => problem.severity !== 'note').map(told)).toEqual([]);
});

async function load(name: string, today: string): Promise<Catalogue> {
  const { catalogue } = await loadCatalogue(
    { collection: join(ROOT, name), today: day(today) },
    { err: () => undefined, terminal: false },
    CACHE,
  );
  return catalogue;
}
