import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { plainYaml } from '#read/plain-yaml.ts';
import { parseByLibrary } from '#read/yaml.ts';
import { collectionFiles } from '../bench/generate.ts';

const FILE = 'reels/given.md';
const ROOT = join(import.meta.dirname, '..', '..');

/** The front matter of every entry that the project has, and of some generated ones. */
const FRONTS: readonly string[] = [
  ...globSync(['collection/**/*.md', 'tests/collections/**/*.md'], { cwd: ROOT })
    .sort()
    .map((path) => readFileSync(join(ROOT, path), 'utf8')),
  ...collectionFiles(12, 7).values(),
].flatMap((text) => /^---\n(.*?)^---$/ms.exec(text.replaceAll('\r\n', '\n'))?.[1] ?? []);

/** Signs and pieces that YAML gives a meaning, and some that it doesn't. */
const PIECE = fc.constantFrom(
  ...[
    ' ',
    '  ',
    '\n',
    '\n\n',
    ':',
    ': ',
    '#',
    ' #',
    '- ',
    '-',
    ',',
    '[',
    ']',
    '{',
    '}',
    '"',
    "'",
    "''",
    '\\',
    '&a ',
    '*a',
  ],
  ...[
    '!',
    '|',
    '>',
    '%',
    '@',
    '`',
    '?',
    '? ',
    '~',
    'a',
    'key: ',
    'none',
    '½',
    '7',
    '\t',
    '...',
    '---',
    '<<',
    'é',
    '\u00a0',
  ],
);
const CHANGE = fc.record({
  at: fc.nat(),
  takes: fc.integer({ min: 0, max: 3 }),
  puts: fc.array(PIECE, { maxLength: 2 }),
});

const changed = (text: string, { at, takes, puts }: { at: number; takes: number; puts: readonly string[] }) => {
  const start = at % (text.length + 1);
  return text.slice(0, start) + puts.join('') + text.slice(start + takes);
};

/** What is read in the short way is what the library reads; and the library finds nothing wrong with it. */
function agrees(yaml: string): boolean {
  const plain = plainYaml(yaml, FILE);
  if (plain !== undefined) expect({ root: plain, problems: [] }).toEqual(plainly(parseByLibrary(yaml, FILE)));
  return plain !== undefined;
}

const plainly = ({ root, problems }: ReturnType<typeof parseByLibrary>) => ({ root, problems });

describe('front matter in plain forms', () => {
  test('is read as the YAML library reads it, in nearly every entry that we have', () => {
    const plain = FRONTS.filter(agrees);
    expect(FRONTS.length).toBeGreaterThan(100);
    expect(plain.length / FRONTS.length).toBeGreaterThan(0.85);
  });

  test('is read as the library reads it, or left to it, whatever is put into it', { timeout: 300_000 }, () => {
    let plain = 0;
    fc.assert(
      fc.property(fc.constantFrom(...FRONTS), fc.array(CHANGE, { minLength: 1, maxLength: 3 }), (text, changes) => {
        if (agrees(changes.reduce(changed, text))) plain += 1;
      }),
      { numRuns: 4000 },
    );
    expect(plain).toBeGreaterThan(500);
  });

  test('is read as the library reads it in small texts of every make', { timeout: 300_000 }, () => {
    const small = fc.array(
      fc.oneof(PIECE, fc.constantFrom('a: ', 'b: ', '\nc: ', '\n  d: ', '\n  - ', '\n- ', '{ a: b }')),
      {
        maxLength: 9,
      },
    );
    fc.assert(
      fc.property(small, (pieces) => {
        agrees(`a: ${pieces.join('')}\n`);
        agrees(`${pieces.join('')}\n`);
      }),
      { numRuns: 10_000 },
    );
  });
});
