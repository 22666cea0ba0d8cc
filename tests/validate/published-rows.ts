import { readFileSync } from 'node:fs';

/** A row of the published values: what was given, what must come out, who says so. */
export interface PublishedRow {
  readonly id: string;
  readonly area: string;
  readonly title?: string;
  readonly inputs: Readonly<Record<string, unknown>>;
  readonly expected: Readonly<Record<string, unknown>>;
  readonly source: string;
}

const FILE = `${import.meta.dirname}/../tables/published-values.json`;
const ROWS: readonly PublishedRow[] = JSON.parse(readFileSync(FILE, 'utf8'));

export const rowsOf = (area: string): readonly PublishedRow[] => ROWS.filter((row) => row.area === area);

export function rowOf(id: string): PublishedRow {
  const row = ROWS.find((one) => one.id === id);
  if (row === undefined) throw new Error(`fault: there is no published row ${id}`);
  return row;
}
