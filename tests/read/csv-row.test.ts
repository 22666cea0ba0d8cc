import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { splitRow } from '#read/csv-row.ts';

const cell = fc.string({ unit: fc.constantFrom('a', '1', '.', ' ', '"', ',', ';', '\n', 'é', '%') });
const quoted = (text: string) => `"${text.replaceAll('"', '""')}"`;

describe('splitRow', () => {
  test.each([
    ['a,b,c', ['a', 'b', 'c']],
    ['', ['']],
    ['a,,', ['a', '', '']],
    ['"a,b",c', ['a,b', 'c']],
    ['"say ""no""",c', ['say "no"', 'c']],
    ['a 5" reel,c', ['a 5" reel', 'c']],
    ['"line\nend",c', ['line\nend', 'c']],
    ['"a"b,c', ['ab', 'c']],
  ])('%j', (row, cells) => expect(splitRow(row, ',')).toEqual(cells));

  test('a quoted cell that doesn’t end is no row yet', () => expect(splitRow('a,"b', ',')).toBe(undefined));

  test('a general CSV reader cuts quoted rows the same way', () => {
    fc.assert(
      fc.property(
        fc.array(cell, { minLength: 1, maxLength: 6 }),
        fc.constantFrom(',', ';', '\t'),
        (cells, delimiter) => {
          const row = cells.map(quoted).join(delimiter);
          const [theirs] = parse(row, { delimiter, relax_column_count: true });
          expect(splitRow(row, delimiter)).toEqual(theirs);
          expect(splitRow(row, delimiter)).toEqual(cells);
        },
      ),
      { numRuns: 500 },
    );
  });

  test('no unquoted cell loses a character', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        const cells = splitRow(text, ',');
        if (!text.includes('"')) expect(cells?.join(',')).toBe(text);
      }),
    );
  });
});
