/** A spreadsheet's rows, each with its line from 1. */
export interface TableRow {
  readonly line: number;
  readonly cells: readonly string[];
}

export interface Table {
  /** One a column; a column without a name is called by its letter. */
  readonly headers: readonly string[];
  /** Where headings stand in two lines, what the lower one alone calls each column; empty where it says nothing. */
  readonly lower: readonly string[];
  readonly rows: readonly TableRow[];
  /** Rows that hold the sheet's own title or the names of columns. */
  readonly above: readonly TableRow[];
}

const LOOKED_AT = 15;

/** Where the names of the columns stand: one line, or two where the upper one spans several columns. Lines above them are
 * the sheet's own title. */
export function headed(rows: readonly TableRow[]): Table {
  const at = headerAt(rows);
  const upper = rows[at];
  if (upper === undefined) return { headers: [], lower: [], rows: [], above: [] };
  const lower = rows[at + 1];
  const two = lower !== undefined && isSecondLine(upper, lower, rows.slice(at + 2, at + 12));
  const width = Math.max(...rows.map(({ cells }) => cells.length));
  const first = two ? spanned(upper.cells, lower.cells) : upper.cells;
  const names = Array.from({ length: width }, (_, column) => {
    const [above, below] = [first[column]?.trim() ?? '', two ? (lower.cells[column]?.trim() ?? '') : ''];
    return (
      [above, below === above ? '' : below].filter((part) => part !== '').join(' ') || `column ${letterOf(column)}`
    );
  });
  const body = at + (two ? 2 : 1);
  return {
    headers: apart(names),
    lower: two ? lower.cells.map((cell) => cell.trim()) : [],
    rows: rows.slice(body),
    above: rows.slice(0, body),
  };
}

const filled = (cells: readonly string[]) => cells.filter((cell) => cell.trim() !== '');

/** Names have letters, and are short; a row of data mostly hasn't both everywhere. */
const isName = (cell: string) => /\p{L}/u.test(cell) && cell.length <= 60 && !/^\d/u.test(cell.trim());

function headerAt(rows: readonly TableRow[]): number {
  const seen = rows.slice(0, LOOKED_AT).map(({ cells }, at) => {
    const texts = filled(cells);
    const names = texts.filter(isName).length;
    const distinct = new Set(texts.map((text) => text.trim().toLowerCase())).size;
    return {
      at,
      count: texts.length,
      good: texts.length > 0 && names >= texts.length * 0.7 && distinct >= texts.length * 0.6,
    };
  });
  const most = Math.max(0, ...seen.map(({ count }) => count));
  const wide = seen.find(({ good, count }) => good && count >= Math.max(2, most * 0.5));
  return wide?.at ?? seen.find(({ good }) => good)?.at ?? 0;
}

/** A second line of names: names only, under gaps of the first or over figures, and no row of the body looks like it. */
function isSecondLine(upper: TableRow, lower: TableRow, body: readonly TableRow[]): boolean {
  const below = filled(lower.cells);
  if (below.length < 2 || !below.every(isName)) return false;
  const width = Math.max(upper.cells.length, lower.cells.length);
  const gaps = Array.from({ length: width }, (_, at) => at).filter((at) => {
    const above = upper.cells[at]?.trim() ?? '';
    return (above === '' || above === upper.cells[at - 1]?.trim()) && (lower.cells[at]?.trim() ?? '') !== '';
  });
  return gaps.length > 0 && body.some(({ cells }) => filled(cells).some((cell) => !isName(cell)));
}

/** A name that spans several columns stands in the first of them only. */
function spanned(upper: readonly string[], lower: readonly string[]): string[] {
  let last = '';
  return Array.from({ length: Math.max(upper.length, lower.length) }, (_, at) => {
    const own = upper[at]?.trim() ?? '';
    if (own !== '') last = own;
    return own !== '' || (lower[at]?.trim() ?? '') === '' ? own : last;
  });
}

/** Two columns of one name keep apart. */
function apart(names: readonly string[]): readonly string[] {
  const seen = new Map<string, number>();
  return names.map((name) => {
    const count = (seen.get(name.toLowerCase()) ?? 0) + 1;
    seen.set(name.toLowerCase(), count);
    return count === 1 ? name : `${name} (${count})`;
  });
}

function letterOf(column: number): string {
  const rest = String.fromCharCode(65 + (column % 26));
  return column < 26 ? rest : letterOf(Math.floor(column / 26) - 1) + rest;
}
