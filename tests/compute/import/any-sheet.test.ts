import fc from 'fast-check';
import { expect, test } from 'vitest';
import { headed } from '#compute/import/header.ts';
import { NAMED_KINDS, withNamedEntries } from '#compute/import/named-entries.ts';
import { proposals } from '#compute/import/proposals.ts';
import { proposeColumns } from '#compute/import/propose-columns.ts';
import { readRows } from '#compute/import/read-rows.ts';
import { keysOfSheet, SHEET_KINDS, type SheetKind } from '#model/entry-column.ts';
import { splitFiles } from '#read/collection.ts';
import { cellReader } from '#validate/cell-reader.ts';
import { validateAll } from '#validate/entries.ts';
import { entryText } from '../../../src/commands/import/entry-text.ts';
import { UNREAD } from '../../given/any-reel.ts';

const HEADINGS = [
  'Title',
  'Side',
  'Artist',
  'Cat no',
  'Length',
  'Speed',
  'Date',
  'Engineer',
  'Value',
  'Photo',
  'Stock',
  'Room',
  'Edition',
  'Notes',
  'Base',
  'EQ',
  'Initials',
  'Tracks',
  '__proto__',
  'constructor',
  'also',
  'id',
  '',
  '=1',
];
const CELLS = [
  '',
  '',
  '-',
  'none',
  'None',
  'a',
  'Low Water',
  'low-water',
  '12',
  '19.44',
  '19:44',
  '18:52:00',
  '3/4/74',
  '25/4/74',
  '1974?',
  '15 ips',
  '7,5',
  '10½"',
  '€1,200',
  'two track',
  'NAB',
  'T.K.',
  'owner',
  'a; b',
  'title: x; length: 4:10',
  '{}',
  '[]',
  '"q"',
  "'=1",
  '=1',
  'x\ny',
  'a: b # c',
  '*a',
  '../../x',
  'C:\\a\\b.jpg',
  'Ø\u202e',
  '\u00a0',
  '__proto__',
  '{"__proto__": {"a": "b"}}',
  'yes',
  '52 µm',
  'polyester',
];

const sheets = fc.record({
  kind: fc.constantFrom(...SHEET_KINDS),
  headings: fc.array(
    fc.oneof(
      fc.constantFrom(...HEADINGS),
      fc.constantFrom(...SHEET_KINDS.flatMap(keysOfSheet)),
      fc.string({ maxLength: 8 }),
    ),
    { minLength: 1, maxLength: 9 },
  ),
  body: fc.array(
    fc.array(
      fc.oneof({ weight: 4, arbitrary: fc.constantFrom(...CELLS) }, fc.string({ unit: 'grapheme', maxLength: 12 })),
      { maxLength: 10 },
    ),
    { maxLength: 8 },
  ),
});

/** What was asked of one sheet is remembered for the others. */
const READERS = new Map(SHEET_KINDS.map((kind) => [kind, cellReader(kind)] as const));
const readerOf = (kind: SheetKind) => READERS.get(kind) ?? cellReader(kind);

test('a sheet of whatever kind comes in: every cell is accounted for, and every entry can be read again', () => {
  fc.assert(
    fc.property(sheets, ({ kind, headings, body }) => {
      const rows = [headings, ...body].map((cells, at) => ({ line: at + 1, cells }));
      const table = headed(rows);
      const plans = proposeColumns(table, kind);
      const read = readRows(table, plans, kind, readerOf(kind));
      const filled = rows.flatMap(({ cells }) => cells).filter((cell) => cell.trim() !== '').length;
      const { cells, ...parts } = read.accounted;
      expect(cells).toBe(filled);
      expect(Object.values(parts).reduce((sum, count) => sum + count, 0)).toBe(cells);
      for (const [at, header] of table.headers.slice(0, 1).entries()) {
        const of = table.rows.map((row) => row.cells[at] ?? '').filter((cell) => cell !== '');
        expect(
          proposals(header, of, kind, new Set(), readerOf(kind)).every((key) => keysOfSheet(kind).includes(key)),
        ).toBe(true);
      }
      const known = { editions: [], people: [], stocks: [], places: [] };
      const named = withNamedEntries(read.entries, new Set(NAMED_KINDS), known, readerOf);
      expect(named.moved).toBeLessThanOrEqual(parts.inAlso);
      const files = [...named.entries, ...named.made].map((entry) => ({
        path: `${entry.kind}/${entry.id}.md`,
        text: entryText(entry),
      }));
      expect(new Set(files.map(({ path }) => path)).size).toBeLessThanOrEqual(files.length);
      const { entries, problems } = validateAll(splitFiles(files));
      expect([...entries.unusable]).toEqual([]);
      expect(problems.filter(({ code, place }) => UNREAD.includes(code) && !place.field.startsWith('photos'))).toEqual(
        [],
      );
    }),
    { numRuns: Math.max(100, fc.readConfigureGlobal()?.numRuns ?? 0) },
  );
});
