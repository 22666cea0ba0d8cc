import { type UnzipFileInfo, unzipSync } from 'fflate';
import readXlsx from 'read-excel-file/node';
import { checkedRows, type Sheet, SheetRefused, type SheetRow } from './spreadsheet.ts';

/** Unpacked, no list of tapes is larger; a packed one that claims to be is a trap. */
const MOST_UNPACKED = 100 * 1024 * 1024;
const MOST_PACKED = 50 * 1024 * 1024;
const MOST_PARTS = 2_000;
const MOST_TIMES = 200;

/** The first sheet of an .xlsx workbook with a row in it. A merged cell's text stands in each of the cells that it covers.
 * @throws {SheetRefused} for anything that isn't a plain workbook, or unpacks to far more than it is. */
export async function readWorkbook(bytes: Uint8Array): Promise<Sheet> {
  const parts = refuseHostile(bytes);
  const sheets = await readXlsx(Buffer.from(bytes)).catch((error: unknown) => {
    const why = error instanceof Error ? error.message : String(error);
    throw new SheetRefused(`The workbook can't be read (${why}). Save it from the spreadsheet once more, or as CSV.`);
  });
  const filled = sheets.filter(({ data }) => data.some((row) => row.some((cell) => cell !== null)));
  const [first, ...others] = filled;
  if (first === undefined) throw new SheetRefused('The workbook has no sheet with anything in it.');
  const at = sheets.indexOf(first);
  const rows = first.data.map((row, index) => ({ line: index + 1, cells: row.map(textOf) }));
  return {
    rows: checkedRows(unmerged(rows, mergesOf(parts, at))),
    notes: others.map(
      ({ sheet }) => `The sheet "${sheet}" isn’t read: only the first one with rows is. Save it by itself.`,
    ),
  };
}

/** Looks at the package before anything is unpacked: its claims, then that nothing in it asks for something outside. */
function refuseHostile(bytes: Uint8Array): Readonly<Record<string, Uint8Array>> {
  if (bytes.length > MOST_PACKED)
    throw new SheetRefused('The workbook is larger than 50 MB. Save the list of tapes by itself.');
  let total = 0;
  let count = 0;
  const filter = (file: UnzipFileInfo) => {
    total += file.originalSize;
    count += 1;
    if (total > MOST_UNPACKED || count > MOST_PARTS || file.originalSize > 1_000_000 + file.size * MOST_TIMES)
      throw new SheetRefused('The workbook unpacks to far more than a list of tapes. It isn’t opened.');
    return /\.(?:xml|rels)$/iu.test(file.name);
  };
  let parts: Record<string, Uint8Array>;
  try {
    parts = unzipSync(bytes, { filter });
  } catch (error) {
    if (error instanceof SheetRefused) throw error;
    throw new SheetRefused('The file isn’t an .xlsx workbook. Save it from the spreadsheet once more, or as CSV.');
  }
  for (const [name, part] of Object.entries(parts)) {
    // Latin-1 keeps every byte, so a declaration shows in any encoding that a spreadsheet writes; UTF-16 has zeros between.
    const text = new TextDecoder('latin1').decode(part).replaceAll('\0', '');
    if (/<!(?:DOCTYPE|ENTITY)/iu.test(text))
      throw new SheetRefused(`${name} in the workbook declares entities, which no spreadsheet does. It isn’t opened.`);
  }
  return parts;
}

type Cell = string | number | boolean | Date | null;

/** A cell as a person sees it: a day as ISO 8601, a time of day as a clock. */
function textOf(cell: unknown): string {
  const value = cell as Cell;
  if (value === null || value === undefined) return '';
  if (!(value instanceof Date)) return typeof value === 'number' ? plainNumber(value) : String(value);
  const iso = value.toISOString();
  if (value.getUTCFullYear() < 1901) {
    // Spreadsheets count from the end of 1899: what lies near it is a time, not a day.
    const seconds = Math.round((value.getTime() - Date.UTC(1899, 11, 31)) / 1000);
    return clock(seconds < 0 ? seconds + 86_400 : seconds);
  }
  return iso.endsWith('T00:00:00.000Z') ? iso.slice(0, 10) : iso.slice(0, 16);
}

const clock = (seconds: number) =>
  `${Math.floor(seconds / 3600)}:${String(Math.floor(seconds / 60) % 60).padStart(2, '0')}:${String(seconds % 60).padStart(2, '0')}`;

/** Without the last figures that only binary arithmetic puts there. */
const plainNumber = (value: number) => String(Number(value.toPrecision(15)));

type Merge = readonly [top: number, left: number, bottom: number, right: number];

function mergesOf(parts: Readonly<Record<string, Uint8Array>>, at: number): readonly Merge[] {
  const part = parts[`xl/worksheets/sheet${at + 1}.xml`];
  if (part === undefined) return [];
  const text = new TextDecoder().decode(part);
  return [...text.matchAll(/<mergeCell ref="([A-Z]{1,3})(\d{1,7}):([A-Z]{1,3})(\d{1,7})"/gu)]
    .slice(0, 10_000)
    .map(([, left = '', top = '', right = '', bottom = '']) => [
      Number(top) - 1,
      columnOf(left),
      Number(bottom) - 1,
      columnOf(right),
    ]);
}

const columnOf = (letters: string) => [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;

function unmerged(rows: readonly SheetRow[], merges: readonly Merge[]): readonly SheetRow[] {
  const filled = rows.map(({ line, cells }) => ({ line, cells: [...cells] }));
  for (const [top, left, bottom, right] of merges) {
    const text = filled[top]?.cells[left];
    if (text === undefined || text === '') continue;
    for (const { cells } of filled.slice(top, bottom + 1))
      for (let at = left; at <= Math.min(right, cells.length - 1); at++) if (cells[at] === '') cells[at] = text;
  }
  return filled;
}
