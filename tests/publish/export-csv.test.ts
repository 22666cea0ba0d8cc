import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import { headed } from '#compute/import/header.ts';
import { proposeColumns } from '#compute/import/propose-columns.ts';
import { readRows } from '#compute/import/read-rows.ts';
import { cellOf, valueOfCell } from '#compute/interchange/cell-text.ts';
import { csvText, guarded, unguarded } from '#compute/interchange/spreadsheet-text.ts';
import type { Catalogue } from '#model/catalogue.ts';
import { csvExport } from '#publish/export/csv.ts';
import { splitFiles } from '#read/collection.ts';
import { readCsv } from '#read/spreadsheet.ts';
import { cellReader } from '#validate/cell-reader.ts';
import { validateAll } from '#validate/entries.ts';
import { entryText } from '../../src/commands/import/entry-text.ts';
import { keysOf } from '../../src/desk/fields/field.ts';
import { FIELDS } from '../../src/desk/fields/kinds.ts';
import { anyReel, UNREAD } from '../given/any-reel.ts';
import { saidOf } from '../given/said-of.ts';
import { dossierOf } from '../given/share-of.ts';
import { catalogueOf } from '../given/small-collection.ts';
import { MAY_BE_TOLD, TOLD_EVERYTHING, wordsToldIn } from '../given/told-everything.ts';

const exported = (catalogue: Catalogue) => String(csvExport(catalogue).files.get(''));

/** Out as CSV, in again, written as entries, and read as a collection. */
function through(csv: string) {
  const table = headed(readCsv(new TextEncoder().encode(csv)).rows);
  const { entries } = readRows(table, proposeColumns(table, 'reels'), 'reels', cellReader('reels'));
  const files = entries.map((entry) => ({ path: `reels/${entry.id}.md`, text: entryText(entry) }));
  return validateAll(splitFiles(files)).entries.reels;
}

describe('reels as CSV', () => {
  test('a collection that uses every key comes back the same', async () => {
    const { entries } = await catalogueOf(TOLD_EVERYTHING);
    expect(saidOf(through(exported(await catalogueOf(TOLD_EVERYTHING))))).toEqual(saidOf(entries.reels));
  });

  test('known to be none stays apart from not recorded, in every kind of fact', async () => {
    const given = {
      'reels/a':
        'gaps: none\ncopied-from: none\ncuts: none\nformat: { noise-reduction: none, tones: none }\nrecorded: none\nplace: none\nstock: none',
      'reels/b': 'title: none of these',
    };
    const { entries } = await catalogueOf(given);
    expect(saidOf(through(exported(await catalogueOf(given))))).toEqual(saidOf(entries.reels));
  });

  test('texts that would break a cell come back as they were', async () => {
    const odd = [
      '=1+1',
      '-5',
      "'quoted'",
      '@x',
      '+44',
      ' led by a space',
      'a; b',
      'a: b',
      '"already"',
      '[x]',
      '{y}',
      'two\nlines',
      '',
      "'=x",
      '-',
      '?',
      'unknown',
    ];
    const given = Object.fromEntries(
      odd.map((text, at) => [
        `reels/r${String(at).padStart(2, '0')}`,
        `title: ${JSON.stringify(text)}\nnumbers: { other: [${JSON.stringify(text)}, x] }\ncontents: [{ title: ${JSON.stringify(text)}, note: ${JSON.stringify(text)} }]\nalso: { k: [${JSON.stringify(text)}] }`,
      ]),
    );
    const { entries } = await catalogueOf(given);
    expect(saidOf(through(exported(await catalogueOf(given))))).toEqual(saidOf(entries.reels));
  });

  test('any collection comes back the same, with every fact that an entry can have', () => {
    const seen = new Set<string>();
    const see = (value: unknown, at: string) => {
      if (Array.isArray(value)) for (const item of value) see(item, at);
      else if (typeof value === 'object' && value !== null && 'fields' in value)
        for (const [key, inner] of Object.entries(value.fields as object)) {
          seen.add(`${at}${key}`);
          see(inner, `${at}${key}.`);
        }
      else if (typeof value === 'object' && value !== null && 'items' in value) see(value.items, at);
    };
    fc.assert(
      fc.property(fc.array(anyReel(), { minLength: 1, maxLength: 3 }), (texts) => {
        const files = splitFiles(texts.map((text, at) => ({ path: `reels/r${at}.md`, text })));
        for (const { entry } of files.entries) see(entry?.root, '');
        const { entries, problems } = validateAll(files);
        expect(problems.filter(({ code }) => UNREAD.includes(code))).toEqual([]);
        const csv = String(csvExport({ reels: entries.reels.map((reel) => ({ reel })) }).files.get(''));
        expect(saidOf(through(csv))).toEqual(saidOf(entries.reels));
      }),
      { numRuns: Math.max(30, fc.readConfigureGlobal()?.numRuns ?? 0) },
    );
    expect(keysOf(FIELDS.reels).filter((key) => !seen.has(key))).toEqual([]);
  });

  test('a share’s CSV holds what the share allows and nothing else', async () => {
    const whole = await catalogueOf(TOLD_EVERYTHING);
    for (const audience of ['valuer', 'insurer', 'engineer', 'researcher', 'friend']) {
      const csv = exported(dossierOf(whole, `qr13-${audience}`).dossier.reduced);
      expect(wordsToldIn(csv).filter((word) => !(MAY_BE_TOLD[audience] ?? []).includes(word))).toEqual([]);
    }
  });
});

describe('the file', () => {
  test('C-549: a cell with quotes and a comma is quoted, quotes doubled, lines end CR LF (RFC 4180, section 2)', () => {
    expect(csvText([['a "b", c', 'd']])).toBe('\ufeff"a ""b"", c",d\r\n');
  });

  test.each(['=1+1', '+1', '-1', '@sum', '\ttab', '\rreturn', '＝1'])(
    'C-550: %j is never a formula (OWASP, CSV Injection)',
    (text) => {
      expect(guarded(text)).toBe(`'${text}`);
      expect(unguarded(guarded(text))).toBe(text);
    },
  );

  test('two other readers see the same cells', () => {
    const cell = fc.string({ unit: 'grapheme', maxLength: 12 });
    const text = fc.oneof(cell, fc.constantFrom('=1', 'a"b', 'a,b', 'a\r\nb', "'", "'=", ';'));
    fc.assert(
      fc.property(fc.array(fc.tuple(text, text, fc.constant('end')), { minLength: 1, maxLength: 5 }), (rows) => {
        const csv = csvText(rows);
        const [ours, theirs] = [
          parse(csv, { bom: true, record_delimiter: '\r\n' }),
          Papa.parse<string[]>(csv.slice(1).replace(/\r\n$/, ''), { newline: '\r\n', delimiter: ',' }).data,
        ];
        expect(ours).toEqual(rows.map((row) => row.map(guarded)));
        expect(theirs).toEqual(rows.map((row) => row.map(guarded)));
      }),
    );
  });

  test('every text and list comes back from its cell', () => {
    const text = fc.string({ unit: 'grapheme', maxLength: 15 }).map((one) => one.replaceAll('\u0000', ''));
    fc.assert(
      fc.property(text, (one) => {
        expect(valueOfCell(unguarded(guarded(cellOf(one, 'text'))), 'text')).toBe(one);
      }),
    );
    fc.assert(
      fc.property(fc.array(text, { minLength: 1, maxLength: 4 }), (list) => {
        fc.pre(list.length > 1 || list[0] !== 'none');
        expect(valueOfCell(cellOf(list, 'list'), 'list')).toEqual(list);
      }),
    );
    const line = fc.dictionary(fc.constantFrom('on', 'by', 'note', 'half-speed'), text, {
      minKeys: 1,
      noNullPrototype: true,
    });
    fc.assert(
      fc.property(fc.array(line, { minLength: 1, maxLength: 3 }), (lines) => {
        expect(JSON.parse(JSON.stringify(valueOfCell(cellOf(lines, 'lines'), 'lines')))).toEqual(lines);
      }),
    );
  });
});
