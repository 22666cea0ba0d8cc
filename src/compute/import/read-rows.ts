import { SAYS_NOTHING, valueOfCell } from '#compute/interchange/cell-text.ts';
import { unguarded } from '#compute/interchange/spreadsheet-text.ts';
import type { Loose } from '#model/entry.ts';
import { idLike, isId } from '#model/entry-id.ts';
import { reelColumn } from '#model/reel-column.ts';
import { listsMeant, textsMeant } from './cell-forms.ts';
import type { Table, TableRow } from './header.ts';
import type { ColumnPlan } from './propose-columns.ts';

/** Whether a value can be read where a key stands. Handed in: what an entry may say is decided where entries are read. */
export type Accepts = (key: string, value: Loose) => boolean;

/** A reel as rows of the sheet tell it: facts by dotted key, and what they couldn't be read as. */
export interface ImportedReel {
  readonly id: string;
  /** Rows of the sheet, from 1. */
  readonly lines: readonly number[];
  readonly facts: ReadonlyMap<string, Loose>;
  readonly also: ReadonlyMap<string, string>;
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
  readonly reels: readonly ImportedReel[];
  readonly accounted: Accounted;
  /** The loose rows' texts, with their lines. */
  readonly loose: readonly { readonly line: number; readonly text: string }[];
}

interface Building {
  id: string;
  readonly lines: number[];
  readonly facts: Map<string, Loose>;
  readonly also: Map<string, string>;
}

/** Rows as reels. Rows of one id are one reel; a cell that no fact can be read from is kept under its heading. */
export function readRows(table: Table, plans: readonly ColumnPlan[], accepts: Accepts): ImportedRows {
  const reels = new Map<string, Building>();
  const loose: { line: number; text: string }[] = [];
  const ours = table.headers.every((header) => reelColumn(header) !== undefined);
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
    const { facts, also, nothing } = readRow(filled, plans, ours, accepts);
    count.sayNothing += nothing;
    count.inAlso += also.size;
    count.asFacts += filled.length - nothing - also.size;
    take(reels, row.line, facts, also);
  }
  const cells = Object.values(count).reduce((sum, one) => sum + one, 0);
  return { reels: [...reels.values()], loose, accounted: { cells, ...count } };
}

const filledIn = ({ cells }: TableRow) =>
  cells.map((text, at) => ({ at, text })).filter(({ text }) => text.trim() !== '');

function readRow(
  filled: readonly { at: number; text: string }[],
  plans: readonly ColumnPlan[],
  ours: boolean,
  accepts: Accepts,
) {
  const facts = new Map<string, Loose>();
  const also = new Map<string, string>();
  let nothing = 0;
  for (const { at, text } of filled) {
    const plan = plans[at];
    const cell = unguarded(text);
    if (SAYS_NOTHING.test(cell.trim())) {
      nothing += 1;
      continue;
    }
    const value = plan === undefined || isKept(plan) ? undefined : valueMeant(plan, cell, ours, accepts);
    if (value === undefined || plan === undefined || !add(facts, plan.as, value))
      also.set(plan?.header ?? `column ${at + 1}`, cell.trim());
  }
  return { facts, also, nothing };
}

/** Whether a column is kept as it stands. One that is itself headed `also` is our own, with free facts in it. */
const isKept = ({ as, header }: ColumnPlan) => as === '?' || (as === 'also' && header.trim() !== 'also');

/** The first that can be read of what a cell may mean: in our own form in a sheet that is ours, else as sheets write it. */
function valueMeant(plan: ColumnPlan, cell: string, ours: boolean, accepts: Accepts): Loose | undefined {
  const { as } = plan;
  const form = reelColumn(as)?.form;
  if (form === undefined) return undefined;
  const own = valueOfCell(cell, form);
  if (as === 'id') return typeof own === 'string' && isId(own) ? own : undefined;
  if (as === 'title' || as === 'body' || as === 'also') return own;
  const others = form === 'text' ? textsMeant(as, cell, plan) : listsMeant(as, cell, plan);
  const inOurForm = own === undefined ? [] : [own];
  return (ours ? [...inOurForm, ...others] : [...others, ...inOurForm]).find((value) => accepts(as, value));
}

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

/** A row's facts go to the reel of its id; a proposed id is never one that another row has. */
function take(reels: Map<string, Building>, line: number, facts: Map<string, Loose>, also: Map<string, string>): void {
  const given = facts.get('id');
  facts.delete('id');
  const id = typeof given === 'string' ? given : freeId(proposedId(facts, line), reels);
  if (!facts.has('title')) facts.set('title', titleFor(facts, line));
  const before = reels.get(id);
  if (before === undefined) {
    reels.set(id, { id, lines: [line], facts, also });
    return;
  }
  before.lines.push(line);
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

function freeId(id: string, reels: ReadonlyMap<string, unknown>): string {
  if (!reels.has(id)) return id;
  let count = 2;
  while (reels.has(`${id}-${count}`)) count += 1;
  return `${id}-${count}`;
}
