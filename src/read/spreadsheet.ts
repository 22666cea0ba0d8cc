import { CsvError, parse } from 'csv-parse/sync';

/** A row as it stands: its line in the file, or its row in the sheet, from 1. */
export interface SheetRow {
  readonly line: number;
  readonly cells: readonly string[];
}

export interface Sheet {
  readonly rows: readonly SheetRow[];
  /** What its reader should know: a guess at its letters, a sheet that was left out. */
  readonly notes: readonly string[];
}

/** A spreadsheet that isn't opened, and what to do about it. */
export class SheetRefused extends Error {}

/** Past these it is no list of tapes. */
const MOST_BYTES = 50 * 1024 * 1024;
const MOST_ROWS = 200_000;
const MOST_COLUMNS = 1_000;
const MOST_IN_A_CELL = 1_000_000;

/** The rows of a CSV file (RFC 4180), with any of the usual delimiters, line ends and encodings.
 * @throws {SheetRefused} when it is too large, binary, or its quotes never end. */
export function readCsv(bytes: Uint8Array): Sheet {
  if (bytes.length > MOST_BYTES)
    throw new SheetRefused('The file is larger than 50 MB. Save the list of tapes by itself.');
  const { text, notes } = decoded(bytes);
  if (text.includes('\0'))
    throw new SheetRefused('The file holds no text. Save it from the spreadsheet as CSV or as .xlsx.');
  return { rows: checkedRows(rowsOf(text, delimiterOf(text))), notes };
}

/** @throws {SheetRefused} when there are more rows, columns or letters than a list of tapes has. */
export function checkedRows(rows: readonly SheetRow[]): readonly SheetRow[] {
  if (rows.length > MOST_ROWS)
    throw new SheetRefused(`The sheet has more than ${MOST_ROWS} rows. Save a part of it at a time.`);
  for (const { line, cells } of rows) {
    if (cells.length > MOST_COLUMNS) throw new SheetRefused(`Row ${line} has more than ${MOST_COLUMNS} columns.`);
    if (cells.some((cell) => cell.length > MOST_IN_A_CELL))
      throw new SheetRefused(`A cell of row ${line} is longer than a million characters.`);
  }
  return rows;
}

function decoded(bytes: Uint8Array): { text: string; notes: string[] } {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return { text: new TextDecoder('utf-16le').decode(bytes), notes: [] };
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return { text: new TextDecoder('utf-16be').decode(bytes), notes: [] };
  try {
    return { text: new TextDecoder('utf-8', { fatal: true }).decode(bytes), notes: [] };
  } catch {
    const note = 'The file isn’t UTF-8; it was read as Windows-1252. Look at letters with accents.';
    return { text: new TextDecoder('windows-1252').decode(bytes), notes: [note] };
  }
}

/** The delimiter that cuts most of the first lines into equally many cells; a decimal comma beside semicolons is none. */
function delimiterOf(text: string): string {
  const lines = text
    .slice(0, 50_000)
    .replace(/"(?:[^"]|"")*"/gu, '')
    .split(/\r\n|\r|\n/u)
    .filter((line) => line.trim() !== '')
    .slice(0, 12);
  const score = (sign: string) => {
    const counts = lines.map((line) => line.split(sign).length - 1).filter((count) => count > 0);
    const alike = Math.max(0, ...counts.map((count) => counts.filter((other) => other === count).length));
    return alike * 10 + Math.min(5, ...counts);
  };
  const signs = ['\t', ';', ',', '|'].filter((sign) => lines.some((line) => line.includes(sign)));
  return signs.reduce((best, sign) => (score(sign) > score(best) ? sign : best), signs[0] ?? ',');
}

function rowsOf(text: string, delimiter: string): SheetRow[] {
  try {
    const records = parse(text, {
      bom: true,
      delimiter,
      info: true,
      relax_column_count: true,
      relax_quotes: true,
      skip_empty_lines: false,
      max_record_size: MOST_IN_A_CELL * 4,
    }) as unknown as { record: string[]; info: { lines: number } }[];
    return records.map(({ record, info }) => ({ line: info.lines, cells: record }));
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    throw new SheetRefused(`The file can't be read as CSV: ${error.message}. Save it from the spreadsheet once more.`);
  }
}
