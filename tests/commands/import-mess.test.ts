import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import writeXlsx from 'write-excel-file/node';
import { csvOf, importedIn } from '../given/imported-sheet.ts';

/** The sheet's columns, by what stands in its two lines of headings. */
const UPPER =
  '  TITLE |Side|Numbers|||Duration|Speed|Recorded||Reel size|Hub (mm)|Wind|Tracks|EQ|Value|Shelf|Photo|Condition|Notes|Notes|Blob||Set'.split(
    '|',
  );
const LOWER = '||Matrix|Job|Box no|||Date|Engineer||||||||||||||'.split('|');
const COLUMN = {
  title: 0,
  side: 1,
  matrix: 2,
  job: 3,
  other: 4,
  length: 5,
  speed: 6,
  date: 7,
  by: 8,
  size: 9,
  hub: 10,
  wind: 11,
  tracks: 12,
  eq: 13,
  value: 14,
  shelf: 15,
  photo: 16,
  condition: 17,
  notes: 18,
  more: 19,
  blob: 20,
  nameless: 21,
  set: 22,
} as const;

/** One kind of mess each: where it stands, what is written, and what the entry of its row then says. */
const CELLS: readonly (readonly [mess: string, column: keyof typeof COLUMN, written: string, entry: string])[] = [
  ['blanks round a text', 'by', '   Tam Kessel  ', '  by: Tam Kessel\n'],
  ['no-break blanks', 'speed', '15\u00a0in/s', '  speed: 15 in/s\n'],
  ['a line break in a cell', 'notes', 'first\nsecond', '---\nfirst\nsecond\n'],
  ['quotes in a cell', 'notes', 'called "the blue one"', '---\ncalled "the blue one"\n'],
  ['delimiters in a cell', 'notes', 'a, b; c\td', '---\na, b; c\td\n'],
  ['a dash for nobody knows', 'matrix', '-', 'format:'],
  ['a long dash for nobody knows', 'matrix', '—', 'format:'],
  ['a question mark for nobody knows', 'matrix', '??', 'format:'],
  ['n/a for nobody knows', 'matrix', 'N/A', 'format:'],
  ['a date with the day first', 'date', '25/4/1974', '  "on": "1974-04-25"\n'],
  ['a date with the month first, in the same column', 'date', '4/25/1974', '  "on": "1974-04-25"\n'],
  ['a date that may be either', 'date', '3/4/1974', '  Recorded Date: "3/4/1974"\n'],
  ['a date with points and two figures of a year', 'date', '25.4.74', '  "on": "1974-04-25"\n'],
  ['a date in words', 'date', '25th April 1974', '  "on": "1974-04-25"\n'],
  ['a month and a year', 'date', 'Apr 74', '  "on": "1974-04"\n'],
  ['a date that is about right', 'date', 'ca. 1974', '  "on": 1974~\n'],
  ['a decade', 'date', "1970's", '  "on": "197X"\n'],
  ['a range of years', 'date', '1974-1976', '  "on": "1974/1976"\n'],
  ['a date that isn’t one', 'date', '31/2/1974', '  Recorded Date: "31/2/1974"\n'],
  ['minutes that the spreadsheet took for hours', 'length', '18:52:00', 'length: "18:52"\n'],
  ['minutes and seconds with their marks', 'length', '19′44″', 'length: "19:44"\n'],
  ['minutes and seconds in words', 'length', '19 mins 44 secs', 'length: "19:44"\n'],
  ['a time with a point', 'length', '19.44', '  Duration: "19.44"\n'],
  ['a time in whole minutes', 'length', '19 minutes', 'length: 19 min\n'],
  ['a decimal comma', 'speed', '7,5 ips', '  speed: 7.5 ips\n'],
  ['a unit in another spelling', 'speed', '15 inches per second', '  speed: 15 in/s\n'],
  ['a number without its unit, in a column of such', 'speed', '30', '  speed: 30 in/s\n'],
  ['a unit that stands in the heading', 'hub', '100', '  hub-diameter: 100 mm\n'],
  ['a fraction, and a mark for inches', 'size', '10½"', '  reel-size: 10½"\n'],
  ['other words than ours', 'wind', 'Tails Out', '  wind: tail out\n'],
  ['figures where a word is meant', 'tracks', '2-track', '  tracks: two-track stereo\n'],
  ['a word in capitals', 'eq', 'NAB', '  equalisation: NAB\n'],
  ['a word that is no fact', 'eq', 'flat, I think', '  EQ: flat, I think\n'],
  ['a sign for a currency', 'value', '€1,200', '  - { amount: 1200 EUR }\n'],
  ['a sign that several currencies have', 'value', '£450', '  Value: £450\n'],
  ['several numbers in a cell', 'matrix', 'HLX 1-A; HLX 1-B', '  matrix: [HLX 1-A, HLX 1-B]\n'],
  ['zeros in front', 'job', '0012', '  job: ["0012"]\n'],
  ['a number with a grouping comma', 'job', '1,204', '  job: ["1,204"]\n'],
  ['several signs in one cell', 'condition', 'Mould / shedding', '  - { found: [mould, shedding] }\n'],
  ['a formula that was exported as text', 'notes', "'=SUM(A1:A9)", '---\n=SUM(A1:A9)\n'],
  ['a text that YAML would take for something else', 'other', '*x: &y', '  other: ["*x: &y"]\n'],
  ['letters of other scripts, and directions', 'by', 'Ødegård \u202bטייפ', 'by:'],
  ['a path in front of a photograph’s name', 'photo', 'C:\\shots\\IMG_1.JPG', 'photos not found: C:\\shots\\IMG_1.JPG'],
  ['the word Side in front of the side', 'side', 'Side A', 'side: [A]\n'],
  ['a second column of the same heading', 'more', 'and more', '---\nand more\n'],
  ['a column that nobody can tell', 'blob', 'blue', '  Blob: blue\n'],
  ['a column without a heading', 'nameless', 'stray', '  column V: stray\n'],
];

const ROWS = 5000;
const row = (cells: Partial<Record<keyof typeof COLUMN, string>>) =>
  Object.keys(COLUMN).map((column) => cells[column as keyof typeof COLUMN] ?? '');

/** Rows of the body: each kind of mess in a row of its own, and plain rows up to 5,000. */
const MESSY = CELLS.map(([, column, written], at) =>
  row({ title: `Messy ${at}`, speed: '15 in/s', [column]: written }),
);
const FILLER = Array.from({ length: ROWS - CELLS.length }, (_, at) =>
  row({
    title: `Plain ${at % 1500}`,
    side: String((at % 2) + 1),
    length: `${(at % 59) + 4}:${String(at % 60).padStart(2, '0')}`,
  }),
);
const BLANK = row({});
const SHEET = [
  ['My studio tapes, and some of Ingrid’s', ...BLANK.slice(1)],
  ['as of spring', ...BLANK.slice(1)],
  BLANK,
  UPPER,
  LOWER,
  ...MESSY,
  BLANK,
  BLANK,
  row({ shelf: 'UPSTAIRS' }),
  UPPER.map((name, at) => [name.trim(), LOWER[at]].filter((part) => part !== '').join(' ')).map((name, at) =>
    ['Numbers Matrix', 'Job', 'Box no', 'Recorded Date', 'Engineer'].includes(name)
      ? ''
      : at === 19 || at === 21
        ? ''
        : name,
  ),
  ...FILLER,
];
const filledCells = (rows: readonly (readonly string[])[]) => rows.flat().filter((cell) => cell.trim() !== '').length;

let dir: string;
beforeAll(async () => {
  dir = await mkdtemp(join(tmpdir(), 'messy-'));
});
afterAll(() => rm(dir, { recursive: true, force: true }));

/** The same sheet as a workbook, with the cells merged that span others. */
async function workbook(): Promise<Uint8Array> {
  const set = { value: 'overseas', rowSpan: 3 };
  const rows = SHEET.map((cells, at) =>
    cells.map((value, column) => {
      if (at === 5 && column === COLUMN.set) return set;
      if ((at === 6 || at === 7) && column === COLUMN.set) return null;
      if (at === 3 && column === COLUMN.matrix) return { value, columnSpan: 3 };
      if (at === 3 && (column === COLUMN.job || column === COLUMN.other)) return null;
      return value === '' ? null : { value, type: String };
    }),
  );
  const write = writeXlsx as unknown as (data: unknown) => { toBuffer: () => Promise<Buffer> };
  return await write(rows).toBuffer();
}

describe.each(['messy.csv', 'messy.xlsx'])('%s: forty-seven kinds of mess in five thousand rows', (name) => {
  let answer: Awaited<ReturnType<typeof importedIn>>;
  beforeAll(async () => {
    const sheet = name.endsWith('.csv') ? csvOf(SHEET) : await workbook();
    answer = await importedIn(dir, sheet, { name, more: ['--photographs', '.'] });
  }, 60_000);

  test.each(CELLS.map((cell, at) => [cell[0], at] as const))('%s', (_, at) => {
    const [, , written, expected] = CELLS[at] ?? ['', '', '', ''];
    const text = answer.entries.find(({ id }) => id.startsWith(`messy-${at}-`) || id === `messy-${at}`)?.text ?? '';
    expect(text).toContain(expected);
    expect(text).toContain(`title: Messy ${at}\n`);
    if (/^(?:[-—?]+|N\/A)$/.test(written)) expect(text).not.toContain('also:');
  });

  test('every filled cell is a fact, under also:, says nothing, is a heading, or stands alone in its row', () => {
    const { cells, ...parts } = answer.accounted;
    const merged = name.endsWith('.csv') ? 0 : 5;
    expect(cells).toBe(filledCells(SHEET) + merged);
    expect(Object.values(parts).reduce((sum, count) => sum + count, 0)).toBe(cells);
    expect(parts.loose).toBe(1);
    expect(parts.sayNothing).toBe(4);
  });

  test('titles above, two lines of headings, and headings that come again are no reels', () => {
    expect(answer.columns.map(({ header }) => header).slice(0, 9)).toEqual([
      'TITLE',
      'Side',
      'Numbers Matrix',
      'Numbers Job',
      'Numbers Box no',
      'Duration',
      'Speed',
      'Recorded Date',
      'Recorded Engineer',
    ]);
    expect(answer.entries).toHaveLength(ROWS);
    expect(answer.err).toContain("isn't in an entry: UPSTAIRS");
  });

  test('reels of one title and side keep apart, each with an id of its own', () => {
    expect(new Set(answer.entries.map(({ id }) => id)).size).toBe(ROWS);
  });

  test('a cell that is merged over others stands in each of them', () => {
    const sets = answer.entries.slice(0, 4).map(({ text }) => /^set: (.*)$/m.exec(text)?.[1]);
    expect(sets).toEqual(
      name.endsWith('.csv')
        ? [undefined, undefined, undefined, undefined]
        : ['overseas', 'overseas', 'overseas', undefined],
    );
  });
});

test('each kind of mess is told once', () => {
  expect(new Set(CELLS.map(([mess]) => mess)).size).toBe(CELLS.length);
  expect(CELLS.length).toBeGreaterThanOrEqual(40);
});
