import type { Entries } from '#model/entries.ts';
import type { Edge, Generation, Lineage, NodeId, ReelLineage } from '#model/lineage.ts';
import { knownEdges, withProposals } from './edges.ts';
import { editionLineages } from './edition-lineage.ts';
import { countGenerations } from './generation.ts';
import { proposeMatches } from './match.ts';
import { reelOf } from './nodes.ts';
import { findRings } from './rings.ts';

/** What was copied from what, over the whole collection: reels, the lacquers cut from them, editions and reissues on
 * one graph; each reel's generation; the rings that can't be; and the copy-log lines that fit a reel nobody linked. */
export function traceLineage(entries: Entries): Lineage {
  const known = knownEdges(entries);
  const proposals = proposeMatches(entries, known);
  const edges = withProposals(known, proposals);
  const parents = ends(known, 'to', 'from');
  const children = ends(known, 'from', 'to');
  const ids = entries.reels.map((reel) => reel.id);
  const cycles = findRings(ids, (id) => children.get(id) ?? []);
  const generations = countGenerations(entries.reels, (id) => parents.get(id) ?? [], new Set(cycles.flat()));
  return {
    edges,
    byReel: new Map(ids.map((id) => [id, new TracedReel(id, parents, children, generations)])),
    byEdition: editionLineages(entries, { into: by(edges, 'to'), outOf: by(edges, 'from') }),
    proposals,
    cycles,
  };
}

type Ends = ReadonlyMap<string, readonly string[]>;

/** A reel's place in the graph. All that lies above or below it is gathered when it is asked for: for every reel of a
 * long chain at once it would fill the memory. */
class TracedReel implements ReelLineage {
  readonly generation: Generation;
  readonly parents: readonly string[];
  readonly children: readonly string[];
  readonly #id: string;
  readonly #allParents: Ends;
  readonly #allChildren: Ends;

  constructor(id: string, parents: Ends, children: Ends, generations: ReadonlyMap<string, Generation>) {
    this.#id = id;
    this.#allParents = parents;
    this.#allChildren = children;
    this.parents = parents.get(id) ?? [];
    this.children = children.get(id) ?? [];
    this.generation = generations.get(id) ?? { shortest: null, longest: null, unknownLinks: 0, stated: null };
  }

  get ancestors(): readonly string[] {
    return beyond(this.#id, this.#allParents);
  }

  get descendants(): readonly string[] {
    return beyond(this.#id, this.#allChildren);
  }
}

/** All that can be reached, nearest first; the reel itself only where it lies on a ring. */
function beyond(id: string, next: Ends): readonly string[] {
  const reached = new Set(next.get(id) ?? []);
  for (const one of reached) for (const other of next.get(one) ?? []) reached.add(other);
  return [...reached];
}

/** The reels at the other end of each reel's links, in the order of the links. */
function ends(edges: readonly Edge[], here: 'from' | 'to', there: 'from' | 'to'): Ends {
  const found = new Map<string, string[]>();
  for (const edge of edges) {
    const id = reelOf(edge[here]);
    const other = reelOf(edge[there]);
    if (id === undefined || other === undefined) continue;
    const others = found.get(id);
    if (others === undefined) found.set(id, [other]);
    else others.push(other);
  }
  return found;
}

function by(edges: readonly Edge[], end: 'from' | 'to'): (node: NodeId) => readonly Edge[] {
  const found = new Map<NodeId, Edge[]>();
  for (const edge of edges) {
    const others = found.get(edge[end]);
    if (others === undefined) found.set(edge[end], [edge]);
    else others.push(edge);
  }
  return (node) => found.get(node) ?? [];
}
