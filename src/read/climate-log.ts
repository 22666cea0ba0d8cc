import type { LogColumns, LogFault, TakeReading } from '#model/climate.ts';
import { celsius, fahrenheit, percent } from '#model/units.ts';
import { type ColumnPlaces, placesOf, proposedColumns } from './climate-columns.ts';
import { type DayOrder, isYearFirst, needsOrder, orderShownBy, timeReader } from './climate-time.ts';
import { eachLine } from './csv-lines.ts';
import { splitRow } from './csv-row.ts';

/** How a logger wrote its file; whatever isn't given is looked for in the header. */
export interface LogForm {
  readonly columns?: LogColumns | undefined;
  /** Offset of its clock, `+02:00`; UTC when it isn't known. */
  readonly zone?: string | undefined;
}

/** A title, a serial number, an empty line: what a logger may print above its header. */
const LINES_ABOVE_HEADER = 20;
/** Rows kept back until the log shows whether 4/5 is April or May. */
const ROWS_KEPT = 1000;
const NUMBER = /^[+-]?\d{1,4}(?:\.\d{0,9})?$/;
const NUMBER_WITH_COMMA = /^[+-]?\d{1,4},\d{1,9}$/;

/** Reads a climate log of any length, row by row, and says what couldn't be read.
 *
 * Rows are cut by hand where nothing is quoted, so that a year at a reading a minute costs less than a general CSV
 * reader; memory doesn't grow with the log.
 *
 * @param chunks  the file's bytes, in order.
 * @param take    called once a reading, in the log's own order.
 */
export async function readClimateLog(
  chunks: AsyncIterable<Uint8Array>,
  form: LogForm,
  take: TakeReading,
): Promise<readonly LogFault[]> {
  const unread = { line: 0, count: 0, found: '', tooWide: false };
  const above: string[] = [];
  let places: ColumnPlaces | undefined;
  let order: DayOrder | undefined;
  let ordered = false;
  let kept: { cells: readonly string[]; line: number; written: string }[] = [];
  let readTime = timeReader(form.zone, undefined);
  let open = '';
  let openLine = 0;
  let rows = 0;
  let headerLine = 1;

  const refuse = (line: number, written: string) => {
    unread.count += 1;
    if (unread.count === 1) [unread.line, unread.found] = [line, written];
  };

  const takeCells = (cells: readonly string[], line: number, written: string, at: ColumnPlaces) => {
    const time = cells[at.time];
    if (time === undefined) return refuse(line, written);
    // `20,5,45,0` under three names: which comma is a point can't be told, and a wrong cell would be read in silence.
    if (cells.length > at.count && cells.slice(at.count).some((cell) => cell.trim() !== '')) {
      unread.tooWide ||= unread.count === 0;
      return refuse(line, written);
    }
    const timeMs = readTime(at.date === undefined ? time : `${cells[at.date]} ${time}`);
    const degrees = numberIn(cells[at.temperature], at.delimiter);
    const humidity = numberIn(cells[at.humidity], at.delimiter);
    if (Number.isNaN(timeMs + degrees + humidity)) return refuse(line, written);
    take(line, timeMs, at.fahrenheit ? fahrenheit(degrees) : celsius(degrees), percent(humidity));
  };

  const release = (at: ColumnPlaces) => {
    ordered = true;
    readTime = timeReader(form.zone, order);
    for (const row of kept) takeCells(row.cells, row.line, row.written, at);
    kept = [];
  };

  const takeRow = (written: string, line: number, at: ColumnPlaces) => {
    rows += 1;
    const cells = splitRow(written, at.delimiter);
    if (cells === undefined) return refuse(line, written);
    if (ordered) return takeCells(cells, line, written, at);
    const day = cells[at.date ?? at.time] ?? '';
    if (isYearFirst(day)) release(at);
    if (!needsOrder(day) && kept.length === 0) return takeCells(cells, line, written, at);
    kept.push({ cells, line, written });
    order = orderShownBy(day);
    if (order !== undefined || kept.length >= ROWS_KEPT) release(at);
  };

  await eachLine(chunks, (text, line) => {
    if (text === undefined) return refuse(line, 'a line longer than any row');
    if (places === undefined) {
      if (above.length < LINES_ABOVE_HEADER && text.trim() !== '') {
        above.push(text);
        places = placesOf(text, form.columns);
        headerLine = line;
      }
      return;
    }
    // A quoted cell may hold a line end: such a row goes on in the next line.
    const row = open === '' ? text : `${open}\n${text}`;
    if (row.includes('"') && oddQuotes(row) && row.length < LONGEST_ROW) {
      if (open === '') openLine = line;
      open = row;
      return;
    }
    const from = open === '' ? line : openLine;
    open = '';
    if (row !== '' && row.trim() !== '') takeRow(row, from, places);
  });
  if (places === undefined) return [above.length === 0 ? emptyFault(1, 'nothing') : columnsFault(above, form)];
  if (open !== '') refuse(openLine, open);
  if (rows + unread.count === 0) return [emptyFault(headerLine, 'a header, and no row below it')];
  if (!ordered && kept.length > 0) release(places);
  return unread.count === 0 ? [] : [unreadFault(unread, kept.length === 0 && order === undefined)];
}

const LONGEST_ROW = 4096;

function oddQuotes(text: string): boolean {
  let count = 0;
  for (let at = text.indexOf('"'); at >= 0; at = text.indexOf('"', at + 1)) count += 1;
  return count % 2 === 1;
}

/** A decimal comma is read where the comma isn't what parts the cells. NaN for an empty cell or anything else. */
function numberIn(cell: string | undefined, delimiter: string): number {
  if (cell === undefined) return Number.NaN;
  const text = cell.trim();
  if (NUMBER.test(text)) return Number(text);
  return delimiter !== ',' && NUMBER_WITH_COMMA.test(text) ? Number(text.replace(',', '.')) : Number.NaN;
}

function unreadFault(
  { line, count, found, tooWide }: { line: number; count: number; found: string; tooWide: boolean },
  noOrder: boolean,
): LogFault {
  const twoWays = noOrder && needsOrder(found.replace(/^"/, ''));
  return {
    code: 'climate/row-unread',
    line,
    count,
    message: count === 1 ? 'A row of the log can’t be read.' : `${count} rows of the log can’t be read.`,
    found: found.length > 120 ? `${found.slice(0, 120)}…` : found,
    expected: 'a time such as 2026-03-11T22:00, a temperature and a humidity',
    action: tooWide
      ? 'It has more cells than the header names. If a comma is the point of its numbers, export it again with points, or with semicolons between the cells.'
      : twoWays
        ? 'Export the log again with the year first: which number is the day and which the month, nothing in it shows.'
        : 'Look at that line. The readings that can be read are used.',
  };
}

/** A workbook, a picture, or text in an encoding that doesn't say which it is. */
const notTextFault = (): LogFault => ({
  code: 'climate/columns',
  line: 1,
  count: 1,
  message: 'The log isn’t plain text.',
  found: 'zero bytes where text should be',
  expected: 'a table as text: CSV in UTF-8, or in UTF-16 with its mark',
  action: 'Export it again as CSV in UTF-8; a workbook is saved as CSV from the program that opens it.',
});

const emptyFault = (line: number, found: string): LogFault => ({
  code: 'climate/empty',
  line,
  count: 1,
  message: 'The log holds no reading.',
  found,
  expected: 'a header, and a row for each reading',
  action:
    'Export the log again: many loggers write the header first and the readings only when they are stopped. Until then nothing is known of this air.',
});

/** Which column is which can't be told; the answer is ready to paste into the place's entry. */
function columnsFault(above: readonly string[], { columns }: LogForm): LogFault {
  const header = above.find((line) => /[,;\t]/.test(line)) ?? above[0] ?? '';
  if (above.some((line) => line.includes('\0'))) return notTextFault();
  const proposed = proposedColumns(header);
  const zone = proposed.zone === undefined ? '' : `, zone: ${proposed.zone}`;
  const pairs = [...proposed.columns].map(([ours, theirs]) => `${ours}: ${theirs}`).join(', ');
  const missing = [...(columns ?? [])].filter(([, theirs]) => !header.includes(theirs)).map(([, theirs]) => theirs);
  const none = missing.length === 0 ? '' : ` It has no column ${missing.map((name) => `"${name}"`).join(', ')}.`;
  return {
    code: 'climate/columns',
    line: 1,
    count: 1,
    message: `The log’s header doesn’t say which column is the time, the temperature and its unit, and the humidity.${none}`,
    found: header === '' ? 'no header' : header,
    expected: 'time,temperature_C,humidity_percent, or what the columns mean',
    action: `Say it, and correct what is wrong in this: columns: { ${pairs} }${zone}`,
  };
}
