import { formOf, type SheetKind } from '#model/entry-column.ts';
import { type ColumnSense, DATES, MEASURES } from './cell-forms.ts';
import { keyNamed, unitNamed } from './column-names.ts';
import { orderShown } from './dates.ts';
import type { Table } from './header.ts';

/** What one column of a sheet is taken for. */
export interface ColumnPlan extends ColumnSense {
  readonly header: string;
  /** A fact's dotted key; `also` where it is kept as it stands; `?` where the owner is asked, and it is kept till then. */
  readonly as: string;
  /** How it was found out. */
  readonly by: 'the owner' | 'its heading' | 'its cells' | 'nothing';
}

/** A plan for each column: what the owner said before, else what the heading names, else what the cells look like.
 * @param said  from an earlier time, by heading. */
export function proposeColumns(
  table: Table,
  kind: SheetKind,
  said: ReadonlyMap<string, Partial<ColumnPlan>> = new Map(),
): readonly ColumnPlan[] {
  const taken = new Set<string>();
  return table.headers.map((header, at) => {
    const cells = table.rows.map(({ cells: row }) => row[at]?.trim() ?? '').filter((cell) => cell !== '');
    const before = said.get(header);
    const named = keyNamed(header, kind) ?? keyNamed(table.lower[at] ?? '', kind);
    const seen = named === undefined ? seenIn(cells, kind) : undefined;
    const [as, by] =
      before?.as !== undefined && before.as !== '?'
        ? ([before.as, 'the owner'] as const)
        : named !== undefined
          ? ([named, 'its heading'] as const)
          : seen !== undefined && !taken.has(seen)
            ? ([seen, 'its cells'] as const)
            : (['?', 'nothing'] as const);
    taken.add(as);
    const found = senseOf(as, header, cells);
    return { header, as, by, ...found, ...withoutUnsaid(before) };
  });
}

function withoutUnsaid(before: Partial<ColumnPlan> | undefined): ColumnSense {
  const { dates, unit, minutesAsHours, pointIsColon } = before ?? {};
  return Object.fromEntries(
    Object.entries({ dates, unit, minutesAsHours, pointIsColon }).filter(([, value]) => value !== undefined),
  );
}

/** Shapes that only one kind of fact has. */
const SHAPES: readonly (readonly [key: string, shape: RegExp])[] = [
  ['length', /^\d{1,3}(?::[0-5]\d){1,2}$|^\d{1,3} ?['′’] ?\d{1,2}/u],
  ['format.speed', /^[\d.,½¼¾ ]+(?:ips|i\.p\.s\.|in\/s|in\/sec|cm\/s)$/iu],
  ['photos', /^[^;]+\.(?:jpe?g|png|tiff?|webp|heic)$/iu],
  ['recorded.on', /^(?:\d{1,2}[./-]\d{1,2}[./-]\d{2,4}|\d{4}-\d{2}(?:-\d{2})?|19\d\d)$/u],
  ['format.level', /nWb\/m$/iu],
];
const ENOUGH = 0.8;

function seenIn(cells: readonly string[], kind: SheetKind): string | undefined {
  if (cells.length < 3) return undefined;
  const shapes = SHAPES.filter(([key]) => formOf(kind, key) !== undefined);
  return shapes.find(([, shape]) => cells.filter((cell) => shape.test(cell)).length >= cells.length * ENOUGH)?.[0];
}

const IN_PER_S = ['30', '15', '7.5', '7½', '3.75', '3¾', '1.875', '1⅞'];
const CM_PER_S = ['76', '76.2', '38', '38.1', '19', '19.05', '9.5', '9.53', '4.75', '4.76'];

/** How a column's cells are to be understood when it is taken for a fact. */
export function senseOf(as: string, header: string, cells: readonly string[]): ColumnSense {
  const unit = unitNamed(header);
  if (as === 'format.speed' || as === 'speeds') return { unit: unit ?? speedUnit(cells) };
  if (as === 'length') {
    const clocks = cells
      .map((cell) => /^(\d{1,3}):\d{2}:(\d{2})(?:\.0+)?$/u.exec(cell))
      .filter((clock) => clock !== null);
    const minutesAsHours =
      clocks.length > 0 && clocks.every((clock) => clock[2] === '00') && clocks.some((clock) => Number(clock[1]) > 3);
    return { unit, ...(minutesAsHours ? { minutesAsHours } : {}) };
  }
  if (DATES.includes(as)) return { dates: orderShown(cells) };
  return as === 'valuations' || (MEASURES.includes(as) && unit !== undefined) ? { unit } : {};
}

/** The nominal speeds are other figures in inches than in centimetres, so that bare ones show which they are. */
function speedUnit(cells: readonly string[]): string | undefined {
  const bare = cells
    .flatMap((cell) => cell.split(/[;/&]|, /u))
    .map((cell) => cell.replace(',', '.').trim())
    .filter((cell) => /^[\d.½¾⅞]+$/u.test(cell));
  if (bare.length === 0) return undefined;
  if (bare.every((cell) => IN_PER_S.includes(cell))) return 'in/s';
  return bare.every((cell) => CM_PER_S.includes(cell)) ? 'cm/s' : undefined;
}
