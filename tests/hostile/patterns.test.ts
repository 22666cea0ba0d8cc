import { analyse } from 'scslre';
import { expect, test } from 'vitest';
import { patternsInSource } from './patterns.ts';

/** Patterns that take the square of the time on some text, and why that text can't be long. */
const ON_SHORT_TEXTS: readonly (readonly [file: string, startsWith: string, why: string])[] = [
  ['src/compute/identifiers/number-index.ts', '/\\s*\\n', 'our own texts: titles and places of numbers'],
  ['src/compute/import/cell-forms.ts', '/ *[;,', 'a cell of the owner’s own spreadsheet'],
  ['src/publish/dossier-page.ts', '/<picture>', 'a page that we rendered ourselves'],
  ['src/publish/export/bag-check.ts', '/^([0-9a-f]+)', 'blanks of one line in the owner’s own bag'],
  ['src/read/climate-columns.ts', '/^', 'one cell of a header, in a row of at most 64 kB that csv-lines.ts cuts'],
  ['src/render/views/shelf.ts', '/[', 'at most 200 characters, cut beside it'],
  ['src/render/words/money.ts', '/\\B', 'the figures of one amount'],
];

const PATTERNS = patternsInSource();

/** Source: scslre, static analysis for super-linear backtracking and for super-linear moves of the start. */
const found = PATTERNS.flatMap(({ where, literal }) => {
  const end = literal.lastIndexOf('/');
  const { reports } = analyse({ source: literal.slice(1, end), flags: literal.slice(end + 1) });
  return reports.map((report) => ({ where, literal, exponential: report.exponential }));
});

const reasonFor = ({ where, literal }: { where: string; literal: string }) =>
  ON_SHORT_TEXTS.findIndex(([file, start]) => where.startsWith(`${file}:`) && literal.startsWith(start));

test('patterns are found in every layer', () => {
  expect(PATTERNS.length).toBeGreaterThan(300);
});

test('no pattern takes exponential time on any text', () => {
  expect(found.filter(({ exponential }) => exponential)).toEqual([]);
});

test('a pattern that can take the square of the time is known, and its texts are short', () => {
  expect(found.filter((one) => reasonFor(one) < 0).map(({ where, literal }) => `${where} ${literal}`)).toEqual([]);
});

test('no reason outlives its pattern', () => {
  const used = new Set(found.map(reasonFor));
  expect(ON_SHORT_TEXTS.filter((_, at) => !used.has(at))).toEqual([]);
});
