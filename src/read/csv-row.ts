/** The cells of one row (RFC 4180): a cell in double quotes may hold the delimiter, line ends, and "" for a quote.
 *
 * Rows without a quote, nearly all of a logger's, are cut without looking at each character. A quote in the middle of
 * an unquoted cell is taken as it stands, as spreadsheets do. undefined when a quoted cell doesn't end in this text.
 */
export function splitRow(row: string, delimiter: string): readonly string[] | undefined {
  if (!row.includes('"')) return row.split(delimiter);
  const cells: string[] = [];
  let at = 0;
  while (at <= row.length) {
    if (row[at] !== '"') {
      const end = row.indexOf(delimiter, at);
      cells.push(row.slice(at, end < 0 ? undefined : end));
      if (end < 0) return cells;
      at = end + delimiter.length;
      continue;
    }
    const end = closingQuote(row, at + 1);
    if (end === undefined) return undefined;
    const next = row.indexOf(delimiter, end + 1);
    // What stands between a closing quote and the next delimiter belongs to no cell; it is kept, not dropped.
    cells.push(row.slice(at + 1, end).replaceAll('""', '"') + row.slice(end + 1, next < 0 ? undefined : next).trim());
    if (next < 0) return cells;
    at = next + delimiter.length;
  }
  return cells;
}

/** Where the quoted cell ends: the first quote that isn't doubled. */
function closingQuote(row: string, from: number): number | undefined {
  for (let at = row.indexOf('"', from); at >= 0; at = row.indexOf('"', at + 2)) {
    if (row[at + 1] !== '"') return at;
  }
  return undefined;
}
