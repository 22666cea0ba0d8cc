import { byText } from '#model/diagnostic.ts';
import type { Entries } from '#model/entries.ts';
import { itemsOf } from '#model/fact.ts';
import type { Edge, EditionLineage, NodeId } from '#model/lineage.ts';
import type { Reel } from '#model/reel.ts';
import { editionNode, reelNode, reelOf } from './nodes.ts';

interface Neighbours {
  readonly into: (node: NodeId) => readonly Edge[];
  readonly outOf: (node: NodeId) => readonly Edge[];
}

/** What each edition came from: every reel and cut that leads to it or names it, and what else was copied or cut from
 * those, as long as it isn't another edition's; with the editions that it reissues and that reissue it. */
export function editionLineages(
  entries: Pick<Entries, 'reels' | 'editions'>,
  edges: Neighbours,
): readonly EditionLineage[] {
  const byId = new Map(entries.reels.map((reel) => [reel.id, reel]));
  const naming = new Map<string, NodeId[]>();
  for (const reel of entries.reels) {
    for (const edition of itemsOf(reel.editions)) {
      const nodes = naming.get(edition.value) ?? [];
      naming.set(edition.value, [...nodes, reelNode(reel.id)]);
    }
  }
  return entries.editions.map(({ id }) => {
    const node = editionNode(id);
    const upwards = reach([node, ...(naming.get(id) ?? [])], (one) => edges.into(one).map((edge) => edge.from));
    const nodes = reach(
      [...upwards].filter((one) => !one.startsWith('edition:')),
      (one) =>
        edges
          .outOf(one)
          .map((edge) => edge.to)
          .filter((to) => upwards.has(to) || belongs(to, id, byId, edges)),
    );
    const reissues = edges.outOf(node).map((edge) => edge.to);
    const all = new Set([...nodes, node, ...upwards, ...reissues]);
    return {
      edition: id,
      reels: [...all].flatMap((one) => reelOf(one) ?? []).sort(byText),
      edges: [...all].sort(byText).flatMap((one) => edges.outOf(one).filter((edge) => all.has(edge.to))),
    };
  });
}

/** A copy or cut that is this edition's, or nobody's in particular. */
function belongs(node: NodeId, edition: string, byId: ReadonlyMap<string, Reel>, edges: Neighbours): boolean {
  if (node.startsWith('edition:')) return false;
  const id = reelOf(node);
  if (id === undefined) {
    const editions = edges.outOf(node);
    return editions.length === 0 || editions.some((edge) => edge.to === editionNode(edition));
  }
  const named = itemsOf(byId.get(id)?.editions);
  return named.length === 0 || named.some((one) => one.value === edition);
}

function reach(start: readonly NodeId[], next: (node: NodeId) => readonly NodeId[]): ReadonlySet<NodeId> {
  const reached = new Set(start);
  for (const node of reached) for (const other of next(node)) reached.add(other);
  return reached;
}
