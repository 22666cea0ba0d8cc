import { mkdir, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { strToU8, zipSync } from 'fflate';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import writeXlsx from 'write-excel-file/node';
import { UsageError } from '../../src/commands/io.ts';
import { importedIn } from '../given/imported-sheet.ts';

let dir: string;
beforeEach(async () => {
  dir = await mkdtemp(join(tmpdir(), 'sheet-'));
});
afterEach(() => rm(dir, { recursive: true, force: true }));

const imported = (sheet: string | Uint8Array, more: readonly string[] = [], name = 'tapes.csv') =>
  importedIn(dir, sheet, { more, name });

/** What can be told of the cells of one row, by heading. */
async function rowOf(heads: readonly string[], cells: readonly string[], others: readonly (readonly string[])[] = []) {
  const csv = [heads, cells, ...others]
    .map((row) => row.map((cell) => `"${cell.replaceAll('"', '""')}"`).join(','))
    .join('\r\n');
  return (await imported(csv)).entries[0]?.text ?? '';
}

const filledCells = (rows: readonly (readonly string[])[]) => rows.flat().filter((cell) => cell.trim() !== '').length;

describe('a cell, as people write it', () => {
  test.each([
    ['Length', '19\'44"', 'length: "19:44"'],
    ['Length', '19 min 44 sec', 'length: "19:44"'],
    ['Running time', '1:06:40', 'length: "1:06:40"'],
    ['Length', '19.44', 'Length: "19.44"'],
    ['Speed', '15ips', 'speed: 15ips'],
    ['Speed', '7,5 ips', 'speed: 7.5 ips'],
    ['Speed', '15 IPS', 'speed: 15 IPS'],
    ['Speed', '15 i.p.s.', 'speed: 15 in/s'],
    ['Speed (cm/s)', '38', 'speed: 38 cm/s'],
    ['Speed', '30', 'speed: 30 in/s'],
    ['Speed', 'fast', 'Speed: fast'],
    ['Reel size', '10,5"', 'reel-size: 10.5'],
    ['Date', 'c. 1974', '"on": 1974~'],
    ['Date', '1974-04-12', '"on": "1974-04-12"'],
    ['Date', '25.4.74', '"on": "1974-04-25"'],
    ['Date', '3/4/74', 'Date: '],
    ['Date', 'spring?', 'Date: spring?'],
    ['EQ', 'nab', 'equalisation: nab'],
    ['EQ', 'flat', 'EQ: flat'],
    ['Tracks', '2 track', 'tracks: two-track stereo'],
    ['Wind', 'Tails out', 'wind: tail out'],
    ['Carrier', 'pancake', 'wound-on: bare hub'],
    ['Side', 'Side A', 'side: [A]'],
    ['Kind', 'Copy master', 'kind: Copy master'],
    ['Kind', 'tape', 'Kind: tape'],
    ['Cat. No.', 'HLX 2207; HLX 2208', 'catalogue: [HLX 2207, HLX 2208]'],
    ['Box', '0012', 'other: ["0012"]'],
    ['Value', '€450', '- { amount: 450 EUR }'],
    ['Value (GBP)', '1,200', '- { amount: 1200 GBP }'],
    ['Value', '450', 'Value: "450"'],
    ['Condition', 'mould, shedding', '- { found: [mould, shedding] }'],
    ['Condition', 'rough', 'Condition: rough'],
    ['Notes', "'=HYPERLINK(1)", '=HYPERLINK(1)'],
    ['Noise reduction', 'none', 'noise-reduction: none'],
    ['My own', 'x: y # z', 'My own: "x: y # z"'],
    ['Shelf', 'C2', 'shelf: C2'],
  ])('%s: %s gives %s', async (header, cell, expected) => {
    expect(await rowOf(['Title', header], ['Low Water', cell])).toContain(expected);
  });

  test('a spreadsheet’s hours for minutes are seen where a column shows it', async () => {
    const rows = [['Marram', '3:36:00']];
    expect(await rowOf(['Title', 'Length'], ['Low Water', '18:52:00'], rows)).toContain('length: "18:52"');
    await rm(join(dir, 'tapes.csv.columns.json'));
    expect(await rowOf(['Title', 'Length'], ['Low Water', '0:18:52'])).toContain('length: "0:18:52"');
  });
});

describe('a sheet of any shape', () => {
  test('titles above, two lines of headings, blank rows, sections and repeated headings: every cell is accounted for', async () => {
    const rows = [
      ['My studio tapes', '', '', '', '', ''],
      ['as of 2026', '', '', '', '', ''],
      ['', '', '', '', '', ''],
      ['Title', 'Numbers', '', 'Recorded', '', 'Blob'],
      ['', 'Matrix', 'Job', 'Date', 'Engineer', ''],
      ['Low Water', 'HLX 1-A', '4471', '25/4/1974', 'T.K.', 'blue'],
      ['', '', '', '', '', ''],
      ['Overseas', '', '', '', '', ''],
      ['Marram', 'HLX 2-A', '-', '3/5/1974', '?', ''],
      ['', '', '', '', '', 'left over'],
    ];
    const csv = rows.map((row) => row.join(';')).join('\n');
    const { accounted, columns, entries } = await imported(csv);
    expect(columns.map(({ header }) => header)).toEqual([
      'Title',
      'Numbers Matrix',
      'Numbers Job',
      'Recorded Date',
      'Recorded Engineer',
      'Blob',
    ]);
    expect(accounted.cells).toBe(filledCells(rows));
    expect(accounted).toMatchObject({ sayNothing: 2, headings: 2 + 4 + 4, loose: 1 });
    expect(entries.map(({ id }) => id)).toEqual(['low-water', 'overseas', 'marram']);
  });

  test.each([
    ['Windows-1252', Buffer.from('Title,Side\nCaf\xe9,1\n', 'latin1'), 'Café'],
    ['UTF-16 with its mark', Buffer.from('\ufeffTitle,Side\nCafé,1\n', 'utf16le'), 'Café'],
    ['a byte order mark', Buffer.from('\ufeffTitle,Side\nCafé,1\n'), 'Café'],
    ['carriage returns alone', Buffer.from('Title,Side\rCafé,1\rB,2\r'), 'Café'],
  ])('%s is read', async (_, bytes, title) => {
    expect((await imported(bytes)).entries[0]?.text).toContain(`title: ${title}`);
  });
});

describe('writing', () => {
  const SHEET = 'Title,Side,Length,Stock\nLow Water,1,18:52,blue box\n';

  test('nothing is written until asked, but what the columns are', async () => {
    await imported(SHEET);
    expect((await readdir(dir)).sort()).toEqual(['tapes.csv', 'tapes.csv.columns.json']);
  });

  test('what the owner says of a column holds the next time', async () => {
    await imported('Title,Zeit\nLow Water,19.44\n');
    const file = join(dir, 'tapes.csv.columns.json');
    const told = JSON.parse(await readFile(file, 'utf8'));
    expect(told.columns.Zeit).toEqual({ as: '?' });
    told.columns.Zeit = { as: 'length', pointIsColon: true };
    await writeFile(file, JSON.stringify(told));
    expect((await imported('Title,Zeit\nLow Water,19.44\n')).entries[0]?.text).toContain('length: "19:44"');
  });

  test('an entry that is there stays as it is; told to, what it lacks is added and nothing else changes', async () => {
    const before = '---\r\n# mine\r\ntitle: "Low   Water"   # odd\r\nstatus: lent\r\n---\r\nBody\r\n';
    await mkdir(join(dir, 'c/reels'), { recursive: true });
    await writeFile(join(dir, 'c/reels/low-water-side-1.md'), before);
    const first = await imported(SHEET, ['--write']);
    expect(first.entries[0]).toMatchObject({ state: 'there', lacks: ['side', 'length', 'also'] });
    expect(await readFile(join(dir, 'c/reels/low-water-side-1.md'), 'utf8')).toBe(before);
    await imported(SHEET, ['--write', '--fill']);
    expect(await readFile(join(dir, 'c/reels/low-water-side-1.md'), 'utf8')).toBe(
      before.replace('---\r\nBody', 'side: ["1"]\r\nlength: "18:52"\r\nalso:\r\n  Stock: blue box\r\n---\r\nBody'),
    );
  });
});

describe('a workbook', () => {
  test('its days, times, numbers and merged cells come in as a person sees them', async () => {
    const rows = [
      [{ value: 'Title' }, { value: 'Date' }, { value: 'Box' }, { value: 'Set' }],
      [
        { value: 'Low Water' },
        { value: new Date('1974-04-12T00:00:00Z'), type: Date, format: 'dd/mm/yyyy' },
        { value: 12, type: Number },
        { value: 'overseas', rowSpan: 2 },
      ],
      [{ value: 'Marram' }, { value: '1975' }, { value: 0.1, type: Number }, null],
    ];
    const made = await (writeXlsx as unknown as (data: unknown) => { toBuffer: () => Promise<Buffer> })(
      rows,
    ).toBuffer();
    const { entries, accounted } = await imported(made, [], 'tapes.xlsx');
    expect(entries[0]?.text).toContain('"on": "1974-04-12"');
    expect(entries[0]?.text).toContain('other: ["12"]');
    expect(entries.map(({ text }) => /set: (.*)/.exec(text)?.[1])).toEqual(['overseas', 'overseas']);
    expect(accounted.cells).toBe(12);
  });

  const package_ = (sheet: string) => zipSync({ 'xl/worksheets/sheet1.xml': strToU8(sheet) });
  test.each([
    ['nothing of the kind', strToU8('Title,Side\n'), "isn’t an .xlsx|isn't an .xlsx"],
    [
      'an external entity',
      package_('<!DOCTYPE x [<!ENTITY a SYSTEM "file:///etc/passwd">]><x>&a;</x>'),
      'declares entities',
    ],
    ['a bomb', zipSync({ 'xl/worksheets/sheet1.xml': new Uint8Array(60 * 1024 * 1024) }), 'unpacks to far more'],
    ['cut off', package_('<x/>').slice(0, 60), 'xlsx'],
  ])('that is %s is refused in a sentence', async (_, bytes, said) => {
    const refused = imported(bytes, [], 'tapes.xlsx');
    await expect(refused).rejects.toBeInstanceOf(UsageError);
    await expect(refused).rejects.toThrow(new RegExp(said));
  });
});

describe('a hostile CSV', () => {
  test.each([
    ['binary', Buffer.from([0, 1, 2, 0, 255])],
    ['a million columns', Buffer.from(`Title${',x'.repeat(5000)}\n`)],
  ])('%s is refused in a sentence', async (_, bytes) => {
    await expect(imported(bytes)).rejects.toBeInstanceOf(UsageError);
  });

  test('keys and values that would be YAML or code come in as texts', async () => {
    const { entries } = await imported('Title,"__proto__","a: &x"\n"!!js/function x","*a","---"\n');
    expect(entries[0]?.text).toContain('title: "!!js/function x"');
    expect(entries[0]?.text).toContain('"*a"');
  });

  test('an id can’t lead out of the collection', async () => {
    const { entries } = await imported('id,Title\n../../etc/x,Low Water\n');
    expect(entries[0]?.file).toBe('reels/low-water.md');
  });
});
