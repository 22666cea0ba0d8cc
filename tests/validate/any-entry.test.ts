import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Diagnostic } from '#model/diagnostic.ts';
import { ENTRY_KINDS } from '#model/words.ts';
import { readCollection, splitFiles } from '#read/collection.ts';
import { validateAll } from '#validate/entries.ts';

/** One seed for every run, so that a failure can be run again; fast-check prints the smallest case it finds. */
const SEED = 1974;

const SOUND = `---
title: Saltwater Almanac, side 1
status: held
kind: copy master
numbers: { catalogue: [HLX 2207], matrix: [HLX 2207-A] }
length: "18:52"
contents:
  - { title: Low Water, length: "4:10" }
  - { title: Marram, length: "3:36", gap-after: 3 s }
format:
  width: 1/4 in
  speed: 30 in/s
  equalisation: inf/17.5
  tones: [1 kHz, 10 kHz]
pack: { outside-diameter: 260 mm ± 1 mm, wind: tail out }
recorded: { on: 1978-02~, by: T.K. }
readings: [{ of: numbers.matrix, region: "xywh=percent:12,40,30,8", written: "HLX 22O7-A", sure: likely }]
handling: [{ what: bake, temperature: 50 °C, duration: 36 h, ended: "2026-03-11T22:00" }]
valuations: [{ on: 2026-04, amount: 900 GBP }]
---
Text.
`;

/** Signs that mean something to YAML, to Markdown, to a scalar or to JavaScript. */
const signs = fc.constantFrom(
  ...[
    '&',
    '*',
    '!',
    '!!binary ',
    '|',
    '>',
    '%',
    '@',
    '`',
    '---',
    '\n---\n',
    '...',
    ': ',
    ' #',
    '\t',
    '\r',
    '\u0000',
    '\ufeff',
    '\u2028',
    '\ud800',
  ],
  ...[
    '[',
    ']',
    '{',
    '}',
    '"',
    "'",
    '\\',
    ',',
    '<',
    '&a ',
    '*a',
    '<<: ',
    '__proto__: ',
    'constructor: ',
    'none',
    '~',
    '½',
    '±',
    '9'.repeat(400),
    '-'.repeat(50),
  ],
);

/** A place in the text, and what happens there: something put in, taken out, doubled, or swapped for a sign. */
const change = fc.record({
  at: fc.nat(SOUND.length),
  take: fc.nat(30),
  put: fc.oneof(signs, fc.string({ unit: 'binary', maxLength: 8 })),
  twice: fc.boolean(),
});

function changed(
  text: string,
  { at, take, put, twice }: { at: number; take: number; put: string; twice: boolean },
): string {
  const gone = text.slice(at, at + take);
  return `${text.slice(0, at)}${put}${twice ? gone + gone : ''}${text.slice(at + take)}`;
}

/** What must hold of every problem, whatever the file was. */
function sound(problem: Diagnostic, path: string) {
  const { place, message, action } = problem;
  if (place.file !== path || place.line < 1 || place.column < 1 || message === '' || action === '') {
    throw new Error(`a problem without a place or words: ${JSON.stringify(problem)}`);
  }
}

function readAny(path: string, text: string) {
  const files = splitFiles([{ path, text }]);
  const { entries, problems } = validateAll(files);
  const told = [...files.problems, ...problems];
  for (const problem of told) sound(problem, path);
  const lines = text.split(/\r\n?|\n/u).length;
  for (const { place } of told) expect(place.line).toBeLessThanOrEqual(lines + 1);
  return { entries, told };
}

describe('whatever an entry holds', () => {
  test('10,000 changed entries are read or told of, each problem with its file and line', { timeout: 240_000 }, () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...ENTRY_KINDS),
        fc.array(change, { minLength: 1, maxLength: 4 }),
        (kind, changes) => {
          const path = `${kind}/x.md`;
          const { entries, told } = readAny(path, changes.reduce(changed, SOUND));
          // It is used, or somebody is told why not.
          const used = entries[kind].length === 1;
          expect(used || told.some(({ severity }) => severity === 'error')).toBe(true);
        },
      ),
      { numRuns: 10_000, seed: SEED },
    );
  });

  test('any text at all is read or told of', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 300 }), (text) => {
        readAny('reels/x.md', text);
        readAny('reels/x.md', `---\n${text}\n---\n`);
      }),
      { numRuns: 2000, seed: SEED },
    );
  });

  test('any bytes in a file are read or told of', () => {
    const root = mkdtempSync(join(tmpdir(), 'any-bytes-'));
    mkdirSync(join(root, 'reels'));
    try {
      fc.assert(
        fc.property(fc.uint8Array({ maxLength: 200 }), (bytes) => {
          writeFileSync(join(root, 'reels/x.md'), Buffer.concat([Buffer.from('---\ntitle: '), bytes]));
          const files = readCollection(root);
          for (const problem of [...files.problems, ...validateAll(files).problems]) sound(problem, 'reels/x.md');
        }),
        { numRuns: 300, seed: SEED },
      );
    } finally {
      rmSync(root, { recursive: true, force: true });
    }
  });

  test('a bad entry never hides a good one', () => {
    fc.assert(
      fc.property(fc.array(change, { maxLength: 3 }), (changes) => {
        const files = splitFiles([
          { path: 'reels/bad.md', text: changes.reduce(changed, SOUND) },
          { path: 'reels/good.md', text: SOUND },
        ]);
        expect(validateAll(files).entries.reels.map(({ id }) => id)).toContain('good');
      }),
      { numRuns: 500, seed: SEED },
    );
  });
});
