import { readFileSync } from 'node:fs';

/** A figure from outside: what is given, what must come out, how near, and who says so. */
export interface PublishedRow {
  readonly id: string;
  readonly area: string;
  readonly title?: string;
  readonly inputs: Readonly<Record<string, unknown>>;
  readonly expected: Readonly<Record<string, unknown>>;
  readonly tolerance: { readonly abs?: number; readonly rel?: number };
  readonly source: string;
  readonly sourceKind: string;
  readonly note?: string;
  readonly reckon?: { readonly name: string; readonly args: readonly string[] };
}

const read = <T>(file: string): T => JSON.parse(readFileSync(`${import.meta.dirname}/${file}`, 'utf8')) as T;

/** All rows of the published check values, as they were copied; none is changed to suit the program. */
export const PUBLISHED: readonly PublishedRow[] = read('published-values.json');

/** By what each row is met: `reckon`, `table:<test file>`, `case:<check>`, `rule:<rule>`, `page:<test file>`, `gap`. */
export const MET_BY: Readonly<Record<string, string>> = read('rows.json');

const BY_ID = new Map(PUBLISHED.map((row) => [row.id, row]));

export function row(id: string): PublishedRow {
  const found = BY_ID.get(id);
  if (found === undefined) throw new Error(`no published row ${id}`);
  return found;
}

/** Rows in the order asked for, ready for test.each. */
export const rows = (...ids: readonly string[]): readonly PublishedRow[] => ids.map(row);

/** A number of a row's inputs or expected values. */
export function numberOf(part: Readonly<Record<string, unknown>>, key: string): number {
  const value = part[key];
  if (typeof value !== 'number') throw new Error(`${key} is no number but ${JSON.stringify(value)}`);
  return value;
}

export function textOf(part: Readonly<Record<string, unknown>>, key: string): string {
  const value = part[key];
  if (typeof value !== 'string') throw new Error(`${key} is no text but ${JSON.stringify(value)}`);
  return value;
}

/** What is wrong with an answer, part by part; empty when it is the row's own within its tolerance. Numbers are compared
 * within the tolerance, all else exactly; parts that the row doesn't name are free. */
export function departures(
  answer: unknown,
  expected: unknown,
  tolerance: PublishedRow['tolerance'],
  at = 'value',
): readonly string[] {
  if (typeof expected === 'number') {
    if (typeof answer !== 'number') return [`${at}: ${JSON.stringify(answer)}, not ${expected}`];
    const slack = tolerance.abs ?? Math.abs(expected) * (tolerance.rel ?? 0);
    return Math.abs(answer - expected) <= slack + 1e-9 ? [] : [`${at}: ${answer}, not ${expected} ± ${slack}`];
  }
  if (Array.isArray(expected)) {
    if (!Array.isArray(answer) || answer.length !== expected.length) return [`${at}: ${JSON.stringify(answer)}`];
    return expected.flatMap((part, index) => departures(answer[index], part, tolerance, `${at}[${index}]`));
  }
  if (typeof expected === 'object' && expected !== null) {
    const parts = Object(answer) as Record<string, unknown>;
    return Object.entries(expected).flatMap(([key, part]) => departures(parts[key], part, tolerance, `${at}.${key}`));
  }
  return answer === expected ? [] : [`${at}: ${JSON.stringify(answer)}, not ${JSON.stringify(expected)}`];
}
