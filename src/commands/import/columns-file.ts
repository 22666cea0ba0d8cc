import { readFileSync } from 'node:fs';
import type { ColumnPlan } from '#compute/import/propose-columns.ts';
import { REEL_COLUMNS } from '#model/reel-column.ts';
import { isCode } from '#publish/atomic.ts';
import { UsageError } from '../io.ts';

/** What the owner said of the columns before, by heading. Empty when there is no such file.
 * Throws UsageError when it can't be read as what the import wrote. */
export function readColumns(path: string): ReadonlyMap<string, Partial<ColumnPlan>> {
  let text: string;
  try {
    text = readFileSync(path, 'utf8');
  } catch (error) {
    if (isCode(error, 'ENOENT')) return new Map();
    throw error;
  }
  const told = parsed(text, path);
  return new Map(Object.entries(told).map(([header, plan]) => [header, checked(header, plan, path)]));
}

function parsed(text: string, path: string): Record<string, unknown> {
  try {
    const file: unknown = JSON.parse(text);
    if (
      typeof file === 'object' &&
      file !== null &&
      'columns' in file &&
      typeof file.columns === 'object' &&
      file.columns !== null
    )
      return file.columns as Record<string, unknown>;
  } catch {
    // Answered below.
  }
  throw new UsageError(`${path} isn't as the import wrote it. Mend it, or move it away: the import writes it anew.`);
}

const KEYS = new Set([...REEL_COLUMNS.map(({ key }) => key), 'also', '?']);

function checked(header: string, plan: unknown, path: string): Partial<ColumnPlan> {
  const { as, dates, unit, minutesAsHours, pointIsColon } = plan as Partial<ColumnPlan>;
  if (typeof as !== 'string' || !KEYS.has(as))
    throw new UsageError(
      `${path}: "${header}" is taken for "${String(as)}", which is no fact of a reel. Write one of: ${[...KEYS].join(', ')}.`,
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

/** The plan for the next time, to be looked at and changed in any text editor. */
export function columnsText(plans: readonly ColumnPlan[]): string {
  const columns = Object.fromEntries(plans.map(({ header, as, by: _by, ...sense }) => [header, { as, ...sense }]));
  const about =
    'What each column is. "as" is a fact of a reel (as in its entry), also (kept as it stands) or ? (not decided: kept as it stands). "dates" is day-month or month-day; "unit" is that of bare numbers; "pointIsColon": true reads 19.44 as 19:44.';
  return `${JSON.stringify({ about, columns }, null, 2)}\n`;
}
