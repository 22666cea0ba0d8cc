/** A pair that may be made, and what speaks for it: a whole number over 0, higher being better. */
export interface Option {
  readonly column: number;
  readonly weight: number;
}

/** The choice of at most one column a row, and at most one row a column, whose weights sum highest.
 *
 * Shortest augmenting paths with potentials, over the options that exist only: a row may also stay without a column,
 * at weight 0. Rows are taken in order and ties fall to the lower column, so the same options give the same choice.
 *
 * @returns for each row its column, or undefined when it is better left alone.
 * Source: the Hungarian method in its successive-shortest-path form (Jonker and Volgenant, A shortest augmenting path
 * algorithm for dense and sparse linear assignment problems, Computing 38, 1987). */
export function bestAssignment(rows: readonly (readonly Option[])[]): readonly (number | undefined)[] {
  const state: State = {
    rows,
    columnOf: new Array<number | undefined>(rows.length).fill(undefined),
    rowOf: new Map(),
    rowPotential: rows.map((options) => Math.min(0, ...options.map((option) => -option.weight))),
    columnPotential: new Map(),
  };
  for (let row = 0; row < rows.length; row++) augment(state, row);
  return state.columnOf;
}

interface State {
  readonly rows: readonly (readonly Option[])[];
  readonly columnOf: (number | undefined)[];
  readonly rowOf: Map<number, number>;
  readonly rowPotential: number[];
  readonly columnPotential: Map<number, number>;
}

interface Reached {
  distance: number;
  from: number;
  settled: boolean;
}

/** Gives `start` a column, moving rows that are already served along the cheapest path. */
function augment(state: State, start: number): void {
  const reached = new Map<number, Reached>();
  const rowDistance = new Map<number, number>([[start, 0]]);
  let alone = { row: start, distance: slack(state, start, undefined, 0) };
  let row = start;
  for (;;) {
    const here = rowDistance.get(row) ?? 0;
    const leave = here + slack(state, row, undefined, 0);
    if (leave < alone.distance) alone = { row, distance: leave };
    relax(state, reached, row, here);
    const next = nearest(reached);
    if (next === undefined || next.distance >= alone.distance) {
      finish(state, reached, rowDistance, alone.distance, alone.row, undefined);
      return;
    }
    const holder = state.rowOf.get(next.column);
    if (holder === undefined) {
      finish(state, reached, rowDistance, next.distance, next.from, next.column);
      return;
    }
    settle(reached, next.column);
    rowDistance.set(holder, next.distance);
    row = holder;
  }
}

function relax(state: State, reached: Map<number, Reached>, row: number, here: number): void {
  for (const { column, weight } of state.rows[row] ?? []) {
    const distance = here + slack(state, row, column, -weight);
    const known = reached.get(column);
    if (known === undefined) reached.set(column, { distance, from: row, settled: false });
    else if (!known.settled && distance < known.distance) reached.set(column, { distance, from: row, settled: false });
  }
}

function slack(state: State, row: number, column: number | undefined, cost: number): number {
  const columnPotential = column === undefined ? 0 : (state.columnPotential.get(column) ?? 0);
  return cost - (state.rowPotential[row] ?? 0) - columnPotential;
}

function nearest(
  reached: ReadonlyMap<number, Reached>,
): { column: number; distance: number; from: number } | undefined {
  let best: { column: number; distance: number; from: number } | undefined;
  for (const [column, one] of reached) {
    if (one.settled) continue;
    const nearer =
      best === undefined || one.distance < best.distance || (one.distance === best.distance && column < best.column);
    if (nearer) best = { column, distance: one.distance, from: one.from };
  }
  return best;
}

function settle(reached: Map<number, Reached>, column: number): void {
  const one = reached.get(column);
  if (one !== undefined) one.settled = true;
}

/** Corrects the potentials by the path's length and hands the columns along it. */
function finish(
  state: State,
  reached: ReadonlyMap<number, Reached>,
  rowDistance: ReadonlyMap<number, number>,
  length: number,
  lastRow: number,
  lastColumn: number | undefined,
): void {
  for (const [row, distance] of rowDistance)
    state.rowPotential[row] = (state.rowPotential[row] ?? 0) + length - distance;
  for (const [column, one] of reached) {
    if (one.settled)
      state.columnPotential.set(column, (state.columnPotential.get(column) ?? 0) + one.distance - length);
  }
  let row = lastRow;
  let column = lastColumn;
  for (;;) {
    const before = state.columnOf[row];
    state.columnOf[row] = column;
    if (column !== undefined) state.rowOf.set(column, row);
    if (before === undefined) return;
    column = before;
    row = reached.get(before)?.from ?? row;
  }
}
