import { type ColumnSense, DATES, MEASURES } from '#compute/import/cell-forms.ts';
import type { Table } from '#compute/import/header.ts';
import { proposals } from '#compute/import/proposals.ts';
import { type ColumnPlan, senseOf } from '#compute/import/propose-columns.ts';
import { type Accepts, valueMeant } from '#compute/import/value-meant.ts';
import { formOf, keysOfSheet, SHEET_KINDS, type SheetKind } from '#model/entry-column.ts';
import { FIELDS, ONE_OF } from '../../desk/fields/kinds.ts';
import { foldedText } from '../folded-text.ts';
import { many, plain } from '../problem-list.ts';

/** Puts a question to whoever sits there; gives what is typed. */
export type Ask = (question: string) => Promise<string>;

interface Choice<T> {
  readonly text: string;
  readonly means: T;
}

const ALSO = 'leave in also:';
const SAMPLES = 3;

/** What one row of the sheet is, where its headings alone say it. */
export async function askKind(proposed: SheetKind, ask: Ask): Promise<SheetKind> {
  const kinds = [proposed, ...SHEET_KINDS.filter((kind) => kind !== proposed)];
  const choices = kinds.map((kind) => ({ text: `one ${ONE_OF[kind]}`, means: kind }));
  return (await choose(`What is a row of this sheet?`, choices, 'Enter for 1', ask)) ?? proposed;
}

/** Asks about each column that nobody can tell: what it is, and then what its dates and bare numbers mean. An empty answer
 * leaves it undecided, to be asked again the next time; q leaves all the others so. */
export async function askColumns(
  plans: readonly ColumnPlan[],
  table: Table,
  kind: SheetKind,
  accepts: Accepts,
  ask: Ask,
): Promise<readonly ColumnPlan[]> {
  const decided = [...plans];
  try {
    for (const [at, plan] of plans.entries()) {
      const cells = cellsOf(table, at);
      if (cells.length === 0) continue;
      const first = plan.as === '?' ? await askWhich(plan, cells, kind, decided, accepts, ask) : plan;
      decided[at] = first;
      decided[at] = await askSense(first, cells, kind, accepts, ask);
    }
  } catch (error) {
    if (!(error instanceof NoMore)) throw error;
  }
  return decided;
}

/** The questions that were left: q was typed. */
class NoMore extends Error {}

const cellsOf = ({ rows }: Table, at: number) =>
  rows.map(({ cells }) => cells[at]?.trim() ?? '').filter((cell) => cell !== '');

async function askWhich(
  plan: ColumnPlan,
  cells: readonly string[],
  kind: SheetKind,
  others: readonly ColumnPlan[],
  accepts: Accepts,
  ask: Ask,
): Promise<ColumnPlan> {
  const taken = new Set(others.map(({ as }) => as));
  const keys = proposals(plan.header, cells, kind, taken, accepts);
  const width = Math.max(...keys.map((key) => key.length));
  const choices = [
    ...keys.map((key) => ({ text: `${key.padEnd(width)}  ${labelOf(kind, key)}`, means: key })),
    { text: ALSO, means: 'also' },
  ];
  const all = keysOfSheet(kind);
  const question = `Column "${plain(plan.header)}", ${many(cells.length, 'cell')}, such as: ${samplesOf(cells)}`;
  const how = 'or a fact’s key; Enter leaves it undecided, q asks no more';
  const as = await choose(question, choices, how, ask, (typed) => (all.includes(typed) ? typed : undefined));
  return as === undefined ? plan : { header: plan.header, as, by: 'the owner', ...senseOf(as, plan.header, cells) };
}

const samplesOf = (cells: readonly string[]) =>
  [...new Set(cells)]
    .slice(0, SAMPLES)
    .map((cell) => plain(cell.length > 40 ? `${cell.slice(0, 39)}…` : cell).replaceAll(/\s+/gu, ' '))
    .join(' | ');

/** What a fact is called at the desk; nothing where it says no more than its key. */
function labelOf(kind: SheetKind, key: string): string {
  if (key === 'body') return 'Your own account';
  if (key.startsWith('edition.')) return `The record’s ${key.slice('edition.'.length)}`;
  let [fields, label] = [FIELDS[kind], ''];
  for (const step of key.split('.')) {
    const field = fields.find((one) => one.key === step);
    label = field?.label ?? '';
    fields = field !== undefined && 'fields' in field ? field.fields : [];
  }
  return label;
}

const FIGURES = /^(\d{1,2})[./ -](\d{1,2})[./ -]'?\d{2,4}$/u;
const UNITS: Readonly<Record<string, readonly string[]>> = {
  'format.speed': ['in/s', 'cm/s'],
  speeds: ['in/s', 'cm/s'],
  'format.width': ['in', 'mm'],
  width: ['in', 'mm'],
  'format.level': ['nWb/m'],
  'pack.reel-size': ['in', 'cm', 'mm'],
  'largest-reel': ['in', 'cm', 'mm'],
  'pack.outside-diameter': ['mm', 'cm', 'in'],
  'pack.hub-diameter': ['mm', 'cm', 'in'],
  thickness: ['µm', 'mil'],
  length: ['min', 's'],
};

/** What a column's dates, times and bare numbers mean, where no cell of it shows that. */
async function askSense(
  plan: ColumnPlan,
  cells: readonly string[],
  kind: SheetKind,
  accepts: Accepts,
  ask: Ask,
): Promise<ColumnPlan> {
  const { as, header } = plan;
  const unread = (cell: string) => valueMeant(plan, cell, formOf(kind, as), false, accepts) === undefined;
  const told = async (sample: string | undefined, choices: (sample: string) => readonly Choice<ColumnSense>[]) => {
    if (sample === undefined) return plan;
    const question = `Column "${plain(header)}" (${as}) has ${plain(sample)}, which can be taken two ways.`;
    const sense = await choose(question, choices(sample), 'Enter leaves it in also:, q asks no more', ask);
    return sense === undefined ? plan : { ...plan, by: 'the owner' as const, ...sense };
  };
  if (DATES.includes(as) && plan.dates === undefined)
    return await told(
      cells.find((cell) => FIGURES.test(cell) && unread(cell)),
      (sample) => {
        const [, first = '', second = ''] = FIGURES.exec(sample) ?? [];
        return [
          { text: `day ${first}, month ${second}`, means: { dates: 'day-month' } },
          { text: `month ${first}, day ${second}`, means: { dates: 'month-day' } },
        ];
      },
    );
  if (plan.unit !== undefined || plan.pointIsColon === true) return plan;
  if (as === 'length') {
    const pointed = cells.find((cell) => /^\d{1,3}[.,]\d{2}$/u.test(cell) && unread(cell));
    if (pointed !== undefined)
      return await told(pointed, (sample) => [
        { text: `${sample.replace(/[.,]/u, ':')}, minutes and seconds`, means: { pointIsColon: true } },
        { text: `${sample} minutes`, means: { unit: 'min' } },
      ]);
  }
  if (as === 'valuations' || as === 'length' || MEASURES.includes(as))
    return await told(
      cells.find((cell) => /^[\d.,½¼¾⅓ /]+$/u.test(cell) && unread(cell)),
      (sample) => (UNITS[as] ?? ['GBP', 'EUR', 'USD']).map((unit) => ({ text: `${sample} ${unit}`, means: { unit } })),
    );
  return plan;
}

const TRIES = 3;

/** Numbered choices; what is typed beside them may have a meaning of its own. undefined for an empty answer, and for one
 * that can't be followed after three tries. */
async function choose<T>(
  question: string,
  choices: readonly Choice<T>[],
  how: string,
  ask: Ask,
  other: (typed: string) => T | undefined = () => undefined,
): Promise<T | undefined> {
  const list = choices.map(({ text }, at) => `  ${at + 1}  ${text}\n`).join('');
  const wanted = `A number from 1 to ${choices.length}, ${how}: `;
  let asked = `\n${foldedText(question, 100, 2)}\n${list}${wanted}`;
  for (let attempt = 0; attempt < TRIES; attempt++) {
    const typed = await ask(asked);
    if (typed === '') return undefined;
    if (typed === 'q') throw new NoMore();
    const chosen = /^\d+$/u.test(typed) ? choices[Number(typed) - 1]?.means : other(typed);
    if (chosen !== undefined) return chosen;
    asked = `"${plain(typed)}" is none of these. ${wanted}`;
  }
  return undefined;
}
