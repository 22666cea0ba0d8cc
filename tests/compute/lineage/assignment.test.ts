import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bestAssignment, type Option } from '#compute/lineage/assignment.ts';

const rowsOfOptions = fc.array(
  fc.uniqueArray(fc.record({ column: fc.nat(5), weight: fc.integer({ min: 1, max: 12 }) }), {
    selector: (option) => option.column,
    maxLength: 6,
  }),
  { maxLength: 6 },
);

/** Every choice there is, tried one after the other. */
function bestByTrying(rows: readonly (readonly Option[])[], used: ReadonlySet<number> = new Set()): number {
  const [first, ...rest] = rows;
  if (first === undefined) return 0;
  const without = bestByTrying(rest, used);
  return first
    .filter((option) => !used.has(option.column))
    .reduce(
      (best, option) => Math.max(best, option.weight + bestByTrying(rest, new Set([...used, option.column]))),
      without,
    );
}

const weightOf = (rows: readonly (readonly Option[])[], chosen: readonly (number | undefined)[]) =>
  rows.reduce((sum, options, row) => sum + (options.find((option) => option.column === chosen[row])?.weight ?? 0), 0);

describe('bestAssignment', () => {
  test('is as good as the best of all choices, tried one by one', () => {
    fc.assert(
      fc.property(rowsOfOptions, (rows) => {
        expect(weightOf(rows, bestAssignment(rows))).toBe(bestByTrying(rows));
      }),
      { numRuns: 3000 },
    );
  });

  test('never gives one column to two rows, nor a column that the row did not offer', () => {
    fc.assert(
      fc.property(rowsOfOptions, (rows) => {
        const chosen = bestAssignment(rows);
        const given = chosen.filter((column) => column !== undefined);
        expect(new Set(given).size).toBe(given.length);
        for (const [row, column] of chosen.entries()) {
          if (column !== undefined) expect(rows[row]?.map((option) => option.column)).toContain(column);
        }
      }),
      { numRuns: 1000 },
    );
  });

  test('gives up the best single pair where two good ones are worth more', () => {
    const greedyTrap = [
      [
        { column: 0, weight: 10 },
        { column: 1, weight: 9 },
      ],
      [{ column: 0, weight: 8 }],
    ];
    expect(bestAssignment(greedyTrap)).toEqual([1, 0]);
  });

  test('three hundred rows that all want the same forty columns are decided quickly and once each', () => {
    const rows = Array.from({ length: 300 }, (_, row) =>
      Array.from({ length: 40 }, (_, column) => ({ column, weight: 1 + ((row * 7 + column * 13) % 11) })),
    );
    const given = bestAssignment(rows).filter((column) => column !== undefined);
    expect(given).toHaveLength(40);
    expect(new Set(given).size).toBe(40);
  });
});
