import type { Edge, How, NodeId } from '#model/lineage.ts';
import { BOX, type LineageLayout } from './lineage-layout.ts';

/** The way of each link, and where each column begins once the gutters are as wide as their trunks ask. */
export interface LineageRoutes {
  /** Left edge of each column. */
  readonly columnX: readonly number[];
  readonly width: number;
  readonly paths: ReadonlyMap<Edge, string>;
}

/** Each kind of link leaves its box lower than the one before, so that a dotted line is never drawn over a solid one. */
const STEP: Readonly<Record<How, number>> = { stated: 0, logged: 1, proposed: 2 };
const LOWER = 13;
const LANE = 7;
const CLEAR = 12;
/** Two trunks in one lane keep this far apart, or they would look like one. */
const APART = 6;

interface Trunk {
  readonly gutter: number;
  /** Links from one box, known one way, share a trunk. */
  readonly key: string;
  low: number;
  high: number;
}

/** Right-angled ways: down a trunk of its own in each gutter, across each column at the height that was kept free. */
export function routeLinks(edges: readonly Edge[], layout: LineageLayout): LineageRoutes {
  const ways = edges.flatMap((edge) => wayOf(edge, layout) ?? []);
  const lanes = layLanes(trunksOf(ways));
  const columnX = columnsFrom(layout.columns.length, lanes.counts);
  const paths = new Map(ways.map((way) => [way.edge, pathOf(way, columnX, lanes.of)] as const));
  return { columnX, width: (columnX.at(-1) ?? 0) + BOX.width, paths };
}

interface Way {
  readonly edge: Edge;
  readonly key: string;
  readonly column: number;
  /** From the parent's height, over the crossings, to the child's. */
  readonly heights: readonly number[];
}

function wayOf(edge: Edge, layout: LineageLayout): Way | undefined {
  const [from, to, crossings] = [layout.at.get(edge.from), layout.at.get(edge.to), layout.crossings.get(edge)];
  if (from === undefined || to === undefined || crossings === undefined) return undefined;
  const start = from.y + BOX.height / 2 + STEP[edge.how] * LOWER;
  return {
    edge,
    key: trunkKey(edge.from, edge.how),
    column: from.column,
    heights: [start, ...crossings, to.y + BOX.height / 2],
  };
}

const trunkKey = (from: NodeId, how: How) => `${how} ${from}`;

function trunksOf(ways: readonly Way[]): readonly Trunk[] {
  const trunks = new Map<string, Trunk>();
  for (const { key, column, heights } of ways) {
    for (const [step, height] of heights.slice(0, -1).entries()) {
      const next = heights[step + 1] ?? height;
      if (next === height) continue;
      const name = `${column + step} ${key}`;
      const trunk = trunks.get(name) ?? { gutter: column + step, key, low: height, high: height };
      trunk.low = Math.min(trunk.low, height, next);
      trunk.high = Math.max(trunk.high, height, next);
      trunks.set(name, trunk);
    }
  }
  return [...trunks.values()].sort((a, b) => a.gutter - b.gutter || a.low - b.low || a.high - b.high);
}

/** Trunks that would touch stand in lanes beside each other. */
function layLanes(trunks: readonly Trunk[]) {
  const of = new Map<string, number>();
  const counts = new Map<number, number>();
  const ends = new Map<string, number>();
  for (const trunk of trunks) {
    let lane = 0;
    while ((ends.get(`${trunk.gutter} ${lane}`) ?? Number.NEGATIVE_INFINITY) + APART > trunk.low) lane += 1;
    ends.set(`${trunk.gutter} ${lane}`, trunk.high);
    of.set(`${trunk.gutter} ${trunk.key}`, lane);
    counts.set(trunk.gutter, Math.max(counts.get(trunk.gutter) ?? 0, lane + 1));
  }
  return { of, counts };
}

function columnsFrom(columns: number, counts: ReadonlyMap<number, number>): readonly number[] {
  const left: number[] = [];
  for (let column = 0; column < columns; column += 1) {
    const before = left[column - 1];
    left.push(before === undefined ? 0 : before + BOX.width + gutterWidth(counts.get(column - 1) ?? 0));
  }
  return left;
}

const gutterWidth = (lanes: number) => Math.max(BOX.gapX, CLEAR * 2 + (lanes - 1) * LANE);

function pathOf({ key, column, heights }: Way, columnX: readonly number[], lanes: ReadonlyMap<string, number>): string {
  let path = `M${(columnX[column] ?? 0) + BOX.width} ${heights[0]}`;
  for (const [step, height] of heights.slice(1).entries()) {
    const gutter = (columnX[column + step] ?? 0) + BOX.width;
    const lane = lanes.get(`${column + step} ${key}`) ?? 0;
    path += `H${gutter + CLEAR + lane * LANE}V${height}H${columnX[column + step + 1] ?? gutter}`;
  }
  return path;
}
