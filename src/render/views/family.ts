import type { Catalogue } from '#model/catalogue.ts';
import { byText } from '#model/diagnostic.ts';
import type { Edge, NodeId } from '#model/lineage.ts';
import { madeOnce } from '../made-once.ts';

/** Reels, cuts and editions that hang together, and the links between them. */
export interface Family {
  /** Names its page: the id of its first edition, or of its first reel. */
  readonly id: string;
  /** Sorted. */
  readonly nodes: readonly NodeId[];
  readonly edges: readonly Edge[];
}

export interface Families {
  readonly all: readonly Family[];
  readonly byNode: ReadonlyMap<NodeId, Family>;
  readonly byId: ReadonlyMap<string, Family>;
}

/** Every family of two or more, sorted by id; found once a catalogue. */
export const families = madeOnce('families', ({ lineage }: Catalogue): Families => findFamilies(lineage.edges));

export const familyOf = (catalogue: Catalogue, node: NodeId): Family | undefined =>
  families(catalogue).byNode.get(node);

/** How many reels have no link to anything. */
export function unlinkedReels(catalogue: Catalogue): number {
  const { byNode } = families(catalogue);
  return catalogue.reels.filter(({ reel }) => byNode.get(`reel:${reel.id}`) === undefined).length;
}

/** Connected parts of the graph, by joining the two ends of every edge. */
export function findFamilies(edges: readonly Edge[]): Families {
  const leader = new Map<NodeId, NodeId>();
  for (const edge of edges) {
    const [a, b] = [leaderOf(leader, edge.from), leaderOf(leader, edge.to)];
    if (a !== b) leader.set(byText(a, b) < 0 ? b : a, byText(a, b) < 0 ? a : b);
  }
  const nodes = Map.groupBy(leader.keys(), (node) => leaderOf(leader, node));
  const own = Map.groupBy(edges, (edge) => leaderOf(leader, edge.from));
  const all = [...nodes].map(([first, members]) => {
    const sorted = members.sort(byText);
    return { id: idOf(sorted), nodes: sorted, edges: own.get(first) ?? [] };
  });
  all.sort((a, b) => byText(a.id, b.id));
  return {
    all,
    byNode: new Map(all.flatMap((family) => family.nodes.map((node) => [node, family] as const))),
    // Of two with one name the first has the page.
    byId: new Map(all.map((family) => [family.id, family] as const).reverse()),
  };
}

function leaderOf(leader: Map<NodeId, NodeId>, node: NodeId): NodeId {
  let at = node;
  for (let up = leader.get(at); up !== undefined && up !== at; up = leader.get(at)) at = up;
  leader.set(node, at);
  leader.set(at, at);
  return at;
}

function idOf(sorted: readonly NodeId[]): string {
  const named = sorted.find((node) => node.startsWith('edition:')) ?? sorted.find((node) => node.startsWith('reel:'));
  return (named ?? sorted[0] ?? '').replace(/^[a-z]+:/, '');
}

/** The part of a family that concerns one reel: what it comes from, what was made from it, and its parents' other copies. */
export function ownLine(
  family: Family,
  node: NodeId,
  most: number,
): { readonly edges: readonly Edge[]; readonly left: number } {
  const up = reach(family.edges, [node], 'from');
  const down = reach(family.edges, [node], 'to');
  const parents = new Set(family.edges.filter((edge) => edge.to === node).map((edge) => edge.from));
  const line = family.edges.filter(
    (edge) => (up.has(edge.to) && up.has(edge.from)) || (down.has(edge.from) && down.has(edge.to)),
  );
  const beside = family.edges.filter(
    (edge) => parents.has(edge.from) && !line.includes(edge) && edge.to.startsWith('reel:'),
  );
  const room = Math.max(0, most - line.length);
  return {
    edges: [...line.slice(0, most), ...beside.slice(0, room)],
    left: Math.max(0, beside.length - room) + Math.max(0, line.length - most),
  };
}

function reach(edges: readonly Edge[], start: readonly NodeId[], end: 'from' | 'to'): ReadonlySet<NodeId> {
  const other = end === 'from' ? 'to' : 'from';
  const next = Map.groupBy(edges, (edge) => edge[other]);
  const seen = new Set(start);
  for (const node of seen) for (const edge of next.get(node) ?? []) seen.add(edge[end]);
  return seen;
}
