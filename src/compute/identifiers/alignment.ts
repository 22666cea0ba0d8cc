import { costOfTaking } from './confusables.ts';
import type { Asked } from './question.ts';

/** How one character of what was typed stands to one of what was found. */
export type Standing = 'same' | 'fills' | 'alike' | 'differs' | 'more' | 'lacks';

/** A column: what was typed above, what was found below. `more` has nothing above, `lacks` nothing below. */
export interface Column {
  readonly is: Standing;
  readonly asked: string;
  readonly found: string;
}

export interface Alignment {
  readonly columns: readonly Column[];
  /** 0 for the same; an easily misread character costs what the table says, any other edit 1. */
  readonly cost: number;
}

/** What it costs to take what was asked for a plain form: a weighted edit distance. */
export const costOfAligning = (asked: readonly Asked[], found: string): number =>
  costTable(asked, found, false)[0]?.[0] ?? 0;

/** The cheapest way to lay what was asked over a plain form, in columns.
 *
 * Weighted edit distance, worked out backwards so that it is read off from the beginning. With `asPart` what stands
 * before and after the asked characters costs nothing.
 */
export function align(asked: readonly Asked[], found: string, asPart: boolean): Alignment {
  const costs = costTable(asked, found, asPart);
  const columns: Column[] = [];
  let from = 0;
  let at = 0;
  while (from < asked.length || at < found.length) {
    const column = cheapest(asked, found, costs, from, at, asPart);
    columns.push(column);
    if (column.is !== 'more') from += 1;
    if (column.is !== 'lacks') at += 1;
  }
  return { columns, cost: costs[0]?.[0] ?? 0 };
}

/** The cost of laying what is left over one another, from each place in both. */
function costTable(asked: readonly Asked[], found: string, asPart: boolean): readonly Float64Array[] {
  const table = Array.from({ length: asked.length + 1 }, () => new Float64Array(found.length + 1));
  for (let from = asked.length; from >= 0; from -= 1) {
    const row = table[from] ?? NO_ROW;
    const below = table[from + 1] ?? NO_ROW;
    const over = costOver(asked, from, asPart);
    for (let at = found.length; at >= 0; at -= 1) {
      if (from === asked.length && at === found.length) continue;
      row[at] = Math.min(
        at === found.length ? Number.POSITIVE_INFINITY : over + (row[at + 1] ?? 0),
        from === asked.length ? Number.POSITIVE_INFINITY : 1 + (below[at] ?? 0),
        costOfColumn(asked[from], found[at]) + (below[at + 1] ?? 0),
      );
    }
  }
  return table;
}

const NO_ROW = new Float64Array(0);

/** What a found character costs that nothing was asked for. */
function costOver(asked: readonly Asked[], from: number, asPart: boolean): number {
  const outside = asPart && (from === 0 || from === asked.length);
  return outside || asked[from - 1]?.thenAny === true ? 0 : 1;
}

function costOfColumn(asked: Asked | undefined, found: string | undefined): number {
  if (asked === undefined || found === undefined) return Number.POSITIVE_INFINITY;
  const { mayBe } = asked;
  if (mayBe === found || mayBe === '' || found === '?') return 0;
  if (mayBe.length === 1) return costOfTaking(mayBe, found);
  return Math.min(...[...mayBe].map((one) => costOfTaking(one, found)));
}

/** Of equally cheap columns the first: characters over one another before gaps. */
function cheapest(
  asked: readonly Asked[],
  found: string,
  table: readonly Float64Array[],
  from: number,
  at: number,
  asPart: boolean,
): Column {
  const left = table[from]?.[at] ?? 0;
  const one = asked[from];
  const character = found[at];
  const across = costOfColumn(one, character) + (table[from + 1]?.[at + 1] ?? 0);
  if (one !== undefined && character !== undefined && across <= left) {
    return { is: standing(one, character), asked: written(one), found: character };
  }
  const over = costOver(asked, from, asPart) + (table[from]?.[at + 1] ?? 0);
  if (character !== undefined && (one === undefined || over <= left))
    return { is: 'more', asked: '', found: character };
  return { is: 'lacks', asked: written(one), found: '' };
}

const written = (asked: Asked | undefined) =>
  asked === undefined ? '' : asked.mayBe.length > 1 ? `{${[...asked.mayBe].join('|')}}` : asked.mayBe || '?';

function standing(asked: Asked, found: string): Standing {
  if (asked.mayBe === found) return 'same';
  const cost = costOfColumn(asked, found);
  if (cost === 0) return 'fills';
  return cost < 1 ? 'alike' : 'differs';
}
