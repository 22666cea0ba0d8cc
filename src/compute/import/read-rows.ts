import { SAYS_NOTHING } from '#compute/interchange/cell-text.ts';
import { unguarded } from '#compute/interchange/spreadsheet-text.ts';
import type { Loose } from '#model/entry.ts';
import { formOf, type SheetKind } from '#model/entry-column.ts';
import { idLike } from '#model/entry-id.ts';
import type { Table, TableRow } from './header.ts';
import type { ColumnPlan } from './propose-columns.ts';
import { type Accepts, valueMeant } from './value-meant.ts';

/** What a cell says of another entry, by a name that isn't its id. */
interface NamedThere {
  /** The dotted key that its column is taken for: `edition`, `edition.artist`, `stock`. */
  readonly key: string;
  readonly text: string;
  /** Where it is kept under `also`. */
  readonly under: string;
}

/** An entry as rows of the sheet tell it: facts by dotted key, and what they couldn't be read as. */
export interface ImportedEntry {
  readonly kind: SheetKind;
  readonly id: string;
  /** Rows of the sheet, from 1. */
  readonly lines: readonly number[];
  readonly facts: ReadonlyMap<string, Loose>;
  readonly also: ReadonlyMap<string, string>;
  /** Also kept under `also`, until the owner says that entries are to be made of it. */
  readonly named: readonly NamedThere[];
}

/** Where every filled cell went; they add up to `cells`. */
export interface Accounted {
  readonly cells: number;
  readonly asFacts: number;
  readonly inAlso: number;
  /** A dash or a question mark: nobody knows. */
  readonly sayNothing: number;
  readonly headings: number;
  /** Rows of one cell between the others, such as a section's name. */
  readonly loose: number;
}

export interface ImportedRows {
  readonly entries: readonly ImportedEntry[];
  readonly accounted: Accounted;
  /** The loose rows' texts, with their lines. */
  readonly loose: readonly { readonly line: number; readonly text: string }[];
}

interface Building {
  readonly kind: SheetKind;
  readonly id: string;
  readonly lines: number[];
  readonly facts: Map<string, Loose>;
  readonly also: Map<string, string>;
  readonly named: NamedThere[];
}

/** Rows as entries. Rows of one id are one entry; a cell that no fact can be read from is kept under its heading. */
export function readRows(table: Table, plans: readonly ColumnPlan[], kind: SheetKind, accepts: Accepts): ImportedRows {
  const entries = new Map<string, Building>();
  const loose: { line: number; text: string }[] = [];
  const ours = table.headers.every((header) => formOf(kind, header) !== undefined);
  const readValue = (plan: ColumnPlan, cell: string) => valueMeant(plan, cell, formOf(kind, plan.as), ours, accepts);
  const count = { asFacts: 0, inAlso: 0, sayNothing: 0, headings: 0, loose: 0 };
  count.headings = table.above.reduce((sum, row) => sum + filledIn(row).length, 0);
  for (const row of table.rows) {
    const filled = filledIn(row);
    if (filled.length === 0) continue;
    if (filled.every(({ at, text }) => table.headers[at] === text.trim())) {
      count.headings += filled.length;
      continue;
    }
    const [only] = filled;
    if (filled.length === 1 && only !== undefined && plans.length > 2 && plans[only.at]?.as !== 'title') {
      loose.push({ line: row.line, text: only.text.trim() });
      count.loose += 1;
      continue;
    }
    const read = readRow(filled, plans, readValue);
    count.sayNothing += read.nothing;
    count.inAlso += read.also.size;
    count.asFacts += filled.length - read.nothing - read.also.size;
    take(entries, kind, row.line, read);
  }
  const cells = Object.values(count).reduce((sum, one) => sum + one, 0);
  return { entries: [...entries.values()], loose, accounted: { cells, ...count } };
}

const filledIn = ({ cells }: TableRow) =>
  cells.map((text, at) => ({ at, text })).filter(({ text }) => text.trim() !== '');

interface RowRead {
  readonly facts: Map<string, Loose>;
  readonly also: Map<string, string>;
  readonly named: readonly NamedThere[];
  readonly nothing: number;
}

function readRow(
  filled: readonly { at: number; text: string }[],
  plans: readonly ColumnPlan[],
  readValue: (plan: ColumnPlan, cell: string) => Loose | undefined,
): RowRead {
  const facts = new Map<string, Loose>();
  const also = new Map<string, string>();
  const named: NamedThere[] = [];
  let nothing = 0;
  for (const { at, text } of filled) {
    const plan = plans[at];
    const cell = unguarded(text);
    if (SAYS_NOTHING.test(cell.trim())) {
      nothing += 1;
      continue;
    }
    const value = plan === undefined || isKept(plan) ? undefined : readValue(plan, cell);
    if (value === undefined || plan === undefined || !add(facts, plan.as, value)) {
      const under = plan?.header ?? `column ${at + 1}`;
      also.set(under, cell.trim());
      if (plan !== undefined && value === undefined && NAMES_ANOTHER.test(plan.as))
        named.push({ key: plan.as, text: cell.trim(), under });
    }
  }
  return { facts, also, named, nothing };
}

/** Facts that are another entry's id, and what a reel's row tells of its edition. */
const NAMES_ANOTHER = /^(?:edition(?:\..+)?|stock|place\.at)$/u;

/** Whether a column is kept as it stands. One that is itself headed `also` is our own, with free facts in it. */
const isKept = ({ as, header }: ColumnPlan) => as === '?' || (as === 'also' && header.trim() !== 'also');

/** Two columns may tell one list; of one text the first stands. */
function add(facts: Map<string, Loose>, key: string, value: Loose): boolean {
  const before = facts.get(key);
  if (before === undefined) {
    facts.set(key, value);
    return true;
  }
  if (JSON.stringify(before) === JSON.stringify(value)) return true;
  if (key === 'body' && typeof before === 'string' && typeof value === 'string') {
    facts.set(key, `${before}\n\n${value}`);
    return true;
  }
  if (!Array.isArray(before) || !Array.isArray(value)) return false;
  facts.set(key, [
    ...before,
    ...value.filter((item) => !before.some((one) => JSON.stringify(one) === JSON.stringify(item))),
  ]);
  return true;
}

/** A row's facts go to the entry of its id; a proposed id is never one that another row has. */
function take(entries: Map<string, Building>, kind: SheetKind, line: number, { facts, also, named }: RowRead): void {
  const given = facts.get('id');
  facts.delete('id');
  const id = typeof given === 'string' ? given : freeId(proposedId(facts, line), entries);
  if (!facts.has('title')) facts.set('title', titleFor(facts, line));
  const before = entries.get(id);
  if (before === undefined) {
    entries.set(id, { kind, id, lines: [line], facts, also, named: [...named] });
    return;
  }
  before.lines.push(line);
  before.named.push(...named);
  for (const [key, value] of facts) if (!add(before.facts, key, value)) keep(before.also, key, value, line);
  for (const [key, text] of also) keep(before.also, key, text, line);
}

function keep(also: Map<string, string>, key: string, value: Loose, line: number): void {
  const text = typeof value === 'string' ? value : JSON.stringify(value);
  also.set(also.has(key) || key === 'title' ? `${key}, row ${line}` : key, text);
}

function proposedId(facts: ReadonlyMap<string, Loose>, line: number): string {
  const title = textOf(facts.get('title'));
  const side = textOf(facts.get('side'));
  const whole = side === '' || /\bside\b/iu.test(title) ? title : `${title} side ${side}`;
  const number =
    textOf(facts.get('numbers.matrix')) || textOf(facts.get('numbers.catalogue')) || textOf(facts.get('numbers.other'));
  return idLike(whole) || idLike(number) || `row-${line}`;
}

const textOf = (value: Loose | undefined): string =>
  value === undefined
    ? ''
    : typeof value === 'string'
      ? value
      : Array.isArray(value)
        ? value.map((item) => textOf(item)).join(' ')
        : '';

function titleFor(facts: ReadonlyMap<string, Loose>, line: number): string {
  const number =
    textOf(facts.get('numbers.catalogue')) || textOf(facts.get('numbers.matrix')) || textOf(facts.get('numbers.other'));
  return number === '' ? `Untitled, row ${line}` : `Untitled, ${number}`;
}

/** The id, or with a number behind it where it is taken. */
export function freeId(id: string, taken: { readonly has: (id: string) => boolean }): string {
  if (!taken.has(id)) return id;
  let count = 2;
  while (taken.has(`${id}-${count}`)) count += 1;
  return `${id}-${count}`;
}
