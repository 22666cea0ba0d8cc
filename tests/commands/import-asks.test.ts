import { mkdir, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { csvOf, type ImportOptions, importedIn } from '../given/imported-sheet.ts';

let dir: string;
beforeEach(async () => {
  dir = await mkdtemp(join(tmpdir(), 'asked-'));
});
afterEach(() => rm(dir, { recursive: true, force: true }));

const imported = (rows: readonly (readonly string[])[], options: ImportOptions) =>
  importedIn(dir, csvOf(rows), options);
const kept = async () => JSON.parse(await readFile(join(dir, 'tapes.csv.columns.json'), 'utf8')).columns;

/** The number of a choice, as it stands in the question. */
const numberOf = (question: string, choice: string) =>
  new RegExp(`^ +(\\d+) +${choice.replaceAll('.', '\\.')}`, 'm').exec(question)?.[1] ?? 'no such choice';

const BLOB = [
  ['Title', 'Blob'],
  ['Low Water', 'blue, torn'],
  ['Marram', 'green'],
  ['Samphire', 'blue, torn'],
  ['Eelgrass', 'red'],
  ['Sea Kale', 'white'],
];

describe('a column that nobody can tell', () => {
  test('is asked about with its heading, three of its cells, numbered proposals, and leaving it in also:', async () => {
    const { asked } = await imported(BLOB, { typed: [''] });
    expect(asked).toHaveLength(1);
    expect(asked[0]).toContain('Column "Blob", 5 cells, such as: blue, torn | green | red\n');
    expect(asked[0]).not.toContain('white');
    expect(asked[0]).toMatch(/^ {2}1 {2}\S+ +\S/m);
    expect(asked[0]).toMatch(/^ {2}\d {2}leave in also:$/m);
  });

  test('is what the number says, and isn’t asked about again', async () => {
    const first = await imported(BLOB, { typed: [''] });
    const number = numberOf(first.asked[0] ?? '', 'numbers.other');
    const { entries, asked } = await imported(BLOB, { typed: [number] });
    expect(asked).toHaveLength(1);
    expect(entries[0]?.text).toContain('other: ["blue, torn"]');
    expect(await kept()).toEqual({ Title: { as: 'title' }, Blob: { as: 'numbers.other' } });
    const again = await imported(BLOB, { typed: [] });
    expect(again.asked).toEqual([]);
    expect(again.entries[0]?.text).toContain('other: ["blue, torn"]');
  });

  test('may be answered by a fact’s key, which may be none of the proposals', async () => {
    const { entries, asked } = await imported(BLOB, { typed: ['rights'] });
    expect(asked[0]).not.toContain('rights');
    expect(entries[1]?.text).toContain('rights: green');
  });

  test('left in also: stays decided; left undecided by Enter, it is asked again', async () => {
    const undecided = await imported(BLOB, { typed: [''] });
    expect(undecided.entries[0]?.text).toContain('also:\n  Blob: blue, torn');
    expect(await kept()).toMatchObject({ Blob: { as: '?' } });
    const { asked } = await imported(BLOB, { typed: [numberOf(undecided.asked[0] ?? '', 'leave in also:')] });
    expect(asked).toHaveLength(1);
    expect(await kept()).toMatchObject({ Blob: { as: 'also' } });
    expect((await imported(BLOB, { typed: [] })).asked).toEqual([]);
  });

  test('is asked again after an answer that is none, and left undecided after three', async () => {
    const { asked, entries } = await imported(BLOB, { typed: ['99', 'nonsense', '0'] });
    expect(asked[1]).toMatch(/^"99" is none of these/);
    expect(asked).toHaveLength(3);
    expect(entries[0]?.text).toContain('also:');
  });

  test('and all after it are left undecided by q', async () => {
    const rows = [
      ['Title', 'Blob', 'Glub', 'Date'],
      ...['a', 'b', 'c'].map((word) => [word, word, `${word} ${word}`, '3/4/74']),
    ];
    const { asked } = await imported(rows, { typed: ['q'] });
    expect(asked).toHaveLength(1);
    expect(await kept()).toMatchObject({ Blob: { as: '?' }, Glub: { as: '?' }, Date: { as: 'recorded.on' } });
  });

  test('is proposed for what its cells can be read as', async () => {
    const rows = [
      ['Title', 'Zeit', 'Wie'],
      ['Low Water', '19.44', 'tails out'],
      ['Marram', '4.10', 'tails out'],
      ['Samphire', '3.36', 'heads'],
    ];
    const { asked } = await imported(rows, { typed: ['', ''] });
    expect(asked[0]).toMatch(/^ {2}1 {2}length/m);
    expect(asked[1]).toMatch(/^ {2}1 {2}pack\.wind/m);
  });

  test('without a terminal it is kept under also: and nothing waits', async () => {
    const { entries, asked, err } = await imported(BLOB, {});
    expect(asked).toEqual([]);
    expect(entries[0]?.text).toContain('also:\n  Blob: blue, torn');
    expect(err).toContain('not known: kept under also:');
  });

  test('control characters of a heading or a cell don’t reach the terminal', async () => {
    const { asked } = await imported(
      [
        ['Title', 'B\u001b[31mlob'],
        ['Low Water', 'x\u001b[2J'],
      ],
      { typed: [''] },
    );
    expect(asked[0]).not.toContain('\u001b');
  });
});

describe('what can be taken two ways', () => {
  test('dates of which no cell shows the order', async () => {
    const rows = [
      ['Title', 'Date'],
      ['Low Water', '3/4/74'],
      ['Marram', '5/6/1975'],
    ];
    const { asked, entries } = await imported(rows, { typed: ['2'] });
    expect(asked[0]).toContain('has 3/4/74, which can be taken two ways');
    expect(entries[0]?.text).toContain('"on": "1974-03-04"');
    expect(await kept()).toMatchObject({ Date: { as: 'recorded.on', dates: 'month-day' } });
    expect((await imported(rows, { typed: [] })).asked).toEqual([]);
  });

  test.each([
    ['1', '"19:44"'],
    ['2', '19.44 min'],
  ])('a time with a point: answer %s gives %s', async (answer, length) => {
    const rows = [
      ['Title', 'Length'],
      ['Low Water', '19.44'],
      ['Marram', '4.10'],
    ];
    const { asked, entries } = await imported(rows, { typed: [answer] });
    expect(asked).toHaveLength(1);
    expect(entries[0]?.text).toContain(`length: ${length}`);
  });

  test.each([
    ['Speed', ['30', '38'], '2', 'speed: 30 cm/s'],
    ['Outside diameter', ['260', '250'], '1', 'outside-diameter: 260 mm'],
    ['Width', ['6.3', '6.3'], '2', 'width: 6.3 mm'],
    ['Value', ['450', '300'], '2', 'amount: 450 EUR'],
    ['Length', ['18', '20'], '1', 'length: 18 min'],
  ])('bare numbers of %s, such as %j', async (heading, cells, answer, expected) => {
    const rows = [['Title', heading], ...cells.map((cell, at) => [`Tape ${at}`, cell])];
    const { asked, entries } = await imported(rows, { typed: [answer] });
    expect(asked).toHaveLength(1);
    expect(entries[0]?.text).toContain(expected);
  });

  test('what the cells or the heading show isn’t asked', async () => {
    const rows = [
      ['Title', 'Date', 'Speed', 'Length', 'Hub (mm)', 'Width'],
      ['Low Water', '25/4/74', '30', '19:44', '100', '1/4 in'],
    ];
    const { asked, entries } = await imported(rows, { typed: [] });
    expect(asked).toEqual([]);
    expect(entries[0]?.text).toContain('hub-diameter: 100 mm');
  });

  test('a currency that the collection has isn’t asked for', async () => {
    await mkdir(join(dir, 'c'));
    await writeFile(join(dir, 'c/collection.md'), '---\ntitle: T\ncurrency: GBP\n---\n');
    const { asked, entries } = await imported(
      [
        ['Title', 'Value'],
        ['Low Water', '450'],
      ],
      { typed: [] },
    );
    expect(asked).toEqual([]);
    expect(entries[0]?.text).toContain('450 GBP');
  });
});

describe('what a row is', () => {
  const PRESSED = [
    ['Artist', 'Title', 'Label', 'Country', 'Released'],
    ['Ines Vorle', 'Marram', 'Hollin', 'overseas', '1978'],
  ];

  test('is asked where only the headings say it', async () => {
    const { asked, kind } = await importedIn(dir, csvOf(PRESSED), { typed: ['1'], name: 'list.csv' });
    expect(asked[0]).toContain('What is a row of this sheet?\n  1  one edition\n  2  one reel\n');
    expect(kind).toBe('editions');
    expect((await importedIn(dir, csvOf(PRESSED), { typed: [], name: 'list.csv' })).kind).toBe('editions');
  });

  test('isn’t asked where it was said, or where the sheet is of tapes', async () => {
    const said = await importedIn(dir, csvOf(PRESSED), { typed: [''], name: 'list.csv', more: ['--kind', 'reel'] });
    expect([said.kind, said.asked.length]).toEqual(['reels', 1]);
    expect(said.asked[0]).toContain('Column "Label"');
  });
});

test('after questions that were broken off nothing is written', async () => {
  await expect(imported(BLOB, { typed: [], more: ['--write'] })).rejects.toThrow('nobody answers');
  expect(await readdir(dir)).toEqual(['tapes.csv']);
});
