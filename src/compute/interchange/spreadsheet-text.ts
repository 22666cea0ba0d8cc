/** What a spreadsheet takes for a formula, or for a mark of its own, at the start of a cell; the full-width signs too.
 * Source: OWASP, "CSV Injection" (from memory). */
const RISKY = /^['=+\-@\t\r\uff1d\uff0b\uff0d\uff20]/u;

/** A cell that no spreadsheet runs: an apostrophe in front, which `unguarded` takes away again. */
export const guarded = (text: string): string => (RISKY.test(text) ? `'${text}` : text);

export const unguarded = (text: string): string =>
  text.startsWith("'") && RISKY.test(text.slice(1)) ? text.slice(1) : text;

/** Rows as a CSV file: RFC 4180, section 2, every line ended by CR LF, with a mark at the start by which spreadsheets know
 * that it is UTF-8. */
export const csvText = (rows: readonly (readonly string[])[]): string =>
  `\ufeff${rows.map((row) => `${row.map((cell) => quotedCell(guarded(cell))).join(',')}\r\n`).join('')}`;

const quotedCell = (cell: string): string => (/[",\r\n]/u.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell);
