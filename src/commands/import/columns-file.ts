import { readFileSync } from 'node:fs';
import type { ColumnPlan } from '#compute/import/propose-columns.ts';
import { keysOfSheet, SHEET_KINDS, type SheetKind } from '#model/entry-column.ts';
import { isCode } from '#publish/atomic.ts';
import { UsageError } from '../io.ts';

type Said = ReadonlyMap<string, Partial<ColumnPlan>>;

/** What the owner said of a sheet before. */
export interface ColumnsFile {
  readonly there: boolean;
  /** What a row is, where the file says it. */
  readonly kind: SheetKind | undefined;
  /** By heading, as entries of a kind have the facts. Throws UsageError for a fact that the kind hasn't. */
  readonly columns: (kind: SheetKind) => Said;
}

/** Throws UsageError when the file can't be read as what the import wrote. */
export function readColumns(path: string): ColumnsFile {
  let text: string;
  try {
    text = readFileSync(path, 'utf8');
  } catch (error) {
    if (isCode(error, 'ENOENT')) return { there: false, kind: undefined, columns: () => new Map() };
    throw error;
  }
  const { kind, columns } = parsed(text, path);
  return {
    there: true,
    kind,
    columns: (of) =>
      new Map(Object.entries(columns).map(([header, plan]) => [header, checked(header, plan, of, path)])),
  };
}

function parsed(text: string, path: string) {
  try {
    const file: unknown = JSON.parse(text);
    if (
      typeof file === 'object' &&
      file !== null &&
      'columns' in file &&
      typeof file.columns === 'object' &&
      file.columns !== null
    ) {
      const kind = 'rows' in file ? SHEET_KINDS.find((one) => one === file.rows) : undefined;
      if (!('rows' in file) || kind !== undefined) return { kind, columns: file.columns as Record<string, unknown> };
    }
  } catch {
    // Answered below.
  }
  throw new UsageError(`${path} isn't as the import wrote it. Mend it, or move it away: the import writes it anew.`);
}

function checked(header: string, plan: unknown, kind: SheetKind, path: string): Partial<ColumnPlan> {
  const { as, dates, unit, minutesAsHours, pointIsColon } = (plan ?? {}) as Partial<ColumnPlan>;
  const keys = [...keysOfSheet(kind), 'also', '?'];
  if (typeof as !== 'string' || !keys.includes(as))
    throw new UsageError(
      `${path}: "${header}" is taken for "${String(as)}", which is no fact of ${kind}. Write one of: ${keys.join(', ')}.`,
    );
  if (dates !== undefined && dates !== 'day-month' && dates !== 'month-day')
    throw new UsageError(`${path}: the dates of "${header}" are "${String(dates)}". Write day-month or month-day.`);
  return {
    as,
    ...(dates === undefined ? {} : { dates }),
    ...(typeof unit === 'string' ? { unit } : {}),
    ...(typeof minutesAsHours === 'boolean' ? { minutesAsHours } : {}),
    ...(typeof pointIsColon === 'boolean' ? { pointIsColon } : {}),
  };
}

/** The plan for the next time, to be looked at and changed in any text editor.
 *
 * @param before  What was said of columns that this sheet hasn't: it stays said. */
export function columnsText(plans: readonly ColumnPlan[], kind: SheetKind, before: Said = new Map()): string {
  const now = plans.map(({ header, as, by: _by, ...sense }) => [header, { as, ...sense }] as const);
  const columns = Object.fromEntries([...before, ...now]);
  const about =
    'What each column is. "rows" is the kind of entry that a row is. "as" is a fact of it (as in its entry), also (kept as it stands) or ? (not decided: kept as it stands). "dates" is day-month or month-day; "unit" is that of bare numbers; "pointIsColon": true reads 19.44 as 19:44.';
  return `${JSON.stringify({ about, rows: kind, columns }, null, 2)}\n`;
}
