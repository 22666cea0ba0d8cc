import {
  coordGreedy,
  coordSimplex,
  decrossTwoLayer,
  graphStratify,
  type Layering,
  sugiyama,
  twolayerAgg,
} from 'd3-dag';
import { byText } from '#model/diagnostic.ts';
import type { Edge, NodeId } from '#model/lineage.ts';

/** Where each box of a lineage stands, in units of the drawing; columns are counted, and get their x when the gutters
 * between them are known. */
export interface LineageLayout {
  readonly columns: readonly string[];
  readonly at: ReadonlyMap<NodeId, { readonly column: number; readonly y: number }>;
  /** Heights, column by column, at which a link crosses the columns between its ends. */
  readonly crossings: ReadonlyMap<Edge, readonly number[]>;
  readonly height: number;
}

export const BOX = { width: 196, height: 84, gapX: 38, gapY: 16 } as const;

/** Above this many boxes the quick way to place them is taken; the exact one grows with their square. */
const MANY = 120;

/** Columns are generations, then cuts, then editions; d3-dag orders the boxes within them so that few lines cross.
 *
 * @param generation  a reel's generation, 1 for the first, or null when nobody knows. */
export function layOut(edges: readonly Edge[], generation: (reel: string) => number | null): LineageLayout {
  const straight = withoutRings([...edges].sort((a, b) => byText(a.from, b.from) || byText(a.to, b.to)));
  const columns = columnsOf(straight, generation);
  const placed = place(straight, columns.of);
  return { ...placed, columns: columns.names };
}

/** Copies that go round in a ring can't be laid out in order; the link that closes each ring is left out. */
export function withoutRings(edges: readonly Edge[]): readonly Edge[] {
  if (runsOut(edges)) return edges;
  const next = new Map<NodeId, NodeId[]>();
  const kept: Edge[] = [];
  for (const edge of edges) {
    if (leadsTo(next, edge.to, edge.from)) continue;
    next.set(edge.from, [...(next.get(edge.from) ?? []), edge.to]);
    kept.push(edge);
  }
  return kept;
}

/** Whether everything is reached when what has no parent left is taken away again and again: then there is no ring. */
function runsOut(edges: readonly Edge[]): boolean {
  const waiting = new Map<NodeId, number>();
  for (const { from, to } of edges) {
    waiting.set(from, waiting.get(from) ?? 0);
    waiting.set(to, (waiting.get(to) ?? 0) + 1);
  }
  const next = Map.groupBy(edges, (edge) => edge.from);
  const ready = [...waiting].filter(([, parents]) => parents === 0).map(([node]) => node);
  for (const node of ready) {
    for (const { to } of next.get(node) ?? []) {
      const left = (waiting.get(to) ?? 0) - 1;
      waiting.set(to, left);
      if (left === 0) ready.push(to);
    }
  }
  return ready.length === waiting.size;
}

function leadsTo(next: ReadonlyMap<NodeId, readonly NodeId[]>, from: NodeId, to: NodeId): boolean {
  const seen = new Set([from]);
  for (const node of seen) {
    if (node === to) return true;
    for (const child of next.get(node) ?? []) seen.add(child);
  }
  return false;
}

function columnsOf(edges: readonly Edge[], generation: (reel: string) => number | null) {
  const nodes = [...new Set(edges.flatMap((edge) => [edge.from, edge.to]))].sort(byText);
  const parents = Map.groupBy(edges, (edge) => edge.to);
  const depth = new Map<NodeId, number>();
  const known = nodes.some((node) => node.startsWith('reel:') && generation(node.slice(5)) === 1);
  const deep = (node: NodeId): number => {
    const found = depth.get(node);
    if (found !== undefined) return found;
    const own = node.startsWith('reel:') && known ? (generation(node.slice(5)) ?? 1) - 1 : 0;
    const value = Math.max(own, ...(parents.get(node) ?? []).map((edge) => deep(edge.from) + 1));
    depth.set(node, value);
    return value;
  };
  const reels = nodes.filter((node) => node.startsWith('reel:'));
  const last = Math.max(-1, ...reels.map(deep));
  const cuts = nodes.filter((node) => node.startsWith('cut:'));
  for (const node of cuts) depth.set(node, last + 1);
  const editions = nodes.filter((node) => node.startsWith('edition:'));
  const first = last + (cuts.length > 0 ? 2 : 1);
  for (const node of editions) depth.delete(node);
  // A reissue stands after what it is of, whichever of the two is asked for first.
  const after = (node: NodeId): number => {
    const found = depth.get(node);
    if (found !== undefined) return found;
    const value = Math.max(first, ...(parents.get(node) ?? []).map((edge) => after(edge.from) + 1));
    depth.set(node, value);
    return value;
  };
  editions.forEach(after);
  const used = [...new Set(nodes.map((node) => depth.get(node) ?? 0))].sort((a, b) => a - b);
  const allFirst = reels.every((node) => depth.get(node) !== 0 || generation(node.slice(5)) === 1);
  const names = used.map((column) => nameOf(column, last, cuts.length > 0, allFirst));
  return { of: new Map(nodes.map((node) => [node, used.indexOf(depth.get(node) ?? 0)])), names };
}

const ORDINALS = ['', '1st', '2nd', '3rd'];

function nameOf(column: number, lastReels: number, hasCuts: boolean, known: boolean): string {
  const afterReels = column - lastReels - (hasCuts ? 1 : 0);
  if (column > lastReels) return afterReels < 1 ? 'Cuts' : afterReels === 1 ? 'Editions' : 'Reissues';
  if (known) return column === 0 ? 'Original' : `${ORDINALS[column] ?? `${column}th`} copy`;
  return column === 0 ? 'Earliest known' : column === 1 ? 'Copied from it' : `${column} copies on`;
}

/** A lineage without its names: which column each box stands in, and which boxes are linked, by their places in the
 * sorted list. Side 1 and side 2 of a set nearly always have the same. */
interface Shape {
  readonly columns: readonly number[];
  /** Of each box, its parents; ascending. */
  readonly parents: readonly (readonly number[])[];
}

interface PlacedShape {
  /** Middle of each box. */
  readonly middles: readonly number[];
  /** By `parent child`: heights at which the link crosses the columns between them. */
  readonly crossings: ReadonlyMap<string, readonly number[]>;
  readonly height: number;
}

function place(edges: readonly Edge[], column: ReadonlyMap<NodeId, number>) {
  const nodes = [...column.keys()];
  const index = new Map(nodes.map((node, at) => [node, at]));
  const parents = nodes.map((): Set<number> => new Set());
  for (const { from, to } of edges) parents[index.get(to) ?? 0]?.add(index.get(from) ?? 0);
  const shape = { columns: [...column.values()], parents: parents.map((own) => [...own].sort((a, b) => a - b)) };
  const { middles, crossings, height } = placeOnce(shape);
  return {
    at: new Map(
      nodes.map((node, at) => [
        node,
        { column: shape.columns[at] ?? 0, y: Math.round((middles[at] ?? 0) - (BOX.height + BOX.gapY) / 2) },
      ]),
    ),
    crossings: new Map(
      edges.map((edge) => [edge, crossings.get(`${index.get(edge.from)} ${index.get(edge.to)}`) ?? []]),
    ),
    height,
  };
}

/** Shapes that came before. Only small ones are kept: large ones don't come twice. */
const PLACED = new Map<string, PlacedShape>();
const SMALL = 40;
const MOST_KEPT = 2000;

function placeOnce(shape: Shape): PlacedShape {
  if (shape.columns.length > SMALL) return placeShape(shape);
  const key = `${shape.columns.join()}/${shape.parents.map((own) => own.join()).join(';')}`;
  const before = PLACED.get(key);
  if (before !== undefined) return before;
  const placed = placeShape(shape);
  if (PLACED.size < MOST_KEPT) PLACED.set(key, placed);
  return placed;
}

interface Box {
  readonly id: string;
  readonly parentIds: readonly string[];
}

function placeShape({ columns, parents }: Shape): PlacedShape {
  const graph = graphStratify()(parents.map((own, at): Box => ({ id: String(at), parentIds: own.map(String) })));
  const count = Math.max(0, ...columns) + 1;
  const layering: Layering<Box, unknown> = (drawn) => {
    for (const node of drawn.nodes()) node.y = columns[Number(node.data.id)] ?? 0;
    return count - 1;
  };
  const small = columns.length <= MANY;
  const lay = sugiyama()
    .nodeSize([BOX.height + BOX.gapY, BOX.width + BOX.gapX])
    .layering(layering)
    .decross(small ? decrossTwoLayer() : decrossTwoLayer().order(twolayerAgg()))
    .coord(small ? coordSimplex() : coordGreedy());
  const { width } = lay(graph);
  const middles: number[] = [];
  for (const node of graph.nodes()) middles[Number(node.data.id)] = node.x;
  const crossings = new Map<string, readonly number[]>();
  for (const { source, target, points } of graph.links()) {
    const heights = points.slice(1, -1).map(([height]) => Math.round(height - BOX.gapY / 2));
    crossings.set(`${source.data.id} ${target.data.id}`, heights);
  }
  return { middles, crossings, height: Math.round(width) - BOX.gapY };
}
